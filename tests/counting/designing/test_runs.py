"""Runs of numbers, against listing them."""

from hypothesis import given
from hypothesis import strategies as st

from routines.counting.designing.runs import held_by, how_many_in, just, mirrored, nearest_first

runs = st.builds(range, st.integers(-30, 30), st.integers(-30, 60), st.integers(1, 9))


@given(st.lists(runs, max_size=4), st.integers(-40, 70))
def test_what_is_in_runs_is_counted_and_found_without_listing_it(some, number):
    assert how_many_in(some) == sum(map(len, some))
    assert held_by(some, number) == any(number == one for run in some for one in run)


def test_runs_longer_than_a_list_can_be_are_counted():
    assert how_many_in([range(0, 10**30, 10)]) == 10**29


@given(runs, st.integers(-90, 90))
def test_a_run_in_two_goes_away_from_the_middle(run, middle_twice):
    sides = list(nearest_first(run, middle_twice))
    assert sorted(number for side in sides for number in side) == list(run)
    for side in sides:
        apart = [abs(2 * number - middle_twice) for number in side]
        assert apart == sorted(apart)


@given(runs)
def test_mirrored_runs_hold_the_opposites(run):
    assert sorted(mirrored(run)) == sorted(-number for number in run)


def test_numbers_without_order_are_runs_of_one():
    assert [list(run) for run in just([5, 2])] == [[5], [2]]
