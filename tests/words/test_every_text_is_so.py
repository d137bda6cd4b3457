"""Every text of the public face, in both languages, is read back: its numbers worked out again, its words compared.

The numbers come from the sentence itself and from a listing of the count; a number that no rule reads is a failure.
"""

import csv
from collections.abc import Callable, Iterator
from pathlib import Path
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Grid
from tests.counting.any_count import KINDS, grids
from tests.words import every_text
from tests.words.every_text import Told
from tests.words.grammars import CHECKERS
from tests.words.sentence_checker import ordinal_is_spelled

STANDARDS = list(csv.DictReader((Path(__file__).parents[1] / "reference" / "standards.csv").open(encoding="utf-8")))
LEVELS = (0, 2, 4, 7)
PER_KIND = settings(max_examples=max(settings.default.max_examples // 4, 8))

SORTS: dict[str, Callable[[Grid, Audience, Random], Iterator[Told]]] = {
    "patterns": every_text.patterns,
    "cells explained": every_text.explained,
    "ideas": every_text.imagined,
    "locations": every_text.located,
    "numbers to ask about": lambda grid, audience, random: every_text.asked_about(grid, audience),
    "folds": every_text.folded,
    "slips": every_text.slipped,
    "what was heard": every_text.heard,
    "standards": lambda grid, audience, random: every_text.served(grid, audience, STANDARDS),
    "stories": every_text.narrated,
    "stops": every_text.stopped,
    "next counts": every_text.followed,
}


def wrong_in(told: Told, language: str) -> list[str]:
    wrong = CHECKERS[told.family, language].problems(told.text, told.about)
    return wrong if language == "es" or ordinal_is_spelled(told.text) else [*wrong, f"misspelled: {told.text}"]


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("sort", SORTS)
def test_texts_of_every_sort_and_kind_say_only_what_is_so(sort: str, kind: str) -> None:
    @PER_KIND
    @given(grids(kind), st.sampled_from(LEVELS), st.sampled_from(["en", "es"]), st.integers(0, 10**6))
    def each(grid: Grid, level: int, language: str, seed: int) -> None:
        for told in SORTS[sort](grid, Audience(level, language), Random(seed)):
            assert wrong_in(told, language) == [], told.sort

    each()


@pytest.mark.parametrize("kind", KINDS)
def test_answers_to_claims_from_elsewhere_say_only_what_is_so(kind: str) -> None:
    """A pattern of one grid is claimed of another fold of another count: mostly false, sometimes not."""

    @PER_KIND
    @given(grids(kind), grids(kind), st.sampled_from(LEVELS), st.sampled_from(["en", "es"]), st.integers(0, 10**6))
    def each(elsewhere: Grid, grid: Grid, level: int, language: str, seed: int) -> None:
        for told in every_text.answered(grid, elsewhere, Audience(level, language), Random(seed)):
            assert wrong_in(told, language) == [], told.sort

    each()
