"""What is said of a typed rule: where it fails, and what is right about it all the same."""

import pytest

from routines.counting import Audience, Count
from routines.counting.languages import LANGUAGES as SAID
from routines.words import judge_rule, unit_of_rule

UP_BY_SIX = Count.parse(kind="whole", start="10", step="6", terms=12)


@pytest.mark.parametrize(
    ("typed", "english", "spanish"),
    [
        ("6n + 4", "Yes, for every n: 10, 16, 22 and so on", "Sí, para todo n: 10, 16, 22 y así sigue"),
        ("10 + 6n", "It is the rule of this count if the first place is 0.", "si el primer lugar es el 0."),
        ("6n", "No: at place 1 it gives 6, and we count 10.", "No: en el lugar 1 da 6, y contamos 10."),
        ("6n", "every number comes out 4 too little.", "todos los números salen 4 de menos."),
        ("6n + 7", "every number comes out 3 too much.", "todos los números salen 3 de más."),
        ("12n - 2", "right up to place 1, but at place 2 it gives 22, and we count 16.", "acierta hasta el lugar 1"),
    ],
)
def test_a_verdict_in_both_languages(typed: str, english: str, spanish: str) -> None:
    assert english in judge_rule(typed, UP_BY_SIX).because
    assert spanish in judge_rule(typed, UP_BY_SIX, Audience(4, "es")).because


@pytest.mark.parametrize("language", SAID)
@pytest.mark.parametrize("typed", ["n/3", "n/7 - 5", "999999999999 n n n", "n - n"])
@pytest.mark.parametrize(
    ("kind", "start", "step"),
    [
        ("whole", "10", "6"), ("decimal", "0.5", "0.25"), ("fraction", "2/3", "1/3"), ("length", "1 ft 3 in", "9 in"),
        ("length", "2 m", "0.5 m"), ("mass", "12 oz", "12 oz"), ("capacity", "250 mL", "400 mL"),
        ("money", "$0.10", "35c"), ("money", "10c", "35c"), ("elapsed", "1 h", "1/2 h"),
    ],
)  # fmt: skip
def test_any_value_of_a_rule_can_be_written(kind: str, start: str, step: str, typed: str, language: str) -> None:
    verdict = judge_rule(typed, Count.parse(kind=kind, start=start, step=step, terms=12), Audience(4, language))
    assert verdict.because.endswith(".")
    assert "{" not in verdict.because


@pytest.mark.parametrize(
    ("kind", "start", "step", "english", "spanish"),
    [
        ("whole", "10", "6", "", ""),
        ("money", "$0.10", "$0.35", "dollars", "dólares"),
        ("money", "10c", "35c", "cents", "centavos"),
        ("length", "1 ft 3 in", "9 in", "inches", "pulgadas"),
        ("elapsed", "20 min", "25 min", "minutes", "minutos"),
    ],
)
def test_the_numbers_of_a_rule_are_of_a_unit(kind: str, start: str, step: str, english: str, spanish: str) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=12)
    assert (unit_of_rule(count, "en"), unit_of_rule(count, "es")) == (english, spanish)
