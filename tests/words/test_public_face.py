"""The public face of the words: the functions of the engine with an audience, and its answers with their sentences."""

import inspect
from dataclasses import fields
from typing import Any

import pytest

from routines import counting, words
from routines.counting import Audience, Count, Grid
from routines.counting.slips.hearings import Heard
from tests.counting.claims import a_claim

COUNT = Count.parse(kind="whole", start="58", step="6", terms=20)
GRID = Grid(COUNT, 5)
SPEAKING = [
    "check",
    "classify",
    "compare_folds",
    "explain_cells",
    "find_patterns",
    "ideas",
    "judge_rule",
    "likely_slips",
    "locate",
    "next_counts",
    "probes",
    "show_claim",
    "suggest_standards",
    "suggest_stops",
]


def parameters(function: Any) -> list[tuple[str, Any, Any]]:
    return [
        (p.name, p.default, p.kind) for p in inspect.signature(function).parameters.values() if p.name != "audience"
    ]


@pytest.mark.parametrize("name", SPEAKING)
def test_what_speaks_takes_what_the_engine_takes_and_an_audience(name: str) -> None:
    spoken = getattr(words, name)
    assert parameters(spoken) == parameters(getattr(counting, name))
    assert inspect.signature(spoken).parameters["audience"].default is None


def test_every_name_is_there() -> None:
    for name in words.__all__:
        assert getattr(words, name) is not None


def has(answer: object, *names: str) -> None:
    for name in names:
        assert hasattr(answer, name), name


def test_answers_carry_what_the_face_promises() -> None:
    claim = a_claim("landmarks", multiple=10)
    has(
        words.find_patterns(GRID)[0],
        *("claim", "cells", "groups", "statement", "student_words", "because", "holds", "breaks_at"),
    )
    has(words.check(claim, GRID), "true", "seen", "holds", "true_from", "breaks_at", "because", "counterexample")
    assert 1 <= len(words.explain_cells(GRID, [3, 8, 13])) <= 3
    has(words.ideas(GRID)[0], "claim", "seen_at", "dies_at", "pattern")
    has(words.ideas(GRID)[0].pattern, "statement")
    has(words.locate(GRID, 130), "appears", "n", "row", "column", "before", "after", "reason", "routes")
    has(words.probes(GRID)[0], "value", "text", "appears", "n", "why")
    has(words.compare_folds(COUNT, (4, 5))[0], "lines_up", "slides", "vanishes", "sentence", "patterns")
    has(words.likely_slips(GRID, 3)[0], "n", "heard", "correct", "why", "reply", "equal_name")
    has(words.classify(GRID, 3, "71"), "hearing", "note", "slip")
    has(
        words.suggest_stops(GRID, [claim], 3)[0],
        *("after", "question", "answer", "routes", "think", "partner", "share"),
    )
    has(words.next_counts(GRID, "as-planned")[0], "what", "why", "grid")


@pytest.mark.parametrize("name", ["find_patterns", "ideas", "probes", "likely_slips", "suggest_stops"])
def test_the_facts_are_those_of_the_engine(name: str) -> None:
    """Field by field, in the same order; what is nested is spoken in turn."""
    facts, spoken = getattr(counting, name)(GRID), getattr(words, name)(GRID)
    assert len(facts) == len(spoken) > 0
    for fact, said in zip(facts, spoken, strict=True):
        assert isinstance(said, type(fact))
        for field in fields(fact):
            if field.name != "pattern":
                assert getattr(said, field.name) == getattr(fact, field.name)


def test_what_was_heard_is_what_the_engine_heard() -> None:
    for said in ("71", "70", "64", "banana", "76"):
        assert words.classify(GRID, 3, said).hearing == counting.classify(GRID, 3, said)
    assert isinstance(words.classify(GRID, 3, "64").hearing, Heard)


@pytest.mark.parametrize("level", range(9))
@pytest.mark.parametrize("language", ["en", "es"])
def test_every_level_and_language_is_spoken(level: int, language: str) -> None:
    audience = Audience(level, language)
    for pattern in words.find_patterns(GRID, audience=audience):
        for text in (pattern.statement, pattern.student_words, pattern.because):
            assert text.strip() == text != ""
