"""Fraction bars: as many parts shaded as the fraction says, the last jump's parts under the bracket."""

from collections import defaultdict
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, CountError, Style
from routines.drawing.pictures import NARROW, WIDE, draw_picture, pictures_for
from tests.routines.drawing.pictures.drawn import count, number, of_class, written

BAR = 24  # px high; the key's squares are lower


def shaded(drawn: str) -> list[tuple[int, int, int]]:
    """Dark, jumped and taken parts in each row, from the top."""
    rows: dict[float, list[int]] = defaultdict(lambda: [0, 0, 0])
    for at, look in enumerate(("p-part-shaded", "p-part-jump", "p-part-taken")):
        for part in of_class(drawn, look):
            if number(part, "height") == BAR:
                rows[number(part, "y")][at] += 1
    return [tuple(rows[y]) for y in sorted(rows)]


def test_three_fourths() -> None:
    # 3/4; 1 2/4 is 3 parts and 3 more; 2 1/4; 3
    assert shaded(draw_picture(count("fraction", "3/4", "3/4", 4))) == [(3, 0, 0), (3, 3, 0), (6, 3, 0), (9, 3, 0)]


def test_backward_shows_what_is_left_and_what_was_taken() -> None:
    drawn = draw_picture(count("fraction", "2", "-2/5", 4))
    assert shaded(drawn) == [(10, 0, 0), (8, 0, 2), (6, 0, 2), (4, 0, 2)]
    assert any(text.words == "taken away" for text in written(drawn))


def test_tenths_cut_the_whole_into_ten() -> None:
    drawn = draw_picture(count("decimal", "0.2", "0.2", 3), kind="bars")
    assert shaded(drawn) == [(2, 0, 0), (2, 2, 0), (4, 2, 0)]
    assert len(of_class(drawn, "p-part")) == 8 + 6 + 4


@st.composite
def fractions_forward(draw: st.DrawFn) -> Count:
    parts = draw(st.integers(2, 12))
    step, start = draw(st.integers(1, 2 * parts)), draw(st.integers(0, 3 * parts))
    terms = draw(st.integers(2, 12))
    try:
        return Count("fraction", Fraction(start, parts), Fraction(step, parts), terms, Style(over=parts))
    except CountError as error:
        raise AssertionError from error


@given(fractions_forward(), st.sampled_from([WIDE, NARROW]))
def test_parts_and_closed_wholes_make_the_value(of: Count, width: int) -> None:
    assert ("bars", "Fraction bars") in pictures_for(of)
    drawn = draw_picture(of, kind="bars", width=width)
    wholes = {}
    for text in written(drawn):
        if text.words.endswith(" wholes"):
            [block] = [b for b in of_class(drawn, "p-whole") if number(b, "y") < text.bottom < number(b, "y") + BAR
                       and number(b, "x") < text.left < number(b, "x") + number(b, "width")]  # fmt: skip
            wholes[number(block, "y")] = int(text.words.removesuffix(" wholes"))
    rows: dict[float, Fraction] = defaultdict(Fraction)
    for look in ("p-part-shaded", "p-part-jump"):
        for part in of_class(drawn, look):
            y = number(part, "y")
            if number(part, "height") == BAR and not (
                y in wholes and number(part, "width") > 50 and look == "p-part-shaded"
            ):
                rows[y] += Fraction(1, of.style.over)
    tops = sorted({number(b, "y") for b in of_class(drawn, "p-whole") if number(b, "height") == BAR})
    assert [rows[y] + wholes.get(y, 0) for y in tops] == [of.value(n) for n in range(1, of.terms + 1)]


@pytest.mark.parametrize("width", [WIDE, NARROW])
def test_the_bracket_runs_over_the_parts_of_the_jump(width: int) -> None:
    drawn = draw_picture(count("fraction", "1/3", "1/3", 6), width=width)
    brackets = [path.get("d") for path in of_class(drawn, "p-jump")]
    jumped = [part for part in of_class(drawn, "p-part-jump") if number(part, "height") == BAR]
    for bracket, part in zip(brackets, jumped, strict=False):
        start, end = float(bracket[1:].split()[0]), float(bracket.split("H")[1].split("V")[0])
        assert start == pytest.approx(number(part, "x"), abs=6)  # over the gap where a whole begins
        assert end == pytest.approx(number(part, "x") + number(part, "width"), abs=0.2)


def test_a_key_says_what_the_shadings_are() -> None:
    words = {text.words for text in written(draw_picture(count("fraction", "1/3", "1/3", 6)))}
    assert {"before the jump", "the jump"} <= words
    spanish = {text.words for text in written(draw_picture(count("fraction", "1/3", "1/3", 6), language="es"))}
    assert {"antes del salto", "el salto"} <= spanish
