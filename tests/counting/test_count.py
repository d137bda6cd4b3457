"""A count: its values, its positions, and what cannot be a count."""

import pickle
from dataclasses import FrozenInstanceError, replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, CountError, Style
from routines.errors import say
from tests.counting.any_count import KINDS, counts
from tests.saying import saying


def whole(start: object = "58", step: object = "6", terms: object = 20) -> Count:
    return Count.parse(kind="whole", start=start, step=step, terms=terms)  # type: ignore[arg-type]


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_each_value_is_the_one_before_and_a_step(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    value = count.start
    for n in range(1, 250):
        assert count.value(n) == value
        assert count.scaled(n) == value * count.scale
        value += count.step


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_a_position_is_found_for_what_is_counted_and_for_nothing_else(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    n = data.draw(st.integers(1, 400))
    assert count.position_of(count.value(n)) == n
    assert count.position_of(count.value(n) + count.step / 2) is None
    assert count.position_of(count.start - count.step * n) is None


def test_going_on_past_the_end_and_below_zero() -> None:
    count = Count.parse(kind="length", start="3 ft", step="-9 in", terms=5)
    assert (count.value(6), count.text(6)) == (-9, "-9 in")


def test_a_count_is_frozen_hashable_and_equal_by_what_was_chosen() -> None:
    count = whole()
    assert count == whole()
    assert hash(count) == hash(whole())
    assert count != whole(terms=21)
    with pytest.raises(FrozenInstanceError):
        count.terms = 21  # type: ignore[misc]


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_a_count_can_be_handed_to_another_process(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    handed = pickle.loads(pickle.dumps(count))
    assert handed == count
    assert [handed.text(n) for n in (1, 2, 99)] == [count.text(n) for n in (1, 2, 99)]


def test_an_error_can_be_handed_to_another_process() -> None:
    error = pickle.loads(pickle.dumps(CountError("terms", "terms-out-of-range", least=2, most=200)))
    assert (error.field, error.code, error.values) == ("terms", "terms-out-of-range", {"least": 2, "most": 200})


def test_a_count_changed_is_a_valid_count_too() -> None:
    count = Count.parse(kind="decimal", start="0.5", step="0.5", terms=8)
    assert replace(count, step=Fraction(1, 100)).text(2) == "0.51"
    with pytest.raises(CountError):
        replace(count, step=Fraction(0))


@pytest.mark.parametrize(
    ("field", "kind", "start", "step", "terms"),
    [
        ("step", "whole", "1", "0", 5),
        ("terms", "whole", "1", "1", 1),
        ("terms", "whole", "1", "1", 201),
        ("terms", "whole", "1", "1", 5.0),
        ("terms", "whole", "1", "1", True),
        ("terms", "whole", "1", "1", "5"),
        ("kind", "ratio", "1", "1", 5),
        ("kind", None, "1", "1", 5),
        ("start", "whole", 1.0, "1", 5),
        ("step", "whole", "1", 0.5, 5),
        ("start", "whole", True, "1", 5),
        ("start", "whole", None, "1", 5),
        ("start", "whole", "1,000,000,001", "1", 5),
        ("step", "whole", "1", "2,000,000,000", 5),
        ("terms", "whole", "1", "1,000,000,000", 5),
        ("start", "fraction", "1/1001", "1", 5),
        ("start", "fraction", "500/2000", "1", 5),
        ("step", "fraction", "1/999", "1/1000", 5),
        ("step", "decimal", "1", "0.0001", 5),
        ("start", "decimal", "1/3", "1", 5),
        ("start", "whole", "1.5", "1", 5),
        ("start", "whole", Fraction(3, 2), 1, 5),
        ("step", "whole", 1, Fraction(3, 2), 5),
        ("step", "money", "$0.50", "-60c", 5),
        ("terms", "money", "$2", "-60c", 5),
        ("start", "money", "-$2", "60c", 5),
        ("terms", "elapsed", "1 h", "-20 min", 5),
    ],
)
def test_what_cannot_be_a_count_is_refused_at_its_field(
    field: str, kind: object, start: object, step: object, terms: object
) -> None:
    with pytest.raises(CountError) as refused:
        Count.parse(kind=kind, start=start, step=step, terms=terms)  # type: ignore[arg-type]
    assert refused.value.field == field
    assert say(refused.value).endswith(".")


@pytest.mark.parametrize("kind", KINDS)
def test_zero_is_a_count_of_every_kind(kind: str) -> None:
    # Common Core State Standards (2010), K.CC.A.3: zero is written like any number.
    count = Count(kind, Fraction(0), Fraction(5), 4)
    assert count.value(1) == 0
    assert count.read(count.text(1)) == 0


def test_a_denominator_just_small_enough_is_counted() -> None:
    assert Count.parse(kind="fraction", start="1/1000", step="1/1000", terms=2).text(2) == "2/1000"


def test_two_odd_denominators_are_counted_while_every_value_has_a_small_one() -> None:
    # 1/999 and then 1/37: the step 26/999 keeps both denominators under a thousand.
    assert Count("fraction", Fraction(1, 999), Fraction(26, 999), 2).value(2) == Fraction(1, 37)


def test_words_are_said_in_english_or_spanish_only() -> None:
    with pytest.raises(CountError) as refused:
        whole().words(1, "fr")
    assert refused.value.field == "language"


def test_a_style_is_a_style() -> None:
    with pytest.raises(CountError) as refused:
        Count.parse(kind="whole", start=1, step=1, terms=5, style={"clock": 12})  # type: ignore[arg-type]
    assert refused.value.field == "style"


def test_friendly_multiples_hold_at_least_those_that_are_always_tried() -> None:
    least = {
        "whole": "2 3 4 5 6 7 8 9 10 11 12 20 25 50 100 1000",
        "decimal": "1/10 1/2 1 2 5 10 100",
        "fraction": "1/2 1 2 5 10",
        "length": "1 6 12 36",
        "mass": "8 16",
        "capacity": "8 16 32 128",
        "money": "5 10 25 50 100 500 1000",
        "clock": "15 30 60 720",
        "elapsed": "15 30 60",
    }
    for kind, multiples in least.items():
        count = Count(kind, Fraction(0), Fraction(1), 4)
        assert set(map(Fraction, multiples.split())) <= set(count.friendly_multiples())
    metric = {"cm": ("length", "1 10 50 100"), "g": ("mass", "100 500 1000"), "mL": ("capacity", "100 250 500 1000")}
    for unit, (kind, multiples) in metric.items():
        count = Count(kind, Fraction(0), Fraction(1), 4, Style(small=unit))
        assert set(map(Fraction, multiples.split())) <= set(count.friendly_multiples())


@pytest.mark.parametrize(
    ("kind", "start", "typed", "system"),
    [
        ("length", "1 ft 3 in", "42 cm", "customary"),
        ("length", "45 cm", "1 ft", "metric"),
        ("mass", "250 g", "1 lb", "metric"),
        ("mass", "4 oz", "2 kg", "customary"),
        ("capacity", "1 L 50 mL", "1 cup", "metric"),
        ("capacity", "2 qt", "1 L", "customary"),
    ],
)
def test_a_value_in_units_of_the_other_system_is_refused(kind: str, start: str, typed: str, system: str) -> None:
    count = Count.parse(kind=kind, start=start, step=start, terms=12)
    with pytest.raises(CountError, check=saying(f"Write the value in {system} units")) as refused:
        count.read(typed)
    assert refused.value.field == "value"
    assert count.text(1) in say(refused.value)


def test_only_a_float_is_called_a_floating_point_number() -> None:
    for value, said in ((True, False), (None, False), (0.5, True)):
        with pytest.raises(CountError) as refused:
            whole(start=value)
        assert ("floating-point" in say(refused.value)) is said


def test_what_is_remembered_of_a_count_is_found_by_an_equal_one_and_no_other() -> None:
    typed = Count.parse(kind="whole", start="1,325", step="-50", terms=16)
    kept = {typed: "this one"}
    assert kept[whole(start=1325, step=Fraction(-50), terms=16)] == "this one"
    for other in (whole(1325, -50, 15), whole(1325, 50, 16), replace(typed, style=Style(thousands=""))):
        assert other not in kept
    assert Count("decimal", typed.start, typed.step, 16) not in kept
