"""The order of a list, and what is not listed again."""

from routines.counting import Claim, Count, Grid, find_patterns
from routines.counting.patterns.ranking import rank
from tests.counting.claims import a_claim

from .board import grid

# One claim of each class of the design's order, most noticeable first, for a grid filled across.
ORDER = [
    a_claim("step", difference=6),
    a_claim("neighbour", direction="right", difference=6),
    a_claim("neighbour", direction="down", difference=30),
    a_claim("landmarks", multiple=10, every=5, first=3, lie="column", lines=[3]),
    a_claim("digit", place=1, along="column", blocks=[[1]]),
    a_claim("digit", place=0, along="column", blocks=[[1]]),
    a_claim("remainder", modulus=3, along="count", blocks=[[1]]),
    a_claim("remainder", modulus=4, along="count", blocks=[[1]]),
    a_claim("digit", place=0, along="count", blocks=[[1, 6]]),
    a_claim("digit", place=0, along="count", blocks=[[8, 4, 0, 6, 2]]),
    a_claim("remainder", modulus=9, along="count", blocks=[[1, 4, 7]]),
    a_claim("digit-run", place=1, along="count", change=1),
    a_claim("how-many", multiple=10, block=[1, 2, 2]),
    a_claim("how-many", multiple=20, block=[3]),
    a_claim("digit-sum", along="count", blocks=[[9]]),
    a_claim("table", step=6),
    a_claim("neighbour", direction="down-right", difference=36),
    a_claim("sums", which="ends"),
    a_claim("opposites", pairs=[[1, 2]]),
    a_claim("landmarks", multiple=4, every=2, first=2, lie="scattered", lines=[]),
    a_claim("landmarks", multiple=8, every=4, first=2, lie="scattered", lines=[]),
]


def test_the_most_noticeable_comes_first() -> None:
    view = grid("58", "6", 20, 5)
    backwards = ORDER[::-1]
    assert sorted(backwards, key=lambda claim: rank(claim, view)) == ORDER


def test_along_the_fill_is_down_in_a_grid_filled_down() -> None:
    view = grid("58", "6", 20, 5, fill="down")
    down, right = (a_claim("neighbour", direction=d, difference=1) for d in ("down", "right"))
    assert rank(down, view) < rank(right, view)


def listed(view: Grid) -> list[Claim]:
    return [pattern.claim for pattern in find_patterns(view)]


def implied_only(view: Grid) -> list[Claim]:
    shown = listed(view)
    return [p.claim for p in find_patterns(view, implied=True) if p.claim not in shown]


def test_a_constant_along_the_count_is_not_said_again_of_rows_and_columns() -> None:
    view = grid("5", "10", 12, 4)
    ones = [c.parameters.get("along") for c in listed(view) if c.family == "digit" and c.parameters.get("place") == 0]
    assert ones == ["count"]
    assert {
        c.parameters.get("along") for c in implied_only(view) if c.family == "digit" and c.parameters.get("place") == 0
    } == {
        "row",
        "column",
    }


def test_ones_digits_above_nought_say_the_remainders_by_ten_five_and_two() -> None:
    view = grid("58", "6", 20, 5)
    columns = {
        c.parameters.get("modulus")
        for c in implied_only(view)
        if c.parameters.get("along") == "column" and getattr(c, "block_length", None) == 1
    }
    assert {10, 5} <= columns


def test_below_nought_the_remainders_are_said_since_they_hold_longer() -> None:
    view = grid("23", "-5", 5, 5)  # 3 8 3 8 3, then -2: the digits break, the remainders go on
    assert a_claim("remainder", modulus=10, along="count", blocks=[[3, 8]]) in listed(view)


def test_while_the_count_is_written_only_what_is_on_the_board_is_seen() -> None:
    view = grid("58", "6", 20, 5)
    assert find_patterns(view, upto=8) == find_patterns(view.cut(8))
    assert find_patterns(view, upto=1) == []


def test_what_goes_without_saying_is_not_said_first() -> None:
    """All are whole centimeters where nothing else is written; of halves of an inch it is worth saying."""
    whole = a_claim("remainder", modulus=1, along="count", blocks=[[0]])
    claims = [
        one.claim for one in find_patterns(Grid(Count.parse(kind="length", start="75 cm", step="25 cm", terms=16), 4))
    ]
    assert whole in claims
    assert whole not in claims[:8]
    halves = Grid(Count.parse(kind="length", start="1/2 in", step="1/2 in", terms=12), 4)
    wholes = [one.claim.family for one in find_patterns(halves)[:6] if one.claim.parameters.get("modulus") == 1]
    assert wholes
