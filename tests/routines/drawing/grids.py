"""Grids and hand-made patterns that the drawing tests draw."""

from collections.abc import Sequence
from dataclasses import dataclass

from hypothesis import strategies as st

from routines.counting import Count, Grid, Style
from routines.counting.results import Pattern
from tests.counting.claims import a_claim

SIX_FROM_TEN = "10 16 22 ... 154, five in a line"


def grid(start="10", step="6", terms=25, length=5, fill="across", lead=0, kind="whole", **style) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(**style)), length, fill, lead)


@dataclass(frozen=True)
class HandMade(Pattern):
    """A pattern of the tests' own, with words that do not depend on a count."""

    statement: str = "Six more each time"


def pattern(groups: Sequence[Sequence[int]], holds="always", breaks_at=None, family="step", **claim) -> HandMade:
    claim = claim or {"difference": "6"}
    return HandMade(
        a_claim(family, **claim),
        tuple(map(tuple, groups)),
        breaks_at,
        holds,
    )


def first_column(of: Grid) -> Pattern:
    return pattern([of.lines("column")[0]])


def tens_of_each_column(of: Grid, breaks_at: int | None = None) -> Pattern:
    return pattern(of.lines("column"), "shown", breaks_at, family="digit-run", place=1, along="column", change=3)


@st.composite
def drawn_grids(draw: st.DrawFn) -> Grid:
    """Grids of several kinds whose numerals are narrow, wide, stacked and of two units."""
    kind, start, step = draw(
        st.sampled_from(
            [
                ("whole", "10", "6"),
                ("whole", "-18", "4"),
                ("whole", "98765", "-1234"),
                ("decimal", "0.4", "0.2"),
                ("fraction", "2/3", "1/3"),
                ("length", "8 in", "8 in"),
                ("money", "$0.10", "25c"),
            ]
        )
    )
    terms = draw(st.integers(2, 40))
    length = draw(st.integers(1, min(terms, 12)))
    fill = draw(st.sampled_from(["across", "down", "across-up"]))
    lead = draw(st.integers(0, length - 1))
    style = {"units": "two"} if kind == "length" else {}
    return grid(start, step, terms, length, fill, lead, kind, **style)


@st.composite
def groups_of(draw: st.DrawFn, of: Grid) -> list[tuple[int, ...]]:
    """Groups as the engine gives them: lines of the page, or every k-th count."""
    along = draw(st.sampled_from(["row", "column", "count", "every"]))
    if along == "every":
        k, first = draw(st.integers(1, 7)), draw(st.integers(1, 7))
        return [tuple(range(first, of.terms + 1, k))] if first <= of.terms else [(1,)]
    return list(of.lines(along))
