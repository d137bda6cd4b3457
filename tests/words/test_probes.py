"""Numbers to ask about: they are past the end or near misses, as they say."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting.audience import Audience
from routines.counting.count import Count
from routines.counting.grid import Grid
from routines.words import probes
from tests.brute_force.locating import first_meeting, first_meeting_on_clock, neighbours, place_by_writing
from tests.words.test_locate import number_grids


def fold(kind: str, start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


KINDS = [
    ("whole", "58", "6", 20, 5),
    ("whole", "-7", "3", 12, 4),
    ("whole", "90", "-4", 12, 4),
    ("decimal", "0.8", "0.3", 12, 4),
    ("fraction", "2/3", "3/4", 12, 4),
    ("length", "1 ft 3 in", "9 in", 12, 4),
    ("mass", "6 oz", "6 oz", 12, 4),
    ("capacity", "150 mL", "150 mL", 12, 6),
    ("money", "$5.50", "$2.50", 12, 4),
    ("money", "$2.10", "-$0.25", 6, 3),
    ("clock", "10:50", "20 min", 12, 3),
    ("clock", "4:00", "-20 min", 9, 3),
    ("elapsed", "25 min", "25 min", 12, 4),
]


def are_as_flagged(grid: Grid, level: int) -> None:
    """Near the grid, each yes a count past the end at its place, each no never a count, as many of each where both are."""
    count, found = grid.count, probes(grid, Audience(level))
    start, step = Fraction(count.start), Fraction(count.step)
    on_the_board = {count.text(n) for n in range(1, grid.terms + 1)}
    for probe in found:
        n = (
            first_meeting(start, step, probe.value)
            if count.wrap is None
            else first_meeting_on_clock(start, step, probe.value, count.wrap)
        )
        assert (probe.appears, probe.n) == (n is not None, n)
        assert probe.text not in on_the_board
        ahead = (probe.value - start) / step
        if probe.appears:
            assert n is not None
            assert grid.terms < n <= 2 * grid.terms
            row, column = place_by_writing(n, grid.line_length, grid.fill, grid.lead)
            assert (probe.row, probe.column) == (row, column)
            assert f"row {row}, column {column}" in probe.why
        elif probe.sort == "behind":
            assert -grid.terms <= ahead < 0
        else:
            assert 0 < ahead < 2 * grid.terms
            assert (probe.before, probe.after) == neighbours(start, step, probe.value)
    coming = [probe for probe in found if probe.appears]
    assert len(coming) * 2 == len(found) or len(coming) in (0, len(found))
    if coming and len(coming) < len(found):
        assert [probe.appears for probe in found] == [True, False] * len(coming)


@given(number_grids(), st.integers(0, 8))
def test_every_yes_comes_every_no_does_not_all_near_and_as_many_of_each(grid, level):
    are_as_flagged(grid, level)


@pytest.mark.parametrize(("kind", "start", "step", "terms", "length"), KINDS)
@pytest.mark.parametrize("level", [0, 2, 4, 8])
@pytest.mark.parametrize("fill", ["across", "down", "across-up"])
def test_so_it_is_of_every_kind_and_direction(kind, start, step, terms, length, level, fill):
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, fill)
    are_as_flagged(grid, level)
    assert {probe.appears for probe in probes(grid, Audience(level))} == {True, False}


def test_a_ten_near_the_end_is_asked_of_a_count_by_tens_that_starts_beside_one():
    found = probes(fold("whole", "7", "10", 10, 5), Audience(2))
    # 7 17 27 37 47 / 57 67 77 87 97
    assert [(probe.text, probe.appears) for probe in found][1] == ("100", False)
    assert found[1].why == (
        "It is a multiple of 10, and each jump is 10, but the count starts at 7: it is jumped over, from 97 to 107."
    )
    assert max(probe.value for probe in found) <= 197


@given(number_grids(), st.integers(0, 3))
def test_the_youngest_are_asked_by_what_they_know(grid, level):
    known = {2, 5, 10, 100} if level <= 1 else {2, 5, 10, 20, 25, 50, 100, 1000}
    if grid.count.kind == "whole":
        for probe in probes(grid, Audience(level)):
            assert probe.multiple is None or probe.multiple in known or probe.sort == "step"
            assert probe.value >= 0 or min(grid.count.value(1), grid.count.value(grid.terms)) < 0


@given(number_grids())
def test_a_near_miss_shares_what_it_says_it_shares(grid):
    for probe in probes(grid):
        ending = re.match(r"It ends in (\d), as (\S+) does", probe.why)
        if ending:
            assert probe.text.endswith(ending[1])
            assert ending[2].rstrip(",").endswith(ending[1])
        parity = re.match(r"It is (odd|even), as every", probe.why)
        if parity:
            assert {probe.value % 2, *(grid.count.value(n) % 2 for n in range(1, 4))} == {Fraction(parity[1] == "odd")}


@given(number_grids())
def test_a_value_past_the_end_is_as_far_on_as_it_says(grid):
    for probe in probes(grid):
        far = re.search(
            r"the (\d+)\w\w count, .*?(?:: (2 lines|one line|one jump|2 jumps|3 jumps) on from (.+)\.)?$", probe.why
        )
        if not far:
            assert not probe.appears
            continue
        assert int(far[1]) == probe.n
        if far[2]:
            many, what = (
                {"one": 1}.get(far[2].split()[0], int(far[2][0]) if far[2][0].isdigit() else 1),
                far[2].split()[1],
            )
            assert probe.n == grid.terms + many * (grid.line_length if what.startswith("line") else 1)
            assert far[3] == grid.count.text(grid.terms)


def test_zero_is_no_multiple_of_a_thousand_to_children():
    zero = next(probe for probe in probes(fold("whole", "60", "-5", 12, 4)) if probe.value == 0)
    assert zero.why == (
        "It comes past the end, the 13th count, in row 4, column 1: how many jumps does it take to come to zero?"
    )


@given(number_grids())
def test_probes_are_different_numbers(grid):
    texts = [probe.text for probe in probes(grid)]
    assert len(texts) == len(set(texts)) <= 6


def test_a_near_miss_ends_as_a_ten_in_view_does():
    near = [probe for probe in probes(fold("whole", "58", "6", 20, 5)) if probe.sort == "ends alike"]
    assert [(probe.text, probe.why) for probe in near] == [
        ("180", "It ends in 0, as 160 does, but it is jumped over, from 178 to 184.")
    ]


@pytest.mark.parametrize(
    ("kind", "start", "step", "unit"),
    [
        ("capacity", "2 gal 2 qt", "1 qt", 32),
        ("capacity", "3 qt", "2 qt", 32),
        ("length", "1 yd 1 ft", "2 ft", 12),
        ("length", "1 ft 3 in", "9 in", 1),
        ("length", "1/2 in", "3/2 in", Fraction(1, 2)),
        ("mass", "2 lb", "3 lb", 16),
        ("length", "1.5 m", "0.25 m", 1),
        ("length", "2 m", "3 m", 100),
        ("elapsed", "2 h", "3 h", 60),
        ("decimal", "0.8", "0.3", Fraction(1, 10)),
        ("fraction", "1/8", "3/8", Fraction(1, 8)),
    ],
)
def test_no_near_miss_is_finer_than_what_the_count_writes(kind, start, step, unit):
    # Units of NIST Handbook 44, Appendix C: 32 fl oz are 1 qt, 12 in are 1 ft, 16 oz are 1 lb.
    grid = fold(kind, start, step, 12, 4)
    for probe in probes(grid):
        assert (probe.value / unit).denominator == 1, probe.text
        assert probe.sort == "step" or f"multiple of {grid.count.difference_text(Fraction(unit))}," not in probe.why


@given(number_grids())
def test_a_near_miss_is_like_a_landmark_unless_it_is_like_every_count(grid):
    read_off = {"whole": 10, "decimal": 1, "fraction": 1}[grid.count.kind]
    for probe in probes(grid):
        past = re.match(r"Like (?!every)(\S+(?: \d+/\d+)?), it is (.+) more than a multiple of (.+), but", probe.why)
        if past:
            assert grid.count.read(past[3]) == read_off


def test_what_most_counts_share_is_asked_by_the_largest_multiple_first():
    misses = [probe for probe in probes(fold("money", "$5.50", "$2.50", 12, 4)) if not probe.appears]
    # $35.00 is 14 jumps from nothing; $34.00 whole dollars as $33.00 is; all counts are multiples of $0.50.
    assert [probe.text for probe in misses] == ["$35.00", "$34.00", "$33.50"]


def test_money_never_goes_below_zero():
    assert all(probe.value >= 0 for probe in probes(fold("money", "$2.10", "-$0.25", 8, 4)))


def test_clock_probes_are_first_met_past_the_end():
    grid = fold("clock", "10:50", "20 min", 12, 3)
    for probe in probes(grid):
        n = first_meeting_on_clock(grid.count.start, grid.count.step, probe.value, 720)
        assert probe.n == n
        assert n is None or n > 12


def test_times_in_spanish_take_their_article():
    whys = [probe.why for probe in probes(fold("clock", "12:20", "20 min", 4, 4), Audience(3, "es"))]
    assert any("después de la 1:20." in why for why in whys)
    assert any("de la 1:20 a la 1:40." in why for why in whys)


def test_probes_speak_spanish():
    whys = [probe.why for probe in probes(fold("whole", "58", "6", 20, 5), Audience(3, "es"))]
    assert "Termina en 0, igual que 160, pero lo saltamos, de 178 a 184." in whys


def test_near_misses_of_huge_steps_lie_just_past_the_end() -> None:
    grid = Grid(Count.parse(kind="whole", start=1, step=999_983, terms=200), 2)
    missing = [probe.value for probe in probes(grid) if not probe.appears]
    assert missing
    assert all(grid.count.value(200) < value < grid.count.value(202) for value in missing)


def test_a_clock_that_comes_to_every_five_minutes_has_no_near_miss():
    found = probes(fold("clock", "4:00", "25 min", 9, 3))
    assert len(found) == 3
    assert all(probe.appears for probe in found)
