"""Parts of pages that are drawn once say what is so now: each thing that stands in them changes, and so do they."""

import re

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from django.urls import reverse

from accounts.models import User
from grade_bands.models import ClassGroup, Grade
from routines.models import Lesson, Reflection, Routine, Suggestion
from tests.routines.making import make_lesson, make_routine

NEW_FOR_EACH_PAGE = re.compile(r'"X-CSRFToken": "[^"]*"|name="\w+" value="[^"]{36,}"|\d\d:\d\d:\d\d\.\d+')


@pytest.fixture
def told(owner, teammate, coach):
    """A lesson of one's own, one that was shared, and a suggestion."""
    routine = make_routine(owner, title="Plum basket")
    make_lesson(routine, owner)
    make_lesson(routine, teammate, sharing="team")
    Suggestion.objects.create(routine=routine, by=coach, to_teacher=owner, why="for the gap")
    return routine


def page_of(client, name: str) -> str:
    return NEW_FOR_EACH_PAGE.sub("", client.get(reverse(name)).text)


CHANGES = [
    ("lessons", Routine, {"title": "Apple basket"}, "Apple basket"),
    ("lessons", ClassGroup, {"name": "2 Heron"}, "2 Heron"),
    ("lessons", Lesson, {"taught_on": "2026-09-16"}, "September 16, 2026"),
    ("lessons", Lesson, {"practice": True}, "practice run"),
    ("lessons", Reflection, {"outcome": "ready-for-more"}, "ready for more"),
    ("lessons", Reflection, {"outcome": ""}, "not recorded"),
    ("lessons", Lesson, {"sharing": "team-coach"}, "my team and the coach"),
    ("lessons", User, {"display_name": "Renamed Rae"}, "Renamed Rae"),
    ("coverage", Grade, {"name": "Two"}, "Two"),
    ("coverage", Grade, {"areas": ["integers"]}, '/integers/"><svg'),
    ("coverage", ClassGroup, {"name": "2 Heron"}, "2 Heron"),
    ("my_plans", Routine, {"title": "Apple basket"}, "<b>Apple basket</b>"),
    ("my_plans", Suggestion, {"why": "for the week"}, "for the week"),
    ("my_plans", Suggestion, {"by_when": "2026-12-01"}, "December 1, 2026"),
    ("my_plans", User, {"display_name": "Renamed Rae"}, "from Renamed Rae"),
]


@pytest.mark.parametrize(("page", "model", "change", "words"), CHANGES)
def test_what_changed_is_shown_at_once(told, owner, visit, page, model, change, words):
    client = visit(owner)
    before = page_of(client, page)
    assert page_of(client, page) == before
    assert words not in before
    of_one = model.objects.all()
    if "name" in change:  # names are the school's own, each once
        of_one = of_one.filter(
            pk=owner.class_groups.get().pk if model is ClassGroup else owner.class_groups.get().grade_id
        )
    of_one.update(**change)
    assert words in page_of(client, page)


def test_a_lesson_more_is_counted_at_once(told, owner, visit):
    client = visit(owner)
    assert "2 lessons" in page_of(client, "coverage")
    make_lesson(told, owner)
    assert "3 lessons" in page_of(client, "coverage")


def test_one_whose_count_left_the_bank_may_be_named_but_not_opened(told, teammate, coach, visit):
    Suggestion.objects.create(routine=told, by=coach, to_teacher=teammate, why="for the gap")
    client = visit(teammate)
    link = f'href="{reverse("routine", args=[told.pk])}"><b>'
    assert link in page_of(client, "my_plans")
    told.retire()
    after = page_of(client, "my_plans")
    assert link not in after
    assert "Plum basket" not in after


def test_readers_are_shown_their_own_lessons_alone(told, owner, teammate, other_teacher, visit):
    own = {person: page_of(visit(person), "lessons") for person in (owner, teammate, other_teacher)}
    hers = owner.lessons.get().get_absolute_url()
    assert [hers in own[person] for person in (owner, teammate, other_teacher)] == [True, False, False]
    assert own == {person: page_of(visit(person), "lessons") for person in own}


def test_the_first_page_of_a_list_is_counted_as_it_is_read(told, owner, visit, monkeypatch):
    monkeypatch.setattr("routines.lessons.views.history.PAGE_SIZE", 1)
    make_lesson(told, owner)
    client = visit(owner)
    for address, number, queries in (
        ("?", 1, 1),
        ("?page=1", 1, 1),
        ("?page=2", 2, 2),
        ("?page=99", 2, 2),
        ("?page=x", 1, 2),
    ):
        with CaptureQueriesContext(connection) as asked:
            page = client.get(reverse("lessons") + address)
        own = [one for one in asked if 'FROM "routines_lesson"' in one["sql"] and 'sharing" IN' not in one["sql"]]
        assert (page.context["page"].number, page.context["page"].paginator.count) == (number, 2)
        assert len(own) == queries
        assert f"{number} of 2" in page.text
