"""Saving a plan from its page."""

from uuid import uuid4

import pytest
from django.urls import reverse

from routines.models import PlanDraft, Routine
from routines.models.plan_document import Target
from routines.plans.forms.draft import claim_text
from tests.routines.plan_sheets import answer_fields, saved_plan, sheet, stop_fields

pytestmark = pytest.mark.django_db


def test_a_new_plan_becomes_a_draft_of_its_writer(owner, visit):
    key = uuid4()
    data = sheet(
        **stop_fields(0, 6, "What comes below 20?", routes="6 jumps of 4\ndown one row"), **answer_fields(0, "All even")
    )
    answer = visit(owner).post(reverse("plan_edit", kwargs={"key": key}), data)
    routine = Routine.objects.get()
    assert answer.status_code == 302
    assert answer["Location"] == reverse("plan_edit", kwargs={"pk": routine.pk})
    assert (routine.owner, routine.status, routine.area) == (owner, "draft", "whole")
    plan = routine.plan
    assert plan.stops[0].routes == ("6 jumps of 4", "down one row")
    assert plan.expected[0].words == "All even"


def test_saving_a_new_plan_lets_go_of_its_draft(owner, visit):
    key = uuid4()
    client = visit(owner)
    client.post(reverse("plan_draft", kwargs={"key": key}), sheet())
    client.post(reverse("plan_edit", kwargs={"key": key}), sheet())
    assert not PlanDraft.objects.exists()


def test_saving_a_change_makes_the_next_version(owner, visit):
    routine = saved_plan(owner)
    visit(owner).post(reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(step="8", based_on="1"))
    routine.refresh_from_db()
    assert routine.current_version.number == 2
    assert routine.plan.count.step == "8"
    assert routine.step_numerator == 8


def test_a_plan_without_a_title_is_named_after_what_is_to_be_seen(owner, visit):
    visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), sheet(title=""))
    assert Routine.objects.get().title


def test_stops_are_saved_in_the_order_of_the_count(owner, visit):
    data = sheet(**stop_fields(0, 12, "Later?"), **stop_fields(1, 6, "Sooner?"))
    visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), data)
    assert [stop.question for stop in Routine.objects.get().plan.stops] == ["Sooner?", "Later?"]


def test_a_row_with_nothing_in_it_is_left_out(owner, visit):
    data = sheet(**stop_fields(0, 6, ""), **answer_fields(0, " "))
    visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), data)
    plan = Routine.objects.get().plan
    assert (plan.stops, plan.expected) == ((), ())


@pytest.mark.parametrize(
    ("field", "typed", "sentence"),
    [
        ("step", "0", "Choose a step other than 0."),
        ("start", "abc", None),
        ("start", "", "Write where the count starts."),
        ("terms", "1", "Write a whole number from 2 to 200."),
        ("terms", "many", "Write a whole number from 2 to 200."),
        ("line_length", "40", "Choose a line length of at most 18, the number of counts."),
        ("lead", "6", "Leave from 0 to 5 cells empty before the first count."),
        ("grade", "99", "Choose the grade from the list."),
        ("landmark", "ten", None),
    ],
)
def test_a_wrong_field_gets_one_sentence_and_keeps_everything_typed(owner, visit, field, typed, sentence):
    key = uuid4()
    ticked = claim_text({"family": "step", "difference": "4"})
    patterns = {"target": ticked, "words_of": ticked, "words": "Four more each time"}
    data = sheet(**{field: typed}, notes="Words to keep", **patterns, **stop_fields(0, 6, "A question to keep?"))
    answer = visit(owner).post(reverse("plan_edit", kwargs={"key": key}), data)
    page = answer.content.decode()
    assert answer.status_code == 422
    assert not Routine.objects.exists()
    assert "Words to keep" in page
    assert "A question to keep?" in page
    assert "Four more each time" in page
    if sentence:
        assert page.count(sentence) == 1
    if typed and field != "grade":
        assert f'value="{typed}"' in page
    assert PlanDraft.objects.get(person=owner, key=key).fields["typed"]["notes"] == ["Words to keep"]


def test_a_stop_past_the_end_is_named_at_its_field(owner, visit):
    data = sheet(**stop_fields(0, 19, "Beyond?"))
    answer = visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), data)
    assert answer.status_code == 422
    assert "There are 18 counts; stop after one of them." in answer.content.decode()


def test_a_next_count_that_is_none_is_named_at_its_field(owner, visit):
    row = {
        "outcome": "not-yet",
        "why": "Smaller",
        "kind": "whole",
        "start": "1",
        "step": "0",
        "terms": "9",
        "line_length": "3",
        "fill": "down",
    }
    data = sheet(**{f"next-0-{name}": value for name, value in row.items()})
    answer = visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), data)
    assert answer.status_code == 422
    assert "Choose a step other than 0." in answer.content.decode()


def test_sharing_from_the_plan_puts_it_into_the_bank(owner, visit):
    answer = visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), sheet(do="share"))
    routine = Routine.objects.get()
    assert routine.status == "shared"
    assert answer["Location"] == reverse("routine", kwargs={"pk": routine.pk})


def test_print_saves_first_and_leads_to_the_page(owner, visit):
    answer = visit(owner).post(reverse("plan_edit", kwargs={"key": uuid4()}), sheet(do="print"))
    assert answer["Location"] == reverse("plan_pdf", kwargs={"pk": Routine.objects.get().pk})


def test_two_saves_of_one_plan_keep_both_texts(owner, coach, visit):
    routine = saved_plan(owner, shared=True)
    address = reverse("plan_edit", kwargs={"pk": routine.pk})
    visit(coach).post(address, sheet(title="The coach’s title", based_on="1"))
    answer = visit(owner).post(address, sheet(notes="What the owner wrote", based_on="1"))
    page = answer.content.decode()
    assert answer.status_code == 409
    assert "The coach’s title" in page
    assert "What the owner wrote" in page
    routine.refresh_from_db()
    assert routine.title == "The coach’s title"
    assert PlanDraft.objects.get(person=owner).fields["typed"]["notes"] == ["What the owner wrote"]


def test_the_parts_chosen_from_two_saves_become_one_version(owner, coach, visit):
    routine = saved_plan(owner, shared=True)
    address = reverse("plan_edit", kwargs={"pk": routine.pk})
    visit(coach).post(address, sheet(title="The coach’s title", based_on="1"))
    client = visit(owner)
    client.post(address, sheet(notes="What the owner wrote", based_on="1"))
    client.post(
        reverse("plan_merge", kwargs={"pk": routine.pk}),
        {"theirs": "2", "title": "theirs", "notes": "mine", "stops": "theirs"},
    )
    routine.refresh_from_db()
    assert routine.current_version.number == 3
    assert (routine.title, routine.plan.notes) == ("The coach’s title", "What the owner wrote")


def test_where_only_one_side_changed_a_part_that_side_is_chosen_beforehand(owner, coach, visit):
    routine = saved_plan(owner, shared=True)
    address = reverse("plan_edit", kwargs={"pk": routine.pk})
    visit(coach).post(
        address, sheet(title="The coach’s title", based_on="1", **stop_fields(0, 12, "What will stand under 64?"))
    )
    answer = visit(owner).post(
        address, sheet(notes="Mine", based_on="1", **stop_fields(0, 12, "What will stand under 64?"))
    )
    rows = {row["change"].part: row["chosen"] for row in answer.context["rows"]}
    assert rows == {"title": "theirs", "notes": "mine"}


def test_saving_with_a_version_number_that_never_was_counts_as_stale(owner, visit):
    routine = saved_plan(owner)
    answer = visit(owner).post(reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(step="8", based_on="77"))
    assert answer.status_code == 409


def test_a_signed_out_save_leads_to_signing_in_with_the_text(owner, signed_out):
    routine = saved_plan(owner)
    answer = signed_out.post(
        reverse("plan_edit", kwargs={"pk": routine.pk}), sheet(notes="Typed for an hour", based_on="1")
    )
    assert answer.status_code == 401
    assert "Typed for an hour" in answer.content.decode()
    assert routine.versions.count() == 1


def test_a_target_keeps_the_teachers_own_words_through_a_save(owner, visit):
    step = {"family": "step", "difference": "4"}
    routine = saved_plan(owner, targets=(Target(step, "Fours, every time"),))
    client = visit(owner)
    page = client.get(reverse("plan_edit", kwargs={"pk": routine.pk})).content.decode()
    assert 'value="Fours, every time"' in page
    claim = claim_text(step)
    data = sheet(based_on="1", title="Another", target=claim, words_of=claim, words="Fours, always")
    client.post(reverse("plan_edit", kwargs={"pk": routine.pk}), data)
    routine.refresh_from_db()
    assert routine.plan.targets[0].words == "Fours, always"
