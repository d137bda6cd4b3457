"""What is said of a place that is left as it was is so of its digit, in what was heard and in what was said before.

Sources: Resnick (1984), Beyond Error Analysis (ERIC ED248099): in taking away, what is borrowed is not taken off the place
it comes from (general finding); for adding the same is common practice, no source.
"""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Style
from routines.counting.slips.reading import value_of
from routines.words import SpokenSlip, likely_slips

SIZES = {"C01": (10,), "C02": (100,), "C03": (1000, 10_000, 100_000), "C04": (1,)}
SAID = {
    "en": {
        "leads into another": "entered",
        "make a new": "made",
        "is broken apart": "opened",
        "too many is still counted": "neared",
    },
    "es": {"se entra en otr": "entered", "forman un": "made", "se descompone un": "opened", "de más": "neared"},
}
KINDS = {"whole": 1, "decimal": 10, "fraction": 1}


def what_happens(slip: SpokenSlip, grid: Grid) -> set[str]:
    """What becomes of the digits, by any size the rule may speak of."""
    count = grid.count
    before, due = abs(count.value(slip.n - 1)), abs(count.value(slip.n))
    if due < before:
        return {"opened" if count.value(slip.n) > 0 else "neared"}
    heard = abs(value_of(count, slip.heard) or Fraction(0))
    return {
        "entered" if heard // size == before // size else "made" for size in SIZES[slip.rule] if due - heard == size
    }


@given(
    st.sampled_from(list(KINDS)),
    st.integers(-900, 3000),
    st.integers(1, 400),
    st.booleans(),
    st.integers(0, 8),
    st.sampled_from(["en", "es"]),
)
def test_the_place_is_entered_made_or_opened_as_it_is_told(
    kind: str, start: int, step: int, up: bool, level: int, language: str
) -> None:
    part = Fraction(1, KINDS[kind])
    grid = Grid(Count(kind, start * part, (step if up else -step) * part, 10), 5)
    for slip in likely_slips(grid, audience=Audience(level, language)):
        if slip.rule in SIZES:
            told = {what for phrase, what in SAID[language].items() if phrase in slip.why}
            assert told == what_happens(slip, grid), (slip.why, slip.heard, slip.correct)


@pytest.mark.parametrize(
    ("kind", "start", "step", "level", "heard", "said"),
    [
        ("whole", "8", "15", 8, "43", "the ones make a new ten"),
        ("capacity", "450 mL", "150 mL", 5, "500 mL", "the tens make a new hundred"),
        ("decimal", "4.75", "-0.25", 5, "4.35", "one is broken apart in the next larger place"),
        ("whole", "20", "-1", 0, "29", "one ten is broken apart"),
        ("whole", "58", "6", 3, "54", "leads into another ten"),
    ],
)
def test_the_digit_that_did_change_is_not_told_to_have_stayed(
    kind: str, start: str, step: str, level: int, heard: str, said: str
) -> None:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=12), 4)
    why = next(slip.why for slip in likely_slips(grid, level) if slip.heard == heard and slip.rule[0] == "C")
    assert said in why


NOT_ONWARD = re.compile(
    r"(?:is that|es eso) (more|less|later|earlier|más tarde|más temprano|más|menos)\b", re.IGNORECASE
)
BACK = {"less", "menos", "earlier", "más temprano"}


@given(
    st.sampled_from(["whole", "money"]),
    st.integers(0, 150),
    st.sampled_from([1, 2, 5, 6, 10, 12, 20, 25, 40]),
    st.booleans(),
    st.integers(0, 1),
    st.sampled_from(["en", "es"]),
)
def test_the_youngest_are_asked_of_what_they_said_and_of_no_place(
    kind: str, start: int, step: int, down: bool, level: int, language: str
) -> None:
    """Whether it is more than the count before is asked only where it is not: there a child sees it on the grid."""
    count = Count(kind, Fraction(start), Fraction(step), 9, Style(language=language))  # type: ignore[arg-type]
    view = Grid(Count(count.kind, count.value(9), -count.step, 9, count.style) if down else count, 3)
    for slip in likely_slips(view, audience=Audience(level, language)):
        assert not re.search(r"same (?:ten|hundred)|new (?:ten|hundred)|misma (?:decena|centena)", slip.reply), (
            slip.reply
        )
        if found := NOT_ONWARD.match(slip.reply.lstrip("¿")):
            assert (found[1].lower() in BACK) == down
            said = value_of(view.count, slip.heard)
            assert said is not None
            assert (said - view.count.value(slip.n - 1)) * view.count.step <= 0, slip


@pytest.mark.parametrize(
    ("start", "step", "language", "reply"),
    [
        ("27", "1", "en", "Is that more than 29? Touch 29 and go on."),
        ("20", "-1", "en", "Is that less than 20? Touch 20 and go on."),
        ("27", "1", "es", "¿Es eso más que el 29? Toca el 29 y sigue."),
    ],
)
def test_a_ten_said_too_low_is_looked_for_on_the_grid(start: str, step: str, language: str, reply: str) -> None:
    grid = Grid(Count.parse(kind="whole", start=start, step=step, terms=20), 10)
    assert (
        next(slip.reply for slip in likely_slips(grid, audience=Audience(0, language)) if slip.rule == "C01") == reply
    )
