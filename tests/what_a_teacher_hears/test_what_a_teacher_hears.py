"""The page that was read is what the engine says today; the forty counts are as various as they claim to be."""

from routines.counting import Kind

from .__main__ import PAGE
from .counts import COUNTS
from .page import page


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
