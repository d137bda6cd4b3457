"""The published worked examples: the pattern or relation that each row is about.

Source: tests/reference/worked_examples.csv, each row with its own source (Common Core State Standards 2010; NIST
Handbook 44; BIPM SI Brochure; 31 U.S.C.; ISO 8601; OEIS). Their terms alone are checked in test_count_worked_examples.
"""

import csv
from collections.abc import Callable
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from sympy import gcd

from routines.counting import Count, Grid, Style, check, find_patterns, locate
from routines.counting.patterns.digit_sum import DigitSum
from routines.counting.patterns.readings import PlaceDigit
from routines.counting.patterns.remainder import Remainder
from tests.counting.claims import a_claim

TABLE = Path(__file__).parents[1] / "reference" / "worked_examples.csv"
ROWS: dict[str, dict[str, str]] = {row["id"]: row for row in csv.DictReader(TABLE.open(encoding="utf-8"))}

NOT_COVERED: dict[str, str] = {}
"""Rows that no count can express, with the reason. There is none."""

CHECKS: dict[str, Callable[[dict[str, str]], None]] = {}


def about(*identities: str) -> Callable[[Callable[[dict[str, str]], None]], Callable[[dict[str, str]], None]]:
    """The rows that a check is for."""

    def keep(check_row: Callable[[dict[str, str]], None]) -> Callable[[dict[str, str]], None]:
        CHECKS.update(dict.fromkeys(identities, check_row))
        return check_row

    return keep


@pytest.mark.parametrize("identity", ROWS)
def test_the_published_relation_holds(identity: str) -> None:
    if identity not in NOT_COVERED:
        CHECKS[identity](ROWS[identity])


def test_every_row_is_covered_or_listed_with_its_reason() -> None:
    assert CHECKS.keys() | NOT_COVERED.keys() == ROWS.keys()
    assert not CHECKS.keys() & NOT_COVERED.keys()
    assert set(NOT_COVERED) == set()


def items(text: str) -> list[str]:
    return [item.strip() for item in text.split(";")]


def pairs(text: str) -> list[tuple[int, int]]:
    return [(int(a), int(b)) for a, b in (item.strip(" ()").split(",") for item in items(text))]


def row_grid(row: dict[str, str], kind: str = "whole", length: int = 5, sign: str = "", **style: Any) -> Grid:
    """The count of a row whose `expected` lists its terms, folded; the terms are those of the row."""
    terms = items(row["expected"])
    count = Count.parse(
        kind=kind, start=row["start"] + sign, step=row["step"] + sign, terms=len(terms), style=Style(**style)
    )
    assert [count.value(n) for n in range(1, len(terms) + 1)] == [count.read(text + sign) for text in terms]
    return Grid(count, min(length, len(terms)))


def always(grid: Grid, family: str, **parameters: Any) -> None:
    """The claim is true of the view, can be seen, and always holds."""
    verdict = check(a_claim(family, **parameters), grid)
    assert (verdict.true, verdict.seen, verdict.holds) == (True, True, "always"), (grid, family, parameters)


def so(grid: Grid, family: str, **parameters: Any) -> None:
    """The claim is true of a view that may be too small to show it."""
    assert check(a_claim(family, **parameters), grid).true, (grid, family, parameters)


# Counting: tens, hundreds, multiples, odd and even.


@about("CC-01", "CC-07")
def check_counting_by_ones_to_a_hundred_and_more(row: dict[str, str]) -> None:
    grid = row_grid(row, length=10)
    first = next(n for n in range(1, 11) if grid.count.value(n) % 10 == 0)
    always(grid, "landmarks", multiple=10, every=10, first=first, lie="column", lines=[first])
    always(grid, "digit", place=0, along="column", length=1)


@about("CC-02", "CC-12", "CC-14", "CC-17", "CC-24")
def check_the_nth_is_n_steps(row: dict[str, str]) -> None:
    grid = row_grid(row)
    always(grid, "table", step=row["step"])
    assert locate(grid, items(row["expected"])[-1]).n == len(items(row["expected"]))


@about("CC-03")
def check_zero_is_a_term_and_a_landmark(row: dict[str, str]) -> None:
    grid = row_grid(row)
    assert grid.count.text(1) == "0"
    always(grid, "landmarks", multiple=10, every=10, first=1)


@about("CC-04")
def check_eighteen_is_ten_and_eight_more(row: dict[str, str]) -> None:
    assert row_grid(row).count.value(9) == 10 + 8
    ten_columns = Grid(Count.parse(kind="whole", start="11", step="1", terms=20), 10)
    assert (locate(ten_columns, 18).row, locate(ten_columns, 18).column) == (1, 8)
    always(ten_columns, "neighbour", direction="down", difference=10)


@about("CC-05", "CC-06")
def check_ten_is_passed_on_the_way(row: dict[str, str]) -> None:
    grid = row_grid(row)
    so(grid, "landmarks", multiple=10, first={"CC-05": 3, "CC-06": 4}[row["id"]])


@about("CC-09", "CC-15")
def check_a_ten_or_a_hundred_more_or_less(row: dict[str, str]) -> None:
    for start, step, result in zip(items(row["start"]), items(row["step"]), items(row["expected"]), strict=True):
        grid = Grid(Count.parse(kind="whole", start=start, step=step, terms=2), 2)
        assert grid.count.text(2).replace(",", "") == result
        always(grid, "step", difference=step)
        always(grid, "digit", place=0, along="count", length=1)
        so(grid, "remainder", modulus=abs(int(step)), along="count", length=1)


@about("CC-10", "CC-19")
def check_every_number_is_even(row: dict[str, str]) -> None:
    always(row_grid(row), "remainder", modulus=2, along="count", blocks=[["0"]])


@about("CC-23", "OEIS-09")
def check_odd_and_even_take_turns(row: dict[str, str]) -> None:
    grid = row_grid(row)
    always(grid, "remainder", modulus=2, along="count", blocks=[["1", "0"]])
    reported = [p.claim for p in find_patterns(grid, implied=True)]  # it follows from the remainders by 6
    assert a_claim("remainder", modulus=2, along="count", blocks=[[1, 0]]) in reported
    columns = Grid(Count.parse(kind="whole", start="1", step="1", terms=30), 3)
    column_one = [columns.count.value(n) for n in columns.lines("column")[0]]
    assert column_one == [int(text) for text in items(row["expected"])][:10]
    always(columns, "remainder", modulus=3, along="column", blocks=[["1"], ["2"], ["0"]])


@about("CC-18", "CC-20")
def check_products_are_nth_terms(row: dict[str, str]) -> None:
    positions = {"CC-18": (8, 8, 8), "CC-20": (9, 5)}[row["id"]]
    for step, n, product in zip(items(row["step"]), positions, items(row["expected"]), strict=True):
        grid = Grid(Count.parse(kind="whole", start=step, step=step, terms=10), 5)
        always(grid, "table", step=step)
        assert locate(grid, product).n == n
    if row["id"] == "CC-18":
        assert [int(text) for text in items(row["expected"])] == [40, 16, 40 + 16]


@about("CC-41")
def check_the_largest_step_that_lands_on_both(row: dict[str, str]) -> None:
    goals = [int(text) for text in items(row["start"])]
    both = [
        step
        for step in range(1, max(goals) + 1)
        if all(locate(Grid(Count.parse(kind="whole", start="0", step=str(step), terms=2), 2), g).appears for g in goals)
    ]
    assert max(both) == int(row["expected"]) == gcd(*goals)


@about("CC-42")
def check_opposites_lie_mirrored_about_zero(row: dict[str, str]) -> None:
    grid = row_grid(row, length=11)  # -7 ... 3: -3 and 3, -2 and 2, -1 and 1
    verdict = check(a_claim("opposites", pairs=[[5, 11], [6, 10], [7, 9]]), grid)
    assert (verdict.true, verdict.seen, verdict.breaks_at) == (True, True, 12)  # 4 joins -4
    always(grid, "step", difference=1)


@about("FACT-05")
def check_results_within_ten_twenty_and_a_hundred(row: dict[str, str]) -> None:
    for start, step, result in zip(items(row["start"]), items(row["step"]), items(row["expected"]), strict=True):
        grid = Grid(Count.parse(kind="whole", start=start, step=step, terms=2), 2)
        always(grid, "step", difference=step)
        assert locate(grid, result).n == 2


# Places and digits.


@about("CC-11", "CC-33")
def check_the_digit_at_each_place(row: dict[str, str]) -> None:
    kind = "decimal" if "." in row["start"] else "whole"
    grid = Grid(Count.parse(kind=kind, start=row["start"], step="1000", terms=2), 2)
    for place, digit in zip(range(2, -4, -1), items(row["expected"]), strict=False):
        always(grid, "digit", place=place, along="count", blocks=[[int(digit)]])


@about("CC-13", "OEIS-02")
def check_ones_digits_are_five_and_zero(row: dict[str, str]) -> None:
    first, second = (int(text) % 10 for text in items(row["expected"])[:2])
    assert {first, second} == {0, 5}
    always(row_grid(row), "digit", place=0, along="count", blocks=[[first, second]])


CYCLES = {
    "OEIS-01": [0, 3, 6, 9, 2, 5, 8, 1, 4, 7],  # "run through all ten digits before repeating"
    "OEIS-03": [0, 7, 4, 1, 8, 5, 2, 9, 6, 3],
    "OEIS-05": [0, 2, 4, 6, 8],
    "OEIS-10": [1, 6],
    "OEIS-11": [3],
    "OEIS-13": [0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
}


@about(*CYCLES)
def check_the_cycle_of_the_ones_digits(row: dict[str, str]) -> None:
    grid = row_grid(row)
    always(grid, "digit", place=0, along="count", blocks=[CYCLES[row["id"]]])
    if row["id"] == "OEIS-13":  # the sign stands on every term but 0
        assert [grid.count.text(n)[0] for n in range(1, 5)] == ["0", "-", "-", "-"]
    if row["id"] == "OEIS-11":  # column 3 of the counting numbers in rows of ten
        tens = Grid(Count.parse(kind="whole", start="1", step="1", terms=200), 10)
        assert [tens.count.value(n) for n in tens.lines("column")[2]] == list(map(int, items(row["expected"])))


@about("OEIS-04")
def check_digit_sums_of_nines(row: dict[str, str]) -> None:
    grid = row_grid(row)
    always(grid, "remainder", modulus=9, along="count", blocks=[["0"]])  # digital root 9 for all but 0
    nines = Grid(Count.parse(kind="whole", start="9", step="9", terms=10), 5)
    verdict = check(a_claim("digit-sum", along="count", blocks=[[9]]), nines)
    assert (verdict.true, verdict.holds, verdict.breaks_at) == (True, "shown", 11)  # 9 ... 90, then 99


@about("OEIS-08")
def check_the_last_two_digits_of_25s(row: dict[str, str]) -> None:
    always(row_grid(row), "remainder", modulus=100, along="count", blocks=[["0", "25", "50", "75"]])


@about("FACT-01")
def check_cycle_lengths_of_ones_digits(row: dict[str, str]) -> None:
    listed = dict(enumerate(map(int, items(row["expected"])), start=1))
    for step in range(1, 101):
        for start in (0, 7, 23):
            grid = Grid(Count.parse(kind="whole", start=str(start), step=str(step), terms=40), 5)
            blocks = [
                p.claim.block_length
                for p in find_patterns(grid, implied=True)
                if p.claim.parameters.get("place") == 0
                and p.claim.parameters.get("along") == "count"
                and p.claim.family == "digit"
            ]
            assert blocks == [10 // gcd(10, step)]
            assert blocks == [listed.get(step, blocks[0])]


@about("FACT-02")
def check_digital_roots(row: dict[str, str]) -> None:
    grid = Grid(Count.parse(kind="whole", start="1", step="1", terms=19), 9)
    always(grid, "remainder", modulus=9, along="count", blocks=[[*map(str, range(1, 9)), "0"]])
    roots = list(map(int, items(row["expected"])))
    by_nine = Remainder(grid.count, Fraction(9))
    assert roots == [0, *(by_nine.at(n) or 9 for n in range(1, 20))]


@about("FACT-03", "FACT-04")
def check_divisibility_rules(row: dict[str, str]) -> None:
    count = Count.parse(kind="whole", start="0", step="1", terms=2)
    ones, tens = PlaceDigit(count, 0), PlaceDigit(count, 1)
    places = [PlaceDigit(count, place) for place in range(5)]
    digit_sum = DigitSum(count)
    left = {m: Remainder(count, Fraction(m)) for m in (2, 3, 4, 5, 9, 11)}
    for n in range(1, 10_002):
        if row["id"] == "FACT-03":
            assert (ones.at(n) % 2 == 0) == (left[2].at(n) == 0)
            assert (digit_sum.at(n) % 3 == 0) == (left[3].at(n) == 0)
            assert ((10 * tens.at(n) + ones.at(n)) % 4 == 0) == (left[4].at(n) == 0)
            assert (ones.at(n) in (0, 5)) == (left[5].at(n) == 0)
        else:
            assert digit_sum.at(n) % 9 == left[9].at(n)
            assert sum((-1) ** i * place.at(n) for i, place in enumerate(places)) % 11 == left[11].at(n)


# Fractions and decimals.


@about("CC-21", "CC-30")
def check_two_names_of_one_number(row: dict[str, str]) -> None:
    for name, other in zip(items(row["start"]), items(row["expected"]), strict=True):
        kind = "decimal" if "." in name else "fraction"
        grid = Grid(Count.parse(kind=kind, start=name, step="1", terms=4), 2)
        value = Fraction(other)
        assert locate(grid, value).n == 1
        always(grid, "remainder", modulus=1, along="count", blocks=[[value % 1]])


WHOLES = {"CC-22": 4, "CC-25": 8, "CC-26": 4, "CC-35": 4, "CC-36": 3, "CC-37": 5}


@about(*WHOLES)
def check_where_the_wholes_come(row: dict[str, str]) -> None:
    grid = row_grid(row, kind="fraction", wholes="fraction", shape="top-heavy")
    every = WHOLES[row["id"]]
    always(grid, "table", step=row["step"])
    so(grid, "landmarks", multiple=1, every=every, first=every)
    if row["id"] == "CC-37":  # twenty fifths make four
        assert locate(grid, 4).n == 20


@about("CC-27")
def check_three_lots_of_two_fifths(row: dict[str, str]) -> None:
    grid = row_grid(row, kind="fraction", wholes="fraction", shape="top-heavy")
    fifths = Grid(Count.parse(kind="fraction", start="1/5", step="1/5", terms=6), 3)
    assert grid.count.value(3) == fifths.count.value(6)
    always(fifths, "table", step="1/5")
    always(grid, "table", step="2/5")


@about("CC-28")
def check_helpings_between_whole_pounds(row: dict[str, str]) -> None:
    grid = row_grid(row, kind="mass", sign=" lb")
    assert 16 < grid.count.value(5) < 32  # between 1 lb and 2 lb, in ounces
    so(grid, "landmarks", multiple=16, every=8, first=8)
    always(grid, "table", step=6)


@about("CC-29", "CC-34")
def check_the_common_bottom_number_is_kept(row: dict[str, str]) -> None:
    first, second = items(row["expected"])
    count = Count.parse(kind="fraction", start=row["start"], step=row["step"], terms=2, style=Style(shape="top-heavy"))
    assert [count.text(1), count.text(2)] == [first, second]
    bottom = int(first.split("/")[1])
    always(Grid(count, 2), "remainder", modulus=Fraction(1, bottom), along="count", blocks=[["0"]])
    so(Grid(count, 2), "digit", part="bottom", along="count", blocks=[[bottom]])


# Pairs of counts, units, coins and clocks.


@about("CC-32", "CC-39", "CC-40")
def check_pairs_keep_their_ratio(row: dict[str, str]) -> None:
    (start_a, start_b), (step_a, step_b) = pairs(row["start"])[0], pairs(row["step"])[0]
    terms = len(items(row["expected"]))
    a, b = (
        Count.parse(kind="whole", start=str(start), step=str(step), terms=terms)
        for start, step in ((start_a, step_a), (start_b, step_b))
    )
    assert [(a.value(n), b.value(n)) for n in range(1, terms + 1)] == pairs(row["expected"])
    # Start and step in one ratio keep every pair in it, (0, 0) too, without dividing.
    assert start_a * step_b == start_b * step_a
    assert all(a.value(n) * step_b == b.value(n) * step_a for n in range(1, 400))
    if start_a:
        always(Grid(a, 2), "table", step=step_a)
        always(Grid(b, 2), "table", step=step_b)


SIGNS = {
    "foot": ("length", "ft"), "inch": ("length", "in"), "yard": ("length", "yd"), "mile": ("length", "mi"),
    "ounce": ("mass", "oz"), "pound": ("mass", "lb"), "ton": ("mass", "ton"), "cup": ("capacity", "cup"),
    "pint": ("capacity", "pt"), "fluid ounce": ("capacity", "fl oz"), "quart": ("capacity", "qt"),
    "gallon": ("capacity", "gal"), "millimeter": ("length", "mm"), "centimeter": ("length", "cm"),
    "meter": ("length", "m"), "kilometer": ("length", "km"), "gram": ("mass", "g"), "kilogram": ("mass", "kg"),
    "milliliter": ("capacity", "mL"), "liter": ("capacity", "L"), "second": ("elapsed", "s"),
    "minute": ("elapsed", "min"), "hour": ("elapsed", "h"), "day": ("elapsed", "d"),
}  # fmt: skip
UNIT_ROWS = [identity for identity in ROWS if identity.startswith(("US-", "SI-")) or identity == "CC-31"]


@about(*UNIT_ROWS)
def check_the_larger_unit_comes_again_in_the_smaller(row: dict[str, str]) -> None:
    (kind, large), (_, small) = (SIGNS[name.strip()] for name in row["unit"].split(","))
    expected = pairs(row["expected"])
    counts = [
        Count.parse(kind=kind, start=f"{side} {sign}", step=f"{side} {sign}", terms=len(expected))
        for side, sign in zip(expected[0], (large, small), strict=True)
    ]
    for n, (in_large, in_small) in enumerate(expected, start=1):
        assert counts[0].value(n) == counts[1].value(n) == counts[0].read(f"{in_large} {large}")
        assert counts[1].read(f"{in_small} {small}") == counts[1].value(n)
    unit = counts[0].value(1)
    for count in counts:
        always(Grid(count, 2), "table", step=unit)
        always(Grid(count, 2), "remainder", modulus=unit, along="count", blocks=[["0"]])
    ones = Count.parse(kind=kind, start=f"1 {small}", step=f"1 {small}", terms=2)
    so(Grid(ones, 2), "landmarks", multiple=unit, every=expected[0][1], first=expected[0][1])


@about("CC-38")
def check_five_centimetres_in_metres(row: dict[str, str]) -> None:
    grid = Grid(Count.parse(kind="length", start="5 cm", step="5 cm", terms=40), 10)
    assert grid.count.read(row["expected"]) == grid.count.value(1) == 5
    always(grid, "landmarks", multiple=100, every=20, first=20)  # twenty times 0.05 m is a metre


@about("CC-16")
def check_dimes_then_pennies(row: dict[str, str]) -> None:
    dimes = Grid(Count.parse(kind="money", start="10c", step="10c", terms=2), 2)
    pennies = Grid(Count.parse(kind="money", start=dimes.count.text(2), step="1c", terms=4), 2)
    always(dimes, "table", step=10)
    always(pennies, "step", difference=1)
    joined = [dimes.count.value(1), *(pennies.count.value(n) for n in range(1, 5))]
    assert joined == list(map(int, items(row["expected"])))


@about("COIN-01", "COIN-02")
def check_how_many_coins_make_a_dollar(row: dict[str, str]) -> None:
    coins = items(row["step"] or row["expected"])
    steps = items(row["expected"]) if row["id"] == "COIN-01" else ["100", "20", "10", "4", "2", "1"]
    for coin, to_a_dollar in zip(coins, map(int, steps), strict=True):
        grid = Grid(Count.parse(kind="money", start=f"{coin}c", step=f"{coin}c", terms=2), 2)
        so(grid, "landmarks", multiple=100, every=to_a_dollar, first=to_a_dollar)


@about("CLK-01", "CLK-02")
def check_minutes_come_round(row: dict[str, str]) -> None:
    style = Style(clock=24) if "24" in row["unit"] else Style()
    count = Count.parse(kind="clock", start=row["start"], step=row["step"], terms=8, style=style)
    expected = items(row["expected"])
    assert [count.text(n) for n in range(1, len(expected) + 1)] == expected
    first = count.parts(1)["minutes"]
    block = [(first + 15 * i) % 60 for i in range(4)]
    always(Grid(count, 4), "digit", part="minutes", along="count", blocks=[block])
    assert all(count.parts(n)["minutes"] < 60 for n in range(1, 200))


@about("OEIS-06", "OEIS-12")
def check_multiples_of_fifteen_and_sixty_in_hours(row: dict[str, str]) -> None:
    blocks = {"OEIS-06": [["0", "15", "30", "45"]], "OEIS-12": [["0"]]}[row["id"]]
    grid = row_grid(row)
    always(grid, "remainder", modulus=60, along="count", blocks=blocks)
    hours = Grid(Count.parse(kind="elapsed", start="0 min", step=f"{row['step']} min", terms=grid.terms), 4)
    always(hours, "remainder", modulus=60, along="count", blocks=blocks)


@about("OEIS-07")
def check_multiples_of_sixteen_are_pounds_in_ounces(row: dict[str, str]) -> None:
    grid = row_grid(row)
    always(grid, "remainder", modulus=16, along="count", blocks=[["0"]])
    pounds = Count.parse(kind="mass", start="0 lb", step="1 lb", terms=grid.terms)
    assert all(pounds.value(n) == grid.count.value(n) for n in range(1, 100))
