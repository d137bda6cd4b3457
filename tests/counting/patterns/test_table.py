from tests.counting.claims import a_claim

from .board import claims, grid, seen


def test_a_count_from_its_own_step_is_a_table() -> None:
    assert claims("table", grid("3/4", "3/4", 8, 4, "fraction")) == [a_claim("table", step="3/4")]
    assert claims("table", grid("-6", "-6", 8, 4)) == [a_claim("table", step=-6)]


def test_any_other_start_is_no_table_and_a_clock_never_is() -> None:
    assert seen("table", grid("0", "6", 8, 4)) == []
    assert seen("table", grid("0:20", "20 min", 8, 4, "clock")) == []
