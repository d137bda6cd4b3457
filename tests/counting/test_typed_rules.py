"""A typed rule: against Python's own arithmetic at the first fifty places, and what is refused."""

import re
from contextlib import suppress
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, CountError, Style, judge_rule
from routines.counting.typed_rules import MOST_DEGREE, MOST_NESTED, read_rule
from tests.counting.any_count import counts

PLACES = range(1, 51)
UP_BY_SIX = Count.parse(kind="whole", start="10", step="6", terms=12)
NUMBERS = st.integers(0, 99)


@st.composite
def sums(draw: st.DrawFn, depth: int = 2) -> str:
    """A rule that this grammar and Python's own read alike."""
    terms = [draw(products(depth)) for _ in range(draw(st.integers(1, 2)))]
    text = terms[0]
    for term in terms[1:]:
        text += draw(st.sampled_from([" + ", " - "])) + term
    return text


@st.composite
def products(draw: st.DrawFn, depth: int) -> str:
    inside = [st.just("n"), NUMBERS.map(str)]
    if depth:
        inside.append(sums(depth - 1).map("({})".format))
    text = draw(st.sampled_from(["", "-"])) + draw(st.one_of(inside))
    if draw(st.booleans()):
        text += f" * {draw(NUMBERS)}"
    return text + (f" / {draw(st.integers(1, 9))}" if draw(st.booleans()) else "")


def python_says(rule: str, n: int) -> Fraction:
    exact = re.sub("[0-9]+", lambda number: f"Fraction({number[0]})", rule)
    return Fraction(eval(exact, {"Fraction": Fraction, "n": Fraction(n)}))


@given(rule=sums())
def test_a_rule_gives_at_fifty_places_what_python_gives(rule: str) -> None:
    if len(rule) > 60 or "n" not in rule:
        return
    coefficients = read_rule(rule, Style())
    for n in PLACES:
        assert sum(one * n**power for power, one in enumerate(coefficients)) == python_says(rule, n)


@given(rule=sums(), start=st.integers(-50, 50), step=st.integers(-9, 9).filter(bool))
def test_the_verdict_is_what_fifty_places_show(rule: str, start: int, step: int) -> None:
    if len(rule) > 60 or "n" not in rule:
        return
    count = Count(UP_BY_SIX.kind, Fraction(start), Fraction(step), 12)
    verdict = judge_rule(rule, count)
    apart = [n for n in PLACES if python_says(rule, n) != count.value(n)]
    assert verdict.holds == (not apart)
    assert verdict.differs_at == (apart[0] if apart else None)
    assert verdict.gives == tuple(python_says(rule, n) for n in (1, 2, 3))
    if apart:
        assert (verdict.said, verdict.counted) == (python_says(rule, apart[0]), count.value(apart[0]))
        assert verdict.from_zero == all(python_says(rule, n - 1) == count.value(n) for n in PLACES)
        off = {python_says(rule, n) - count.value(n) for n in PLACES}
        assert verdict.always_off == (off.pop() if len(off) == 1 else None)


@pytest.mark.parametrize("kind", ["whole", "decimal", "fraction", "length", "mass", "capacity", "money", "elapsed"])
@given(data=st.data())
def test_the_rule_of_any_count_typed_in_the_unit_of_its_writing_holds(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    verdict = judge_rule("n", count)
    step, before = count.step / verdict.unit, (count.start - count.step) / verdict.unit
    if max(len(str(number)) for number in (step.numerator, step.denominator, before.numerator, before.denominator)) > 6:
        return
    assert judge_rule(f"{step} × n + {before}".replace("+ -", "- "), count).holds
    assert not judge_rule(f"{step} × n + {before} + 1", count).holds


@pytest.mark.parametrize(
    "typed",
    [
        "6n + 4",
        "6n+4",
        "4 + 6 x n",
        "6xn + 4",
        "n · 6 + 4",
        "6 * N + 4",
        "6 times the place, plus 4",
        "the count number times 6 plus 4",
        "6 por el lugar más 4",
        "6 veces el lugar, más 4",
        "6(n - 1) + 10",
        "16n − 10n + 4",
        "12n/2 + 4",
        "12n ÷ 2 + 4",
        "12 n dividido entre 2 más 4",
        "6.0n + 4,0",
        "4 - -6n",
        "2 1/2 n + 3 ½ n + 4",
        "n × n − n × (n − 6) + 4",
    ],
)
def test_the_ways_to_type_one_rule(typed: str) -> None:
    assert judge_rule(typed, UP_BY_SIX).holds


def test_three_quarters_are_one_number() -> None:
    count = Count.parse(kind="fraction", start="3/4", step="3/4", terms=8)
    assert judge_rule("n x 3/4", count).holds
    assert judge_rule("3/4 n", count).holds
    assert judge_rule("3n/4", count).holds
    assert read_rule("6n ÷ 3/4", Style()) == (0, 8)


def test_the_first_place_may_have_been_taken_for_0() -> None:
    verdict = judge_rule("10 + 6n", UP_BY_SIX)
    assert (verdict.holds, verdict.from_zero, verdict.differs_at) == (False, True, 1)
    assert (verdict.said, verdict.counted) == (16, 10)


def test_it_may_be_right_but_for_the_start() -> None:
    verdict = judge_rule("6n", UP_BY_SIX)
    assert (verdict.from_zero, verdict.always_off) == (False, -4)


def test_it_may_be_right_at_the_first_places_only() -> None:
    bent = judge_rule("6n + 4 + (n - 1)(n - 2)", UP_BY_SIX)
    assert (bent.differs_at, bent.said, bent.counted, bent.always_off) == (3, 24, 22, None)


@pytest.mark.parametrize(
    ("kind", "start", "step", "style", "typed"),
    [
        ("money", "$0.10", "$0.25", Style(), "0.25n - 0.15"),
        ("money", "10c", "25c", Style(), "25n - 15"),
        ("money", "0,10", "0,25", Style(decimal_mark=",", thousands="."), "0,25n - 0.15"),
        ("length", "1 ft 3 in", "9 in", Style(), "9n + 6"),
        ("length", "2 m", "0.5 m", Style(), "1.5 + n/2"),
        ("elapsed", "1 h 35 min", "20 min", Style(), "75 + 20n"),
    ],
)
def test_a_number_is_in_the_unit_that_the_class_writes(
    kind: str, start: str, step: str, style: Style, typed: str
) -> None:
    assert judge_rule(typed, Count.parse(kind=kind, start=start, step=step, terms=8, style=style)).holds


def test_a_clock_has_no_rule_in_n() -> None:
    clock = Count.parse(kind="clock", start="10:50", step="20 min", terms=12)
    with pytest.raises(CountError) as refused:
        judge_rule("20n", clock)
    assert refused.value.code == "rule-on-a-clock"


@pytest.mark.parametrize(
    ("typed", "code"),
    [
        ("", "rule-without-place"),
        (" \u00a0 ", "rule-without-place"),
        ("n" * 61, "rule-too-long"),
        ("1+" * 5000 + "n", "rule-too-long"),
        ("6", "rule-without-place"),
        ("+6", "rule-without-place"),
        ("6x + 4", "rule-without-place"),
        ("6x + n", "rule-x-is-times"),
        ("n x", "rule-x-is-times"),
        ("nn" * (MOST_DEGREE // 2 + 1), "rule-degree-too-high"),
        ("n^2", "rule-unknown-sign"),
        ("n**2", "rule-unexpected"),
        ("9" * 13 + "n", "rule-number-too-long"),
        ("(" * (MOST_NESTED + 1) + "n" + ")" * (MOST_NESTED + 1), "rule-nested-too-deep"),
        ("(" * 59 + "n", "rule-nested-too-deep"),
        ("2(n + 1", "rule-bracket-open"),
        ("n + 1)", "rule-unexpected"),
        ("2n +", "rule-unfinished"),
        ("--n", "rule-unexpected"),
        ("n 6", "rule-unexpected"),
        ("6,, n", "rule-unexpected"),
        ("n/0", "rule-divides-by-zero"),
        ("n ÷ (2 - 2)", "rule-divides-by-zero"),
        ("1/n", "rule-divides-by-place"),
        ("n + 1/0", "bottom-is-zero"),
        ("٣n", "rule-unknown-sign"),
        ("６n", "rule-unknown-sign"),
        ("n²", "rule-unknown-word"),
        ("6 apples n", "rule-unknown-word"),
        ("__import__('os')", "rule-unknown-sign"),
        ("n.__class__", "rule-unknown-sign"),
        ("lambda: n", "rule-unknown-word"),
        ("n if n else n", "rule-unknown-word"),
        ("n;n", "rule-unknown-sign"),
        ("1e9n", "rule-unknown-word"),
    ],
)
def test_what_is_no_rule_is_refused(typed: str, code: str) -> None:
    with pytest.raises(CountError) as refused:
        judge_rule(typed, UP_BY_SIX)
    assert (refused.value.field, refused.value.code) == ("rule", code)


@given(typed=st.text(alphabet="n0123456789 +-*/().,x×÷_^²nplace", max_size=70) | st.text(max_size=70))
def test_anything_typed_is_read_or_refused(typed: str) -> None:
    with suppress(CountError):
        assert len(read_rule(typed, Style())) <= MOST_DEGREE + 1
