"""Recording a lesson and reading it again."""

import re
from datetime import date, timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from routines.lessons.recording import state_of
from routines.models import Lesson, Routine
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_lesson, make_routine


@pytest.fixture
def routine(owner):
    return make_routine(owner)


@pytest.fixture
def filled(owner):
    return {
        "class_group": owner.class_groups.get().pk,
        "taught_on": "2026-09-15",
        "outcome": "not-yet",
        "sharing": "team",
        "heard-8": ["54", "63"],
        "heard-3": ["19", ""],
        "left-out": ["5"],
        "again": ["9"],
        "voice-from": ["1", "16", ""],
        "voice-to": ["10", "11", ""],
        "voice-how": ["mixed", "strong", ""],
        "noticed": "it goes up 35 below\nodd and even take turns",
        "stuck": "at the hundred",
        "target-0": "seen",
        "target-1": "not-yet",
    }


def taught(routine):
    return reverse("lesson_taught", args=[routine.pk])


def test_a_lesson_taught_on_paper_becomes_a_list_of_events(owner, visit, routine, filled):
    answer = visit(owner).post(taught(routine), filled)
    lesson = Lesson.objects.get()
    assert answer["Location"] == lesson.get_absolute_url()
    kinds = list(lesson.events.values_list("kind", flat=True))
    assert kinds.count("term.write") == 2
    assert kinds.count("term.correct") == 3
    assert (kinds.count("term.left-out"), kinds.count("recount")) == (1, 1)
    assert [event.data for event in lesson.events.filter(kind="voice")] == [
        {"from": 1, "to": 10, "how": "mixed"},
        {"from": 11, "to": 16, "how": "strong"},
    ]
    # the 8th count of 4, 11, ... is 4 + 7 x 7 = 53: what was said is struck in order, and it stands corrected
    (eighth,) = state_of(lesson).entries[8]
    assert (eighth.struck, eighth.text) == (["54", "63"], "53")
    assert state_of(lesson).targets == {0: "seen", 1: "not-yet"}
    assert kinds.count("notice.add") == 2
    assert kinds[:2] == ["lesson.open", "filled"]
    assert kinds[-1] == "lesson.end"
    assert list(lesson.events.values_list("seq", flat=True)) == list(range(1, len(kinds) + 1))
    assert (lesson.grade.name, lesson.area, lesson.year.name, lesson.ended) == ("2", "whole", "2026-27", True)
    assert [(row.family, row.seen) for row in lesson.target_outcomes.all()] == [
        ("step", "seen"),
        ("neighbour", "not-yet"),
    ]


def test_the_lesson_shows_what_was_said_struck_beside_what_it_should_be(owner, visit, routine, filled):
    client = visit(owner)
    page = client.get(client.post(taught(routine), filled)["Location"]).text
    # the 8th count of 4, 11, ... is 4 + 7 x 7 = 53, the 3rd is 18
    for words in ("the 8th", ">54<", "53", "the 3rd", "19", "it goes up 35 below", "at the hundred"):
        assert words in page


@pytest.mark.parametrize(
    ("field", "value", "words"),
    [
        ("taught_on", "", "Choose the day."),
        ("taught_on", "15/09/2026", "year-month-day"),
        ("taught_on", "2020-01-01", "no school year"),
        ("taught_on", "2199-01-01", "still to come"),
        ("class_group", "", "Choose the class."),
        ("class_group", "999", "your own classes"),
        ("outcome", "so so", "valid choice"),
        ("heard-8", "Maya said 54", "Is Maya at count 8 a child?"),
        ("heard-8", [str(n) for n in range(13)], "holds 12 slips at most"),
        ("voice-to", ["21", "11", ""], "from one count to another, 1 to 20"),
        ("next", "40", "valid choice"),
        ("stuck", "Luis: it is even", "Is Luis a child?"),
        ("noticed", "Ana noticed the fives", "Is Ana a child?"),
        ("sharing", "everyone", "valid choice"),
    ],
)
def test_bad_input_says_so_at_its_field_and_keeps_what_was_typed(owner, visit, routine, filled, field, value, words):
    answer = visit(owner).post(taught(routine), {**filled, "next_step": "kept as typed", field: value})
    assert answer.status_code == 422
    assert words in answer.text
    assert "kept as typed" in answer.text
    assert not Lesson.objects.exists()


def test_another_teachers_class_cannot_be_chosen(owner, teammate, visit, routine, filled):
    answer = visit(owner).post(taught(routine), {**filled, "class_group": teammate.class_groups.get().pk})
    assert answer.status_code == 422


def test_who_has_no_class_is_told_where_classes_come_from(coach, visit, routine):
    assert "You have no class yet" in visit(coach).get(taught(routine)).text


def test_a_draft_of_someone_else_cannot_be_taught(owner, teammate, visit, filled):
    draft = make_routine(owner, shared=False)
    assert visit(teammate).get(taught(draft)).status_code == 404


def test_the_reflection_can_be_changed(owner, visit, routine):
    lesson = make_lesson(routine, owner)
    fields = {"class_group": lesson.class_group_id, "taught_on": "2026-09-16", "sharing": "team"}
    answer = visit(owner).post(
        lesson.get_absolute_url(), {**fields, "outcome": "ready-for-more", "stuck": "in the middle"}
    )
    assert answer.status_code == 302
    lesson.reflection.refresh_from_db()
    lesson.refresh_from_db()
    assert (lesson.reflection.outcome, lesson.reflection.stuck, lesson.sharing) == (
        "ready-for-more",
        "in the middle",
        "team",
    )
    assert lesson.taught_on.isoformat() == "2026-09-16"


def test_lessons_list_my_own_and_what_was_shared(owner, teammate, visit, routine):
    make_lesson(routine, owner)
    make_lesson(routine, teammate, sharing="team")
    page = visit(owner).get(reverse("lessons")).text
    assert "2 Wren" in page
    assert "Teammate Tao" in page


def test_an_empty_list_says_what_to_do(owner, visit):
    assert "No lessons yet" in visit(owner).get(reverse("lessons")).text


def test_lessons_that_colleagues_shared_go_on_to_the_oldest(owner, teammate, visit, monkeypatch):
    monkeypatch.setattr("routines.lessons.views.history.SHARED_ON_A_PAGE", 1)
    routine = make_routine(owner)
    make_lesson(routine, teammate, sharing="team", taught_on=date(2026, 9, 1))
    make_lesson(routine, teammate, sharing="team", taught_on=date(2026, 9, 2))
    first, second = (visit(owner).get(reverse("lessons"), {"shared": page}).text for page in (1, 2))
    assert ("September 2, 2026" in first, "September 1, 2026" in first, "?shared=2#shared" in first) == (
        True,
        False,
        True,
    )
    assert ("September 2, 2026" in second, "September 1, 2026" in second) == (False, True)


def test_the_lists_queries_are_bounded(owner, visit, routine, django_assert_max_num_queries):
    for _ in range(8):
        make_lesson(routine, owner)
    client = visit(owner)
    with django_assert_max_num_queries(10):
        client.get(reverse("lessons"))


def test_a_day_to_come_is_refused(owner, visit, routine, filled):
    tomorrow = timezone.localdate() + timedelta(days=1)
    assert visit(owner).post(taught(routine), {**filled, "taught_on": tomorrow.isoformat()}).status_code == 422


def test_what_is_left_untouched_is_not_recorded(owner, visit, routine):
    client = visit(owner)
    page = client.get(taught(routine)).text
    chosen = re.findall(r'<input type="radio" name="(outcome|target-0|next)" value="([^"]*)"[^>]*checked', page)
    assert sorted(chosen) == [("next", ""), ("outcome", ""), ("target-0", "")]
    fields = {"class_group": owner.class_groups.get().pk, "taught_on": "2026-09-15", "sharing": "only-me"}
    client.post(taught(routine), fields)
    lesson = Lesson.objects.get()
    assert lesson.reflection.outcome == ""
    assert list(lesson.events.values_list("kind", flat=True)) == ["lesson.open", "filled", "lesson.end"]
    assert "not recorded" in client.get(reverse("lessons")).text


def test_the_same_form_sent_twice_is_one_lesson(owner, visit, routine, filled):
    keyed = {**filled, "form_key": "6f1c9dd2-95a5-4f4e-8a53-d6f0a4b11d3e"}
    client = visit(owner)
    assert client.post(taught(routine), keyed)["Location"] == client.post(taught(routine), keyed)["Location"]
    assert Lesson.objects.count() == 1


def test_a_kept_lesson_is_changed_by_events_appended(owner, visit, routine, filled):
    client = visit(owner)
    client.post(taught(routine), filled)
    lesson = Lesson.objects.get()
    before = list(lesson.events.values_list("id", flat=True))
    changed = {
        **filled,
        "heard-8": ["63"],
        "heard-3": [],
        "left-out": [],
        "again": [],
        "voice-how": ["faded", "strong", ""],
    }
    changed |= {"noticed": "odd and even take turns\nnew", "target-1": ""}
    assert client.post(lesson.get_absolute_url(), changed).status_code == 302
    assert list(lesson.events.values_list("id", flat=True))[: len(before)] == before
    state = state_of(lesson)
    assert {n: [(e.struck, e.text) for e in entries] for n, entries in state.entries.items() if entries} == {
        8: [(["63"], "53")]
    }
    assert state.recounts == []
    assert [(voice["from"], voice["to"], voice["how"]) for voice in state.voices] == [
        (11, 16, "strong"),
        (1, 10, "faded"),
    ]
    assert [notice["text"] for notice in state.notices] == ["odd and even take turns", "new"]
    assert state.targets == {0: "seen"}
    assert state.ended
    last = lesson.events.count()
    client.post(lesson.get_absolute_url(), changed)
    assert lesson.events.count() == last


def test_the_grid_is_drawn_as_the_form_stands_and_nothing_is_kept(owner, visit, routine, filled):
    answer = visit(owner).post(taught(routine), filled, headers={"HX-Request": "true"})
    assert answer.text.startswith('<div id="log-grid"')
    assert "<html" not in answer.text
    assert 'data-voices="1 10 mixed;11 16 strong;"' in answer.text
    assert answer.text.count("g-strike") == 2
    assert not Lesson.objects.exists()


def test_the_next_count_that_was_taken_opens_as_a_draft_copy(owner, visit, routine, filled):
    answer = visit(owner).post(taught(routine), {**filled, "next": "0"})
    draft = Routine.objects.exclude(pk=routine.pk).get()
    assert answer["Location"] == reverse("plan_edit", args=[draft.pk])
    assert (draft.owner, draft.status, draft.copied_from) == (owner, "draft", routine)
    assert draft.plan.count != routine.plan.count or draft.plan.fold != routine.plan.fold
    assert Lesson.objects.count() == 1


def test_the_note_to_next_years_self_is_on_the_counts_page_for_her_alone(owner, teammate, visit, routine, filled):
    visit(owner).post(taught(routine), {**filled, "sharing": "team-coach", "to_next_year": "planted quince"})
    assert "planted quince" in visit(owner).get(reverse("routine", args=[routine.pk])).text
    lesson = Lesson.objects.get()
    for page in (reverse("routine", args=[routine.pk]), lesson.get_absolute_url()):
        answer = visit(teammate).get(page)
        assert answer.status_code == 200
        assert "planted quince" not in answer.text
        assert "You foresaw" not in answer.text


def test_lessons_of_one_class_and_not_of_anothers(owner, teammate, visit, routine):
    make_lesson(routine, owner)
    client = visit(owner)
    own = client.get(reverse("lessons"), {"class": owner.class_groups.get().pk})
    assert "Sevens from four" in own.text
    for other in (str(teammate.class_groups.get().pk), "999999", "x", "9" * 40):
        assert client.get(reverse("lessons"), {"class": other}).status_code == 404


def cell(lesson, n):
    return [(entry.text, entry.struck) for entry in state_of(lesson).entries.get(n, [])]


@pytest.fixture
def differing(owner, routine):
    """A board lesson in which two devices, cut off from one another, wrote different texts in the first cell."""
    lesson = open_lesson(owner, routine=routine)
    board = event(2, data={"n": 1, "text": "4", "over": None}, device="board")
    lectern = event(2, data={"n": 1, "text": "14", "over": None}, device="lectern")
    append(lesson, board, lectern)
    assert cell(lesson, 1) == [("4", []), ("14", [])]
    return lesson, board["id"], lectern["id"]


def sent_as_it_stands(client, lesson):
    """The fields of the log's form as the page has them, nothing touched."""
    page = client.get(lesson.get_absolute_url()).text
    ticked = re.findall(
        r'<input type="checkbox" name="((?:heard-|stayed|again|left-out)[^"]*)" value="([^"]*)" checked', page
    )
    fields = {"class_group": lesson.class_group_id, "taught_on": lesson.taught_on.isoformat(), "sharing": "only-me"}
    for name, value in ticked:
        fields.setdefault(name, []).append(value)
    return fields


def test_two_devices_that_differ_are_asked_about_and_the_answer_holds(owner, visit, differing):
    lesson, board, lectern = differing
    client = visit(owner)
    page = client.get(lesson.get_absolute_url()).text
    assert "Two devices wrote the 1st differently. Which was it?" in page
    assert re.findall(r'name="differ-1" value="([^"]+)"', page) == [board, lectern]
    assert not re.search(r'name="differ-1"[^>]*checked', page)
    client.post(lesson.get_absolute_url(), sent_as_it_stands(client, lesson) | {"differ-1": board})
    assert cell(lesson, 1) == [("4", [])]
    assert "differ-1" not in client.get(lesson.get_absolute_url()).text


@pytest.mark.parametrize("answer", ["", "no-such-entry"])
def test_devices_that_differ_go_on_differing_until_the_question_is_answered(owner, visit, differing, answer):
    lesson, *_ = differing
    client = visit(owner)
    answered = client.post(lesson.get_absolute_url(), sent_as_it_stands(client, lesson) | {"differ-1": answer})
    assert answered.status_code == 302
    assert cell(lesson, 1) == [("4", []), ("14", [])]
    assert "Two devices wrote the 1st differently." in client.get(lesson.get_absolute_url()).text


def test_a_cell_is_changed_in_the_log_a_second_time_and_back(owner, visit, routine, filled):
    client = visit(owner)
    client.post(taught(routine), filled)
    lesson = Lesson.objects.get()
    for heard in (["63"], ["52", "54"], ["54", "63"]):
        client.post(lesson.get_absolute_url(), filled | {"heard-8": heard})
        assert cell(lesson, 8) == [("53", heard)]
    client.post(lesson.get_absolute_url(), filled | {"heard-8": []})
    assert cell(lesson, 8) == []
    assert state_of(lesson).is_filled(8)
    client.post(lesson.get_absolute_url(), filled | {"heard-8": ["54", "63"]})
    assert cell(lesson, 8) == [("53", ["54", "63"])]
