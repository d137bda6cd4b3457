"""Every free text of the log and its reflection is asked about where it looks as if it named a child, and kept once it is said
that it does not.
"""

import pytest
from django import forms
from django.urls import reverse

from accounts.names_asked import A_CHILD
from routines.lessons.log_form import LogForm
from routines.lessons.recording import state_of
from routines.models import Lesson
from tests.routines.making import make_lesson, make_routine

NAMED = "Maya said ten"


def sent(owner, field):
    return {"class_group": owner.class_groups.get().pk, "taught_on": "2026-09-15", "sharing": "only-me", field: NAMED}


def kept_in(lesson, field) -> str:
    if field == "heard-8":
        return state_of(lesson).entries[8][0].struck[0]
    return state_of(lesson).notices[0]["text"] if field == "noticed" else getattr(lesson.reflection, field)


def test_no_text_area_of_the_log_is_left_out():
    areas = {name for name, field in LogForm.base_fields.items() if isinstance(field.widget, forms.Textarea)}
    assert areas == set(LogForm.asked_fields)


@pytest.mark.parametrize("field", ["heard-8", *(name for name in LogForm.asked_fields if name != "seen")])
def test_a_new_log(owner, visit, field):
    address = reverse("lesson_taught", args=[make_routine(owner).pk])
    asked = visit(owner).post(address, sent(owner, field))
    assert asked.status_code == 422
    assert asked.context["form"].asks_about_names
    for words in ("Is Maya", "a child?", NAMED, 'name="no_names"'):
        assert words in asked.text
    assert not Lesson.objects.exists()
    assert visit(owner).post(address, {**sent(owner, field), "no_names": "on"}).status_code == 302
    assert kept_in(Lesson.objects.get(), field) == NAMED


@pytest.mark.parametrize("field", ["heard-8", *LogForm.asked_fields])
def test_a_log_that_is_changed(owner, visit, field):
    lesson = make_lesson(make_routine(owner), owner, seen="as written before")
    asked = visit(owner).post(lesson.get_absolute_url(), sent(owner, field))
    assert asked.status_code == 422
    assert asked.context["form"].asks_about_names
    visit(owner).post(lesson.get_absolute_url(), {**sent(owner, field), "no_names": "on"})
    assert kept_in(Lesson.objects.get(), field) == NAMED


def test_the_question_is_told_by_its_code_not_by_its_words(owner, visit):
    """Words that merely sound like the question, typed by a teacher, bring no box."""
    address = reverse("lesson_taught", args=[make_routine(owner).pk])
    answer = visit(owner).post(address, {**sent(owner, "stuck"), "stuck": "is this a child?", "taught_on": ""})
    assert answer.status_code == 422
    assert not answer.context["form"].asks_about_names
    answer = visit(owner).post(address, {**sent(owner, "stuck"), "heard-3": "is Ana a child?" * 3})
    codes = {error.code for errors in answer.context["form"].errors.as_data().values() for error in errors}
    assert A_CHILD in codes  # of "stuck", beside the refusal of what is too long
