"""Numbers to ask about: they are past the end or near misses, as they say."""

import re
from fractions import Fraction

import pytest
from hypothesis import given

from routines.counting.audience import Audience
from routines.counting.count import Count
from routines.counting.grid import Grid
from routines.words import probes
from tests.brute_force.locating import first_meeting, first_meeting_on_clock
from tests.words.test_locate import number_grids


def fold(kind: str, start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


@given(number_grids())
def test_a_probe_is_counted_past_the_end_or_never(grid):
    found = probes(grid)
    for probe in found:
        n = first_meeting(grid.count.start, grid.count.step, probe.value)
        assert probe.n == n
        assert probe.appears == (n is not None)
        assert n is None or n > grid.terms
    assert {probe.appears for probe in found} == {True, False}


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
        far = re.search(r"the (\d+)\w\w count(?:: (2 lines|one jump) on from (.+)\.)?", probe.why)
        if not far:
            assert not probe.appears
            continue
        assert int(far[1]) == probe.n
        if far[2]:
            assert probe.n == grid.terms + (1 if far[2] == "one jump" else 2 * grid.line_length)
            assert far[3] == grid.count.text(grid.terms)


def test_zero_is_no_multiple_of_a_thousand_to_children():
    zero = next(probe for probe in probes(fold("whole", "60", "-5", 12, 4)) if probe.value == 0)
    assert zero.why == "It comes past the end, the 13th count: how many jumps does it take to come to zero?"


@given(number_grids())
def test_probes_are_different_numbers(grid):
    texts = [probe.text for probe in probes(grid)]
    assert len(texts) == len(set(texts)) <= 6


def test_a_near_miss_ends_as_a_ten_in_view_does():
    near = [probe for probe in probes(fold("whole", "58", "6", 20, 5)) if not probe.appears]
    assert (near[0].text, near[0].why) == ("180", "It ends in 0, as 160 does, but it is jumped over.")


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
        assert f"multiple of {grid.count.difference_text(Fraction(unit))}," not in probe.why


@given(number_grids())
def test_a_near_miss_is_like_a_landmark_unless_it_is_like_every_count(grid):
    read_off = {"whole": 10, "decimal": 1, "fraction": 1}[grid.count.kind]
    for probe in probes(grid):
        past = re.match(r"Like (?!every)(\S+(?: \d+/\d+)?), it is (.+) more than a multiple of (.+), but", probe.why)
        if past:
            assert grid.count.read(past[3]) == read_off


def test_what_most_counts_share_is_asked_by_the_largest_multiple_first():
    misses = [probe for probe in probes(fold("money", "$5.50", "$2.50", 12, 4)) if not probe.appears]
    assert [probe.text for probe in misses] == ["$34.00", "$33.50", "$33.25"]


def test_money_never_goes_below_zero():
    assert all(probe.value >= 0 for probe in probes(fold("money", "$2.10", "-$0.25", 8, 4)))


def test_clock_probes_are_first_met_past_the_end():
    grid = fold("clock", "10:50", "20 min", 12, 3)
    for probe in probes(grid):
        n = first_meeting_on_clock(grid.count.start, grid.count.step, probe.value, 720)
        assert probe.n == n
        assert n is None or n > 12


def test_times_in_spanish_take_their_article():
    whys = [probe.why for probe in probes(fold("clock", "1:16", "5 min", 6, 6), Audience(3, "es"))]
    assert any("después de la 1:41." in why for why in whys)


def test_probes_speak_spanish():
    whys = [probe.why for probe in probes(fold("whole", "58", "6", 20, 5), Audience(3, "es"))]
    assert "Termina en 0, igual que 160, pero lo saltamos." in whys


def test_near_misses_of_huge_steps_lie_just_past_the_end() -> None:
    grid = Grid(Count.parse(kind="whole", start=1, step=999_983, terms=200), 2)
    missing = [probe.value for probe in probes(grid) if not probe.appears]
    assert missing
    assert all(grid.count.value(200) < value <= grid.count.value(200) + 2 * 1000 for value in missing)
