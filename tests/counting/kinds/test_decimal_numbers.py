"""Decimals: places kept or trimmed, point or comma, said in tenths and hundredths."""

import pytest

from routines.counting import Count, CountError, Style
from tests.saying import saying


def decimal(start: str, step: str, terms: int = 12, **style: object) -> Count:
    return Count.parse(kind="decimal", start=start, step=step, terms=terms, style=Style(**style))  # type: ignore[arg-type]


def texts(count: Count, terms: int = 6) -> list[str]:
    return [count.text(n) for n in range(1, terms + 1)]


def test_places_are_kept_at_a_whole() -> None:
    # common_slips.csv D01, D02 and D07 write the right counts so: 2.9, 3.0 and 1.40, 1.43, 1.46.
    assert texts(decimal("2.7", "0.1"), 4) == ["2.7", "2.8", "2.9", "3.0"]
    assert texts(decimal("1.4", "0.03"), 3) == ["1.40", "1.43", "1.46"]


def test_typed_zeros_are_kept() -> None:
    assert texts(decimal("0.50", ".25"), 3) == ["0.50", "0.75", "1.00"]
    assert texts(decimal("0.50", ".5"), 3) == ["0.50", "1.00", "1.50"]


def test_simplified_decimals_are_trimmed() -> None:
    assert texts(decimal("0.50", ".25", fractions="simplified"), 3) == ["0.5", "0.75", "1"]


def test_chosen_places_are_always_shown() -> None:
    assert texts(decimal("0.5", "0.5", places=2), 3) == ["0.50", "1.00", "1.50"]


def test_too_few_places_are_refused() -> None:
    with pytest.raises(CountError) as refused:
        decimal("0.5", "0.25", places=1)
    assert refused.value.field == "style"


def test_the_comma_is_written_where_it_is_the_mark() -> None:
    assert texts(decimal("3,5", "0,5", decimal_mark=","), 2) == ["3,5", "4,0"]


def test_counting_down_keeps_the_sign() -> None:
    assert texts(decimal("0.2", "-0.1"), 4) == ["0.2", "0.1", "0.0", "-0.1"]


@pytest.mark.parametrize(
    ("start", "saying", "english", "spanish"),
    [
        ("0.5", "written", "five tenths", "cinco décimas"),
        ("0.1", "written", "one tenth", "una décima"),
        ("0.30", "written", "thirty hundredths", "treinta centésimas"),
        ("0.30", "renamed", "three tenths", "tres décimas"),
        ("0.21", "written", "twenty-one hundredths", "veintiuna centésimas"),
        ("2.5", "written", "two and five tenths", "dos y cinco décimas"),
        ("2.5", "counted", "twenty-five tenths", "veinticinco décimas"),
        ("3.0", "written", "three", "tres"),
        ("3.0", "counted", "thirty tenths", "treinta décimas"),
        ("-0.125", "written", "negative one hundred twenty-five thousandths", "menos ciento veinticinco milésimas"),
        ("0.0", "written", "zero", "cero"),
    ],
)
def test_decimals_are_said(start: str, saying: str, english: str, spanish: str) -> None:
    count = decimal(start, "1", saying=saying)
    assert count.words(1) == english
    assert count.words(1, "es") == spanish


def test_places_are_found_right_of_the_mark() -> None:
    count = decimal("1,347.25", "1")
    pieces = count.pieces(1)
    found = {}
    for place in range(-3, 5):
        span = count.span(1, place=place)
        found[place] = span and pieces[span[0]].text[span[1] : span[2]]
    assert found == {-3: None, -2: "5", -1: "2", 0: "7", 1: "4", 2: "3", 3: "1", 4: None}


@pytest.mark.parametrize(
    ("start", "places", "advice"),
    [("0.5", 0, "Show at least 1 decimal place, or"), ("0.25", 1, "Show at least 2 decimal places, or")],
)
def test_too_few_places_are_refused_saying_how_many_it_takes(start: str, places: int, advice: str) -> None:
    with pytest.raises(CountError, check=saying(advice)) as refused:
        decimal(start, "1", places=places)
    assert refused.value.field == "style"
