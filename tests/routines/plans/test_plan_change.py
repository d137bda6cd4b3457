"""Buttons that change the typed plan, with scripts and without, and undo."""

from uuid import uuid4

import pytest
from django.urls import reverse

from routines.models import PlanDraft
from routines.plans.forms.changes import UnknownChange, apply_change
from routines.plans.forms.draft import rows
from tests.routines.plan_sheets import answer_fields, sheet, stop_fields

pytestmark = pytest.mark.django_db

HTMX = {"HTTP_HX_REQUEST": "true"}


def as_typed(**fields: object) -> dict[str, list[str]]:
    return {name: [str(value)] for name, value in sheet(**fields).items()}


def test_a_stop_is_added_and_what_was_typed_stays(owner, visit):
    key = uuid4()
    data = sheet(change="stops.add", **stop_fields(0, 6, "Kept?"))
    answer = visit(owner).post(reverse("plan_change", kwargs={"key": key}), data, **HTMX)
    page = answer.content.decode()
    assert "Kept?" in page
    assert 'name="stops-1-question"' in page
    assert "<html" not in page
    assert len(rows(PlanDraft.objects.get().fields["typed"], "stops")) == 2


def test_without_scripts_the_page_opens_at_the_new_row(owner, visit):
    client, key = visit(owner), uuid4()
    answer = client.post(reverse("plan_change", kwargs={"key": key}), sheet(change="expected.add"))
    assert answer["Location"] == reverse("plan_edit", kwargs={"key": key}) + "#id_expected-0-words"
    assert 'name="expected-0-words"' in client.get(answer["Location"]).content.decode()


def test_a_row_is_taken_out_and_comes_back_by_undo(owner, visit):
    client, key = visit(owner), uuid4()
    address = reverse("plan_change", kwargs={"key": key})
    two = {**answer_fields(0, "First"), **answer_fields(1, "Second")}
    client.post(address, sheet(change="expected.remove.0", **two), **HTMX)
    assert [row["words"] for row in rows(PlanDraft.objects.get().fields["typed"], "expected")] == ["Second"]
    answer = client.post(address, sheet(change="undo", notes="typed since", **answer_fields(0, "Second")), **HTMX)
    draft = PlanDraft.objects.get()
    assert [row["words"] for row in rows(draft.fields["typed"], "expected")] == ["First", "Second"]
    assert draft.fields["typed"]["notes"] == ["typed since"]
    assert draft.fields["steps"] == []
    assert "First" in answer.content.decode()


def test_another_fold_is_taken_and_undone():
    typed = as_typed()
    changed = apply_change(typed, 'fold {"line_length": 5, "fill": "down"}', [])
    assert (changed.typed["line_length"], changed.typed["fill"], changed.typed["step"]) == (["5"], ["down"], ["4"])
    back = apply_change(changed.typed, "undo", [changed.step])
    assert back.typed == typed


def test_a_taken_stop_stands_in_counting_order():
    typed = as_typed(**stop_fields(0, 12, "Later?"))
    changed = apply_change(typed, 'stops.add {"after": 6, "question": "Sooner?"}', [])
    assert [row["question"] for row in rows(changed.typed, "stops")] == ["Sooner?", "Later?"]


def test_a_next_stop_is_proposed_a_line_further_but_not_past_the_end():
    places = [
        rows(apply_change(as_typed(**stop_fields(0, after, "Q?")), "stops.add", []).typed, "stops")[1]["after"]
        for after in (6, 17)
    ]
    assert places == ["12", "18"]


@pytest.mark.parametrize(
    "asked", ["", "stops", "stops.remove.x.y.z", "fold {", 'fold ["a"]', "plan.delete", 'stops.add {"after": []}']
)
def test_a_button_this_page_does_not_have_changes_nothing(asked):
    try:
        changed = apply_change(as_typed(), asked, [])
    except UnknownChange:
        return
    assert changed.typed == as_typed()


def test_undo_with_nothing_to_undo_changes_nothing():
    assert apply_change(as_typed(), "undo", []).typed == as_typed()


def test_an_unknown_button_is_not_found(owner, visit):
    answer = visit(owner).post(reverse("plan_change", kwargs={"key": uuid4()}), sheet(change="plan.delete"))
    assert answer.status_code == 404
