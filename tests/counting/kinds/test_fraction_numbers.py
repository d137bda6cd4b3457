"""Fractions: denominator kept or simplified, mixed or top-heavy, wholes as number, fraction or both."""

from fractions import Fraction

import pytest

from routines.counting import Count, Style


def fraction(start: str, step: str, terms: int = 12, **style: object) -> Count:
    return Count.parse(kind="fraction", start=start, step=step, terms=terms, style=Style(**style))  # type: ignore[arg-type]


def texts(count: Count, terms: int = 4) -> list[str]:
    return [count.text(n) for n in range(1, terms + 1)]


@pytest.mark.parametrize(
    ("start", "step", "style", "written"),
    [
        ("1/4", "1/4", {}, ["1/4", "2/4", "3/4", "1", "1 1/4"]),
        ("1/4", "1/4", {"fractions": "simplified"}, ["1/4", "1/2", "3/4", "1", "1 1/4"]),
        ("1/4", "1/4", {"shape": "top-heavy"}, ["1/4", "2/4", "3/4", "1", "5/4"]),
        ("1/4", "1/4", {"wholes": "fraction"}, ["1/4", "2/4", "3/4", "4/4", "1 1/4"]),
        ("1/4", "1/4", {"wholes": "both"}, ["1/4", "2/4", "3/4", "4/4 = 1", "1 1/4"]),
        ("1/4", "1/4", {"wholes": "fraction", "fractions": "simplified"}, ["1/4", "1/2", "3/4", "4/4", "1 1/4"]),
        ("-2/3", "1/3", {}, ["-2/3", "-1/3", "0", "1/3"]),
        ("-4/3", "1/3", {}, ["-1 1/3", "-1", "-2/3", "-1/3"]),
        ("-1", "1/2", {"wholes": "both"}, ["-2/2 = -1", "-1/2", "0/2 = 0", "1/2"]),
        ("2/8", "2/8", {}, ["2/8", "4/8", "6/8", "1", "1 2/8"]),
        ("1/2", "1/3", {}, ["3/6", "5/6", "1 1/6"]),
        ("2", "1", {"wholes": "fraction"}, ["2", "3"]),
        ("1999 1/3", "1/3", {}, ["1,999 1/3", "1,999 2/3", "2,000"]),
        ("1999 1/3", "1/3", {"thousands": " "}, ["1 999 1/3", "1 999 2/3", "2 000"]),
        ("1999 1/3", "1/3", {"shape": "top-heavy"}, ["5998/3", "5999/3", "2,000"]),
    ],
)
def test_a_fraction_count_is_written_in_its_style(
    start: str, step: str, style: dict[str, object], written: list[str]
) -> None:
    assert texts(fraction(start, step, **style), len(written)) == written


def test_a_start_of_exact_fractions_keeps_the_common_denominator() -> None:
    # Common Core State Standards (2010), 4.NF.C.5: 3/10 + 4/100 = 34/100, kept over 100.
    assert texts(fraction("3/10", "4/100"), 2) == ["30/100", "34/100"]


def test_parts_are_those_that_are_written() -> None:
    mixed = fraction("2/3", "1/3")
    assert [mixed.parts(n) for n in (1, 2, 3)] == [
        {"top": 2, "bottom": 3},
        {"whole": 1},
        {"whole": 1, "top": 1, "bottom": 3},
    ]
    assert mixed.part_names() == ("whole", "top", "bottom")
    top_heavy = fraction("2/3", "1/3", shape="top-heavy", wholes="fraction")
    assert [top_heavy.parts(n) for n in (1, 2, 3)] == [{"top": top, "bottom": 3} for top in (2, 3, 4)]
    assert top_heavy.part_names() == ("top", "bottom")


def test_a_part_of_a_whole_named_twice_is_the_fraction_s() -> None:
    count = fraction("2/3", "1/3", wholes="both")
    assert count.parts(2) == {"top": 3, "bottom": 3}


@pytest.mark.parametrize(
    ("value", "style", "english", "spanish"),
    [
        ("2 1/3", {}, "two and one third", "dos y un tercio"),
        ("4/3", {"shape": "top-heavy"}, "four thirds", "cuatro tercios"),
        ("4/3", {"saying": "counted"}, "four thirds", "cuatro tercios"),
        ("6/3", {"saying": "counted"}, "six thirds", "seis tercios"),
        ("4/6", {"saying": "renamed"}, "two thirds", "dos tercios"),
        ("1/2", {}, "one half", "un medio"),
        ("3/2", {"shape": "top-heavy"}, "three halves", "tres medios"),
        ("3/4", {}, "three fourths", "tres cuartos"),
        ("-7/8", {}, "negative seven eighths", "menos siete octavos"),
        ("5/12", {}, "five twelfths", "cinco doceavos"),
        ("21/32", {}, "twenty-one thirty-seconds", "veintiún treintaidosavos"),
        ("3/3", {"wholes": "fraction"}, "three thirds", "tres tercios"),
        ("3/3", {"wholes": "both"}, "three thirds, or one", "tres tercios, o uno"),
        ("7/100", {}, "seven hundredths", "siete centésimos"),
    ],
)
def test_fractions_are_said(value: str, style: dict[str, object], english: str, spanish: str) -> None:
    over = int(value.partition("/")[2])
    count = fraction(value, f"1/{over}", **style)
    assert count.words(1) == english
    assert count.words(1, "es") == spanish


def test_a_jump_is_written_over_the_kept_denominator() -> None:
    count = fraction("1/4", "1/4", wholes="both")
    assert [count.difference_text(Fraction(size, 4)) for size in (2, 4, -5)] == ["2/4", "1", "1 1/4"]


def test_simplified_wholes_are_named_in_the_parts_that_are_counted() -> None:
    for wholes, texts in (("fraction", ["1/3", "2/3", "3/3", "1 1/3"]), ("both", ["1/3", "2/3", "3/3 = 1", "1 1/3"])):
        style = Style(fractions="simplified", wholes=wholes)
        count = Count.parse(kind="fraction", start="2/6", step="2/6", terms=4, style=style)
        assert [count.text(n) for n in range(1, 5)] == texts
