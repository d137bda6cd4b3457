"""A teacher's note to her next year's self, shown where she plans or teaches the count again, and to nobody else."""

from datetime import date

import pytest
from django.urls import reverse

from routines.lessons.recording import delete_lesson
from routines.models.plan_document import CountSection
from routines.plans.actions import copy_routine, save_version
from routines.plans.suggestions.counted_before import in_lines_of, notes_to_self
from tests.routines.making import make_lesson, make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]
NOTE = "planted quince: begin at the door"


def noted(routine, teacher, *, taught_on=date(2026, 10, 6), note=NOTE, sharing="team-coach"):
    lesson = make_lesson(routine, teacher, taught_on=taught_on, sharing=sharing)
    lesson.reflection.to_next_year = note
    lesson.reflection.save()
    return lesson


def pages_of(routine):
    """Where a count is planned again or taught: its own page, its plan, opening a lesson."""
    return [reverse(name, args=[routine.pk]) for name in ("routine", "plan_edit", "lesson_teach")]


def test_it_is_shown_with_day_and_class_where_the_count_is_planned_and_taught(owner, visit):
    routine = make_routine(owner)
    noted(routine, owner)
    client = visit(owner)
    for page in pages_of(routine):
        text = client.get(page).text
        assert NOTE in text, page
        assert "Your note to yourself, October 6, 2026, 2 Wren:" in text, page
        assert "Only you see this." in text, page


def test_a_copy_of_ones_own_shows_it_whatever_its_count_has_become(owner, visit):
    routine = make_routine(owner)
    noted(routine, owner)
    copy = copy_routine(routine=copy_routine(routine=routine, by=owner), by=owner)
    plan = copy.plan.changed(count=CountSection("whole", "40", "9", 20), targets=())
    save_version(routine=copy, plan=plan, based_on=copy.current_version, by=owner)
    client = visit(owner)
    for page in pages_of(copy):
        assert NOTE in client.get(page).text, page


def test_a_fresh_plan_of_the_same_count_shows_it(owner, visit):
    noted(make_routine(owner), owner)
    asked = {"kind": "whole", "start": "4", "step": "7", "terms": "20"}
    client = visit(owner)
    assert NOTE in client.get(reverse("plan_new"), asked, follow=True).text
    assert NOTE not in client.get(reverse("plan_new"), {**asked, "step": "8"}, follow=True).text


@pytest.mark.parametrize("name", EVERYONE)
def test_nobody_else_reads_it_though_the_lesson_is_shared(request, name, owner, co_author, visit):
    person = request.getfixturevalue(name)
    routine = make_routine(owner, co_authors=[co_author])
    noted(routine, owner)
    client = visit(person)
    copy = copy_routine(routine=routine, by=person)
    for page in [*pages_of(routine), *pages_of(copy)]:
        answer = client.get(page)
        assert answer.status_code in (200, 403), page
        if answer.status_code == 200:
            assert (NOTE in answer.text) is (name == "owner"), page


def test_a_deleted_lesson_takes_its_note_along(owner):
    routine = make_routine(owner)
    lesson = noted(routine, owner)
    assert [note.text for note in notes_to_self(owner, routine=routine)] == [NOTE]
    delete_lesson(lesson=lesson)
    assert notes_to_self(owner, routine=routine) == []
    assert notes_to_self(owner) == []


def test_the_newest_come_first_and_five_are_enough(owner):
    routine = make_routine(owner)
    for day in range(1, 8):
        noted(routine, owner, taught_on=date(2026, 10, day), note=f"note {day}")
    assert [note.text for note in notes_to_self(owner, routine=routine)] == [f"note {day}" for day in (7, 6, 5, 4, 3)]


def test_the_class_that_counted_this_already_is_named_on_the_plan_and_where_it_is_taught(owner, visit, monkeypatch):
    routine = make_routine(owner)
    make_lesson(routine, owner, taught_on=date(2026, 10, 6))
    monkeypatch.setattr("django.utils.timezone.localdate", lambda *_: date(2026, 11, 25))
    client = visit(owner)
    for page in pages_of(routine)[1:]:
        assert "2 Wren counted this in October, in fives." in client.get(page).text, page


@pytest.mark.parametrize(("length", "said"), [(4, "in fours"), (12, "in twelves"), (13, "13 in a line")])
def test_a_fold_is_said_as_a_teacher_says_it(length, said):
    assert in_lines_of(length) == said


def test_queries_are_bounded(owner, visit, django_assert_max_num_queries):
    routine = copy_routine(routine=copy_routine(routine=make_routine(owner), by=owner), by=owner)
    for day in range(1, 7):
        noted(routine, owner, taught_on=date(2026, 10, day))
    with django_assert_max_num_queries(2):
        notes_to_self(owner, routine=routine, count=routine.plan.count.count())
    client = visit(owner)
    for page, most in zip(pages_of(routine), (23, 16, 16), strict=True):
        client.get(page)  # works out once what the plan says
        with django_assert_max_num_queries(most):
            client.get(page)
