"""My plans: what is unfinished, one's drafts, what one has in the bank."""

from uuid import uuid4

import pytest
from django.urls import reverse

from routines.bank.views import mine
from tests.routines.plan_sheets import saved_plan, sheet

pytestmark = pytest.mark.django_db


def test_an_empty_page_leads_to_the_first_plan(owner, visit):
    page = visit(owner).get(reverse("my_plans")).content.decode()
    assert "No plans yet" in page
    assert reverse("plan_new") in page


def test_own_plans_are_listed_and_nobody_elses(owner, teammate, visit):
    saved_plan(owner, title="A draft of mine")
    saved_plan(owner, title="Shared by me", shared=True)
    saved_plan(teammate, title="PLANTED draft")
    saved_plan(teammate, title="PLANTED shared", shared=True)
    page = visit(owner).get(reverse("my_plans")).content.decode()
    assert "A draft of mine" in page
    assert "Shared by me" in page
    assert "PLANTED" not in page


def test_an_unfinished_plan_can_be_opened_again(owner, visit):
    client, key = visit(owner), uuid4()
    client.post(reverse("plan_draft", kwargs={"key": key}), sheet(title=""))
    page = client.get(reverse("my_plans")).content.decode()
    assert "By 4 from 20" in page
    assert reverse("plan_edit", kwargs={"key": key}) in page


def test_many_plans_take_no_more_queries_than_one(owner, visit, all_through, django_assert_max_num_queries):
    with all_through():
        for number in range(8):
            saved_plan(owner, title=f"Plan {number}")
    client = visit(owner)
    with django_assert_max_num_queries(13):  # one names the plans that she is co-author of
        client.get(reverse("my_plans"))


def test_older_plans_stand_on_further_pages(owner, visit, monkeypatch):
    monkeypatch.setattr(mine, "SHOWN_AT_MOST", 2)
    for number in range(3):
        saved_plan(owner, title=f"Plan {number}")
    client = visit(owner)
    pages = [client.get(reverse("my_plans"), {"page": page}).text for page in (1, 2)]
    assert [[f"Plan {number}" in page for number in range(3)] for page in pages] == [
        [False, True, True],
        [True, False, False],
    ]


def test_more_unfinished_plans_than_are_listed_are_told(owner, visit, monkeypatch):
    monkeypatch.setattr(mine, "SHOWN_AT_MOST", 2)
    client = visit(owner)
    for _plan in range(3):
        client.post(reverse("plan_draft", kwargs={"key": uuid4()}), sheet())
    assert "And 1 older one." in client.get(reverse("my_plans")).text
