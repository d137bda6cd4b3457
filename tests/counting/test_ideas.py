"""When each idea can first be seen, and when it dies."""

from dataclasses import replace
from fractions import Fraction
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, Grid, find_patterns, ideas
from routines.counting.checking import judge
from routines.counting.claims import LandmarksClaim
from tests.brute_force.board import Board
from tests.brute_force.seeing import lie_of
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
    found = {pattern.claim for pattern in find_patterns(view)}
    scattered = {claim for claim in found if claim.parameters.get("lie") == "scattered"}
    assert scattered
    assert found - scattered <= alive
    assert {replace(claim, lie=None, lines=None) for claim in scattered if isinstance(claim, LandmarksClaim)} <= alive


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
        assert at_first.breaks_at == idea.dies_at
        if idea.seen_at > 2:
            _, before = judge(idea.claim, view.cut(idea.seen_at - 1))
            assert not (before.true and before.seen) or idea.claim.family == "digit"  # a place not yet written


TIDINESS = {"row": 0, "column": 0, "rows": 1, "columns": 1, "down-right": 2, "down-left": 2, "scattered": 3}


@given(
    st.integers(0, 2**32),
    st.integers(-60, 90),
    st.integers(1, 30),
    st.integers(2, 40),
    st.integers(1, 9),
    st.booleans(),
)
def test_landmarks_are_one_idea_and_a_lie_in_line_dies_into_a_less_tidy_one_only(
    seed: int, start: int, step: int, terms: int, length: int, down: bool
) -> None:
    random = Random(seed)
    length, fill = min(length, terms), random.choice(FILLS)
    lead = random.choice((0, 0, random.randrange(length)))
    view = Grid(Count.parse(kind="whole", start=start, step=-step if down else step, terms=terms), length, fill, lead)
    for multiple in (2, 3, 5, 10):
        # How they lie when so many counts are on the board, looked at cell by cell (EXACT 9).
        lies: list[tuple[int, str, tuple[int, ...]]] = []
        for n in range(2, terms + 1):
            board = Board("whole", view.count.start, view.count.step, n, length, fill, lead)
            there = [m for m in range(1, n + 1) if board.value(m) % multiple == 0]
            if len(there) >= 2 and there[1] - there[0] >= 2:
                name, lines = lie_of(board, there)
                # Rows keep their name when more are added above.
                begun = board.line_and_cell(n)[0] + 1
                lines = [begun - line + 1 for line in lines] if (fill, name) == ("across-up", "row") else lines
                lies.append((n, name, tuple(lines)))
        told = [idea for idea in ideas(view) if idea.claim.parameters.get("multiple") == Fraction(multiple)]
        told = [idea for idea in told if idea.claim.family == "landmarks"]
        rhythm = [idea for idea in told if idea.claim.parameters.get("lie") is None]
        assert "scattered" not in {idea.claim.parameters.get("lie") for idea in told}
        if not told:
            continue  # nothing to see, or said of another number with the same landmarks
        assert [(idea.seen_at, idea.dies_at) for idea in rhythm] == [(lies[0][0], None)]
        for idea in told:
            lie = idea.claim.parameters.get("lie")
            if lie is None:
                continue
            alive = [n for n, name, lines in lies if name == lie and (n >= idea.seen_at)]
            assert idea.seen_at == min(n for n, name, _ in lies if name == lie)
            assert alive == list(range(idea.seen_at, idea.lasts + 1))
            after = [name for n, name, _ in lies if n == idea.lasts + 1]
            assert (idea.dies_at or terms + 1) > idea.lasts
            if after:
                assert idea.dies_at == idea.lasts + 1
                assert TIDINESS[after[0]] > TIDINESS[lie]
        in_line = [(name, lines) for _, name, lines in lies if name != "scattered"]
        assert len({idea.claim for idea in told} - {rhythm[0].claim}) == len(set(in_line))
