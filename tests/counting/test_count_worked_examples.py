"""The published worked examples, as far as they are about values, units, coins, clocks and places.

Source: tests/reference/worked_examples.csv, each row with its own source (Common Core State Standards 2010; NIST
Handbook 44; BIPM SI Brochure; 31 U.S.C.; ISO 8601; OEIS).
"""

import csv
from collections.abc import Callable
from fractions import Fraction
from functools import partial
from pathlib import Path

import pytest

from routines.counting import Count, Style

TABLE = Path(__file__).parents[1] / "reference" / "worked_examples.csv"
ROWS: dict[str, dict[str, str]] = {row["id"]: row for row in csv.DictReader(TABLE.open(encoding="utf-8"))}

# Rows about a pattern or a law of divisibility, not about values: tests/counting/patterns checks those it can.
NOT_ABOUT_VALUES = {"FACT-02", "FACT-03", "FACT-04"}

# The unit of a row, as a kind and the sign a teacher types.
UNITS = {
    "one": ("whole", ""), "whole": ("fraction", ""), "pound": ("mass", " lb"), "cent": ("money", "c"),
    "foot": ("length", " ft"), "inch": ("length", " in"), "yard": ("length", " yd"), "mile": ("length", " mi"),
    "ounce": ("mass", " oz"), "ton": ("mass", " ton"), "cup": ("capacity", " cup"), "pint": ("capacity", " pt"),
    "fluid ounce": ("capacity", " fl oz"), "quart": ("capacity", " qt"), "gallon": ("capacity", " gal"),
    "millimeter": ("length", " mm"), "centimeter": ("length", " cm"), "meter": ("length", " m"),
    "kilometer": ("length", " km"), "gram": ("mass", " g"), "kilogram": ("mass", " kg"),
    "milliliter": ("capacity", " mL"), "liter": ("capacity", " L"), "second": ("elapsed", " s"),
    "minute": ("elapsed", " min"), "hour": ("elapsed", " h"), "day": ("elapsed", " d"),
}  # fmt: skip
RATIOS = {"CC-32", "CC-39", "CC-40"}  # pairs of different things: each side is a count of whole numbers


def listed(row: dict[str, str], column: str = "expected") -> list[str]:
    return [item.strip() for item in row[column].split(";")]


def pair(text: str) -> list[str]:
    return [item.strip() for item in text.strip("() ").split(",")]


def count_of(kind: str, sign: str, start: str, step: str, terms: int, **style: object) -> Count:
    return Count.parse(
        kind=kind,
        start=start + sign,
        step=step + sign,
        terms=max(terms, 2),
        style=Style(**style),  # type: ignore[arg-type]
    )


def check_terms(row: dict[str, str]) -> None:
    kind, sign = UNITS[row["unit"]]
    expected = listed(row)
    count = count_of(kind, sign, row["start"], row["step"], len(expected), wholes="fraction", shape="top-heavy")
    for n, text in enumerate(expected, start=1):
        assert count.value(n) == count.read(text + sign)
        assert count.position_of(count.value(n)) == n
        if "/" in text and kind == "fraction":
            assert count.text(n) == text


def check_pairs(row: dict[str, str]) -> None:
    expected = [pair(item) for item in listed(row)]
    starts, steps = pair(row["start"]), pair(row["step"])
    units = ["one", "one"] if row["id"] in RATIOS else pair(row["unit"])
    sides = [
        count_of(*UNITS[unit], start, step, len(expected))
        for unit, start, step in zip(units, starts, steps, strict=True)
    ]
    for n, values in enumerate(expected, start=1):
        for count, value, unit in zip(sides, values, units, strict=True):
            assert count.value(n) == count.read(value + UNITS[unit][1])
        if row["id"] not in RATIOS:
            assert sides[0].value(n) == sides[1].value(n)


def check_clock(row: dict[str, str]) -> None:
    count = count_of("clock", "", row["start"], row["step"], 8, clock=24 if "24" in row["unit"] else 12)
    expected = listed(row)
    assert [count.text(n) for n in range(1, len(expected) + 1)] == expected


def check_nth_terms(row: dict[str, str], at: tuple[int, ...]) -> None:
    for start, step, n, value in zip(listed(row, "start"), listed(row, "step"), at, listed(row), strict=True):
        assert count_of("whole", "", start, step, 12).value(n) == int(value)


def check_second_terms(row: dict[str, str]) -> None:
    steps = listed(row, "step")
    check_nth_terms(row, (2,) * len(steps))


def check_place_digits(row: dict[str, str]) -> None:
    kind = "decimal" if "." in row["start"] else "whole"
    count = count_of(kind, "", row["start"], "1", 2)
    finest = -len(row["start"].partition(".")[2])
    digits = []
    for place in range(2, finest - 1, -1):
        span = count.span(1, place=place)
        assert span is not None
        digits.append(count.pieces(1)[span[0]].text[span[1] : span[2]])
    assert digits == listed(row)


def check_equal_values(row: dict[str, str]) -> None:
    for given, equal in zip(listed(row, "start"), listed(row), strict=True):
        count = count_of("decimal" if "." in given else "fraction", "", given, "1", 2)
        assert count.read(equal) == count.start


def check_rename(row: dict[str, str]) -> None:
    kind, sign = UNITS[row["unit"]]
    count = count_of(kind, sign, row["start"], "1", 2, small=row["expected"].split()[-1])
    assert count.text(1) == row["expected"]


def check_greatest_common_step(row: dict[str, str]) -> None:
    goals = [Fraction(goal) for goal in listed(row, "start")]
    lands_on_all = [
        step
        for step in range(1, 37)
        if all(count_of("whole", "", "0", str(step), 2).position_of(goal) for goal in goals)
    ]
    assert max(lands_on_all) == int(row["expected"])


def check_joined_terms(row: dict[str, str]) -> None:
    dimes = count_of("money", "c", "10", "10", 2)
    pennies = Count.parse(kind="money", start=dimes.text(2), step="1c", terms=4)
    joined = [dimes.text(1), *(pennies.text(n) for n in range(1, 5))]
    assert joined == [f"{cents}¢" for cents in listed(row)]


def check_steps_to_a_dollar(row: dict[str, str]) -> None:
    for coin, steps in zip(listed(row, "start"), listed(row), strict=True):
        count = count_of("money", "c", coin, coin, 2)
        assert count.position_of(count.read("$1.00")) == int(steps)


def check_coin_values(row: dict[str, str]) -> None:
    steps = []
    for coin in listed(row):
        count = count_of("money", "c", coin, coin, 2)
        steps.append(count.position_of(count.read("$1.00")))
    assert steps == [100, 20, 10, 4, 2, 1]


def check_ones_digit_cycles(row: dict[str, str]) -> None:
    for step, length in enumerate(map(int, listed(row)), start=1):
        count = count_of("whole", "", "7", str(step), 40)
        ones = [count.text(n)[-1] for n in range(1, 41)]
        assert min(k for k in range(1, 21) if ones[k:] == ones[:-k]) == length


CHECKS: dict[str, Callable[[dict[str, str]], None]] = {
    "terms": check_terms,
    "pairs": check_pairs,
    "clock_terms": check_clock,
    "edges": check_second_terms,
    "single_results": check_second_terms,
    "place_digits": check_place_digits,
    "equal_values": check_equal_values,
    "rename": check_rename,
    "greatest_common_step": check_greatest_common_step,
    "joined_terms": check_joined_terms,
    "steps_to_100_cents": check_steps_to_a_dollar,
    "coin_values": check_coin_values,
    "ones_digit_cycle_lengths": check_ones_digit_cycles,
}
# Which term the row is about stands in its words: "8th terms of ...", "9th term ... and 5th term".
NTH = {"CC-18": (8, 8, 8), "CC-20": (9, 5)}


@pytest.mark.parametrize("identity", [identity for identity in ROWS if identity not in NOT_ABOUT_VALUES])
def test_the_published_example_comes_out(identity: str) -> None:
    row = ROWS[identity]
    check = partial(check_nth_terms, at=NTH[identity]) if identity in NTH else CHECKS[row["expected_kind"]]
    check(row)


def test_every_row_that_is_left_out_is_about_a_law_of_digits() -> None:
    assert {ROWS[identity]["expected_kind"] for identity in NOT_ABOUT_VALUES} == {"digital_roots", "divisors_tested"}


@pytest.mark.parametrize(
    ("kind", "typed", "renamed"),
    [
        # NIST Handbook 44, Appendix C, rows US-01, US-04, SI-04 and SI-07 of the table.
        ("length", "23 in", "1 ft 11 in"),
        ("length", "12 in", "1 ft"),
        ("mass", "19 oz", "1 lb 3 oz"),
        ("mass", "1050 g", "1 kg 50 g"),
        ("elapsed", "135 min", "2 h 15 min"),
        ("elapsed", "60 min", "1 h"),
    ],
)
def test_an_amount_is_renamed_in_its_larger_unit(kind: str, typed: str, renamed: str) -> None:
    assert Count.parse(kind=kind, start=typed, step=typed, terms=2, style=Style(units="two")).text(1) == renamed


def test_seventeen_eighths_is_two_wholes_and_one_eighth() -> None:
    # Common Core State Standards (2010), 4.NF.B.3.b.
    count = Count.parse(kind="fraction", start="1/8", step="1/8", terms=17)
    assert (count.text(8), count.text(16), count.text(17)) == ("1", "2", "2 1/8")
