"""Choosing the counts of a booklet: some at a time, looked for, and what is ticked stays chosen meanwhile."""

import re

import pytest
from django.urls import reverse

from routines.models import Job
from routines.paper.views import booklets
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db
TICKED = re.compile(r'name="routine" value="(\d+)" checked')


@pytest.fixture
def counts(owner, monkeypatch):
    monkeypatch.setattr(booklets, "OFFERED_AT_ONCE", 2)
    return [make_routine(owner, title=title) for title in ("Plums", "Pears", "Plum jam", "Figs", "Dates")]


def post(client, query="", **fields):
    fields = {"title": "Mine", "contents": ["plan"], "q": "", **fields}
    return client.post(reverse("booklet_choose") + query, fields)


def test_what_is_ticked_stays_chosen_on_other_pages(counts, owner, visit):
    client = visit(owner)
    first = client.get(reverse("booklet_choose"))
    assert "Dates" in first.text
    assert "Plums" not in first.text
    further = re.search(r'name="after" value="(\d+)"', first.text)[1]
    second = post(client, routine=[counts[4].pk], after=further)
    assert second.status_code == 200
    assert "Chosen before" in second.text
    assert "Plum jam" in second.text
    assert "Figs" not in second.text
    assert TICKED.findall(second.text) == [str(counts[4].pk)]
    assert not Job.objects.exists()


@pytest.mark.parametrize("query", ["", "?from=mine"])
def test_counts_are_looked_for_and_the_title_is_kept(counts, owner, visit, query):
    answer = post(visit(owner), query, look="1", q="plum", title="My own title", routine=[counts[3].pk])
    assert [title for title in ("Plums", "Pears", "Plum jam", "Dates") if title in answer.text] == ["Plums", "Plum jam"]
    assert 'value="My own title"' in answer.text
    assert TICKED.findall(answer.text) == [str(counts[3].pk)]
    nothing = post(visit(owner), query, look="1", q="nothing-like-it")
    assert "No count has these words." in nothing.text


def test_what_she_may_not_see_is_not_chosen(counts, owner, teammate, visit):
    draft = make_routine(owner, title="Planted damson", shared=False)
    answer = post(visit(teammate), look="1", routine=[draft.pk, counts[0].pk])
    assert "damson" not in answer.text
    assert TICKED.findall(answer.text) == [str(counts[0].pk)]


def test_an_empty_bank_has_no_filter_to_take_off(owner, visit):
    client = visit(owner)
    assert "The bank is empty." in client.get(reverse("booklet_choose")).text
    assert "Take one filter off" in client.get(reverse("booklet_choose") + "?area=whole").text
