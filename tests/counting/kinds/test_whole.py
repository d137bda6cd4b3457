"""Whole numbers: thousands marked, zero crossed, said without "and" in the US."""

import re

import pytest

from routines.counting import Count, CountError, Style
from tests.saying import saying


def whole(start: str, step: str, terms: int = 12, style: Style | None = None) -> Count:
    return Count.parse(kind="whole", start=start, step=step, terms=terms, style=style)


def test_thousands_are_marked() -> None:
    count = whole("1,325", "-50", 16)
    assert [count.text(n) for n in (1, 7, 8, 18, 28)] == ["1,325", "1,025", "975", "475", "-25"]


@pytest.mark.parametrize(("mark", "text"), [(",", "1,325"), (" ", "1 325"), (".", "1.325"), ("", "1325")])
def test_the_thousands_mark_is_the_school_s(mark: str, text: str) -> None:
    style = Style(thousands=mark, decimal_mark="," if mark == "." else ".")
    assert whole("1325", "1", style=style).text(1) == text


def test_counting_down_crosses_zero() -> None:
    count = whole("14", "-6")
    assert [count.text(n) for n in range(1, 6)] == ["14", "8", "2", "-4", "-10"]
    assert [piece.kind for piece in count.pieces(4)] == ["sign", "number"]


@pytest.mark.parametrize(
    ("start", "english", "spanish"),
    [
        # US school practice: no "and" inside a whole number (common practice, no source).
        ("101", "one hundred one", "ciento uno"),
        ("-7", "negative seven", "menos siete"),
        ("0", "zero", "cero"),
        ("21", "twenty-one", "veintiuno"),
        ("16", "sixteen", "dieciséis"),
        ("500", "five hundred", "quinientos"),
        ("100", "one hundred", "cien"),
        ("1325", "one thousand three hundred twenty-five", "mil trescientos veinticinco"),
    ],
)
def test_whole_numbers_are_said(start: str, english: str, spanish: str) -> None:
    count = whole(start, "1")
    assert count.words(1) == english
    assert count.words(1, "es") == spanish


def test_words_follow_the_style_s_language_unless_another_is_asked_for() -> None:
    count = whole("21", "1", style=Style(language="es"))
    assert count.words(1) == "veintiuno"
    assert count.words(1, "en") == "twenty-one"


def test_digits_are_found_behind_the_thousands_mark() -> None:
    count = whole("1,325", "-50", 16)
    assert [count.span(1, place=place) for place in range(5)] == [(0, 4, 5), (0, 3, 4), (0, 2, 3), (0, 0, 1), None]


def test_a_whole_number_has_no_parts() -> None:
    assert whole("58", "6").parts(1) == {}
    assert whole("58", "6").part_names() == ()


@pytest.mark.parametrize("typed", ["--7", "+-5", "7-"])
def test_a_refusal_quotes_what_was_typed_signs_included(typed: str) -> None:
    with pytest.raises(CountError, check=saying(rf"“{re.escape(typed)}” cannot be read as one")) as refused:
        whole(typed, "1")
    assert refused.value.field == "start"
