"""What a plan holds at most: said where it is met, and nothing that was typed is cut or dropped."""

from uuid import uuid4

import pytest
from django.urls import reverse

from accounts.kept_text import MOST_CHARACTERS
from routines.models import PlanDraft, Routine
from routines.plans.forms.changes import apply_change
from routines.plans.forms.draft import claim_text, row_numbers, rows
from tests.routines.plan_sheets import answer_fields, saved_plan, sheet, stop_fields

pytestmark = pytest.mark.django_db

HTMX = {"HTTP_HX_REQUEST": "true"}


def stops(number: int) -> dict[str, object]:
    return {name: value for n in range(number) for name, value in stop_fields(n, 6, f"Question {n}?").items()}


def answers(number: int) -> dict[str, object]:
    return {name: value for n in range(number) for name, value in answer_fields(n, f"Guess {n}").items()}


def at(name: str, key) -> str:
    return reverse(name, kwargs={"key": key})


def typed_of(fields: dict[str, object]) -> dict[str, list[str]]:
    return {name: [str(value)] for name, value in fields.items()}


@pytest.mark.parametrize(
    ("rows_sent", "sentence"),
    [
        (stops(45), "A plan holds 40 stops at most; this one has 45. Remove 5."),
        (answers(41), "A plan holds 40 answers and slips at most; this one has 41. Remove 1."),
    ],
)
def test_more_rows_than_a_plan_holds_are_refused_and_all_stay(owner, visit, rows_sent, sentence):
    key = uuid4()
    answer = visit(owner).post(at("plan_edit", key), sheet(**rows_sent))
    assert answer.status_code == 422
    assert sentence in answer.text
    assert 'href="#part-' in answer.text
    assert not Routine.objects.exists()
    kept = PlanDraft.objects.get().fields["typed"]
    for name, value in rows_sent.items():
        assert kept[name] == [str(value)]
        if str(value).startswith(("Question", "Guess")):
            assert str(value) in answer.text


def test_as_many_as_a_plan_holds_are_saved(owner, visit):
    assert visit(owner).post(at("plan_edit", uuid4()), sheet(**stops(40), **answers(40))).status_code == 302
    plan = Routine.objects.get().plan
    assert (len(plan.stops), len(plan.expected)) == (40, 40)


def test_autosave_keeps_more_rows_than_can_be_saved(owner, visit):
    client, key = visit(owner), uuid4()
    assert client.post(at("plan_draft", key), sheet(**stops(45)), **HTMX).status_code == 200
    assert "Question 44?" in client.get(at("plan_edit", key)).text


def test_the_button_says_how_many_more_before_it_is_too_late(owner, visit):
    client = visit(owner)
    for number, hint in ((34, None), (37, "3 more can be added."), (40, "40 stops are the most a plan holds.")):
        key = uuid4()
        client.post(at("plan_draft", key), sheet(**stops(number)), **HTMX)
        page = client.get(at("plan_edit", key)).text
        assert ("more can be added" in page) == (number == 37)
        assert ('value="stops.add"' in page) == (number < 40)
        assert hint is None or hint in page


@pytest.mark.parametrize("asked", ["stops.add", 'stops.add {"after": 6, "question": "One more?"}'])
def test_a_stop_too_many_is_not_added_and_the_answer_says_why(owner, visit, asked):
    client, key = visit(owner), uuid4()
    answer = client.post(at("plan_change", key), sheet(change=asked, **stops(40)), **HTMX)
    assert "40 stops are the most a plan holds. Take one out to add another." in answer.text
    assert len(rows(PlanDraft.objects.get().fields["typed"], "stops")) == 40
    without_scripts = client.post(at("plan_change", key), sheet(change=asked, **stops(40)), follow=True)
    assert "40 stops are the most" in "".join(map(str, without_scripts.context["messages"]))


def test_one_taken_out_of_too_many_leaves_all_the_others():
    changed = apply_change(typed_of(stops(45)), "stops.remove.44", [])
    assert [row["question"] for row in rows(changed.typed, "stops")] == [f"Question {n}?" for n in range(44)]


def test_a_suggestion_pressed_twice_is_taken_once():
    taken = 'expected.add {"words": "They all end in 4", "sort": "easy"}'
    once = apply_change(typed_of(sheet()), taken, []).typed
    assert len(row_numbers(apply_change(once, taken, []).typed, "expected")) == 1
    empty = apply_change(once, 'expected.add {"sort": "slip"}', []).typed
    assert len(row_numbers(apply_change(empty, 'expected.add {"sort": "slip"}', []).typed, "expected")) == 3


@pytest.mark.parametrize(
    ("field", "limit"), [("title", 120), ("notes", 2000), ("story_text", 2000), ("stops-0-question", 400)]
)
def test_a_text_too_long_is_refused_at_its_field_and_kept_whole(owner, visit, field, limit):
    client, key, text = visit(owner), uuid4(), "word " * 1900 + "end"
    data = {**sheet(**stop_fields(0, 6, "Why?")), field: text}
    answer = client.post(at("plan_edit", key), data)
    assert answer.status_code == 422
    assert f"Shorten this to {limit} characters; it has 9503." in answer.text
    assert text in answer.text
    assert PlanDraft.objects.get().fields["typed"][field] == [text]
    client.post(at("plan_draft", key), {**data, field: text + " more"}, **HTMX)
    assert text + " more" in client.get(at("plan_edit", key)).text


def test_own_words_for_a_pattern_are_refused_where_they_stand(owner, visit):
    claim, words = claim_text({"family": "step", "difference": "4"}), "four " * 90
    key = uuid4()
    answer = visit(owner).post(at("plan_edit", key), sheet(target=claim, words_of=claim, words=words))
    assert answer.status_code == 422
    assert "Shorten this to 400 characters; it has 449." in answer.text
    assert words in answer.text
    assert not Routine.objects.exists()


def test_own_words_outlive_a_tick_taken_away(owner, visit):
    claim = claim_text({"family": "step", "difference": "4"})
    answer = visit(owner).post(
        reverse("plan_preview", kwargs={"key": uuid4()}), sheet(words_of=claim, words="Fours, always"), **HTMX
    )
    assert 'name="words" value="Fours, always"' in answer.text


def test_more_ticks_than_a_plan_holds_are_refused(owner, visit):
    ticked = [claim_text({"family": "step", "difference": str(n)}) for n in range(1, 43)]
    answer = visit(owner).post(at("plan_edit", uuid4()), sheet(target=ticked))
    assert answer.status_code == 422
    assert "A plan holds 40 ticked patterns at most; 42 are ticked." in answer.text


TOO_LONG = "x" * (MOST_CHARACTERS + 1)
SENTENCE = "400,000 are the most that can be kept. Shorten it: what you typed stays on this page."


def test_autosave_of_a_plan_too_long_says_so_and_keeps_the_last(owner, visit):
    client, key = visit(owner), uuid4()
    client.post(at("plan_draft", key), sheet(notes="Kept before"), **HTMX)
    answer = client.post(at("plan_draft", key), sheet(notes=TOO_LONG), **HTMX)
    assert answer.status_code == 422
    assert answer.text.startswith("Not kept. This plan is")
    assert SENTENCE in answer.text
    assert PlanDraft.objects.get().fields["typed"]["notes"] == ["Kept before"]


@pytest.mark.parametrize("name", ["plan_edit", "plan_draft", "plan_change"])
def test_without_scripts_a_plan_too_long_comes_back_whole(owner, visit, name):
    answer = visit(owner).post(at(name, uuid4()), sheet(notes=TOO_LONG, change="stops.add"))
    assert answer.status_code == 422
    assert SENTENCE in answer.text
    assert "Everything you typed is kept" not in answer.text
    assert TOO_LONG in answer.text


def test_a_button_on_a_plan_too_long_says_so_beside_the_title(owner, visit):
    answer = visit(owner).post(at("plan_change", uuid4()), sheet(notes=TOO_LONG, change="stops.add"), **HTMX)
    assert (answer.status_code, answer["HX-Retarget"]) == (422, "#plan-kept")
    assert SENTENCE in answer.text


def test_a_number_to_look_for_that_is_too_long_is_a_sentence(owner, visit):
    address = reverse("plan_part", kwargs={"key": uuid4(), "name": "appear"})
    answer = visit(owner).post(address, sheet(ask_value="4" * 60), **HTMX)
    assert "Shorten this to 40 characters; it has 60." in answer.text


def test_a_stale_save_with_too_many_rows_keeps_them(owner, coach, visit):
    routine = saved_plan(owner, shared=True)
    address = reverse("plan_edit", kwargs={"pk": routine.pk})
    visit(coach).post(address, sheet(title="The coach’s title", based_on="1"))
    answer = visit(owner).post(address, sheet(based_on="1", **stops(45)))
    assert "Question 44?" in answer.text
    assert len(rows(PlanDraft.objects.get().fields["typed"], "stops")) == 45
