"""Everything that can be seen, and for how long, beside a brute force that looks at every cell."""

from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counting.comparing import disagreements
from tests.counting.random_grids import FILLS, KINDS, grid_of

EXAMPLES = max(2, settings.default.max_examples // 20)


@pytest.mark.parametrize("ragged", [False, True], ids=["whole lines", "ragged"])
@pytest.mark.parametrize("down", [False, True], ids=["up", "down"])
@pytest.mark.parametrize("lead", [False, True], ids=["no lead", "lead"])
@pytest.mark.parametrize("fill", FILLS)
@pytest.mark.parametrize("kind", KINDS)
def test_engine_and_brute_force_see_the_same(kind: str, fill: str, lead: bool, down: bool, ragged: bool) -> None:
    @settings(max_examples=EXAMPLES)
    @given(st.integers(0, 2**32))
    def same(seed: int) -> None:
        grid = grid_of(Random(seed), kind, fill, lead=lead, down=down, ragged=ragged)
        assert list(disagreements(grid)) == [], grid

    same()


def test_the_same_while_the_count_is_being_written() -> None:
    @settings(max_examples=10 * EXAMPLES)
    @given(st.integers(0, 2**32), st.sampled_from(FILLS), st.booleans(), st.floats(0, 1))
    def same(seed: int, fill: str, lead: bool, share: float) -> None:
        grid = grid_of(Random(seed), "whole", fill, lead=lead)
        assert list(disagreements(grid.cut(1 + round(share * (grid.terms - 1))))) == [], grid

    same()
