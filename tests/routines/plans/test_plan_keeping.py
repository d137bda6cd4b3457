"""Autosave: the draft comes back as it was typed."""

from uuid import uuid4

import pytest
from django.urls import reverse

from routines.models import PlanDraft
from tests.routines.plan_sheets import saved_plan, sheet, stop_fields

pytestmark = pytest.mark.django_db

HTMX = {"HTTP_HX_REQUEST": "true"}


def test_a_new_plan_is_kept_and_comes_back(owner, visit):
    client, key = visit(owner), uuid4()
    answer = client.post(reverse("plan_draft", kwargs={"key": key}), sheet(start="2/", notes="half a thought"), **HTMX)
    assert answer.status_code == 200
    assert answer.content.decode().strip().startswith("kept ")
    page = client.get(reverse("plan_edit", kwargs={"key": key})).content.decode()
    assert 'value="2/"' in page
    assert "half a thought" in page


def test_without_scripts_keeping_shows_the_page_again(owner, visit):
    key = uuid4()
    answer = visit(owner).post(reverse("plan_draft", kwargs={"key": key}), sheet())
    assert answer["Location"] == reverse("plan_edit", kwargs={"key": key})


def test_changes_to_a_saved_plan_are_kept_beside_it(owner, visit):
    routine = saved_plan(owner)
    client = visit(owner)
    client.post(reverse("plan_draft", kwargs={"pk": routine.pk}), sheet(title="Not saved yet", based_on="1"), **HTMX)
    assert "Not saved yet" in client.get(reverse("plan_edit", kwargs={"pk": routine.pk})).content.decode()
    routine.refresh_from_db()
    assert routine.title == "Fours from twenty"
    assert PlanDraft.objects.get().based_on == routine.current_version


def test_a_text_equal_to_the_saved_plan_is_no_draft(owner, visit):
    routine = saved_plan(owner)
    same = sheet(based_on="1", area="whole", **stop_fields(0, 12, "What will stand under 64?"))
    visit(owner).post(reverse("plan_draft", kwargs={"pk": routine.pk}), same, **HTMX)
    assert not PlanDraft.objects.exists()


def test_each_author_keeps_a_draft_of_her_own(owner, co_author, visit):
    routine = saved_plan(owner)
    routine.co_authors.add(co_author)
    address = reverse("plan_draft", kwargs={"pk": routine.pk})
    visit(owner).post(address, sheet(title="Owner’s words", based_on="1"), **HTMX)
    visit(co_author).post(address, sheet(title="Co-author’s words", based_on="1"), **HTMX)
    page = visit(owner).get(reverse("plan_edit", kwargs={"pk": routine.pk})).content.decode()
    assert "Owner’s words" in page
    assert "Co-author’s words" not in page


def test_letting_go_of_changes_brings_the_saved_plan_back(owner, visit):
    routine = saved_plan(owner)
    client = visit(owner)
    client.post(reverse("plan_draft", kwargs={"pk": routine.pk}), sheet(title="Not wanted", based_on="1"), **HTMX)
    asked = client.post(reverse("plan_drop", kwargs={"pk": routine.pk})).content.decode()
    assert "Not wanted" in asked  # what would be lost is said before it is
    assert "Not wanted" in client.get(reverse("plan_edit", kwargs={"pk": routine.pk})).content.decode()
    client.post(reverse("plan_drop", kwargs={"pk": routine.pk}), {"sure": "1"})
    assert "Not wanted" not in client.get(reverse("plan_edit", kwargs={"pk": routine.pk})).content.decode()


def test_a_new_plan_is_thrown_away_once_it_was_said_what_goes(owner, visit):
    key = uuid4()
    client = visit(owner)
    client.post(reverse("plan_draft", kwargs={"key": key}), sheet(title="Half an idea", start="", step=""), **HTMX)
    typed = sheet(title="Half an idea", start="", step="", **{"stops-0-question": "Typed after it was kept?"})
    asked = client.post(reverse("plan_drop", kwargs={"key": key}), typed).content.decode()
    assert "Half an idea" in asked
    assert "Typed after it was kept?" in asked
    assert "Typed after it was kept?" in client.get(reverse("plan_edit", kwargs={"key": key})).content.decode()
    answer = client.post(reverse("plan_drop", kwargs={"key": key}), {"sure": "1"})
    assert answer["Location"] == reverse("my_plans")
    assert not PlanDraft.objects.exists()


def test_a_whole_new_plan_says_all_that_would_be_lost(owner, visit):
    key = uuid4()
    typed = sheet(title="", notes="Bring the long strip", start="10", step="6")
    client = visit(owner)
    client.post(reverse("plan_draft", kwargs={"key": key}), typed, **HTMX)
    page = client.get(reverse("my_plans")).content.decode()
    assert reverse("plan_drop", kwargs={"key": key}) in page
    asked = client.post(reverse("plan_drop", kwargs={"key": key})).content.decode()
    for lost in ("By 6 from 10", "Bring the long strip"):
        assert lost in asked


def test_a_signed_out_autosave_leaves_the_page_and_says_what_to_do(owner, signed_out):
    routine = saved_plan(owner)
    answer = signed_out.post(reverse("plan_draft", kwargs={"pk": routine.pk}), sheet(based_on="1"), **HTMX)
    assert answer.status_code == 401
    assert answer["HX-Retarget"] == "#main"
    assert not PlanDraft.objects.exists()


def test_only_the_plans_own_fields_are_kept(owner, visit):
    key = uuid4()
    visit(owner).post(reverse("plan_draft", kwargs={"key": key}), sheet(hostile="x", csrfmiddlewaretoken="t"), **HTMX)
    assert {"hostile", "csrfmiddlewaretoken"}.isdisjoint(PlanDraft.objects.get().fields["typed"])


def test_control_characters_are_left_out(owner, visit):
    key = uuid4()
    visit(owner).post(reverse("plan_draft", kwargs={"key": key}), sheet(title="a\x07b"), **HTMX)
    assert PlanDraft.objects.get().fields["typed"]["title"] == ["ab"]
