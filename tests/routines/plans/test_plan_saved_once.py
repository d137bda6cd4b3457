"""A new plan becomes one routine: sent at once, sent again, from Back, from a second tab, beside a late autosave."""

from uuid import uuid4

import pytest
from django.urls import reverse

from accounts.models import SentForm
from routines.models import PlanDraft, Routine, RoutineVersion
from routines.plans.views import open_plan
from tests.at_once import at_once
from tests.routines.plan_sheets import saved_plan, sheet, stop_fields

HTMX = {"HTTP_HX_REQUEST": "true"}


def page_of(key) -> str:
    return reverse("plan_edit", kwargs={"key": key})


def told(answer, client) -> str:
    return " ".join(str(message) for message in client.get(answer["Location"]).context["messages"])


@pytest.mark.django_db(transaction=True)
def test_three_sends_at_once_of_one_new_plan_make_one_count(owner, visit):
    key, data = uuid4(), sheet(**stop_fields(0, 6, "What is under 20?"))
    answers = at_once(*[lambda: visit(owner).post(page_of(key), data)] * 3)
    routine = Routine.objects.get()
    assert {answer.status_code for answer in answers} == {302}
    assert {answer["Location"] for answer in answers} == {reverse("plan_edit", kwargs={"pk": routine.pk})}
    assert RoutineVersion.objects.count() == 1
    assert not PlanDraft.objects.exists()


@pytest.mark.django_db(transaction=True)
def test_three_sends_at_once_of_one_change_make_one_version(owner, visit):
    routine = saved_plan(owner)
    data = sheet(based_on="1", step="8")
    answers = at_once(*[lambda: visit(owner).post(reverse("plan_edit", args=[routine.pk]), data)] * 3)
    assert {answer.status_code for answer in answers} == {302}
    assert routine.versions.count() == 2


@pytest.mark.django_db(transaction=True)
def test_two_new_plans_of_the_same_words_are_two(owner, visit):
    at_once(*[lambda: visit(owner).post(page_of(uuid4()), sheet())] * 2)
    assert Routine.objects.count() == 2


@pytest.mark.django_db(transaction=True)
def test_two_tabs_that_save_different_words_at_once_lose_neither(owner, visit):
    key = uuid4()
    words = ("From the first tab", "From the second tab")
    at_once(*[lambda note=note: visit(owner).post(page_of(key), sheet(notes=note)) for note in words])
    assert Routine.objects.count() == 1
    kept = {version.read_plan().notes for version in RoutineVersion.objects.all()}
    assert kept == set(words)


pytestmark = pytest.mark.django_db


def test_a_wrong_try_first_does_not_stand_in_the_way(owner, visit):
    client, key = visit(owner), uuid4()
    assert client.post(page_of(key), sheet(step="0")).status_code == 422
    assert client.post(page_of(key), sheet()).status_code == 302
    assert Routine.objects.count() == 1


def test_back_and_a_change_become_the_next_version_and_the_page_says_so(owner, visit):
    client, key = visit(owner), uuid4()
    for notes, version in (("As first sent", 1), ("As sent after Back", 2), ("After Back once more", 3)):
        answer = client.post(page_of(key), sheet(notes=notes))
        said = told(answer, client)
        assert f"Saved as version {version}." in said
        assert ("which this page saved before" in said) == (version > 1)
    routine = Routine.objects.get()
    assert [version.read_plan().notes for version in routine.versions.order_by("number")] == [
        "As first sent",
        "As sent after Back",
        "After Back once more",
    ]


def test_back_to_a_page_whose_count_was_changed_elsewhere_shows_both_texts(owner, visit):
    client, key = visit(owner), uuid4()
    routine = reverse("plan_edit", kwargs={"pk": _pk(client.post(page_of(key), sheet()))})
    client.post(routine, sheet(based_on="1", title="Changed on its own page"))
    answer = client.post(page_of(key), sheet(notes="Typed after Back"))
    assert answer.status_code == 409
    assert "You saved this plan from another page, too" in answer.text
    assert "Changed on its own page" in answer.text
    assert "Typed after Back" in answer.text
    assert PlanDraft.objects.get().fields["typed"]["notes"] == ["Typed after Back"]


def test_the_address_of_a_saved_new_plan_leads_to_its_routine(owner, visit):
    client, key = visit(owner), uuid4()
    saved = client.post(page_of(key), sheet())["Location"]
    assert client.get(page_of(key))["Location"] == saved


def test_autosave_of_a_second_tab_goes_on_with_the_routine(owner, visit):
    client, key = visit(owner), uuid4()
    saved = client.post(page_of(key), sheet())["Location"]
    client.post(reverse("plan_draft", kwargs={"key": key}), sheet(notes="Typed in the second tab"), **HTMX)
    draft = PlanDraft.objects.get()
    assert draft.routine == Routine.objects.get()
    assert "Typed in the second tab" in client.get(saved).text
    assert client.post(saved, {**sheet(notes="Typed in the second tab"), "based_on": "1"}).status_code == 302
    assert Routine.objects.get().plan.notes == "Typed in the second tab"


def test_an_autosave_that_says_what_was_just_saved_leaves_nothing_behind(owner, visit):
    """Without a title of its own a count is saved under the one proposed for it; a late autosave still has none."""
    client, key = visit(owner), uuid4()
    client.post(page_of(key), sheet(title=""))
    assert Routine.objects.get().title
    client.post(reverse("plan_draft", kwargs={"key": key}), sheet(title=""), **HTMX)
    assert not PlanDraft.objects.exists()


def test_an_autosave_that_came_in_beside_the_save_goes_on_as_changes(owner, visit):
    """On PostgreSQL an autosave may be written just after the save has looked for drafts to clear."""
    client, key = visit(owner), uuid4()
    saved = client.post(page_of(key), sheet())["Location"]
    late = {name: [str(value)] for name, value in sheet(notes="Last words").items()}
    PlanDraft.objects.create(person=owner, key=key, fields={"typed": late})
    assert client.get(page_of(key))["Location"] == saved
    assert "Last words" in client.get(saved).text
    assert PlanDraft.objects.get().based_on == Routine.objects.get().current_version


def test_late_words_beside_other_changes_stay_as_a_plan_of_their_own(owner, visit):
    client, key = visit(owner), uuid4()
    saved = client.post(page_of(key), sheet())["Location"]
    client.post(saved.replace("/edit/", "/edit/draft/"), sheet(based_on="1", notes="Newer words"), **HTMX)
    late = {name: [str(value)] for name, value in sheet(title="Late words").items()}
    PlanDraft.objects.create(person=owner, key=key, fields={"typed": late})
    client.get(page_of(key))
    assert "Newer words" in client.get(saved).text
    own = PlanDraft.objects.get(routine=None)
    assert "Late words" in client.get(page_of(own.key)).text


def test_a_key_of_another_person_opens_nothing_of_hers(owner, teammate, visit):
    key = uuid4()
    visit(owner).post(page_of(key), sheet(notes="The owner’s words"))
    page = visit(teammate).get(page_of(key))
    assert page.status_code == 200
    assert "The owner’s words" not in page.text
    visit(teammate).post(page_of(key), sheet())
    assert {routine.owner for routine in Routine.objects.all()} == {owner, teammate}


def test_a_plan_whose_routine_is_gone_is_saved_anew(owner, visit):
    client, key = visit(owner), uuid4()
    client.post(page_of(key), sheet())
    Routine.objects.update(current_version=None)
    Routine.objects.all().delete()
    client.post(page_of(key), sheet(notes="Again"))
    assert Routine.objects.get().plan.notes == "Again"
    assert SentForm.objects.get().made["routine"] == Routine.objects.get().pk


def _pk(answer) -> int:
    return int(answer["Location"].split("/")[2])


@pytest.mark.parametrize(("words", "drafts"), [({}, 0), ({"notes": "Typed while it was saved."}, 1)])
def test_an_autosave_beside_the_save_leaves_only_what_it_adds(owner, visit, monkeypatch, words, drafts):
    """The plan is saved between the moment an autosave looks for its count and the moment it keeps its words."""
    key, data = uuid4(), sheet(**stop_fields(0, 6, "What is under 20?"))
    keep = open_plan.keep_draft

    def keep_after_the_save(**kept):
        monkeypatch.setattr(open_plan, "keep_draft", keep)
        visit(owner).post(page_of(key), data)
        return keep(**kept)

    monkeypatch.setattr(open_plan, "keep_draft", keep_after_the_save)
    visit(owner).post(reverse("plan_draft", kwargs={"key": key}), {**data, **words}, **HTMX)
    assert Routine.objects.get().versions.count() == 1
    assert [one.routine for one in PlanDraft.objects.all()] == [Routine.objects.get()] * drafts
