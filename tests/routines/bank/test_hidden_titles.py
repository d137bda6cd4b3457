"""A title that the reader may not see stands nowhere: its place says "a count that is not in the bank"."""

from datetime import date, timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from grade_bands.models import SchoolYear
from routines.models import Lesson, PlanDraft, Planned, Routine, Suggestion
from routines.plans.actions import copy_routine, keep_draft, save_version
from routines.team.school_days import monday_now
from tests.factories import StandardFactory
from tests.routines.making import make_lesson, make_routine

INSTEAD = "a count that is not in the bank"
WINDOW = "?first=2026-08-17&last=2026-11-20"

pytestmark = pytest.mark.django_db


@pytest.fixture
def hidden(owner):
    """A draft of the owner's, as every screen could come upon it: taught, shared about, planned for, copied from."""
    return make_routine(owner, shared=False, title="Planted damson count")


def renamed_copy(routine, by):
    copy = copy_routine(routine=routine, by=by)
    save_version(routine=copy, plan=copy.plan.changed(title="My own"), based_on=copy.current_version, by=by)
    return copy


def screens(lesson, copy, grade):
    """Every screen that names a count beside its own."""
    return {
        "lessons": reverse("lessons"),
        "lesson": reverse("lesson", args=[lesson.key]),
        "coverage": reverse("coverage") + WINDOW,
        "drill-down": reverse("coverage_cell", args=[grade.pk, "whole"]) + WINDOW,
        "copy": reverse("routine", args=[copy.pk]),
        "print": reverse("print", args=[copy.pk]),
        "print in the browser": reverse("print_html", args=[copy.pk, "plan"]),
        "file": reverse("export_routine", args=[copy.pk]),
        "bank": reverse("bank"),
        "searched for": reverse("bank") + "?q=planted",
        "booklet": reverse("booklet_choose"),
        "plans": reverse("my_plans"),
    }


@pytest.mark.parametrize(("name", "lists"), [("teammate", True), ("coach", True), ("administrator", False)])
def test_a_draft_is_named_to_nobody_else(request, owner, hidden, grade_two, visit, name, lists):
    reader = request.getfixturevalue(name)
    lesson = make_lesson(hidden, owner, sharing="team-coach", seen="it went well")
    copy = renamed_copy(hidden, owner)
    copy.share()
    client = visit(reader)
    told = {}
    for screen, address in screens(lesson, copy, grade_two).items():
        answer = client.get(address)
        assert "damson" not in answer.text, screen
        assert f'"{reverse("routine", args=[hidden.pk])}"' not in answer.text, screen
        told[screen] = INSTEAD in answer.text
    assert [screen for screen, says in told.items() if says] == (
        ["lessons", "lesson", "drill-down", "copy"] if lists else ["copy"]
    )


def test_its_own_author_reads_it_everywhere(owner, hidden, grade_two, visit):
    lesson = make_lesson(hidden, owner)
    copy = renamed_copy(hidden, owner)
    client = visit(owner)
    addresses = screens(lesson, copy, grade_two)
    for screen in ("lessons", "lesson", "drill-down", "copy", "plans"):
        page = client.get(addresses[screen]).text
        assert "Planted damson count" in page, screen
        assert INSTEAD not in page, screen


def test_what_was_taken_out_of_the_bank_is_named_to_those_who_may_bring_it_back(
    owner, teammate, coach, grade_two, visit
):
    routine = make_routine(owner, title="Planted damson count")
    make_lesson(routine, owner)
    routine.retire()
    address = reverse("coverage_cell", args=[grade_two.pk, "whole"]) + WINDOW
    assert "damson" in visit(coach).get(address).text
    assert "damson" not in visit(teammate).get(address).text
    assert INSTEAD in visit(teammate).get(address).text


def test_her_own_lesson_keeps_the_title_that_she_taught(owner, teammate, visit):
    routine = make_routine(owner, title="Planted damson count")
    lesson = make_lesson(routine, teammate)
    routine.retire()
    Routine.objects.filter(pk=routine.pk).update(title="Planted quince count")
    for address in (reverse("lessons"), lesson.get_absolute_url()):
        page = visit(teammate).get(address).text
        assert "Planted damson count" in page
        assert "quince" not in page
        assert f'"{reverse("routine", args=[routine.pk])}"' not in page


def test_the_lesson_of_a_hidden_count_leads_to_no_closed_door(owner, teammate, hidden, visit):
    lesson = make_lesson(hidden, owner, sharing="team")
    page = visit(teammate).get(lesson.get_absolute_url()).text
    assert "Poster as it happened" not in page
    assert "Poster as it happened" in visit(owner).get(lesson.get_absolute_url()).text


def test_comparing_with_an_original_that_is_hidden_is_not_found(owner, teammate, hidden, visit):
    copy = renamed_copy(hidden, owner)
    copy.share()
    address = reverse("routine_compare", args=[copy.pk])
    assert visit(owner).get(address).status_code == 200
    answer = visit(teammate).get(address)
    assert (answer.status_code, "damson" in answer.text) == (404, False)


def test_a_co_author_let_go_reads_no_title_in_her_unfinished_list(owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author], shared=False, title="Planted damson count")
    keep_draft(by=co_author, fields={"typed": {"start": ["3"], "step": ["4"]}}, routine=routine)
    client = visit(co_author)
    assert "damson" in client.get(reverse("my_plans")).text
    routine.co_authors.clear()
    page = client.get(reverse("my_plans")).text
    assert "damson" not in page
    assert "By 4 from 3" in page
    assert PlanDraft.objects.of(co_author).exists()


def test_the_planned_week_names_what_may_be_named(owner, teammate, coach, hidden):
    shown = make_routine(owner, title="Open count")
    for routine in (hidden, shown):
        Planned.objects.create(routine=routine, class_group=owner.class_groups.get(), on=date(2026, 9, 21), by=owner)
    titles = {
        reader.display_name: [row.title for row in Planned.objects.visible_to(reader).with_titles_for(reader)]
        for reader in (owner, teammate, coach)
    }
    assert titles == {
        "Owner Ota": ["Planted damson count", "Open count"],
        "Teammate Tao": [INSTEAD, "Open count"],
        "Coach Cruz": [INSTEAD, "Open count"],
    }


def everything_about(routine, owner, coach, grade, standard):
    """Taught, shared about, planned for this week, suggested from and to all sides, noted, copied; then put away."""
    lesson = make_lesson(routine, owner, sharing="team-coach", taught_on=timezone.localdate(), seen="it went well")
    Planned.objects.create(
        routine=routine, class_group=owner.class_groups.get(), on=monday_now(timezone.localdate()), by=owner
    )
    Suggestion.objects.create(routine=routine, by=coach, to_grade=grade, why="For all of grade 2.")
    Suggestion.objects.create(routine=routine, by=owner, to_band=grade.band, why="For our team.")
    routine.notes.create(by=owner, text="It worked with strips.")
    copy = renamed_copy(routine, owner)
    copy.share()
    return {
        **screens(lesson, copy, grade),
        "home": reverse("home"),
        "week": reverse("week"),
        "week of the team": f"{reverse('week')}?team={grade.band_id}",
        "suggestions": reverse("suggestions"),
        "coverage now": reverse("coverage"),
        "drill-down now": reverse("coverage_cell", args=[grade.pk, "whole"]),
        "by standard": f"{reverse('coverage_standards')}?grade={grade.pk}",
        "standard": reverse("coverage_standard", args=[grade.pk, standard.pk]),
        "files": reverse("coverage_standards_csv"),
        "totals": reverse("coverage_csv"),
        "sheet": f"{reverse('coverage_standards_print')}?grade={grade.pk}",
        "suggest": reverse("suggest_for_gap", args=[grade.pk, "whole"]),
        "suggest for a standard": reverse("suggest_for_standard", args=[grade.pk, standard.pk]),
        "put in the week": reverse("planned_for_gap", args=[grade.pk, "whole"]),
        "put in the week for a standard": reverse("planned_for_standard", args=[grade.pk, standard.pk]),
        "history of the copy": reverse("plan_history", args=[copy.pk]),
        "what changed": reverse("routine_compare", args=[copy.pk]),
        "the bank as a file": reverse("export_bank"),
        "removing words": reverse("erase_words"),
    }


@pytest.mark.parametrize(
    ("name", "status", "reads"),
    [
        ("owner", "draft", True),
        ("teammate", "draft", False),
        ("coach", "draft", False),
        ("administrator", "draft", False),
        ("teammate", "retired", False),
        ("coach", "retired", True),
        ("administrator", "retired", True),
    ],
)
def test_on_no_screen_of_the_school_stands_a_title_that_may_not_be_read(
    request, school, owner, teammate, coach, visit, name, status, reads
):
    """The year is the one that is on, so that home, week and coverage are about today."""
    today = timezone.localdate()
    year = SchoolYear.objects.get()
    year.starts_on, year.ends_on = today - timedelta(days=90), today + timedelta(days=200)
    year.save()
    grade = owner.class_groups.get().grade
    standard = StandardFactory(code="LS.2", grade=grade)
    routine = make_routine(owner, title="Planted damson count", standards=("LS.2",))
    pages = everything_about(routine, owner, coach, grade, standard)
    Routine.objects.filter(pk=routine.pk).update(status=status)
    client = visit(request.getfixturevalue(name))
    said, instead = set(), set()
    for screen, address in pages.items():
        text = client.get(address).text
        if "damson" in text:
            said.add(screen)
        if INSTEAD in text:
            instead.add(screen)
    if reads:
        assert said
    else:
        assert said == set()
        assert instead >= {"copy"}
        if name != "administrator":
            assert instead >= {"drill-down now", "standard", "suggestions", "lessons", "lesson", "copy"}
            assert "week" in instead or "week of the team" in instead


def test_titles_cost_no_query_a_row(owner, teammate, hidden, visit, django_assert_num_queries):
    for _number in range(5):
        make_lesson(hidden, owner, sharing="team")
    with django_assert_num_queries(1):
        titles = [lesson.title for lesson in Lesson.objects.open_to(teammate).with_titles_for(teammate)]
    assert titles == [INSTEAD] * 5
