"""Every save is kept, says what it changed, and can be gone back to."""

from importlib import import_module

import pytest
from django.urls import reverse

from routines.models.plan_differences import changes_between
from routines.models.plan_document import ExpectedAnswer, Stop
from tests.routines.plan_sheets import saved_plan, sheet

pytestmark = pytest.mark.django_db

HTMX = {"HTTP_HX_REQUEST": "true"}


def test_each_save_says_what_it_changed(owner, visit):
    routine = saved_plan(owner)
    client = visit(owner)
    client.post(reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(title="Another title", based_on="1"))
    saves = client.get(reverse("plan_history", kwargs={"pk": routine.pk})).context["saves"]
    assert [save["version"].number for save in saves] == [2, 1]
    assert {change.part for change in saves[0]["changes"]} == {"title", "stops"}
    assert saves[1]["changes"] == []


def test_going_back_makes_a_new_version_of_the_old_text(owner, visit):
    routine = saved_plan(owner)
    client = visit(owner)
    client.post(reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(title="Another title", based_on="1"))
    client.post(reverse("plan_restore", kwargs={"pk": routine.pk}), {"number": "1"})
    routine.refresh_from_db()
    assert routine.current_version.number == 3
    assert routine.title == "Fours from twenty"


def test_going_back_never_throws_unsaved_text_away(owner, visit):
    routine = saved_plan(owner)
    client = visit(owner)
    client.post(reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(title="Another title", based_on="1"))
    client.post(reverse("plan_draft", kwargs={"pk": routine.pk}), sheet(title="Unsaved", based_on="2"), **HTMX)
    client.post(reverse("plan_restore", kwargs={"pk": routine.pk}), {"number": "1"})
    routine.refresh_from_db()
    assert routine.current_version.number == 2
    assert "Unsaved" in client.get(reverse("plan_edit", kwargs={"pk": routine.pk})).content.decode()


@pytest.mark.parametrize("number", ["", "x", "9", "-1", "99999999"])
def test_a_version_that_never_was_is_not_found(owner, visit, number):
    routine = saved_plan(owner)
    assert visit(owner).post(reverse("plan_restore", kwargs={"pk": routine.pk}), {"number": number}).status_code == 404


def test_others_neither_read_the_history_of_a_draft_nor_go_back_in_it(owner, teammate, visit):
    routine = saved_plan(owner)
    client = visit(teammate)
    assert client.get(reverse("plan_history", kwargs={"pk": routine.pk})).status_code == 404
    assert client.post(reverse("plan_restore", kwargs={"pk": routine.pk}), {"number": "1"}).status_code == 404


def test_going_back_refuses_get(owner, visit):
    routine = saved_plan(owner)
    assert visit(owner).get(reverse("plan_restore", kwargs={"pk": routine.pk})).status_code == 405


def test_a_history_goes_on_to_its_very_first_save(owner, visit, monkeypatch):
    monkeypatch.setattr(import_module("routines.plans.views.history"), "SHOWN_AT_MOST", 2)  # a view has its name too
    routine = saved_plan(owner)
    client = visit(owner)
    for number in range(1, 5):
        client.post(reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(title=f"T{number}", based_on=str(number)))
    address = reverse("plan_history", kwargs={"pk": routine.pk})
    pages = [client.get(address, {"page": page}) for page in (1, 2, 3)]
    saves = [[(save["version"].number, bool(save["changes"])) for save in page.context["saves"]] for page in pages]
    assert saves == [[(5, True), (4, True)], [(3, True), (2, True)], [(1, False)]]
    assert [("the plan as it is" in page.text, "Older" in page.text) for page in pages] == [
        (True, True),
        (False, True),
        (False, False),
    ]
    assert 'value="1">Go back to this one' in pages[2].text


def test_a_long_history_takes_few_queries(owner, visit, django_assert_max_num_queries):
    routine = saved_plan(owner)
    client = visit(owner)
    for number in range(1, 9):
        client.post(reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(title=f"T{number}", based_on=str(number)))
    with django_assert_max_num_queries(10):
        client.get(reverse("plan_history", kwargs={"pk": routine.pk}))


def test_equal_plans_differ_in_nothing_and_one_word_is_found_in_its_part(owner):
    plan = saved_plan(owner).plan
    assert changes_between(plan, plan) == []
    (change,) = changes_between(plan, plan.changed(expected=(ExpectedAnswer("All even", "How do you know?"),)))
    assert (change.part, change.before, change.after) == ("expected", (), ("“All even” How do you know?",))


def test_a_stop_is_told_with_everything_in_it(owner):
    plan = saved_plan(owner).plan
    stop = Stop(
        after=6, question="Why?", answer="Six jumps", routes=("6 of 4", "down one"), think=10, partner=0, share=5
    )
    (change,) = changes_between(plan, plan.changed(stops=(stop,)))
    assert change.after == ("After count 6: Why? Six jumps 6 of 4; down one (think 10 s, partner 0 s, share 5 s)",)
