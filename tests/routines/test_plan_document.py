"""The plan document: what it keeps, what it refuses, and that reading what it wrote gives the same plan."""

import copy

import pytest

from routines.plan_document import (
    SCHEMA,
    CountTyped,
    ExpectedAnswer,
    Fold,
    NextCount,
    Plan,
    PlanError,
    Stop,
    Story,
    Target,
)

PLAN = Plan(
    title="Sevens from four",
    grade="3",
    area="whole",
    count=CountTyped("whole", "4", "7", 20, {"language": "en"}),
    fold=Fold(5, "down", 0),
    story=Story("A tray holds 7 cups.", "tray", "100"),
    landmark="10",
    targets=(Target({"family": "step", "difference": "7"}, "seven more"),),
    expected=(ExpectedAnswer("It is the seven times table.", "Where would 21 be?", "not-so"),),
    stops=(Stop(10, "What is next door?", "35 more", ("5 jumps of 7 make 35",)),),
    next_counts=(NextCount("not-yet", "Start at 7.", CountTyped("whole", "7", "7", 20), Fold(5)),),
    standards=("3.OA.D.9",),
    notes="Bring cups.",
)


def test_a_plan_read_from_its_own_document_is_the_same_plan():
    assert Plan.from_dict(PLAN.as_dict()) == PLAN


def test_the_document_says_its_schema():
    assert PLAN.as_dict()["schema"] == SCHEMA


@pytest.mark.parametrize(
    ("path", "value", "field"),
    [
        (("schema",), 99, "schema"),
        (("title",), "", "title"),
        (("title",), "x" * 121, "title"),
        (("title",), "a\x00b", "title"),
        (("notes",), "a\ud800b", "notes"),
        (("stops", 0, "routes", 0), "\uffff", "stops.0.routes.0"),
        (("count", "style"), {"large": "\x1b"}, "count.style.large"),
        (("targets", 0, "claim"), {"family": "step", "difference": "7", "\x07": 1}, "targets.0.claim."),
        (("title",), 7, "title"),
        (("count",), "7", "count"),
        (("count", "terms"), 1, "count.terms"),
        (("count", "terms"), True, "count.terms"),
        (("count", "terms"), 12.0, "count.terms"),
        (("count", "step"), "0", "step"),
        (("count", "start"), "seven", "start"),
        (("count", "kind"), "roman", "kind"),
        (("count", "style"), {"nonsense": 1}, "style"),
        (("count", "style"), {"places": "x"}, "style"),
        (("fold", "fill"), "sideways", "fold.fill"),
        (("fold", "line_length"), 21, "line_length"),
        (("fold", "lead"), 5, "lead"),
        (("language",), "fr", "language"),
        (("targets",), [{"claim": {"family": "colour"}}], "family"),
        (("targets",), "none", "targets"),
        (("targets",), [{"claim": {"family": "step"}, "words": ""}] * 41, "targets"),
        (("expected",), [{"words": "a", "sort": "wild"}], "expected.0.sort"),
        (("stops",), [{"after": 21, "question": "?"}], "stops"),
        (("stops",), [{"after": 3, "question": "?", "think": -1}], "stops.0.think"),
        (("next_counts",), [{"outcome": "maybe"}], "next_counts.0.outcome"),
        (("extra",), 1, "extra"),
    ],
)
def test_a_wrong_part_is_refused_by_its_name(path, value, field):
    document = copy.deepcopy(PLAN.as_dict())
    part = document
    for key in path[:-1]:
        part = part[key]
    part[path[-1]] = value
    with pytest.raises(PlanError) as refused:
        Plan.from_dict(document)
    assert refused.value.field == field
    assert len(str(refused.value)) > 10


@pytest.mark.parametrize("document", [None, [], "plan", 3, {}, {"schema": SCHEMA}])
def test_what_is_no_document_is_refused(document):
    with pytest.raises(PlanError):
        Plan.from_dict(document)


def test_the_minutes_are_five_seconds_a_count_and_the_times_of_the_stops():
    # Common practice, no source: 20 x 5 s + 20 s + 60 s + 90 s = 270 s, so 5 minutes begun.
    assert PLAN.minutes() == 5
