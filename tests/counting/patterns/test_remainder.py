from .board import grid, seen, the_one


def test_odd_and_even_take_turns() -> None:
    found = the_one("remainder", grid("1", "3", 12, 4), modulus=2, along="count")
    assert (found.claim.parameters.get("blocks"), found.holds) == (((1, 0),), "always")


def test_remainders_below_zero_stay_at_nought_or_above() -> None:
    found = the_one("remainder", grid("-3", "-5", 12, 4), modulus=10, along="count")
    assert found.claim.parameters.get("blocks") == ((7, 2),)


def test_columns_keep_their_eighths() -> None:
    found = the_one("remainder", grid("3/8", "1/8", 32, 8, "fraction"), modulus=1, along="column")
    assert found.claim.as_dict()["blocks"] == [["3/8"], ["1/2"], ["5/8"], ["3/4"], ["7/8"], ["0"], ["1/8"], ["1/4"]]


def test_hours_on_a_clock_come_round_whatever_the_turn() -> None:
    found = the_one("remainder", grid("10:50", "20 min", 12, 3, "clock"), modulus=60, along="column")
    assert (found.claim.parameters.get("blocks"), found.breaks_at) == (((50,), (10,), (30,)), None)


def test_too_few_counts_show_no_remainder_twice() -> None:
    assert seen("remainder", grid("1", "1", 3, 3)) == []
