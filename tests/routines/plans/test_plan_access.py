"""Who may write on a plan: owner and co-authors, any coach on a shared one, nobody else."""

from uuid import uuid4

import pytest
from django.conf import settings
from django.shortcuts import resolve_url
from django.urls import reverse

from routines.models import PlanDraft
from tests.routines.plan_sheets import saved_plan, sheet

pytestmark = pytest.mark.django_db

POSTED = ["plan_edit", "plan_draft", "plan_change", "plan_drop", "plan_merge"]


@pytest.mark.parametrize("name", POSTED)
@pytest.mark.parametrize("person", ["teammate", "coach", "administrator"])
def test_nobody_else_finds_a_draft(owner, visit, request, name, person):
    routine = saved_plan(owner)
    client = visit(request.getfixturevalue(person))
    assert client.post(reverse(name, kwargs={"pk": routine.pk}), sheet(based_on="1")).status_code == 404
    assert routine.versions.count() == 1


@pytest.mark.parametrize("name", POSTED)
@pytest.mark.parametrize("person", ["teammate", "administrator"])
def test_a_shared_plan_is_changed_by_its_authors_and_coaches_only(owner, visit, request, name, person):
    routine = saved_plan(owner, shared=True)
    client = visit(request.getfixturevalue(person))
    assert client.post(reverse(name, kwargs={"pk": routine.pk}), sheet(based_on="1")).status_code == 403
    assert routine.versions.count() == 1


def test_a_coach_may_write_on_a_shared_plan(owner, coach, visit):
    routine = saved_plan(owner, shared=True)
    assert visit(coach).get(reverse("plan_edit", kwargs={"pk": routine.pk})).status_code == 200


def test_a_co_author_may_write_on_a_draft(owner, co_author, visit):
    routine = saved_plan(owner)
    routine.co_authors.add(co_author)
    assert visit(co_author).get(reverse("plan_edit", kwargs={"pk": routine.pk})).status_code == 200


def test_another_persons_unfinished_plan_is_not_found(owner, teammate, visit):
    key = uuid4()
    visit(owner).post(reverse("plan_draft", kwargs={"key": key}), sheet(notes="PLANTED"))
    client = visit(teammate)
    for name in ("plan_edit", "plan_draft", "plan_change", "plan_drop"):
        answer = client.post(reverse(name, kwargs={"key": key}), sheet())
        assert answer.status_code == 404
        assert "PLANTED" not in answer.content.decode()
    assert client.get(reverse("plan_edit", kwargs={"key": key})).status_code == 404
    assert PlanDraft.objects.get().person == owner


@pytest.mark.parametrize("name", ["plan_draft", "plan_change", "plan_drop", "plan_merge"])
def test_addresses_that_change_something_refuse_get(owner, visit, name):
    routine = saved_plan(owner)
    assert visit(owner).get(reverse(name, kwargs={"pk": routine.pk})).status_code == 405


def test_the_preview_refuses_get(owner, visit):
    assert visit(owner).get(reverse("plan_preview", kwargs={"key": uuid4()})).status_code == 405


@pytest.mark.parametrize("name", ["plan_new", "my_plans"])
def test_the_signed_out_are_asked_to_sign_in(signed_out, name):
    answer = signed_out.get(reverse(name))
    assert answer.status_code == 302
    assert answer["Location"].startswith(resolve_url(settings.LOGIN_URL))
