"""What was said otherwise, named and grouped. The numbers are 4, 11, 18, 25, 32 ... by 7 (by hand)."""

from routines.counting import Audience
from routines.lessons.slips_said import said_otherwise
from routines.lessons.state import reduce_events
from tests.routines.making import SEVENS


def entry(t, n, text, over=None, kind="term.write"):
    data = {"n": n, "text": text, "over": over}
    return {"v": 1, "id": f"e{t}", "t": t, "device": "a", "at": "", "ms": 0, "kind": kind, "data": data}


def said(*events):
    return said_otherwise(reduce_events(events), SEVENS.grid(), Audience(level=2, language="en"))


def test_what_is_off_only_because_an_earlier_count_was_is_under_the_first():
    (first,) = said(entry(1, 4, "26"), entry(2, 5, "33"), entry(3, 6, "40"))
    assert (first.n, first.text, first.corrected) == (4, "26", False)
    assert [(later.n, later.sort) for later in first.carried] == [(5, "carried"), (6, "carried")]


def test_repeated_and_skipped_ahead_are_named():
    found = said(entry(1, 4, "18"), entry(2, 4, "25", over="e1", kind="term.correct"), entry(3, 7, "53"))
    assert [(item.n, item.text, item.sort, item.corrected) for item in found] == [
        (4, "18", "repeated", True),
        (7, "53", "skipped", False),
    ]


def test_what_is_right_is_not_listed_and_what_stayed_wrong_is():
    found = said(entry(1, 1, "4"), entry(2, 2, "12"))
    assert [(item.n, item.text, item.corrected) for item in found] == [(2, "12", False)]
