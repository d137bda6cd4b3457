"""The access table, row by row and role by role, with planted words that must not come through."""

import re
from datetime import date

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.urls import reverse
from django.utils import timezone

from grade_bands.models import ClassGroup
from routines.coverage.queries import coverage
from routines.exchange.writing import written
from routines.jobs.runner import do_next
from routines.lessons.recording import keep_events, made_event
from routines.models import Job, Lesson, Planned, Routine, Suggestion
from tests.factories import ClassGroupFactory, SchoolYearFactory
from tests.routines.making import SEVENS, make_lesson, make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]


@pytest.fixture
def person(request, owner, co_author, teammate, other_teacher, coach, administrator):
    return request.getfixturevalue(request.param)


def everyone(**allowed):
    """One case per person: (person, what is expected of her), False where she is not named."""
    return pytest.mark.parametrize(
        ("person", "expected"), [(name, allowed.get(name, False)) for name in EVERYONE], indirect=["person"]
    )


@pytest.mark.parametrize("person", EVERYONE, indirect=True)
def test_shared_routines_are_read_copied_and_noted_by_everyone(person, owner, visit):
    routine = make_routine(owner)
    client = visit(person)
    assert client.get(reverse("routine", args=[routine.pk])).status_code == 200
    assert client.post(reverse("routine_copy", args=[routine.pk])).status_code == 302
    assert client.post(reverse("routine_note", args=[routine.pk]), {"text": "worked"}).status_code == 302
    assert Routine.objects.filter(owner=person, copied_from=routine).exists()


@everyone(owner=True, co_author=True)
def test_drafts_are_seen_by_their_authors_alone(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author], shared=False, title="Secret plum count")
    client = visit(person)
    page = client.get(reverse("routine", args=[routine.pk]))
    assert page.status_code == (200 if expected else 404)
    assert ("Secret plum" in page.text) is expected
    for name in ("routine_copy", "routine_note", "routine_share", "routine_retire"):
        answer = client.post(reverse(name, args=[routine.pk]), {"text": "x"})
        assert (answer.status_code != 404) is expected
    assert ("Secret plum" in client.get(reverse("bank")).text) is False or expected


@everyone(owner=True, coach=True, administrator=True)
def test_retiring_and_restoring(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author])
    answer = visit(person).post(reverse("routine_retire", args=[routine.pk]))
    routine.refresh_from_db()
    assert (routine.status == "retired") is expected
    assert answer.status_code == (302 if expected else 403)


@everyone(owner=True, co_author=True, coach=True, administrator=True)
def test_a_retired_routine_is_seen_by_authors_and_those_who_may_bring_it_back(
    person, expected, owner, co_author, visit
):
    routine = make_routine(owner, co_authors=[co_author])
    routine.retire()
    assert visit(person).get(reverse("routine", args=[routine.pk])).status_code == (200 if expected else 404)


@everyone(owner=True, co_author=True)
def test_sharing_a_draft(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author], shared=False)
    visit(person).post(reverse("routine_share", args=[routine.pk]))
    routine.refresh_from_db()
    assert (routine.status == "shared") is expected


@pytest.mark.parametrize(
    ("sharing", "readers"),
    [
        ("only-me", {"owner"}),
        ("team", {"owner", "co_author", "teammate"}),
        ("team-coach", {"owner", "co_author", "teammate", "coach"}),
    ],
)
@pytest.mark.parametrize("person", EVERYONE, indirect=True)
def test_a_reflection_is_read_by_whom_it_is_shared_with(person, sharing, readers, owner, visit):
    routine = make_routine(owner)
    lesson = make_lesson(routine, owner, sharing=sharing, seen="planted mulberry words")
    client = visit(person)
    reads = person.sign_in_name.replace("-", "_") in {name.replace("other_teacher", "other") for name in readers}
    page = client.get(reverse("lesson", args=[lesson.key]))
    assert page.status_code == (200 if reads else 404)
    assert ("mulberry" in page.text) is reads
    for address in (reverse("routine", args=[routine.pk]), reverse("lessons")):
        told = "mulberry" in client.get(address).text or lesson.get_absolute_url() in client.get(address).text
        assert told is reads


@everyone(owner=True, teammate=True, coach=True)
def test_that_a_lesson_took_place_is_known_in_the_grade_and_to_the_coach(person, expected, owner):
    lesson = make_lesson(make_routine(owner), owner)
    assert Lesson.objects.known_to(person).filter(pk=lesson.pk).exists() is expected


@pytest.mark.parametrize("name", ["teammate", "coach", "administrator"])
def test_nobody_else_changes_a_reflection(name, request, owner, visit):
    lesson = make_lesson(make_routine(owner), owner, sharing="team-coach", seen="mine")
    who = request.getfixturevalue(name)
    answer = visit(who).post(reverse("lesson", args=[lesson.key]), {"outcome": "not-yet", "sharing": "team-coach"})
    assert answer.status_code == 404
    lesson.reflection.refresh_from_db()
    assert (lesson.reflection.outcome, lesson.reflection.seen) == ("as-planned", "mine")


def test_the_note_to_next_years_self_is_never_shown_to_others(owner, teammate, visit):
    lesson = make_lesson(make_routine(owner), owner, sharing="team-coach")
    lesson.reflection.to_next_year = "planted quince"
    lesson.reflection.save()
    address = reverse("lesson", args=[lesson.key])
    assert "quince" in visit(owner).get(address).text
    assert "quince" not in visit(teammate).get(address).text


def test_the_signed_out_get_the_sign_in_page(signed_out, owner):
    routine = make_routine(owner)
    for address in (reverse("bank"), reverse("routine", args=[routine.pk]), reverse("lessons"), reverse("coverage")):
        answer = signed_out.get(address)
        assert answer.status_code == 302
        assert reverse("accounts:sign_in") in answer["Location"]


@everyone(owner=True, co_author=True, coach=True)
def test_editing_a_shared_routine(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author])
    client = visit(person)
    for name in ("plan_edit", "plan_history"):
        assert client.get(reverse(name, args=[routine.pk])).status_code == (200 if expected else 403)
    assert client.post(reverse("plan_draft", args=[routine.pk]), {"title": "x"}).status_code == (
        302 if expected else 403
    )


@everyone(owner=True, co_author=True)
def test_editing_a_draft(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author], shared=False, title="Secret plum count")
    client = visit(person)
    for name in ("plan_edit", "plan_history", "print", "export_routine", "export_grid", "lesson_taught"):
        page = client.get(reverse(name, args=[routine.pk]))
        assert page.status_code == (200 if expected else 404), name
        assert "Secret plum" not in page.text or expected


@pytest.mark.parametrize("person", EVERYONE, indirect=True)
def test_a_shared_routine_is_printed_and_taken_as_a_file_by_everyone(person, owner, visit):
    routine = make_routine(owner)
    client = visit(person)
    for address in (
        reverse("print", args=[routine.pk]),
        reverse("print_html", args=[routine.pk, "plan"]),
        reverse("export_routine", args=[routine.pk]),
        reverse("export_grid", args=[routine.pk]),
    ):
        assert client.get(address).status_code == 200


@pytest.mark.parametrize("person", EVERYONE, indirect=True)
def test_a_file_is_brought_in_as_ones_own_drafts(person, owner, grade_two, visit):
    client = visit(person)
    file = SimpleUploadedFile("one.json", written([SEVENS.changed(title="From a file")]))
    look = client.post(reverse("import"), {"file": file})
    client.post(f"{look['Location']}add/")
    assert do_next(Job.Kind.IMPORT)
    routine = Routine.objects.get(title="From a file")
    assert (routine.owner, routine.status) == (person, "draft")


@everyone(coach=True, administrator=True)
def test_moving_the_whole_bank(person, expected, owner, visit):
    make_routine(owner, title="Planted medlar count")
    client = visit(person)
    answer = client.get(reverse("export_bank"))
    assert answer.status_code == (200 if expected else 403)
    assert ("medlar" in answer.text) is expected
    file = SimpleUploadedFile("one.json", written([SEVENS.changed(title="From a file")]))
    look = client.post(reverse("import"), {"file": file})
    client.post(f"{look['Location']}add/", {"into_bank": "1"})
    assert do_next(Job.Kind.IMPORT)
    assert (Routine.objects.get(title="From a file").status == "shared") is expected


@pytest.mark.parametrize("name", EVERYONE)
def test_ones_own_lesson_is_open_to_oneself(request, name, owner, grade_two, year, visit):
    who = request.getfixturevalue(name)
    if not who.class_groups.exists():
        ClassGroupFactory(name="2 Sorrel", grade=grade_two, year=year, teachers=[who])
    lesson = make_lesson(make_routine(owner), who, seen="planted mulberry words")
    assert "mulberry" in visit(who).get(lesson.get_absolute_url()).text
    assert lesson.get_absolute_url() in visit(who).get(reverse("lessons")).text


@pytest.mark.parametrize(
    ("sharing", "readers"),
    [
        ("only-me", {"owner"}),
        ("team", {"owner", "co_author", "teammate"}),
        ("team-coach", {"owner", "co_author", "teammate", "coach"}),
    ],
)
@pytest.mark.parametrize("name", EVERYONE)
def test_the_log_and_the_poster_as_it_happened(request, name, sharing, readers, owner, visit):
    """What was said in the lesson: the slips and noticings of its log, and the struck texts of its poster."""
    person = request.getfixturevalue(name)
    routine = make_routine(owner)
    lesson = make_lesson(routine, owner, sharing=sharing)
    said = made_event(90, "d", timezone.now(), "term.write", {"n": 3, "text": "7654", "over": None})
    noticed = made_event(91, "d", timezone.now(), "notice.add", {"text": "plantedquince", "expected": None})
    keep_events(lesson=lesson, events=[said, noticed])
    client = visit(person)
    reads = name in readers
    page = client.get(lesson.get_absolute_url())
    assert page.status_code == (200 if reads else 404)
    assert ("plantedquince" in page.text, "7654" in page.text) == (reads, reads)
    poster = client.get(reverse("print_html", args=[routine.pk, "poster"]), {"show": "lesson", "lesson": lesson.key})
    assert poster.status_code == (200 if reads else 422)
    assert ("7654" in poster.text) is reads
    assert (str(lesson.key) in client.get(reverse("print", args=[routine.pk])).text) is reads


def drill_down(client, grade):
    return client.get(reverse("coverage_cell", args=[grade.pk, "whole"]) + "?first=2026-08-17&last=2026-11-20")


@everyone(owner=True, teammate=True, coach=True)
def test_lessons_by_class_behind_a_cell(person, expected, owner, visit, grade_two):
    make_lesson(make_routine(owner), owner)
    ClassGroup.objects.filter(name="2 Wren").update(name="Planted class")
    page = drill_down(visit(person), grade_two).text
    assert ("Planted class" in page) is expected
    assert person == owner or "Owner Ota" not in page


@pytest.mark.parametrize(
    ("name", "seen"),
    [
        ("owner", {"2": 1}),
        ("teammate", {"2": 1}),
        ("co_author", {"3": 0}),
        ("other_teacher", {"5": 1}),
        ("coach", {"2": 1, "3": 0, "5": 1}),
        ("administrator", {"2": 1, "3": None, "5": None}),
    ],
)
def test_coverage_totals_by_grade(request, name, seen, owner, teammate, co_author, other_teacher, year, visit):
    """Grades 3 and 5 have one class each, so an administrator is told no number of theirs."""
    person = request.getfixturevalue(name)
    routine = make_routine(owner)
    make_lesson(routine, owner)
    make_lesson(routine, other_teacher)
    rows = coverage(user=person, year=year, first=year.starts_on, last=year.ends_on)
    assert {row.grade.name: row.lessons for row in rows} == seen
    page = visit(person).get(reverse("coverage") + "?first=2026-08-17&last=2026-11-20").text
    assert page.count("under two classes: not shown") == list(seen.values()).count(None)
    assert "2 Wren" not in re.sub(r"<option .*?</option>", "", page)
    assert ("2 Wren" in page) is (name in {"owner", "coach"})  # by itself: her own class, any for a coach
    assert [one for one in (owner, teammate) if one != person and one.display_name in page] == []


@everyone(owner=True, co_author=True, teammate=True, coach=True)
def test_the_planned_week(person, expected, owner):
    routine = make_routine(owner)
    planned = Planned.objects.create(
        routine=routine, class_group=owner.class_groups.get(), on=date(2026, 9, 21), by=owner
    )
    assert Planned.objects.visible_to(person).filter(pk=planned.pk).exists() is expected


def test_last_years_team_does_not_read_this_years_plans(owner, other_teacher, grade_two):
    last_year = SchoolYearFactory(name="2025-26", starts_on=date(2025, 8, 18), ends_on=date(2026, 6, 19))
    ClassGroupFactory(name="2 Old", grade=grade_two, year=last_year, teachers=[other_teacher])
    Planned.objects.create(
        routine=make_routine(owner), class_group=owner.class_groups.get(), on=date(2026, 9, 21), by=owner
    )
    assert Planned.objects.visible_to(owner).count() == 1
    assert Planned.objects.visible_to(other_teacher).count() == 0


@everyone(teammate=True, coach=True)
def test_a_suggestion_is_read_by_whom_it_is_from_and_for(person, expected, owner, teammate, coach):
    Suggestion.objects.create(routine=make_routine(owner), by=coach, to_teacher=teammate, why="planted")
    assert Suggestion.objects.visible_to(person).exists() is expected


@everyone(administrator=True)
def test_the_schools_own_pages(person, expected, owner, visit):
    client = visit(person)
    for name in (
        "accounts:school",
        "accounts:people",
        "grade_bands:classes",
        "grade_bands:new_class",
        "grade_bands:new_year",
        "grade_bands:grades",
        "grade_bands:new_grade",
        "grade_bands:new_band",
    ):
        assert client.get(reverse(name)).status_code == (200 if expected else 403), name
