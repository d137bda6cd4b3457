"""Taking a plan without pydantic: what is taken is what pydantic reads, and what pydantic refuses is not taken."""

import copy
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from routines.demo.plans import PLANS
from routines.models.plan_document import Plan
from routines.models.plan_taking import NotTaken, taken
from tests.routines.models.test_plan_document import PLAN

READER = TypeAdapter(Plan)

BOUNDS = (
    0,
    1,
    2,
    19,
    20,
    21,
    40,
    41,
    60,
    61,
    120,
    121,
    199,
    200,
    201,
    400,
    401,
    600,
    601,
    1200,
    1201,
    1800,
    1801,
    2000,
    2001,
)
NUMBERS = st.sampled_from(BOUNDS).flatmap(
    lambda bound: st.sampled_from([bound, -bound, float(bound), str(bound), bool(bound)])
)
TEXTS = st.sampled_from(["", " a", "a ", "\u3000a", "en", "EN", "down", "whole", "slip", "not-yet", "not_yet"])
LONG = st.sampled_from(BOUNDS).map(lambda length: "é" * length)
LISTS = st.sampled_from([[], {}, (), ["a"] * 40, ["a"] * 41, ("a",), [None], [{}], {"a": 1}, {1: "a"}, {b"a": 1}])
# Copies, for documents are changed after a value was put into them.
ANYTHING = (st.none() | NUMBERS | TEXTS | LONG | LISTS).map(copy.deepcopy)


def parts_of(plan: Plan) -> dict[str, Any]:
    parts = plan.as_dict()
    del parts["schema"]
    return parts


def places(value: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Where something stands in a document, itself aside."""
    named = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for name, part in named:
        yield (*path, name)
        yield from places(part, (*path, name))


@st.composite
def documents(draw) -> Any:
    """The parts of a plan, with some of them replaced, left out or added."""
    parts = copy.deepcopy(parts_of(PLAN))
    for _ in range(draw(st.integers(1, 3))):
        *way, last = draw(st.sampled_from(list(places(parts))))
        group = parts
        for step in way:
            group = group[step]
        match draw(st.sampled_from(["replace", "replace", "leave out", "add"])):
            case "replace":
                group[last] = draw(ANYTHING)
            case "leave out":
                del group[last]
            case "add" if isinstance(group, dict):
                group[draw(st.sampled_from(["extra", "words", "title"]))] = draw(ANYTHING)
        if not parts:
            break
    return parts


@given(documents() | ANYTHING)
def test_what_is_taken_is_what_pydantic_reads(document):
    try:
        plan = taken(document)
    except NotTaken:
        return
    try:
        read = READER.validate_python(document)
    except ValidationError:
        pytest.fail("Pydantic refuses what was taken.")
    assert plan == read
    assert plan.as_dict() == read.as_dict()


def edges() -> Iterator[tuple[str, Any]]:
    """Each place of a plan with each value, of which some are at the edge of what it may be."""
    values = [
        *BOUNDS,
        *("é" * bound for bound in BOUNDS),
        "en",
        "both",
        "slip",
        "down",
        "not-yet",
        None,
        True,
        1.0,
        [],
        {},
    ]
    for place in places(parts_of(PLAN)):
        for value in values:
            yield place, value


def test_all_that_pydantic_reads_as_it_is_written_is_taken():
    """At every place: so a bound that is narrower than it is declared is found as well as one that is wider."""
    for place, value in edges():
        parts = copy.deepcopy(parts_of(PLAN))
        group = parts
        for step in place[:-1]:
            group = group[step]
        group[place[-1]] = value
        try:
            read = READER.validate_python(parts)
        except ValidationError:
            with pytest.raises(NotTaken):
                taken(parts)
        else:
            assert taken(parts) == read, (place, value)


@pytest.mark.parametrize("demo", PLANS, ids=lambda demo: demo.plan.title)
def test_plans_are_taken_as_they_are_written(demo):
    assert taken(parts_of(demo.plan)) == demo.plan


def test_parts_with_defaults_may_be_left_out():
    needed = {
        name: part for name, part in parts_of(PLAN).items() if name in ("title", "grade", "area", "count", "fold")
    }
    assert taken(needed) == READER.validate_python(needed)
    del needed["fold"]
    with pytest.raises(NotTaken):
        taken(needed)
