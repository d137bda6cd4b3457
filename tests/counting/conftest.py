"""Each test of the engine searches anew."""

from collections.abc import Iterator

import pytest

from routines.counting.patterns import everything


@pytest.fixture(autouse=True)
def searched_anew() -> Iterator[None]:
    """What was found before a fault was planted says nothing of it, and what is found with it is not to be kept."""
    everything.cache_clear()
    yield
    everything.cache_clear()
