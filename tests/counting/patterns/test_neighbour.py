import pytest

from .board import grid, seen, the_one


@pytest.mark.parametrize(
    ("fill", "expected"),
    [
        # Counting by 1 in lines of 4, worked by hand on the page.
        ("across", {"right": 1, "down": 4, "down-right": 5, "down-left": 3}),
        ("down", {"right": 4, "down": 1, "down-right": 5, "down-left": -3}),
        ("across-up", {"right": 1, "down": -4, "down-right": -3, "down-left": -5}),
    ],
)
def test_differences_are_as_seen_on_the_page(fill: str, expected: dict[str, int]) -> None:
    found = seen("neighbour", grid("1", "1", 12, 4, fill=fill))
    assert {f.claim.parameters.get("direction"): f.claim.parameters.get("difference") for f in found} == expected


def test_pairs_stop_at_the_edges_of_the_page() -> None:
    right = the_one("neighbour", grid("1", "1", 7, 3, lead=1), direction="right")
    assert right.groups == ((1, 2), (3, 4), (4, 5), (6, 7))


def test_one_pair_is_not_enough_to_be_seen() -> None:
    assert seen("neighbour", grid("1", "1", 2, 2)) == []
