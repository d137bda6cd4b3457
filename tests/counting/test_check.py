"""Claims that a teacher, a child or an import states, judged right."""

from fractions import Fraction
from random import Random
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Claim, Count, CountError, Grid, check
from routines.counting.checking import judge
from routines.words import check as spoken_check
from tests.brute_force.judging import judge_blocks
from tests.brute_force.lasting import terms_to_zero, two_turns
from tests.counting.claims import a_claim
from tests.counting.comparing import board_of
from tests.counting.random_grids import FILLS, grid_of


def grid(start: str, step: str, terms: int, length: int, kind: str = "whole", **fold: Any) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, **fold)


DOWN_BY_SIX = grid("14", "-6", 20, 5)


def test_each_column_keeping_its_ones_digit_is_false_where_the_count_crosses_zero() -> None:
    verdict = check(a_claim("digit", place=0, along="column", length=1), DOWN_BY_SIX)
    assert (verdict.true, verdict.breaks_at, verdict.true_from, verdict.counterexample) == (False, 6, 4, (1, 6))
    assert (verdict.seen, verdict.holds) == (False, None)


def test_two_of_its_columns_always_keep_it() -> None:
    verdict = check(a_claim("digit", place=0, along="column", length=1, lines=[4, 5]), DOWN_BY_SIX)
    assert (verdict.true, verdict.seen, verdict.holds, verdict.breaks_at) == (True, True, "always", None)


def test_tens_staying_the_same_in_rows_is_shown_or_always_by_where_the_rows_begin() -> None:
    claim = a_claim("digit", place=1, along="row", length=1)
    assert check(claim, grid("12", "2", 8, 4)).breaks_at == 10  # 12 14 16 18 / 20 22 24 26 / 28 30
    assert check(claim, grid("20", "1", 40, 10)).holds == "always"


def test_below_zero_ones_digits_are_those_that_are_written() -> None:
    claim = a_claim("digit", place=0, along="count", length=2)
    assert check(claim, grid("23", "-5", 5, 5)).breaks_at == 6  # 23 18 13 8 3 | -2
    assert check(claim, grid("20", "-5", 5, 5)).breaks_at is None  # 20 15 10 5 0 | -5


def test_a_break_far_beyond_the_view_is_exact() -> None:
    claim = a_claim("digit", place=8, along="count", length=1)
    far = check(claim, grid("123456000", "7", 40, 10))
    assert far.breaks_at == (200_000_000 - 123_456_000 + 6) // 7 + 1
    down = check(claim, grid("923456000", "-7", 40, 10))
    assert down.breaks_at == (923_456_000 - 900_000_000) // 7 + 2


def test_digit_sums_of_nine_end_with_the_eleventh_count() -> None:
    claim = a_claim("digit-sum", along="count", blocks=[[9]])
    assert check(claim, grid("9", "9", 10, 5)).breaks_at == 11
    assert not check(claim, grid("9", "9", 20, 5)).true


def test_a_claim_too_small_to_be_seen_is_true_all_the_same() -> None:
    verdict = check(a_claim("digit", place=0, along="column", length=1), grid("3", "3", 5, 5))
    assert (verdict.true, verdict.seen, verdict.holds, verdict.breaks_at) == (True, False, "shown", 6)


def test_a_wrong_number_of_blocks_is_false_and_no_error() -> None:
    claim = a_claim("digit", place=0, along="column", blocks=[[4], [8]])
    assert not check(claim, grid("4", "4", 20, 5)).true


@pytest.mark.parametrize(
    ("claim", "expected"),
    [
        (a_claim("step"), (True, None)),
        (a_claim("step", difference=6), (True, None)),
        (a_claim("step", difference=5), (False, 2)),
        (a_claim("neighbour", direction="down"), (True, None)),
        (a_claim("neighbour", direction="down", difference=29), (False, 6)),
        (a_claim("landmarks", multiple=10), (True, None)),
        (a_claim("landmarks", multiple=10, every=5), (True, None)),
        (a_claim("landmarks", multiple=10, every=4), (False, 7)),
        (a_claim("landmarks", multiple=10, lie="column"), (True, None)),
        (a_claim("landmarks", multiple=10, lie="row"), (False, 8)),
        (a_claim("landmarks", multiple=10, every=5, first=3, lie="column", lines=[2]), (False, 3)),
        (a_claim("how-many", multiple=10), (True, None)),
        (a_claim("how-many", multiple=10, block=[1, 2, 2]), (True, None)),
        (a_claim("how-many", multiple=10, block=[2, 1]), (False, 3)),
        (a_claim("remainder", modulus=2, along="count"), (True, None)),
        (a_claim("remainder", modulus=4, along="count", blocks=[[0]]), (False, 1)),
        (a_claim("sums", which="ends"), (True, None)),
        (a_claim("sums", which="line-totals", along="row", difference=150), (True, None)),
        (a_claim("sums", which="line-totals", along="row", difference=100), (False, 10)),
        (a_claim("sums", which="line-totals", along="column", difference=24), (True, 22)),
        (a_claim("table"), (False, 1)),
        (a_claim("opposites", pairs=[[1, 2]]), (False, 2)),
    ],
    ids=str,
)
def test_claims_about_58_by_6(claim: Claim, expected: tuple[bool, int | None]) -> None:
    # 58 64 70 76 82 / 88 94 100 106 112 / 118 124 130 136 142 / 148 154 160 166 172
    verdict = check(claim, grid("58", "6", 20, 5))
    assert (verdict.true, verdict.breaks_at) == expected


@pytest.mark.parametrize(
    ("claim", "field", "kind", "start", "step"),
    [
        (a_claim("remainder", modulus=7, along="count", length=1), "modulus", "clock", "10:50", "20 min"),
        (a_claim("landmarks", multiple=7), "multiple", "clock", "10:50", "20 min"),
        (a_claim("sums", which="ends"), "family", "clock", "10:50", "20 min"),
        (a_claim("table"), "family", "clock", "10:50", "20 min"),
        (a_claim("how-many", multiple=60), "family", "clock", "10:50", "20 min"),
        (a_claim("opposites"), "family", "clock", "10:50", "20 min"),
        (a_claim("digit", place=0, along="count", length=1), "place", "clock", "10:50", "20 min"),
        (a_claim("digit", part="inches", along="count", length=1), "part", "whole", "1", "2"),
        (a_claim("digit-run", part="feet", along="count", change=1), "part", "clock", "10:50", "20 min"),
        (a_claim("digit-sum", along="count", length=1), "family", "fraction", "1/2", "1/2"),
    ],
)
def test_a_claim_that_makes_no_sense_for_a_count_says_so(
    claim: Claim, field: str, kind: str, start: str, step: str
) -> None:
    with pytest.raises(CountError) as error:
        check(claim, grid(start, step, 12, 3, kind))
    assert error.value.field == field


def test_an_extreme_digit_sum_is_refused_rather_than_guessed() -> None:
    with pytest.raises(CountError) as error:
        check(a_claim("digit-sum", along="count", length=1), grid("99999999", "99999999", 4, 2))
    assert error.value.field == "family"


FAMILIES = ("digit", "digit", "digit-sum", "remainder")


@settings(max_examples=settings.default.max_examples * 4)
@given(st.integers(0, 2**32))
def test_random_block_claims_are_judged_as_by_listing(seed: int) -> None:
    random = Random(seed)
    view = grid_of(random, "whole", random.choice(FILLS), lead=random.random() < 0.3, down=random.random() < 0.5)
    claim = _random_claim(random, view)
    board = board_of(view)
    crossing = terms_to_zero(board)
    # Both what is read and the block come round in so many terms.
    turn = (two_turns(board, claim.as_dict()) - board.terms - crossing) * (claim.block_length or 1)
    if crossing + turn > 4000 or claim.family == "digit-sum":
        turn = 0  # too far to list: only the view is judged
    by_listing = judge_blocks(board, claim.as_dict(), board.terms + crossing + 2 * turn + 50, turn)
    _, judged = judge(claim, view)
    assert (judged.true, judged.seen) == (by_listing.true, by_listing.seen), (claim, view)
    if not judged.true:
        assert judged.breaks_at == by_listing.first_wrong, (claim, view)
    if turn:
        assert judged.true_from == by_listing.true_from, (claim, view)


def _random_claim(random: Random, view: Grid) -> Claim:
    """A claim that is true, nearly true, or plainly false."""
    family = random.choice(FAMILIES)
    along = random.choice(("count", "row", "column"))
    named: dict[str, Any] = {"along": along}
    if family == "digit":
        named["place"] = random.randint(0, 2)
    elif family == "remainder":
        named["modulus"] = random.choice((2, 3, 4, 5, 10, 12, 20, 25, 50, 100))
    lines = view.lines(along)
    if along != "count" and random.random() < 0.3:
        axis = 0 if along == "row" else 1
        numbers = sorted(view.place(line[0])[axis] for line in lines)
        named["lines"] = sorted(random.sample(numbers, random.randint(1, len(numbers))))
        lines = tuple(line for line in lines if view.place(line[0])[axis] in named["lines"])
    length = random.choice((1, 1, 2, 3, view.line_length))
    if random.random() < 0.5:
        return a_claim(family, **named, length=length)
    read = {
        "digit": lambda n: abs(view.count.value(n)) // 10 ** named.get("place", 0) % 10,
        "digit-sum": lambda n: sum(map(int, str(abs(view.count.value(n))))),
        "remainder": lambda n: view.count.value(n) % named.get("modulus", 1),
    }[family]
    blocks = [[int(Fraction(read(n))) for n in line[:length]] for line in lines]
    if random.random() < 0.3:
        blocks[-1][0] = random.randint(0, 1)
    return a_claim(family, **named, blocks=blocks)


class TestWhereALineDoesNotKeepWhatItReads:
    """A block claim without digits, of length 1 or of any, is answered with the first line and the two cells that differ."""

    CLAIMS = (
        {"family": "digit", "place": 0},
        {"family": "digit-sum"},
        {"family": "remainder", "modulus": "10"},
    )

    @pytest.mark.parametrize("claim", CLAIMS, ids=lambda claim: claim["family"])
    @pytest.mark.parametrize(("along", "cells"), [("column", (1, 5)), ("row", (1, 2)), ("count", (1, 2))])
    def test_the_two_cells_are_told(self, claim: dict[str, Any], along: str, cells: tuple[int, int]) -> None:
        # 58 64 70 76 / 82 ...: ones digits 8 and 2 in column 1, 8 and 4 in row 1; digit sums 13 and 10, 13 and 10.
        view = Grid(Count.parse(kind="whole", start="58", step="6", terms=20), 4)
        verdict = check(Claim.from_dict({**claim, "along": along, "length": 1}), view)
        assert (verdict.true, verdict.counterexample) == (False, cells)

    def test_a_part_is_told_too(self) -> None:
        view = Grid(Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12), 5)
        verdict = check(Claim.from_dict({"family": "digit", "part": "inches", "along": "column", "length": 1}), view)
        assert (verdict.true, verdict.counterexample) == (False, (1, 6))  # 1 ft 3 in, 5 ft

    def test_it_is_said_with_its_places(self) -> None:
        view = Grid(Count.parse(kind="whole", start="58", step="6", terms=20), 4)
        claim = Claim.from_dict({"family": "digit", "place": 0, "along": "column", "length": 1})
        said = spoken_check(claim, view, audience=Audience(3)).because
        assert said == "No: in column 1 the ones digits of 58 and 82, in rows 1 and 2, are 8 and 2."
        odd = Claim.from_dict({"family": "remainder", "modulus": "2", "along": "row", "length": 1})
        sevens = Grid(Count.parse(kind="whole", start="7", step="7", terms=12), 4)
        assert spoken_check(odd, sevens).because == "No: in row 1, 7 in column 1 is odd, and 14 in column 2 is even."


@pytest.mark.parametrize(
    ("kind", "start", "step", "claim", "field"),
    [
        ("fraction", "1/3", "2/3", {"family": "digit", "place": 0}, "place"),
        ("fraction", "1/3", "2/3", {"family": "digit-run", "place": 0}, "place"),
        ("clock", "9:10", "10 min", {"family": "digit", "place": 0}, "place"),
        ("whole", "58", "6", {"family": "digit", "part": "inches"}, "part"),
        ("capacity", "150 mL", "150 mL", {"family": "digit", "part": "inches"}, "part"),
        ("clock", "9:10", "10 min", {"family": "remainder", "modulus": "7"}, "modulus"),
        ("fraction", "1/3", "2/3", {"family": "digit-sum"}, "family"),
    ],
)
def test_what_a_kind_does_not_have_is_refused_by_its_name(
    kind: str, start: str, step: str, claim: dict[str, Any], field: str
) -> None:
    view = Grid(Count.parse(kind=kind, start=start, step=step, terms=12), 4)
    with pytest.raises(CountError) as refused:
        check(Claim.from_dict(claim), view)
    assert refused.value.field == field
