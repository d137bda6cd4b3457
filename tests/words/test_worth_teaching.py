"""What counts are good for, in words: every clause is so of its grid, in both languages, in the marks of every place."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Count, Fill, Grid, Style, Wanted
from routines.counting.worth_teaching import Crossing, Goodness, WorthTeaching
from routines.words import SpokenWorth, counts_worth_teaching
from tests.counting.worth_teaching.every_wish import areas, standards
from tests.words.grammars import CHECKERS
from tests.words.sentence_checker import Context, ordinal_is_spelled

WISHES = [wanted for _, wanted in (*standards(), *areas())]
STYLES = [Style(), Style(decimal_mark=",", thousands=" ", currency="EUR", clock=24), Style(currency="JPY")]


def wrong_in(worth: SpokenWorth, language: str) -> list[str]:
    """What is not so in the line and in what to ask: each clause read with what it is about, and the line is made of these."""
    grid, clauses, found = worth.grid, list[str](), list[str]()
    about = Context(grid)
    if worth.crossing:
        clauses.append(worth.crossing)
        found += CHECKERS["worth", language].problems(worth.crossing, about)
    for pattern, upto in ((worth.lasting, grid.terms), (worth.passing, worth.good_for.passing_upto)):
        if pattern is not None:
            clauses.append(pattern.statement)
            context = Context(grid.cut(upto), pattern.claim, pattern.breaks_at, printed=grid)
            found += CHECKERS["pattern", language].problems(pattern.statement, context)
    found += CHECKERS["worth", language].problems(worth.ask, about)
    assert worth.line.lower().removesuffix(".") == "; ".join(clauses).lower().removesuffix(".")
    if language == "en" and not ordinal_is_spelled(worth.line):
        found.append(f"misspelled: {worth.line}")
    return found


@settings(max_examples=max(settings().max_examples // 8, 8), deadline=None)
@given(st.sampled_from(WISHES), st.sampled_from(STYLES), st.sampled_from(["en", "es"]))
def test_every_line_says_only_what_is_so(wanted: Wanted, style: Style, language: str) -> None:
    placed = Wanted(wanted.level, wanted.features, wanted.area, style, "metric" if style.clock == 24 else "customary")
    for worth in counts_worth_teaching(placed, Audience(wanted.level, language)):
        assert wrong_in(worth, language) == []


def worth_of(count: Count, crossing: Crossing, fill: Fill = Fill.ACROSS) -> SpokenWorth:
    """A count that a class counts, with a crossing; what else it is good for is that of a count found for grade 4."""
    other: WorthTeaching = counts_worth_teaching(Wanted(4, (), "whole"))[0]
    good = other.good_for
    held = Goodness(good.lasting, None, count.terms, crossing, good.ask, 0)
    return SpokenWorth(Grid(count, 5, fill), held, audience=Audience(4))


@pytest.mark.parametrize(
    ("start", "step", "n", "said"),
    [
        ("10", "6", 16, "lands on 100 at the 16th count"),
        ("13", "6", 16, "crosses 100 at the 16th count"),
        ("250", "-9", 18, "drops below 100 at the 18th count"),
        ("0", "4", 26, "lands on 100 later, at the 26th count"),
    ],
)
def test_a_crossing_is_told_by_the_way_it_is_crossed(start: str, step: str, n: int, said: str) -> None:
    count = Count.parse(kind="whole", start=start, step=step, terms=20)
    worth = worth_of(count, Crossing(n, count.start * 0 + 100, 1))
    assert worth.crossing == said


def test_the_reader_of_these_lines_bites() -> None:
    """A count too late, another landmark, a way that is not so, a number that comes after all, another column."""
    grid = Grid(Count.parse(kind="whole", start="13", step="6", terms=20), 5)
    for false in (
        "crosses 100 at the 17th count",
        "crosses 110 at the 16th count",
        "lands on 100 at the 16th count",
        "crosses 100 later, at the 16th count",
        "Ask about 133: it never comes.",
        "Ask where 133 will stand: column 2.",
        "Ask where 134 will stand: column 1.",
    ):
        assert CHECKERS["worth", "en"].problems(false, Context(grid)), false
