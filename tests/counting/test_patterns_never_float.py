"""Finding, judging and explaining patterns never goes through floating-point numbers."""

from fractions import Fraction
from random import Random
from typing import NoReturn

import pytest

from routines.counting import Count, Grid, Style, check, explain_cells, find_patterns, ideas
from tests.counting.random_grids import FILLS, KINDS, grid_of


class ExactFraction(Fraction):
    """A fraction that fails the test when it is made a float."""

    def __float__(self) -> NoReturn:
        raise AssertionError("a fraction became a float")


@pytest.fixture
def no_fraction_becomes_a_float(monkeypatch: pytest.MonkeyPatch) -> None:
    """Results of arithmetic are plain Fractions: they may not become floats either."""

    def refuse(self: Fraction) -> NoReturn:
        raise AssertionError(f"{self!r} became a float")

    monkeypatch.setattr(Fraction, "__float__", refuse, raising=False)


@pytest.mark.usefixtures("no_fraction_becomes_a_float")
@pytest.mark.parametrize("fill", FILLS)
@pytest.mark.parametrize("kind", KINDS)
def test_patterns_stay_exact(kind: str, fill: str) -> None:
    drawn = grid_of(Random(f"{kind} {fill}"), kind, fill)
    count = Count(kind, ExactFraction(drawn.count.start), ExactFraction(drawn.count.step), drawn.terms, Style())
    view = Grid(count, drawn.line_length, fill)
    patterns = find_patterns(view, implied=True)
    for pattern in patterns:
        assert check(pattern.claim, view).true
    assert all(view.cut(idea.seen_at) for idea in ideas(view))
    assert len(explain_cells(view, [1, 2])) <= 3
