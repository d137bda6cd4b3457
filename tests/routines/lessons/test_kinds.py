"""The declared kinds: what each event may hold, and that the written contract says the same."""

import re
from pathlib import Path

import pytest

from routines.lessons.kinds import KINDS, Bounds, EventRefused
from routines.lessons.state import ACTS
from tests.routines.lessons.making import data_of_every_kind, identity

BOUNDS = Bounds(last_term=70)
CONTRACT = Path(__file__).parents[3].joinpath("docs", "lessons.md").read_text(encoding="utf-8")
GOOD = data_of_every_kind()


def rows() -> dict[str, list[str]]:
    """The cells of the table of kinds, by kind; a row may name several."""
    table = CONTRACT.split("| kind | data |")[1].split("\n\n")[0]
    found = {}
    for line in table.splitlines()[2:]:
        first, *cells = (cell.strip() for cell in line.strip("|").split("|"))
        for kind in re.findall(r"`([^`]+)`", first):
            found[kind] = cells
    return found


def test_the_contract_lists_exactly_the_declared_kinds():
    assert set(rows()) == set(KINDS)


@pytest.mark.parametrize("kind", KINDS)
def test_the_contract_names_the_parts_and_who_sends_and_hears(kind):
    data, _means, sends, hears = rows()[kind]
    assert re.findall(r"`([^`]+)`", data) == list(KINDS[kind].parts)
    assert sends == ("yes" if KINDS[kind].board_sends else "no")
    assert (hears != "no") is KINDS[kind].board_hears


def test_every_kind_is_reduced():
    assert set(KINDS) == set(ACTS) | {"undo", "mark.remove"}


@pytest.mark.parametrize("kind", KINDS)
def test_good_data_is_taken(kind):
    KINDS[kind].check(GOOD[kind], BOUNDS)


@pytest.mark.parametrize("kind", KINDS)
def test_a_part_that_the_kind_does_not_have_is_refused(kind):
    with pytest.raises(EventRefused, match=r"no longer match \(note\)") as refused:
        KINDS[kind].check({**GOOD[kind], "note": "an answer"}, BOUNDS)
    assert refused.value.reason == "malformed"


@pytest.mark.parametrize("kind", KINDS)
def test_a_missing_part_is_refused_unless_it_may_be_null(kind):
    for name, part in KINDS[kind].parts.items():
        less = {key: value for key, value in GOOD[kind].items() if key != name}
        if part.nullable:
            KINDS[kind].check(less, BOUNDS)
            KINDS[kind].check({**less, name: None}, BOUNDS)
        else:
            with pytest.raises(EventRefused, match=name) as refused:
                KINDS[kind].check(less, BOUNDS)
            assert refused.value.reason == "malformed"


@pytest.mark.parametrize("kind", KINDS)
def test_a_part_of_another_type_is_refused(kind):
    for name in KINDS[kind].parts:
        for wrong in ({"a": 1}, 1.5, [[]], -1, "?" * 300, True if name != "practice" else 1):
            with pytest.raises(EventRefused):
                KINDS[kind].check({**GOOD[kind], name: wrong}, BOUNDS)


@pytest.mark.parametrize(
    ("kind", "change", "reason"),
    [
        ("term.write", {"n": 71}, "unknown-term"),
        ("term.write", {"n": 0}, "unknown-term"),
        ("term.write", {"text": "4" * 41}, "text"),
        ("term.write", {"text": "   "}, "text"),
        ("term.write", {"text": "4\n5"}, "text"),
        ("term.write", {"text": "4\x00"}, "text"),
        ("term.write", {"text": "\ud83d"}, "text"),
        ("term.write", {"text": "4\u202e5"}, "text"),
        ("term.write", {"over": "e1"}, "malformed"),
        ("term.write", {"over": identity().upper()}, "malformed"),
        ("phrase.add", {"text": "x" * 281}, "text"),
        ("phrase.add", {"cells": []}, "malformed"),
        ("phrase.add", {"cells": list(range(1, 14))}, "malformed"),
        ("phrase.add", {"cells": [1, 71]}, "unknown-term"),
        ("notice.add", {"text": "x" * 281}, "text"),
        ("notice.add", {"expected": 40}, "malformed"),
        ("mark.add", {"mark": "star"}, "malformed"),
        ("mark.add", {"place": 40}, "malformed"),
        ("jump.add", {"to": 5}, "malformed"),
        ("filled", {"from": 21}, "malformed"),
        ("recount", {"from": 6}, "malformed"),
        ("voice", {"from": 6}, "malformed"),
        ("voice", {"how": "loud"}, "malformed"),
        ("think", {"seconds": 1801}, "malformed"),
        ("stop.enter", {"stop": 40}, "malformed"),
        ("show", {"line": 251}, "malformed"),
        ("target", {"seen": "maybe"}, "malformed"),
        ("lesson.open", {"taught_on": "3 November"}, "malformed"),
        ("lesson.open", {"surface": "wall"}, "malformed"),
    ],
)
def test_what_is_out_of_bounds_is_refused_by_its_reason(kind, change, reason):
    with pytest.raises(EventRefused) as refused:
        KINDS[kind].check({**GOOD[kind], **change}, BOUNDS)
    assert refused.value.reason == reason
    assert len(str(refused.value)) > 10


def test_the_most_that_fits_is_taken():
    KINDS["term.write"].check({"n": 70, "text": "4" * 40, "over": identity()}, BOUNDS)
    KINDS["phrase.add"].check({"text": "ñ" * 280, "cells": list(range(1, 13))}, BOUNDS)
    KINDS["think"].check({"seconds": 1800}, BOUNDS)


def test_every_reason_in_the_code_stands_in_the_contract():
    code = "".join(path.read_text(encoding="utf-8") for path in Path("routines/lessons").glob("*.py"))
    used = set(re.findall(r'EventRefused\(\s*"([a-z-]+)"', code)) | {"counter"}
    assert used
    assert [reason for reason in used if f"`{reason}`" not in CONTRACT.split("Reason codes:")[1].split("\n\n")[0]] == []
