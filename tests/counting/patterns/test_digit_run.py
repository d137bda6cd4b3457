from .board import grid, seen, the_one


def test_both_digits_go_up_by_one_until_the_seventh() -> None:
    view = grid("34", "11", 6, 3)
    assert [the_one("digit-run", view, place=place, along="count").breaks_at for place in (0, 1)] == [7, 7]


def test_nine_to_nought_is_nine_less_and_no_carry() -> None:
    view = grid("5", "1", 5, 5)  # 5 6 7 8 9 | 10
    run = the_one("digit-run", view, place=0, along="count")
    assert (run.claim.parameters.get("change"), run.breaks_at) == (1, 6)


def test_along_rows_the_end_of_a_row_is_not_compared_with_the_next() -> None:
    view = grid("20", "1", 30, 10)
    run = the_one("digit-run", view, place=0, along="row")
    assert (run.claim.parameters.get("change"), run.holds) == (1, "always")


def test_feet_go_up_in_every_column_for_ever() -> None:
    run = the_one("digit-run", grid("1 ft 3 in", "9 in", 12, 4, "length"), part="feet", along="column")
    assert (run.claim.parameters.get("change"), run.holds) == (3, "always")


def test_two_cells_or_no_change_make_no_run() -> None:
    assert seen("digit-run", grid("11", "11", 2, 2)) == []
    assert seen("digit-run", grid("100", "100", 2, 1)) == []


def test_a_line_whose_top_is_0_is_among_the_cells() -> None:
    view = grid("14/8", "1/16", 5, 4, "fraction", fill="down")  # 1 12/16 ... 1 15/16 | 2, whose top is 0
    assert the_one("digit-run", view, part="top", along="column").groups == ((1, 2, 3, 4), (5,))
