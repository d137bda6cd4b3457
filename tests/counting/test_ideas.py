"""When each idea can first be seen, and when it dies."""

from random import Random

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, Grid, find_patterns, ideas
from routines.counting.checking import judge
from tests.counting.random_grids import FILLS, KINDS, grid_of


def grid(start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind="whole", start=start, step=step, terms=terms), length)


def test_an_idea_that_dies_past_the_view_says_where() -> None:
    tens = next(idea for idea in ideas(grid("1,325", "-50", 16, 4)) if idea.claim.parameters.get("place") == 1)
    assert tens.dies_at == 28


def test_rows_that_keep_their_tens_are_one_idea_while_rows_are_begun() -> None:
    # 20 21 ... 29 / 30 ... 39 / 40: the tens of each row can be seen to stay from the second count on.
    view = Grid(Count.parse(kind="whole", start="20", step="1", terms=21), 10)
    tens = [idea for idea in ideas(view) if idea.claim.parameters.get("place") == 1 and idea.claim.family == "digit"]
    kept = [idea for idea in tens if idea.claim.parameters.get("along") == "row" and idea.claim.block_length == 1]
    assert [(idea.seen_at, idea.dies_at, idea.pattern.claim.parameters.get("blocks")) for idea in kept] == [
        (2, None, ((2,), (3,), (4,)))
    ]


def test_what_is_alive_at_the_end_is_what_is_listed() -> None:
    view = grid("7", "3", 24, 6)
    alive = {idea.pattern.claim for idea in ideas(view) if idea.dies_at is None or idea.dies_at > view.terms}
    assert {pattern.claim for pattern in find_patterns(view)} <= alive


@given(st.integers(0, 2**32), st.sampled_from(KINDS), st.sampled_from(FILLS), st.booleans())
def test_an_idea_is_seen_first_when_it_is_true_and_seen_and_dies_when_it_is_false(
    seed: int, kind: str, fill: str, lead: bool
) -> None:
    random = Random(seed)
    view = grid_of(random, kind, fill, lead=lead, down=random.random() < 0.5)
    if view.terms > 16:
        view = view.cut(16)
    for idea in ideas(view):
        _, at_first = judge(idea.claim, view.cut(idea.seen_at))
        assert (at_first.true, at_first.seen) == (True, True)
        if idea.claim.parameters.get("lie") != "scattered":  # scattered landmarks may turn out to lie on a line
            assert at_first.breaks_at == idea.dies_at
        if idea.seen_at > 2:
            _, before = judge(idea.claim, view.cut(idea.seen_at - 1))
            assert not (before.true and before.seen) or idea.claim.family == "digit"  # a place not yet written
