"""What is right by another name is told to be so; and below zero nothing is said to be broken apart.

Common practice, no source.
"""

from fractions import Fraction
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Style
from routines.counting.kinds.names import Kind
from routines.words import likely_slips
from tests.counting.random_grids import any_grid

SAME = {
    "en": ("same number", "same amount", "same time"),
    "es": ("mismo número", "misma cantidad", "misma hora"),
}
APART = {"en": ("broken apart", "break"), "es": ("descompon",)}


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("seed", range(120))
def test_another_name_is_told_to_be_the_same(seed: int, language: str) -> None:
    random = Random(seed)
    grid, audience = any_grid(random), Audience(random.randrange(9), language)
    for slip in likely_slips(grid, audience=audience):
        if slip.equal_name:
            assert any(phrase in slip.why for phrase in SAME[language]), slip.why


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(
    ("kind", "start", "step", "level", "heard"),
    [
        ("whole", "700", "100", 2, {"ten hundred", "diez cientos"}),
        ("clock", "12:15", "15 min", 4, {"13:00"}),
        ("elapsed", "1 h 20 min", "35 min", 6, {"1 h 90 min"}),
        ("decimal", "4.75", "-0.25", 5, {"4.5"}),
    ],
)
def test_so_is_what_is_a_slip_elsewhere(
    kind: str, start: str, step: str, level: int, heard: set[str], language: str
) -> None:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=8), 4)
    named = [slip for slip in likely_slips(grid, audience=Audience(level, language)) if slip.heard in heard]
    assert named
    assert all(slip.equal_name and any(phrase in slip.why for phrase in SAME[language]) for slip in named)


@given(
    st.sampled_from([("whole", 1), ("decimal", 10), ("fraction", 1), ("fraction", 4)]),
    st.integers(-900, -1),
    st.integers(-60, 60).filter(bool),
    st.integers(0, 8),
    st.sampled_from(["en", "es"]),
)
def test_below_zero_nothing_is_broken_apart(
    kind: tuple[str, int], start: int, step: int, level: int, language: str
) -> None:
    grid = Grid(Count(Kind(kind[0]), Fraction(start, kind[1]), Fraction(step, kind[1]), 10), 5)
    for slip in likely_slips(grid, audience=Audience(level, language)):
        if grid.count.value(slip.n - 1) < 0:
            assert not any(phrase in text for phrase in APART[language] for text in (slip.why, slip.reply))


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_count_with_two_names_is_called_by_one(language: str) -> None:
    count = Count.parse(kind="fraction", start="1/4", step="1/4", terms=10, style=Style(wholes="both"))
    assert not any(" = " in slip.reply for slip in likely_slips(Grid(count, 4), audience=Audience(3, language)))


def test_a_unit_is_counted_by_its_gender_in_spanish() -> None:
    def asked(start: str, step: str) -> list[str]:
        grid = Grid(Count.parse(kind="length", start=start, step=step, terms=12), 4)
        return [slip.reply for slip in likely_slips(grid, audience=Audience(4, "es"))]

    assert any("¿Cuántas pulgadas hacen 1 pie? ¿Ya las tenemos?" in reply for reply in asked("1 ft 3 in", "9 in"))
    assert any("¿Cuántos centímetros hacen 1 metro? ¿Ya los tenemos?" in reply for reply in asked("1 m 60 cm", "30 cm"))
