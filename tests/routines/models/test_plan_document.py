"""The plan document: what it keeps, what it refuses, and that reading what it wrote gives the same plan."""

import copy

import pytest

from routines.models import plan_reading
from routines.models.plan_document import (
    SCHEMA,
    CountSection,
    ExpectedAnswer,
    Fold,
    NextCount,
    Plan,
    Stop,
    Story,
    Target,
)
from routines.models.plan_reading import PlanError, read_document

PLAN = Plan(
    title="Sevens from four",
    grade="3",
    area="whole",
    count=CountSection("whole", "4", "7", 20, {"language": "en"}),
    fold=Fold(5, "down", 0),
    story=Story("A tray holds 7 cups.", "tray", "100"),
    landmark="10",
    targets=(Target({"family": "step", "difference": "7"}, "seven more"),),
    expected=(ExpectedAnswer("It is the seven times table.", "Where would 21 be?", "not-so"),),
    stops=(Stop(10, "What is next door?", "35 more", ("5 jumps of 7 make 35",)),),
    next_counts=(NextCount("not-yet", "Start at 7.", CountSection("whole", "7", "7", 20), Fold(5)),),
    standards=("3.OA.D.9",),
    notes="Bring cups.",
)


def test_a_plan_read_from_its_own_document_is_the_same_plan():
    assert read_document(PLAN.as_dict()) == PLAN


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
        read_document(document)
    assert refused.value.field == field
    assert len(str(refused.value)) > 10


@pytest.mark.parametrize("document", [None, [], "plan", 3, {}, {"schema": SCHEMA}])
def test_what_is_no_document_is_refused(document):
    with pytest.raises(PlanError):
        read_document(document)


def test_the_minutes_are_five_seconds_a_count_and_the_times_of_the_stops():
    # Common practice, no source: 20 x 5 s + 20 s + 60 s + 90 s = 270 s, so 5 minutes begun.
    assert PLAN.minutes() == 5


def test_a_document_of_an_older_schema_goes_through_every_step(monkeypatch):
    """A step that renames a part, as a later schema may ask for."""
    old = PLAN.as_dict() | {"schema": -1}
    old["heading"] = old.pop("title")

    def heading_is_title(document):
        return {
            **{name: part for name, part in document.items() if name != "heading"},
            "title": document["heading"],
            "schema": 0,
        }

    monkeypatch.setattr(
        plan_reading, "STEPS", {-1: heading_is_title, 0: lambda document: {**document, "schema": SCHEMA}}
    )
    assert read_document(old) == PLAN


@pytest.mark.parametrize(
    ("path", "value", "said"),
    [
        (("stops", 0, "think"), 601, '"stops.0.think" should be a whole number from 0 to 600.'),
        (("stops", 0, "answer"), "x" * 401, '"stops.0.answer" is 401 characters long; 400 is the most.'),
        (("stops", 0, "colour"), "red", '"stops.0" has no part called "colour".'),
        (("colour",), "red", 'A plan has no part called "colour".'),
        (("stops", 0), 7, '"stops.0" should be a group of named parts.'),
        (("next_counts", 0, "fold"), "wide", '"next_counts.0.fold" should be a group of named parts.'),
        (("expected",), {}, '"expected" should be a list of at most 40.'),
        (("language",), "fr", '"language" should be one of en, es, both.'),
        (("story", "text"), None, '"story.text" should be text.'),
        (("title",), " ", "Give the count a title, so that colleagues can find it."),
    ],
)
def test_what_is_wrong_is_said_in_a_sentence(path, value, said):
    document = copy.deepcopy(PLAN.as_dict())
    part = document
    for key in path[:-1]:
        part = part[key]
    part[path[-1]] = value
    with pytest.raises(PlanError) as refused:
        read_document(document)
    assert str(refused.value) == said
