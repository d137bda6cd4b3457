"""Ordinals and lists. Spanish ordinals: Real Academia Española, Ortografía (2010); English: common practice."""

import pytest

from routines.words import listing, ordinal, series


@pytest.mark.parametrize(
    ("n", "written"),
    [
        (1, "1st"),
        (2, "2nd"),
        (3, "3rd"),
        (4, "4th"),
        (11, "11th"),
        (12, "12th"),
        (13, "13th"),
        (21, "21st"),
        (112, "112th"),
    ],
)
def test_english_ordinals(n: int, written: str) -> None:
    assert ordinal(n) == written


@pytest.mark.parametrize(
    ("n", "alone", "before_a_noun", "feminine"),
    [
        (1, "1.º", "1.er", "1.ª"),
        (3, "3.º", "3.er", "3.ª"),
        (6, "6.º", "6.º", "6.ª"),
        (11, "11.º", "11.º", "11.ª"),
        (13, "13.º", "13.er", "13.ª"),
        (21, "21.º", "21.er", "21.ª"),
    ],
)
def test_spanish_ordinals(n: int, alone: str, before_a_noun: str, feminine: str) -> None:
    assert ordinal(n, "es") == alone
    assert ordinal(n, "es", before_noun=True) == before_a_noun
    assert ordinal(n, "es", feminine=True) == feminine


def test_lists_end_in_and() -> None:
    assert listing([]) == ""
    assert listing(["10"]) == "10"
    assert listing(["10", "40"]) == "10 and 40"
    assert listing(["10", "40", "70"]) == "10, 40 and 70"
    assert listing(["10", "40", "70"], "es") == "10, 40 y 70"


def test_a_comma_in_a_number_asks_for_semicolons() -> None:
    assert listing(["1,000", "1,050", "1,100"]) == "1,000; 1,050 and 1,100"
    assert series(["0,5", "1", "1,5"]) == "0,5; 1; 1,5"
