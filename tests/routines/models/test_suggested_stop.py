"""A stop that the engine suggests, as it stands in a plan."""

import pytest

from routines.models.declared import declared
from routines.models.plan_document import Stop
from routines.models.suggested_stop import suggested_stop
from routines.words import suggest_stops
from tests.routines.making import SEVENS

SUGGESTED = suggest_stops(SEVENS.grid(), SEVENS.claims(), audience=SEVENS.audience(level=2))


@pytest.mark.parametrize("offered", SUGGESTED, ids=lambda stop: str(stop.after))
def test_all_that_the_engine_says_of_a_stop_is_taken(offered):
    taken = suggested_stop(offered)
    said = [name for name in declared(Stop) if hasattr(offered, name)]
    assert {"after", "question", "answer", "think", "partner", "share"} <= set(said)
    assert [getattr(taken, name) for name in said if name != "routes"] == [
        getattr(offered, name) for name in said if name != "routes"
    ]
    assert taken.routes == tuple(map(str, offered.routes))
