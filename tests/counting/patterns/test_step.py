from tests.counting.claims import a_claim

from .board import claims, grid, seen


def test_the_step_is_the_same_everywhere() -> None:
    assert claims("step", grid("7", "-3", 10, 5)) == [a_claim("step", difference=-3)]


def test_one_count_shows_no_step() -> None:
    assert seen("step", grid("7", "3", 10, 5).cut(1)) == []
