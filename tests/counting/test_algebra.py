"""The rule of a count says every value."""

import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count
from tests.counting.any_count import KINDS, counts


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_the_expression_gives_every_value(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    expression = count.rule().expression
    for at in (1, 2, count.terms, 1000):
        value = count.value(at)
        assert expression.subs("n", at) == sympy.Rational(value.numerator, value.denominator)


@pytest.mark.parametrize(
    ("kind", "start", "step", "text"),
    [
        ("whole", "58", "6", "6 × n + 52"),
        ("whole", "6", "6", "6 × n"),
        ("whole", "1", "3", "3 × n - 2"),
        ("whole", "1,325", "-50", "1,375 - 50 × n"),
        ("whole", "-6", "-6", "-6 × n"),
        ("whole", "12", "-1", "13 - n"),
        ("whole", "1", "1", "n"),
        ("whole", "-1", "-1", "-n"),
        ("whole", "94", "1", "n + 93"),
        ("decimal", "0.5", "1", "n - 0.5"),
        ("length", "1 ft", "1 ft", "1 ft × n"),
        ("whole", "-20", "-6", "-14 - 6 × n"),
        ("fraction", "2/3", "1/3", "1/3 × n + 1/3"),
        ("money", "0.10", "0.25", "$0.25 × n - $0.15"),
        ("length", "1 ft 3 in", "9 in", "9 in × n + 6 in"),
        ("clock", "10:50", "20 min", "10:50 + (n - 1) × 20 min"),
        ("clock", "10:50", "-20 min", "10:50 - (n - 1) × 20 min"),
    ],
)
def test_the_rule_reads_in_the_count_s_own_writing(kind: str, start: str, step: str, text: str) -> None:
    assert Count.parse(kind=kind, start=start, step=step, terms=4).rule().text == text
