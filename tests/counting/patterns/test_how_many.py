from .board import grid, seen, the_one


def test_one_two_two_counts_in_each_ten() -> None:
    found = the_one("how-many", grid("58", "6", 20, 5), multiple=10)
    assert (found.claim.parameters.get("block"), found.holds) == ((1, 2, 2), "always")
    assert found.groups[:3] == ((2,), (3, 4), (5, 6))  # 64; 70 76; 82 88


def test_a_block_may_hold_for_a_while_only() -> None:
    # 0 7 14, 21 28 35, 42 49 56, ... three in each twenty, until 126 133 in the seventh, which 140 completes.
    found = the_one("how-many", grid("0", "7", 7, 4), multiple=20)
    assert (found.claim.parameters.get("block"), found.holds, found.breaks_at) == ((3,), "shown", 21)


def test_going_down_intervals_come_in_counting_order() -> None:
    found = the_one("how-many", grid("172", "-6", 20, 5), multiple=10)
    assert found.claim.parameters.get("block") == (2, 1, 2)  # 160s hold 166 160; 150s hold 154; 140s hold 148 142
    assert found.groups[0] == (2, 3)


def test_two_turns_are_needed() -> None:
    assert seen("how-many", grid("58", "6", 3, 3)) == []
    assert seen("how-many", grid("10:50", "20 min", 40, 3, "clock")) == []
