from .board import grid, seen, the_one


def test_nines_add_to_nine_until_the_eleventh() -> None:
    found = the_one("digit-sum", grid("9", "9", 10, 5), along="count")
    assert (found.claim.parameters.get("blocks"), found.holds, found.breaks_at) == (((9,),), "shown", 11)


def test_a_new_row_may_begin_with_any_sum_but_must_repeat_it() -> None:
    view = grid("9", "9", 10, 5)
    assert the_one("digit-sum", view, along="row").breaks_at == 12  # 99 adds to 18, 108 to 9


def test_a_sum_that_stays_longer_than_it_is_followed_is_not_spoken_of() -> None:
    assert seen("digit-sum", grid("99999999", "99999999", 4, 4)) == []


def test_a_long_but_followed_break_is_exact() -> None:
    # 9,999 times j is j - 1 followed by what is missing to 10,000: digits that fill each other up to 9, while j fits.
    found = the_one("digit-sum", grid("9999", "9999", 4, 4), along="count")
    assert found.breaks_at == next(j for j in range(5, 30_000) if sum(map(int, str(9999 * j))) != 36)


def test_only_whole_numbers_are_added_up_digit_by_digit() -> None:
    assert seen("digit-sum", grid("0.9", "0.9", 10, 5, "decimal")) == []
    assert seen("digit-sum", grid("1", "1", 8, 4)) == []
