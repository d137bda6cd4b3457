import pytest

from routines.counting import Grid

from .board import grid, seen, the_one


@pytest.mark.parametrize(
    ("view", "multiple", "lie", "lines", "breaks_at"),
    [
        (grid("58", "6", 20, 5), 10, "column", (3,), None),
        (grid("1", "1", 12, 6), 3, "columns", (3, 6), None),
        (grid("1", "1", 12, 6, fill="down"), 3, "rows", (3, 6), None),
        (grid("8", "1", 20, 20), 10, "scattered", (), None),  # one row only
        (grid("1", "1", 20, 9), 10, "scattered", (), None),  # two of a diagonal are too few
        (grid("1", "1", 30, 9), 10, "down-right", (), 100),  # 10 20 30 ... 90 on the diagonal, at its foot
        (grid("1", "1", 33, 11), 10, "down-left", (), 110),
        (grid("1", "1", 44, 11, fill="across-up"), 12, "down-left", (), 144),
        (grid("5", "1", 16, 16), 5, "scattered", (), None),
        (grid("1", "1", 22, 20), 10, "row", (1,), 30),
        (grid("1", "1", 22, 20, fill="across-up"), 10, "row", (2,), 30),
    ],
)
def test_how_landmarks_lie_and_until_when(
    view: Grid, multiple: int, lie: str, lines: tuple[int, ...], breaks_at: int | None
) -> None:
    found = the_one("landmarks", view, multiple=multiple)
    assert (found.claim.parameters.get("lie"), found.claim.parameters.get("lines"), found.breaks_at) == (
        lie,
        lines,
        breaks_at,
    )


def test_nought_is_a_landmark() -> None:
    assert the_one("landmarks", grid("-4", "2", 10, 5), multiple=10).claim.parameters.get("first") == 3


def test_wholes_make_the_bottom_row() -> None:
    found = the_one("landmarks", grid("2/3", "1/3", 12, 3, "fraction", fill="down"), multiple=1)
    assert (found.claim.parameters.get("lie"), found.claim.parameters.get("lines"), found.cells) == (
        "row",
        (2,),
        (2, 5, 8, 11),
    )


def test_a_count_that_never_meets_a_multiple_is_silent_and_so_is_one_of_multiples_only() -> None:
    assert seen("landmarks", grid("10:50", "20 min", 12, 3, "clock")) == [
        found
        for found in seen("landmarks", grid("10:50", "20 min", 12, 3, "clock"))
        if found.claim.parameters.get("multiple") != 60
    ]
    assert seen("landmarks", grid("1000", "1000", 2, 2)) == []
