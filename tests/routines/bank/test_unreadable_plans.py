"""A stored plan that cannot be read takes down no list, and its own page says so and leads back to an older save."""

from itertools import product

import pytest
from django.core.management import call_command
from django.urls import reverse
from hypothesis import given
from hypothesis import strategies as st

from routines.exchange.importing import hold_file, start_adding
from routines.exchange.reading import read
from routines.exchange.writing import written
from routines.jobs.runner import do_next
from routines.models import ImportFile, Job, PlanDraft, Routine, RoutineVersion
from routines.models.plan_reading import PlanError, read_document
from routines.plans.forms.draft import read_draft
from tests.accounts.test_text import JSON_VALUES
from tests.routines.lessons.making import open_lesson, paired
from tests.routines.making import SEVENS, make_lesson, make_routine
from tests.routines.models.test_plan_document import PLAN

BROKEN = {
    "none": None,
    "text": "nonsense",
    "list": [],
    "newer": {"schema": 99},
    "count": {**SEVENS.as_dict(), "count": 7},
    "control": {**SEVENS.as_dict(), "title": "\x1b"},
}
SAID = "can’t be read"


@pytest.fixture(params=BROKEN)
def broken(request, owner) -> Routine:
    """A count in the bank whose plan is damaged, beside one in order."""
    make_routine(owner, title="In order")
    routine = make_routine(owner, title="Damaged")
    make_lesson(routine, owner)
    document = BROKEN[request.param]
    if document is None:
        Routine.objects.filter(pk=routine.pk).update(current_version=None)
    else:
        RoutineVersion.objects.filter(routine=routine).update(plan=document)
    return routine


def test_lists_show_its_title_and_the_rest(broken, visit, owner, coach):
    grade = broken.grade_id
    for person, address in [
        (owner, "/bank/"),
        (coach, "/bank/"),
        (owner, "/plans/"),
        (owner, f"/coverage/{grade}/whole/"),
        (coach, f"/coverage/{grade}/whole/"),
        (owner, "/booklet/"),
        (owner, "/lessons/"),
    ]:
        answer = visit(person).get(address)
        page = answer.content.decode()
        assert answer.status_code == 200
        assert "Damaged" in page
        assert "In order" in page or address == "/lessons/"
        assert SAID in page or address in ("/booklet/", "/lessons/")


def test_beside_a_count_like_it_it_is_named(broken, visit, owner):
    other = Routine.objects.get(title="In order")
    assert "Damaged" in visit(owner).get(f"/routines/{other.pk}/").content.decode()


def test_its_own_pages_say_so(broken, visit, owner, teammate):
    pages = ("", "print/", "print/poster/", "plan.pdf", "file.json", "grid.csv", "taught/")
    for person, page in [*product((owner, teammate), pages), (owner, "edit/")]:
        answer = visit(person).get(f"/routines/{broken.pk}/{page}")
        assert answer.status_code == 422
        assert SAID in answer.content.decode()


def test_a_copy_of_it_is_not_made(broken, visit, teammate):
    assert visit(teammate).post(f"/routines/{broken.pk}/copy/").status_code == 422
    assert Routine.objects.count() == 2


def test_the_title_of_a_draft_one_may_not_see_is_not_told(visit, owner, teammate):
    routine = make_routine(owner, title="Damaged")
    lesson = make_lesson(routine, owner, sharing="team")
    RoutineVersion.objects.filter(routine=routine).update(plan={})
    Routine.objects.filter(pk=routine.pk).update(status=Routine.Status.DRAFT)
    answer = visit(teammate).get(f"/lessons/{lesson.key}/")
    assert answer.status_code == 422
    assert "Damaged" not in answer.content.decode()


@pytest.mark.parametrize(("role", "page"), [("board", "lesson_board"), ("substitute", "lesson_lectern")])
def test_a_device_with_a_pass_is_told_without_a_name(role, page, client, owner):
    lesson = open_lesson(owner)
    Routine.objects.filter(pk=lesson.routine_id).update(title="Damaged")
    RoutineVersion.objects.filter(routine=lesson.routine).update(plan={"schema": 99})
    answer = paired(client, lesson, role).get(reverse(page, args=[lesson.key]))
    assert answer.status_code == 422
    assert SAID in answer.text
    assert "Damaged" not in answer.text
    assert "To the bank" not in answer.text


def test_an_older_save_can_be_brought_back(visit, owner):
    routine = make_routine(owner, title="Damaged")
    broken = RoutineVersion.objects.create(routine=routine, number=2, by=owner, plan={"schema": 99})
    Routine.objects.filter(pk=routine.pk).update(current_version=broken)
    browser = visit(owner)
    page = browser.get(f"/routines/{routine.pk}/edit/")
    assert f"/routines/{routine.pk}/edit/history/" in page.content.decode()
    history = browser.get(f"/routines/{routine.pk}/edit/history/").content.decode()
    assert "This save can’t be read" in history
    assert 'value="1"' in history
    assert 'value="2"' not in history
    browser.post(f"/routines/{routine.pk}/edit/restore/", {"number": "1"})
    routine.refresh_from_db()
    assert (routine.plan.title, routine.current_version.number) == ("Damaged", 3)


def test_a_count_that_names_no_newest_save_gets_one_back(visit, owner):
    routine = make_routine(owner)
    Routine.objects.filter(pk=routine.pk).update(current_version=None)
    visit(owner).post(f"/routines/{routine.pk}/edit/restore/", {"number": "1"})
    assert visit(owner).get(f"/routines/{routine.pk}/").status_code == 200


def test_a_save_in_the_middle_of_the_history_hides_no_other(visit, owner):
    routine = make_routine(owner)
    RoutineVersion.objects.create(routine=routine, number=2, by=owner, plan=[])
    last = RoutineVersion.objects.create(routine=routine, number=3, by=owner, plan=SEVENS.as_dict())
    Routine.objects.filter(pk=routine.pk).update(current_version=last)
    page = visit(owner).get(f"/routines/{routine.pk}/edit/history/").content.decode()
    assert "it can’t be told what changed" in page
    assert all(f"Version {number}" in page for number in (1, 2, 3))


def test_the_file_of_the_bank_holds_the_rest_and_names_what_is_left_out(broken, visit, coach):
    browser = visit(coach)
    found = read(browser.get("/bank.json").content, {"2"})
    assert [plan.title for plan in found.plans] == ["In order"]
    assert (
        "Not in the file of the bank, because they can’t be read: “Damaged”." in browser.get("/bank/").content.decode()
    )


def test_a_booklet_asks_to_take_it_off(broken, visit, owner):
    sent = {"title": "Ours", "routine": [broken.pk], "contents": ["plan"]}
    answer = visit(owner).post("/booklet/", sent)
    assert answer.status_code == 422
    assert "The plan of “Damaged” can’t be read. Take it off." in answer.content.decode()


def test_facts_of_the_others_are_recomputed(broken, capsys):
    Routine.objects.filter(title="In order").update(search_text="")
    call_command("recompute_facts", "--all")
    assert "in order" in Routine.objects.get(title="In order").search_text


@pytest.mark.parametrize(
    "document", [None, [], "x", {"title": "Damaged", "schema": 1}, {**SEVENS.as_dict(), "grade": "9"}]
)
def test_a_file_being_imported_loses_one_entry_and_no_other(document, visit, owner):
    file = hold_file(by=owner, name="counts.json", read=read(written([SEVENS, PLAN.changed(grade="2")]), {"2"}))
    ImportFile.objects.filter(pk=file.pk).update(plans=[file.plans[0], document, file.plans[1]])
    page = visit(owner).get(f"/import/{file.key}/")
    assert page.status_code == 200
    assert ("This one can’t be read any more" in page.content.decode()) == (
        document != {**SEVENS.as_dict(), "grade": "9"}
    )
    start_adding(file=file, into_bank=False)
    assert do_next(Job.Kind.IMPORT)
    file.refresh_from_db()
    assert (file.added, file.finished, len(file.refused)) == (2, True, 1)
    assert Routine.objects.of(owner).count() == 2


@pytest.mark.parametrize(
    "fields", [None, [], "x", {"typed": []}, {"typed": {"title": 3}, "steps": [1, {}, {"said": 2}]}]
)
def test_a_draft_that_cannot_be_read_hides_no_other(fields, visit, owner):
    PlanDraft.objects.create(person=owner, fields={"typed": {"title": ["In order"]}})
    draft = PlanDraft.objects.create(person=owner, fields=fields if fields is not None else 0)
    browser = visit(owner)
    assert "In order" in browser.get("/plans/").content.decode()
    assert browser.get(f"/plans/new/{draft.key}/").status_code == 200
    undone = browser.post(f"/plans/new/{draft.key}/change/", {"change": "undo"})
    assert undone.status_code == 302


@given(JSON_VALUES)
def test_any_document_is_a_plan_or_refused_by_name(document):
    with pytest.raises(PlanError):
        read_document(document)
    read_draft(document)


PLACES = [
    ("title",), ("grade",), ("count",), ("count", "kind"), ("count", "start"), ("count", "terms"), ("count", "style"),
    ("count", "style", "language"), ("fold",), ("fold", "fill"), ("fold", "lead"), ("story",), ("landmark",), ("targets",),
    ("targets", 0), ("targets", 0, "claim"), ("targets", 0, "claim", "difference"), ("expected", 0), ("stops", 0, "routes"),
    ("next_counts", 0, "count"), ("next_counts", 0, "fold", "fill"), ("standards",), ("language",), ("notes",), ("schema",),
]  # fmt: skip


@given(st.sampled_from(PLACES), JSON_VALUES)
def test_any_value_in_any_place_is_read_or_refused_by_name(place, value):
    document = PLAN.as_dict()
    part = document
    for key in place[:-1]:
        part = part[key]
    part[place[-1]] = value
    try:
        plan = read_document(document)
    except PlanError as error:
        refused = error
    else:
        refused = None
        assert read_document(plan.as_dict()) == plan
    if refused is not None:
        assert str(refused).encode()
