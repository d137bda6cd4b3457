"""Hypothesis strategies: counts of every kind in every style, and grids of them."""

from fractions import Fraction

from hypothesis import strategies as st

from routines.counting import Count, CountError, Grid, Style
from routines.counting.kinds.units import UNITS, units_of

KINDS = ("whole", "decimal", "fraction", "length", "mass", "capacity", "money", "clock", "elapsed")
MARKS = [(".", ","), (".", " "), (".", ""), (",", "."), (",", " "), (",", "")]
CURRENCIES = ["USD", "EUR", "GBP", "MXN", "JPY", "KWD", "SEK", "BRL", "CHF"]


@st.composite
def styles(draw: st.DrawFn, kind: str) -> Style:
    """A style with every keyword that matters to the kind drawn."""
    mark, thousands = draw(st.sampled_from(MARKS))
    keywords: dict[str, object] = {
        "decimal_mark": mark,
        "thousands": thousands,
        "language": draw(st.sampled_from(["en", "es"])),
        "saying": draw(st.sampled_from(["written", "counted", "renamed"])),
        "fractions": draw(st.sampled_from(["kept", "simplified"])),
        "shape": draw(st.sampled_from(["mixed", "top-heavy"])),
        "wholes": draw(st.sampled_from(["number", "fraction", "both"])),
    }
    if kind == "clock":
        keywords |= {"clock": draw(st.sampled_from([12, 24])), "halves": draw(st.booleans())}
    if kind == "money":
        keywords |= {
            "currency": draw(st.sampled_from(CURRENCIES)),
            "units": draw(st.sampled_from([None, "one", "two"])),
        }
    if kind == "decimal":
        keywords |= {"places": draw(st.sampled_from([None, 3, 4]))}
    if kind == "fraction":
        keywords |= {"over": draw(st.sampled_from([1, 2, 8, 12, 100]))}
    if kind in ("length", "mass", "capacity", "elapsed"):
        names = [None, *(unit.symbol for unit in units_of(kind))]
        small = draw(st.sampled_from(names))
        fits = [name for name in names[1:] if small and _stands_beside(small, name)]
        keywords |= {
            "units": draw(st.sampled_from([None, "one", "two"])),
            "small": small,
            "large": draw(st.sampled_from([None, *fits])),
            "places": draw(st.sampled_from([None, None, 3])),
        }
    return Style(**keywords)  # type: ignore[arg-type]


def _stands_beside(small: str, large: str) -> bool:
    ratio = UNITS[large].size / UNITS[small].size
    return UNITS[large].system == UNITS[small].system and ratio > 1 and ratio.denominator == 1


GRAINS = {
    "whole": [Fraction(1)],
    "decimal": [Fraction(1, bottom) for bottom in (1, 2, 4, 5, 8, 10, 20, 100, 1000)],
    "fraction": [Fraction(1, bottom) for bottom in (1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 100, 360)],
    "length": [Fraction(1), Fraction(1, 2), Fraction(1, 8), Fraction(1, 10), Fraction(12), Fraction(1, 3)],
    "mass": [Fraction(1), Fraction(1, 2), Fraction(1, 4), Fraction(1, 10), Fraction(16), Fraction(1000)],
    "capacity": [Fraction(1), Fraction(1, 2), Fraction(1, 4), Fraction(1, 3), Fraction(8), Fraction(250)],
    "money": [Fraction(1), Fraction(5), Fraction(25)],
    "clock": [Fraction(1), Fraction(5), Fraction(60)],
    "elapsed": [Fraction(1), Fraction(5), Fraction(1, 60), Fraction(1, 4), Fraction(60)],
}
BELOW_ZERO = ("whole", "decimal", "fraction", "clock")


@st.composite
def counts(draw: st.DrawFn, kind: str, most_terms: int = 60) -> Count:
    """A valid count of this kind, up and down, across zero where the kind goes there."""
    grain = draw(st.sampled_from(GRAINS[kind]))
    terms = draw(st.integers(2, most_terms))
    step = draw(st.integers(-400, 400).filter(bool))
    lowest = -3000 if kind in BELOW_ZERO else max(0, -step * (terms - 1))
    start = draw(st.integers(lowest, max(lowest, 0) + 3000))
    style = draw(styles(kind))
    try:
        return Count(kind, start * grain, step * grain, terms, style)
    except CountError as error:
        if error.field == "style" or (kind == "clock" and error.field == "step"):
            # Units that cannot show the value, or a step round the whole clock: tested in their own right.
            return Count(kind, Fraction(abs(start) + 7), Fraction(7 if step > 0 else -7), 2)
        raise


@st.composite
def grids(draw: st.DrawFn, kind: str = "whole") -> Grid:
    """A fold of a count, with lead, fill and ragged lines."""
    count = draw(counts(kind))
    length = draw(st.integers(1, count.terms))
    return Grid(
        count,
        length,
        draw(st.sampled_from(["across", "down", "across-up"])),
        draw(st.integers(0, length - 1)),
    )
