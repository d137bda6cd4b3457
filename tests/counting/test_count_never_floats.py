"""Nothing on the way from typed text to words ever becomes a floating-point number."""

from fractions import Fraction
from numbers import Rational
from typing import NoReturn

import pytest

from routines.counting import Count, CountError, Grid, Style
from routines.counting.stories import landmark_terms, larger_name, proposed_landmarks
from tests.counting.any_count import KINDS
from tests.counting.test_malformed_input import GOOD


class ExactWhole(int):
    """A whole number that fails the test when it is made a float."""

    def __float__(self) -> NoReturn:
        raise AssertionError("a whole number became a float")


class ExactFraction(Fraction):
    """A fraction that fails the test when it is made a float."""

    def __float__(self) -> NoReturn:
        raise AssertionError("a fraction became a float")


@pytest.fixture
def no_fraction_becomes_a_float(monkeypatch: pytest.MonkeyPatch) -> None:
    """Results of arithmetic are plain Fractions: they may not become floats either."""

    def refuse(self: Rational) -> NoReturn:
        raise AssertionError(f"{self!r} became a float")

    monkeypatch.setattr(Rational, "__float__", refuse)


@pytest.mark.usefixtures("no_fraction_becomes_a_float")
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("kind", KINDS)
def test_reading_writing_saying_and_folding_stay_exact(kind: str, language: str) -> None:
    start, step = GOOD[kind]
    style = Style(language=language)
    typed = Count.parse(kind=kind, start=start, step=step, terms=12, style=style)
    part = ExactFraction if typed.scale > 1 else ExactWhole
    count = Count.parse(kind=kind, start=part(typed.start), step=part(typed.step), terms=12, style=typed.style)
    for n in range(1, 20):
        value = count.value(n)
        assert (typed.read(count.text(n)) - value) % (typed.wrap or 10**12) == 0
        assert (count.words(n), count.parts(n), count.pieces(n)) == (typed.words(n), typed.parts(n), typed.pieces(n))
        assert count.position_of(value) == n
    assert count.difference_text(count.step) == typed.difference_text(typed.step)
    assert count.reaching(count.value(9)).n == 9
    grid = Grid(count, 5)
    assert sum(cell is not None for row in grid.cells() for cell in row) == 12
    for landmarks in proposed_landmarks(grid):
        if landmarks.crossed:
            continue  # no count lands there: the first past each is rung
        assert landmark_terms(count, landmarks.multiple, 12) == landmarks.terms
        larger_name(count, count.value(landmarks.terms[0]), landmarks.multiple)
    assert count.rule().text == typed.rule().text


def test_the_doubles_would_catch_a_float() -> None:
    for double in (ExactWhole(3), ExactFraction(2, 3)):
        with pytest.raises(AssertionError):
            float(double)


@pytest.mark.parametrize("field", ["start", "step"])
@pytest.mark.parametrize("kind", KINDS)
def test_a_float_is_refused_at_the_door(kind: str, field: str) -> None:
    keywords = {"start": 1, "step": 5, field: 2.0}
    with pytest.raises(CountError) as refused:
        Count.parse(kind=kind, terms=5, **keywords)  # type: ignore[arg-type]
    assert refused.value.field == field
