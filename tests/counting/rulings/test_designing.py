"""Ruling 16: designing backwards, sound and complete inside the limits, against trying every count by hand."""

from fractions import Fraction

import pytest

from routines.counting import Grid, Limits, check, design_grids
from tests.counting.claims import a_claim


def keys(grids: tuple[Grid, ...]) -> set[tuple[Fraction, Fraction, int, int, str, int]]:
    return {(g.count.start, g.count.step, g.terms, g.line_length, g.fill, g.lead) for g in grids}


TENS = Limits(
    kind="whole", starts=(50, 60), steps=(5, 7), line_lengths=(4, 6), terms=(18, 20), fills=("across",), at_most=None
)


def test_tens_in_one_column_by_hand() -> None:
    """Tens lie in one column where the step times the line length is a multiple of 10 but no ten repeats in the row.

    By 6 (a ten every 5th if start is even): lines of 5. By 5 (every 2nd if the start is a multiple of 5): lines of 4 and
    6 hold 2 and 3 of them: columns, not one column. By 7 (every 10th): no line of 4, 5 or 6 puts two under each other,
    except lines of 5, where tens come every second row: in the column too, with two in view.
    """
    found = design_grids([a_claim("landmarks", multiple=10, lie="column")], TENS)
    assert found.complete
    expected = set()
    for terms in (18, 19, 20):
        expected |= {(Fraction(s), Fraction(6), terms, 5, "across", 0) for s in (50, 52, 54, 56, 58, 60)}
        for start in range(50, 61):
            first = next(n for n in range(1, 11) if (start + 7 * (n - 1)) % 10 == 0)
            if first + 10 <= terms:
                expected.add((Fraction(start), Fraction(7), terms, 5, "across", 0))
    assert keys(found.grids) == expected


def test_every_grid_shows_what_is_wanted() -> None:
    wanted = [a_claim("digit", place=0, along="column", length=1), a_claim("how-many", multiple=10)]
    found = design_grids(wanted, TENS)
    assert found.grids
    for grid in found.grids:
        for claim in wanted:
            verdict = check(claim, grid)
            assert (verdict.true, verdict.seen) == (True, True)


def test_blocks_fix_the_start() -> None:
    limits = Limits(
        kind="whole", starts=(0, 40), steps=(6, 6), line_lengths=(5, 5), terms=(20, 20), fills=("across",), at_most=None
    )
    found = design_grids([a_claim("digit", place=0, along="column", blocks=[[8], [4], [0], [6], [2]])], limits)
    assert [int(s) for s in sorted(g.count.start for g in found.grids)] == [8, 18, 28, 38]
    any_digits = design_grids([a_claim("digit", place=0, along="column", length=1)], limits)
    assert len(any_digits.grids) == 41


@pytest.mark.parametrize(("off", "starts"), [(True, [1, 2, 4, 5]), (False, [0, 3, 6]), (None, [0, 1, 2, 3, 4, 5, 6])])
def test_starts_off_the_multiples_on_them_or_both(off: bool | None, starts: list[int]) -> None:
    limits = Limits(
        kind="whole",
        starts=(0, 6),
        steps=(3, 3),
        line_lengths=(3, 3),
        terms=(6, 6),
        fills=("across",),
        off_multiple=off,
    )
    found = design_grids([a_claim("step", difference=3)], limits)
    assert sorted(int(g.count.start) for g in found.grids) == starts


def test_largest_bounds_every_value_in_view() -> None:
    limits = Limits(
        kind="whole", starts=(0, 10), steps=(5, 5), line_lengths=(2, 2), terms=(4, 4), fills=("across",), largest=20
    )
    # The last value is the start and 15: at most 20 for starts up to 5.
    assert sorted(int(g.count.start) for g in design_grids([a_claim("step")], limits).grids) == [0, 1, 2, 3, 4, 5]


def test_starts_and_steps_are_multiples_of_the_grain() -> None:
    limits = Limits(
        kind="fraction", grain=Fraction(1, 4), starts=(0, 1), steps=(Fraction(1, 2), 1), line_lengths=(2, 2),
        terms=(4, 4), fills=("across",), at_most=None,
    )  # fmt: skip
    found = design_grids([a_claim("step")], limits)
    starts, steps = {0, 1, 2, 3, 4}, {2, 3, 4}  # in quarters
    assert {(g.count.start * 4, g.count.step * 4) for g in found.grids} == {(a, b) for a in starts for b in steps}


def test_lead_is_0_and_no_line_is_longer_than_the_count() -> None:
    limits = Limits(kind="whole", starts=(1, 1), steps=(1, 1), line_lengths=(3, 9), terms=(5, 5), at_most=None)
    found = design_grids([a_claim("step")], limits)
    assert {(g.line_length, g.fill, g.lead) for g in found.grids} == {
        (length, fill, 0) for length in (3, 4, 5) for fill in ("across", "down")
    }


def test_complete_says_whether_some_are_left_out() -> None:
    limits = Limits(kind="whole", starts=(0, 9), steps=(1, 1), line_lengths=(3, 3), terms=(6, 6), fills=("across",))
    ten = design_grids([a_claim("step")], limits)
    assert (len(ten.grids), ten.complete) == (10, True)
    cut = design_grids(
        [a_claim("step")],
        Limits(
            kind="whole", starts=(0, 9), steps=(1, 1), line_lengths=(3, 3), terms=(6, 6), fills=("across",), at_most=4
        ),
    )
    assert (cut.grids, cut.complete) == (ten.grids[:4], False)


def test_without_a_limit_of_their_number_all_are_given() -> None:
    limits = Limits(kind="whole", starts=(0, 99), steps=(1, 2), line_lengths=(3, 3), terms=(6, 6), fills=("across",))
    found = design_grids([a_claim("step")], limits)
    assert (len(found.grids), found.complete) == (200, True)


def test_limits_the_wrong_way_round_hold_nothing() -> None:
    assert design_grids([a_claim("step")], Limits(kind="whole", starts=(10, 0))).grids == ()
