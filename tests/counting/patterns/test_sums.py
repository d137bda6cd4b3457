from routines.counting import Grid

from .board import grid, seen, the_one


def test_corners_of_blocks_and_the_middle_of_nine() -> None:
    view = grid("58", "6", 20, 5)
    assert the_one("sums", view, which="block-corners").groups == ((1, 7), (2, 6))
    assert the_one("sums", view, which="centre-mean").groups == ((1, 2, 3, 6, 7, 8, 11, 12, 13),)


def test_the_ends_pair_off() -> None:
    assert the_one("sums", grid("5", "5", 5, 5), which="ends").groups == ((1, 5), (2, 4))


def test_row_totals_are_always_apart_by_the_same() -> None:
    rows = the_one("sums", grid("1", "1", 15, 5), which="line-totals", along="row")  # 15 40 65
    assert (rows.claim.parameters.get("difference"), rows.holds) == (25, "always")


def test_column_totals_grow_with_the_next_row() -> None:
    columns = the_one("sums", grid("1", "1", 15, 5), which="line-totals", along="column")  # 18 21 24 27 30
    assert (columns.claim.parameters.get("difference"), columns.breaks_at) == (3, 17)


def test_rows_of_across_up_are_totalled_from_the_top() -> None:
    rows = the_one("sums", grid("1", "1", 15, 5, fill="across-up"), which="line-totals", along="row")
    assert rows.claim.parameters.get("difference") == -25


def test_a_line_with_a_lead_cell_is_never_full() -> None:
    view = grid("1", "1", 14, 5, lead=1)
    columns = the_one("sums", view, which="line-totals", along="column")
    assert columns.groups == ((1, 6, 11), (2, 7, 12), (3, 8, 13), (4, 9, 14))
    assert columns.breaks_at == 17


def test_few_counts_and_clocks_are_silent() -> None:
    assert seen("sums", grid("1", "1", 3, 3)) == []
    clock: Grid = grid("10:50", "20 min", 12, 3, "clock")
    assert seen("sums", clock) == []
