from .board import grid, seen, the_one


def test_every_pair_that_mirrors_about_nought_is_named() -> None:
    found = the_one("opposites", grid("-7", "2", 8, 4))  # -7 -5 -3 -1 1 3 5 7
    assert found.claim.parameters.get("pairs") == ((1, 8), (2, 7), (3, 6), (4, 5))
    assert (found.holds, found.breaks_at) == ("shown", None)


def test_the_next_pair_breaks_what_is_said() -> None:
    assert the_one("opposites", grid("-7", "2", 6, 3)).breaks_at == 7


def test_nought_has_no_partner() -> None:
    assert the_one("opposites", grid("-4", "4", 3, 3)).claim.parameters.get("pairs") == ((1, 3),)


def test_counts_that_do_not_mirror_are_silent() -> None:
    assert seen("opposites", grid("-7", "3", 8, 4)) == []  # -7 -4 -1 2 5
    assert seen("opposites", grid("1", "1", 8, 4)) == []
