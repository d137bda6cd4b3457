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


@pytest.mark.parametrize(("shared", "status"), [(False, 404), (True, 403)])
@pytest.mark.parametrize("kept_before", [False, True])
def test_what_a_co_author_typed_goes_on_as_her_own_when_she_is_taken_off_meanwhile(
    owner, co_author, visit, shared, status, kept_before
):
    routine = saved_plan(owner, shared=shared)
    routine.co_authors.add(co_author)
    client, address = visit(co_author), reverse("plan_edit", kwargs={"pk": routine.pk})
    if kept_before:
        client.post(reverse("plan_draft", kwargs={"pk": routine.pk}), sheet(based_on="1", notes="Typed before"))
    routine.co_authors.clear()
    answer = client.post(address, sheet(based_on="1", notes="Typed by the co-author"))
    assert answer.status_code == status
    assert "What you typed is kept" in answer.text
    on = answer.context["key"]
    assert f'href="{reverse("plan_edit", kwargs={"key": on})}"' in answer.text
    assert "Typed by the co-author" in client.get(reverse("plan_edit", kwargs={"key": on})).text
    assert (
        client.post(reverse("plan_edit", kwargs={"key": on}), sheet(notes="Typed by the co-author")).status_code == 302
    )
    assert [plan.notes for plan in co_author_plans(co_author)] == ["Typed by the co-author"]
    assert routine.versions.count() == 1
    assert not PlanDraft.objects.exists()


def co_author_plans(person):
    return [routine.newest_save.read_plan() for routine in person.owned_routines.all()]


def test_what_she_kept_leads_on_from_her_list(owner, co_author, visit):
    routine = saved_plan(owner)
    routine.co_authors.add(co_author)
    client, address = visit(co_author), reverse("plan_edit", kwargs={"pk": routine.pk})
    client.post(reverse("plan_draft", kwargs={"pk": routine.pk}), sheet(based_on="1", notes="Kept by itself"))
    routine.co_authors.clear()
    assert address in client.get("/plans/").text
    answer = client.get(address)
    assert answer.status_code == 404
    assert "Kept by itself" in client.get(reverse("plan_edit", kwargs={"key": answer.context["key"]})).text
    assert address not in client.get("/plans/").text


def test_typed_words_are_answered_alike_whether_there_is_such_a_plan_or_not(owner, teammate, visit):
    hidden, client = saved_plan(owner, title="PLANTED"), visit(teammate)
    pages = []
    for pk in (hidden.pk, hidden.pk + 1_000):
        answer = client.post(reverse("plan_edit", kwargs={"pk": pk}), sheet(based_on="1"))
        pages.append((answer.status_code, answer.text.partition("<main")[2].replace(str(answer.context["key"]), "")))
    assert pages[0] == pages[1]
    assert pages[0][0] == 404
    assert "PLANTED" not in pages[0][1]


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
