"""Figures as they are set, and the widths they are set by, held to the font file itself."""

from pathlib import Path

import pytest
from fontTools.ttLib import TTFont
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Piece
from routines.drawing.metrics import DIGIT_HEIGHT, WIDTHS, text_width
from routines.drawing.numerals import MINUS, pieces_of_words, set_numeral

FONTS = Path(__file__).resolve().parents[3] / "static" / "fonts"


def font(weight: str, kind: str = "ttf") -> TTFont:
    return TTFont(FONTS / f"countfold-hand-{weight}.{kind}")


@pytest.mark.parametrize("weight", ["regular", "bold"])
def test_the_table_of_widths_is_the_fonts(weight: str) -> None:
    of = font(weight)
    cmap, units = of.getBestCmap(), of["head"].unitsPerEm
    assert {c: round(of["hmtx"][cmap[ord(c)]][0] * 1000 / units) for c in WIDTHS[weight]} == WIDTHS[weight]


@pytest.mark.parametrize("weight", ["regular", "bold"])
def test_digits_are_tabular_and_as_high_as_the_table_says(weight: str) -> None:
    assert len({WIDTHS[weight][digit] for digit in "0123456789"}) == 1
    of = font(weight)
    one = of["glyf"][of.getBestCmap()[ord("1")]]
    assert DIGIT_HEIGHT - 10 <= round(one.yMax * 1000 / of["head"].unitsPerEm) <= DIGIT_HEIGHT


@pytest.mark.parametrize("weight", ["regular", "bold"])
def test_the_four_is_open_and_the_one_has_a_foot(weight: str) -> None:
    of = font(weight)
    cmap, glyphs = of.getBestCmap(), of["glyf"]
    # A closed 4 has a counter, a contour that turns the other way than its outline; an 8 has two.
    assert turns(glyphs[cmap[ord("8")]], glyphs) == {True, False}
    assert len(turns(glyphs[cmap[ord("4")]], glyphs)) == 1
    # The foot of the 1 reaches further right than its stem, which ends at the top.
    points = list(glyphs[cmap[ord("1")]].getCoordinates(glyphs)[0])
    top = max(y for _, y in points)
    assert max(x for x, y in points if y < 50) > max(x for x, y in points if y > 0.9 * top) + 50


def turns(glyph, glyphs) -> set[bool]:
    """In which directions the contours of a glyph run (shoelace formula)."""
    coordinates, ends, _ = glyph.getCoordinates(glyphs)
    found, start = set(), 0
    for end in ends:
        points = list(coordinates[start : end + 1])
        found.add(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1], strict=True)) > 0)
        start = end + 1
    return found


@pytest.mark.parametrize("weight", ["regular", "bold"])
@pytest.mark.parametrize("kind", ["ttf", "woff2"])
def test_the_font_has_our_name_its_licence_and_is_small(weight: str, kind: str) -> None:
    names = font(weight, kind)["name"]
    for name_id in (1, 3, 4, 6):
        assert "Andika" not in names.getDebugName(name_id)
        assert "SIL" not in names.getDebugName(name_id)
    assert names.getDebugName(1) == "Countfold Hand"
    assert "SIL OPEN FONT LICENSE Version 1.1" in names.getDebugName(13)
    assert "SIL OPEN FONT LICENSE Version 1.1" in (FONTS / "OFL.txt").read_text(encoding="utf-8")
    if kind == "woff2":
        assert (FONTS / f"countfold-hand-{weight}.woff2").stat().st_size < 80_000


def test_spanish_and_the_signs_of_a_plan_are_in_the_font() -> None:
    for weight in ("regular", "bold"):
        missing = set("¿¡áéíóúüñÁÉÍÓÚÜÑ“”‘’–—…→−×÷·¢€£°′″") - set(map(chr, font(weight).getBestCmap()))
        assert not missing


def test_a_mixed_number_is_set_as_the_look_says() -> None:
    """Proportions of LOOK's stacked fractions, at font size 100."""
    numeral = set_numeral((Piece("number", "2"), Piece("top", "1"), Piece("bottom", "3")), 100)
    whole, top, bottom = numeral.figures
    assert (whole.size, top.size, bottom.size) == (100, 74, 74)
    bar = numeral.bars[0]
    assert bar[0] - (whole.x + whole.width) == pytest.approx(12)
    assert bar[1] - bar[0] == pytest.approx(max(top.width, bottom.width) + 12)
    half_digit = DIGIT_HEIGHT / 2000 * 74
    assert top.baseline - half_digit == pytest.approx(-43)
    assert bottom.baseline - half_digit == pytest.approx(45)


def test_units_are_small_and_stand_on_the_baseline() -> None:
    pieces = (Piece("number", "2"), Piece("unit", "ft"), Piece("number", "8"), Piece("unit", "in"))
    two, ft, eight, inch = set_numeral(pieces, 100).figures
    assert (ft.size, inch.size) == (62, 62)
    assert len({figure.baseline for figure in (two, ft, eight, inch)}) == 1
    assert eight.x - (ft.x + ft.width) > ft.x - (two.x + two.width)


def test_a_sign_is_a_minus_and_stays_with_its_number() -> None:
    sign, number = set_numeral((Piece("sign", "-"), Piece("number", "18")), 20).figures
    assert sign.text == MINUS
    assert number.x == pytest.approx(sign.x + sign.width)


@given(st.text("0123456789,.", min_size=1, max_size=9), st.data())
def test_a_digits_box_lies_where_the_digit_is_written(text: str, data) -> None:
    at = data.draw(st.integers(0, len(text) - 1))
    numeral = set_numeral((Piece("number", text),), 40)
    box = numeral.digits(0, at, at + 1)
    assert box.left == pytest.approx(-numeral.width / 2 + text_width(text[:at], 40))
    assert box.right - box.left == pytest.approx(text_width(text[at], 40))


@pytest.mark.parametrize(
    ("words", "kinds"),
    [
        ("54", ["number"]),
        ("5/8", ["top", "bottom"]),
        ("1 2/3", ["number", "top", "bottom"]),
        ("-1/2", ["sign", "top", "bottom"]),
        ("ninety-ten", ["number"]),
        ("1/2 of it", ["number"]),
    ],
)
def test_what_was_said_is_set_as_it_was_typed(words: str, kinds: list[str]) -> None:
    assert [piece.kind for piece in pieces_of_words(words)] == kinds
