"""The reduced state of written-down event lists: the same files hold the scripts to the same state."""

import json
from pathlib import Path

import pytest

from routines.lessons.state import ACTS, reduce_events

VECTORS = sorted(Path(__file__).with_name("vectors").glob("*.json"))


def read(path: Path) -> dict:
    return json.loads(path.read_text(encoding="utf-8"))


@pytest.mark.parametrize("path", VECTORS, ids=lambda path: path.stem)
def test_the_events_of_a_vector_give_its_state(path):
    vector = read(path)
    assert reduce_events(vector["events"]).as_dict() == vector["state"]
    assert reduce_events(reversed(vector["events"])).as_dict() == vector["state"]


def test_every_kind_stands_in_a_vector():
    used = {event["kind"] for path in VECTORS for event in read(path)["events"]}
    assert set(ACTS) | {"undo", "mark.remove"} <= used
