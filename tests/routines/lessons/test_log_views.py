"""Recording a lesson and reading it again."""

from datetime import timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from routines.models import Lesson
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
        "slips": "8: 54\n3: 19",
        "voice": "mixed",
        "noticed": "it goes up 35 below\nodd and even take turns",
        "seen": "the columns",
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
    assert kinds.count("term.correct") == 2
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
    for words in ("the 8th", ">54<", "53", "the 3rd", "19", "it goes up 35 below", "the columns"):
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
        ("outcome", "", "Choose how it went."),
        ("slips", "eight: 54", "the count’s number, a colon"),
        ("slips", "8 54", "the count’s number, a colon"),
        ("slips", "21: 54", "There is no count number 21"),
        ("seen", "Luis: it is even", "Is Luis a child?"),
        ("noticed", "Ana noticed the fives", "Is Ana a child?"),
        ("sharing", "everyone", "valid choice"),
    ],
)
def test_bad_input_says_so_at_its_field_and_keeps_what_was_typed(owner, visit, routine, filled, field, value, words):
    answer = visit(owner).post(taught(routine), {**filled, field: value, "stuck": "kept as typed"})
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
    answer = visit(owner).post(
        lesson.get_absolute_url(), {"outcome": "ready-for-more", "sharing": "team", "seen": "all of it"}
    )
    assert answer.status_code == 302
    lesson.reflection.refresh_from_db()
    lesson.refresh_from_db()
    assert (lesson.reflection.outcome, lesson.reflection.seen, lesson.sharing) == (
        "ready-for-more",
        "all of it",
        "team",
    )


def test_lessons_list_my_own_and_what_was_shared(owner, teammate, visit, routine):
    make_lesson(routine, owner)
    make_lesson(routine, teammate, sharing="team")
    page = visit(owner).get(reverse("lessons")).text
    assert "2 Wren" in page
    assert "Teammate Tao" in page


def test_an_empty_list_says_what_to_do(owner, visit):
    assert "Nothing taught from here yet." in visit(owner).get(reverse("lessons")).text


def test_the_lists_queries_are_bounded(owner, visit, routine, django_assert_max_num_queries):
    for _ in range(8):
        make_lesson(routine, owner)
    client = visit(owner)
    with django_assert_max_num_queries(10):
        client.get(reverse("lessons"))


def test_a_day_to_come_is_refused(owner, visit, routine, filled):
    tomorrow = timezone.localdate() + timedelta(days=1)
    assert visit(owner).post(taught(routine), {**filled, "taught_on": tomorrow.isoformat()}).status_code == 422
