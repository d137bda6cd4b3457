"""The page that was read is what the engine says today; the forty counts are as various as they claim to be."""

from collections import Counter

import pytest

from routines.counting import Audience, Kind
from routines.words import patterns_to_say

from .__main__ import PAGE
from .counts import COUNTS
from .page import FIRST_PATTERNS, LANGUAGES, page


def test_the_page_that_was_read_is_what_is_said_today() -> None:
    # Where this fails after a change that was meant: python -m tests.what_a_teacher_hears, and read the difference.
    assert page() == PAGE.read_text(encoding="utf-8")


def test_the_counts_are_of_every_kind_level_and_direction() -> None:
    assert len(COUNTS) == 40
    assert {heard.kind for heard in COUNTS} == set(Kind)
    assert {heard.level for heard in COUNTS} == set(range(9))
    assert {heard.fill for heard in COUNTS} == {"across", "down", "across-up"}
    forwards = {heard.level // 2 for heard in COUNTS if not heard.step.startswith("-")}
    back = {heard.level // 2 for heard in COUNTS if heard.step.startswith("-")}
    assert forwards >= back >= set(range(4))
    assert any(heard.lead for heard in COUNTS)
    assert sum(bool(heard.group) for heard in COUNTS) >= 3


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_reason_is_given_more_than_twice_among_the_first_patterns_of_a_count(language: str) -> None:
    for heard in COUNTS:
        told = patterns_to_say(heard.grid(language), audience=Audience(heard.level, language))[:FIRST_PATTERNS]
        reason, times = Counter(pattern.because for pattern in told).most_common(1)[0]
        assert times <= 2, reason
