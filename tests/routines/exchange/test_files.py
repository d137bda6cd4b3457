"""Files of routines: what goes out comes in again to the byte, and a bad entry loses none of the good ones."""

import copy
import json

import jsonschema
import pytest

from routines.demo.plans import PLANS
from routines.exchange.reading import (
    ENTRIES_LIMIT,
    FOR_AN_OPEN_TARGET,
    LOOKS_LIMIT,
    FileError,
    looks_at_targets,
    looks_to_read,
    read,
)
from routines.exchange.schema import schema
from routines.exchange.writing import written
from routines.models.plan_reading import read_document
from tests.routines.making import SEVENS

GRADES = {"K", "1", "2", "3", "4", "5", "6"}
DEMO = [demo.plan for demo in PLANS]


def test_written_read_and_written_again_is_the_same_to_the_byte():
    first = written(DEMO)
    assert written(read(first, GRADES).plans) == first


def test_the_order_of_the_plans_does_not_matter():
    assert written(DEMO) == written(reversed(DEMO))


def test_what_is_written_follows_the_published_schema():
    jsonschema.Draft202012Validator.check_schema(schema())
    jsonschema.validate(json.loads(written(DEMO)), schema())


def file_of(*entries, **changes):
    return json.dumps({"format": "countfold-routines", "version": 1, "routines": list(entries), **changes}).encode()


def changed(path, value):
    document = copy.deepcopy(SEVENS.as_dict())
    part = document
    for key in path[:-1]:
        part = part[key]
    part[path[-1]] = value
    return document


WRONG = [
    (("title",), 5),
    (("title",), "x" * 500),
    (("grade",), "99"),
    (("count", "step"), "0"),
    (("count", "kind"), "colour"),
    (("count", "wide"), 1),
    (("count", "style"), {"clock": 13}),
    (("fold", "line_length"), 50),
    (("stops", 0, "after"), 10**9),
    (("targets", 0, "claim"), {"family": "step", "difference": 0.5}),
    (("targets", 0, "claim"), {"family": "digit", "part": "inches", "along": "count", "blocks": [[1]]}),
    (("schema",), 2),
    (("unknown",), 1),
]


@pytest.mark.parametrize(("path", "value"), WRONG)
def test_a_bad_entry_is_named_with_its_reason_and_the_good_ones_are_kept(path, value):
    found = read(file_of(SEVENS.as_dict(), changed(path, value), SEVENS.as_dict()), GRADES)
    assert len(found.plans) == 2
    assert [entry.number for entry in found.refused] == [2]
    assert len(found.refused[0].reason) > 10


@pytest.mark.parametrize(
    ("path", "value"),
    [
        case
        for case in WRONG
        if case[0] not in [("grade",), ("count", "step"), ("fold", "line_length"), ("targets", 0, "claim")]
    ],
)
def test_the_schema_refuses_the_same_forms(path, value):
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(json.loads(file_of(changed(path, value))), schema())


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"not json",
        b"[]",
        b"{}",
        b"\xff\xfe\x00",
        b"[" * 100_000,
        b'{"format": "countfold-routines"}',
        file_of(),
        file_of(version=2),
        file_of(SEVENS.as_dict(), version=2),
        file_of(SEVENS.as_dict(), version=True),
        file_of(SEVENS.as_dict(), format="other"),
        file_of(*[1] * (ENTRIES_LIMIT + 1)),
        b'{"format": "countfold-routines", "version": 1, "routines": [NaN]}',
        b" " * (12 * 1024 * 1024 + 1),
    ],
)
def test_what_is_no_file_of_routines_is_refused_in_one_sentence(content):
    with pytest.raises(FileError) as refused:
        read(content, GRADES)
    assert len(str(refused.value)) > 20


@pytest.mark.parametrize("entry", [None, 3, "plan", [], {}, {"schema": 1}])
def test_an_entry_that_is_no_plan_is_refused(entry):
    found = read(file_of(entry), GRADES)
    assert not found.plans
    assert len(found.refused) == 1


def test_hostile_text_stays_text():
    plan = SEVENS.changed(title="<script>alert(1)</script>", notes="=cmd()")
    assert read(written([plan]), GRADES).plans == (plan,)
    assert read_document(plan.as_dict()) == plan


def test_targets_that_take_too_long_to_check_are_counted_and_refused(monkeypatch):
    asked = []
    monkeypatch.setattr("routines.exchange.reading.judge", lambda claim, grid: asked.append(claim))
    anything = {"claim": {"family": "remainder"}, "words": ""}
    long = {
        **SEVENS.as_dict(),
        "count": {**SEVENS.as_dict()["count"], "terms": 200},
        "targets": [anything] * 40,
        "stops": [],
    }
    with pytest.raises(FileError, match="than one go can check"):
        read(file_of(*[long] * 8), GRADES)
    assert 0 < len(asked) * 200 * FOR_AN_OPEN_TARGET <= LOOKS_LIMIT


def test_a_full_file_of_plain_counts_is_checked():
    plan = {**SEVENS.as_dict(), "targets": SEVENS.as_dict()["targets"] * 2, "next_counts": [{"outcome": "not-yet"}] * 3}
    looks = looks_to_read(plan) + looks_at_targets(read_document(plan))
    assert looks * ENTRIES_LIMIT <= LOOKS_LIMIT
    assert len(read(file_of(*[plan] * 50), GRADES).plans) == 50


def test_every_target_of_the_demo_says_all_that_is_to_be_checked():
    for plan in DEMO:
        assert looks_at_targets(plan) == plan.count.terms * len(plan.targets)


def test_next_counts_without_end_are_refused_too(monkeypatch):
    monkeypatch.setattr("routines.exchange.reading.LOOKS_LIMIT", 5_000)
    next_count = {"outcome": "not-yet", "count": {"start": "1"}, "fold": {}}  # wrong: no step, but read all the same
    plan = {**SEVENS.as_dict(), "targets": [], "next_counts": [next_count] * 40}
    with pytest.raises(FileError, match="than one go can check"):
        read(file_of(plan, plan, plan), GRADES)


@pytest.mark.parametrize("version", ["9" * 4_000, 10**4_000, ["x" * 10_000]])
def test_what_a_file_says_of_its_version_is_told_in_short(version):
    with pytest.raises(FileError) as refused:
        read(file_of(SEVENS.as_dict(), version=version), GRADES)
    assert len(str(refused.value)) < 150


def test_json_that_nests_without_end_is_no_file_of_counts():
    with pytest.raises(FileError, match="cannot be read as JSON"):
        read(b"[" * 1_000_000, GRADES)


def test_a_version_of_five_thousand_digits_is_no_version():
    with pytest.raises(FileError, match="not a file of counts"):
        read(b'{"version": ' + b"9" * 5_000 + b"}", GRADES)
