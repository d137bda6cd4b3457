from .board import claims, grid, seen, the_one


def test_a_column_keeps_its_ones_digit() -> None:
    found = the_one("digit", grid("3", "4", 20, 5), place=0, along="column")
    assert (found.claim.parameters.get("blocks"), found.holds) == (((3,), (7,), (1,), (5,), (9,)), "always")


def test_a_short_last_line_lists_only_what_it_has() -> None:
    found = the_one("digit", grid("1", "5", 9, 4), place=0, along="row")
    assert found.claim.parameters.get("blocks") == ((1, 6), (1, 6), (1,))


def test_columns_of_across_up_are_read_from_below() -> None:
    found = the_one("digit", grid("10", "5", 12, 3, fill="across-up"), place=0, along="column")
    assert found.claim.parameters.get("blocks") == ((0, 5), (5, 0), (0, 5))


def test_digits_are_those_of_the_amount_below_zero() -> None:
    assert the_one("digit", grid("23", "-5", 5, 5), place=0, along="count").breaks_at == 6
    assert the_one("digit", grid("20", "-5", 5, 5), place=0, along="count").breaks_at is None


def test_places_go_from_the_finest_needed_to_the_largest_written() -> None:
    assert {c.parameters.get("place") for c in claims("digit", grid("0.50", "0.5", 48, 4, "decimal"))} <= {-1, 0, 1}
    assert -1 in {c.parameters.get("place") for c in claims("digit", grid("0.50", "0.5", 48, 4, "decimal"))}
    assert 0 in {
        c.parameters.get("place") for c in claims("digit", grid("$1.25", "$0.50", 12, 4, "money"))
    }  # the cents


def test_fractions_measures_and_clocks_have_parts_and_no_places() -> None:
    views = (
        grid("2/3", "1/3", 12, 3, "fraction", style={"wholes": "fraction"}),
        grid("1 ft 3 in", "9 in", 12, 4, "length"),
        grid("10:50", "20 min", 12, 3, "clock"),
    )
    for view in views:
        assert claims("digit", view)
        assert {c.parameters.get("place") for c in claims("digit", view)} == {None}


def test_the_minutes_of_a_clock_wrap_and_go_on_repeating() -> None:
    found = the_one("digit", grid("10:50", "20 min", 12, 3, "clock"), part="minutes", along="count")
    assert (found.claim.parameters.get("blocks"), found.holds) == (((50, 10, 30),), "always")


def test_the_hour_number_is_what_is_written_after_twelve() -> None:
    view = grid("9:00", "60 min", 4, 2, "clock")  # 9 10 / 11 12 / 1
    run = the_one("digit-run", view, part="hours", along="count")
    assert (run.claim.parameters.get("change"), run.breaks_at) == (1, 5)


def test_a_top_that_is_not_written_is_0_but_a_bottom_that_is_not_written_is_missing() -> None:
    # 1/3 2/3 1 1 1/3: at 1 neither top nor bottom is written; no top is 0 thirds, but no bottom is 0.
    parts = {c.parameters.get("part") for c in claims("digit", grid("1/3", "1/3", 12, 3, "fraction"))}
    assert "top" in parts
    assert "bottom" not in parts


def test_thirds_as_written_turn_round_below_zero_while_the_remainder_goes_on() -> None:
    view = grid("4 1/3", "-1", 4, 2, "fraction")  # 4 1/3, 3 1/3, 2 1/3, 1 1/3, 1/3, -2/3
    top = the_one("digit", view, part="top", along="count")
    assert (top.claim.parameters.get("blocks"), top.breaks_at) == (((1,),), 6)
    remainder = the_one("remainder", view, modulus=1, along="count")
    assert remainder.breaks_at is None


def test_a_grid_without_any_repeating_digit_is_silent() -> None:
    assert seen("digit", grid("1", "9", 4, 2)) == []  # 1 10 / 19 28
