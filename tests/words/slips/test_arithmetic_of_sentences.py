"""What the sentences for the teacher state in numbers, worked out again from their own text."""

import re

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Other, classify
from routines.words import SpokenHearing, SpokenSlip, likely_slips


def whole_grid(start: int, step: int) -> Grid:
    return Grid(Count(kind="whole", start=start, step=step, terms=12), 4)  # type: ignore[arg-type]


def numbers(text: str) -> list[int]:
    return [int(found.replace(",", "")) for found in re.findall(r"-?\d[\d,]*", text)]


def slips_of(rule: str, start: int, step: int) -> list[SpokenSlip]:
    return [slip for slip in likely_slips(whole_grid(start, step), 3) if slip.rule == rule]


@given(st.integers(0, 4000), st.integers(11, 99))
def test_the_ones_that_make_a_new_ten_do(start: int, step: int) -> None:
    for slip in slips_of("W30", start, step):
        before, jump = numbers(slip.why)
        assert before % 10 + jump % 10 >= 10
        assert before + jump == int(slip.correct.replace(",", ""))


@given(st.integers(2000, 9000), st.integers(-99, -11))
def test_the_hundred_that_is_crossed_counting_back_is(start: int, step: int) -> None:
    for slip in slips_of("W29", start, step):
        jump, before = numbers(slip.why)
        assert before // 100 != (before - jump) // 100
        assert before - jump == int(slip.correct.replace(",", ""))


@given(st.integers(0, 900), st.integers(2, 60), st.integers(1, 12), st.integers(0, 3000))
def test_the_difference_and_the_jumps_in_a_note_lead_from_what_was_due_to_what_was_said(
    start: int, step: int, n: int, said: int
) -> None:
    heard = classify(whole_grid(start, step), n, str(said))
    if not isinstance(heard, Other):
        return
    note = SpokenHearing(heard, whole_grid(start, step), Audience()).note
    due = int(heard.correct.replace(",", ""))
    assert heard.difference == said - due
    if heard.takes == "jumps":
        many, size = numbers(note)
        assert abs(said - due) == many * size
        assert ("too many" in note) == (said > due)
    if heard.takes in ("difference", "place"):
        (size,) = numbers(note)
        assert said - due == (size if "too much" in note else -size)
    if heard.takes == "swapped":
        assert sorted(str(said)) == sorted(str(due))
