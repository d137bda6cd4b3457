"""What a lesson's grid shows, as it happened and clean for the wall."""

from routines.counting import Grid
from routines.drawing import JumpArc, Mark, Phrase
from routines.lessons.drawn import cells_as_said, cells_clean, cells_on_board, ink_of
from routines.lessons.state import reduce_events
from tests.routines.making import SEVENS

COUNT = SEVENS.count.count()


def state_after(*rows):
    events = [
        {"id": name, "t": t, "device": "a", "at": "", "ms": 0, "kind": kind, "data": data}
        for t, (name, kind, data) in enumerate(rows, 1)
    ]
    return reduce_events(events)


STATE = state_after(
    ("f", "filled", {"from": 1, "to": 4}),
    ("a", "term.write", {"n": 2, "text": "10", "over": None}),
    ("b", "term.correct", {"n": 2, "text": "11", "over": "a"}),
    ("c", "term.left-out", {"n": 3, "over": None}),
    ("d", "term.write", {"n": 5, "text": "31", "over": None}),
)


def test_as_it_happened_shows_what_was_said_struck_and_left_out():
    cells = {n: (cell.state, cell.said, cell.text) for n, cell in cells_as_said(STATE, COUNT).items()}
    assert cells == {
        1: ("written", "", "4"),
        2: ("corrected", "10", "11"),
        3: ("left-out", "", ""),
        4: ("written", "", "25"),
        5: ("written", "", "31"),
    }


def test_clean_shows_the_true_counts_and_nothing_else():
    # an entry without a text of its own is drawn as the count has it
    assert {n: (cell.state, cell.said, cell.text) for n, cell in cells_clean(STATE).items()} == dict.fromkeys(
        range(1, 6), ("written", "", "")
    )


def test_a_count_that_was_left_out_and_then_said_strikes_nothing():
    state = state_after(
        ("a", "term.left-out", {"n": 1, "over": None}), ("b", "term.correct", {"n": 1, "text": "4", "over": "a"})
    )
    assert cells_as_said(state, COUNT)[1].state == "written"


def test_what_two_devices_wrote_stands_side_by_side_until_someone_says_which_holds():
    state = state_after(
        ("a", "term.write", {"n": 1, "text": "4", "over": None}),
        ("b", "term.write", {"n": 1, "text": "5", "over": None}),
    )
    assert cells_as_said(state, COUNT)[1].text == "4 | 5"


def test_the_ink_is_all_that_the_class_drew_but_nothing_under_a_slip_of_paper():
    state = state_after(
        ("a", "term.write", {"n": 1, "text": "4", "over": None}),
        ("b", "mark.add", {"n": 1, "mark": "underline", "place": 0}),
        ("c", "mark.add", {"n": 2, "mark": "ring", "place": None}),
        ("d", "cover", {"n": 2}),
        ("e", "jump.add", {"from": 3, "to": 1}),
        ("f", "phrase.add", {"text": "odd, even", "cells": [1, 3]}),
        ("g", "recount", {"from": 1, "to": 5}),
        ("h", "predict", {"n": 9, "text": "70"}),
    )
    ink = ink_of(state, Grid(COUNT, 5))
    assert ink.marks == [Mark(1, "underline", 0)]
    assert ink.jumps == [JumpArc(3, 1, "−14")]  # two steps of 7 back, by hand
    assert ink.phrases == [Phrase("odd, even", [1, 3])]
    assert ink.recounts == [(1, 5)]
    cells = cells_on_board(state, COUNT)
    assert (cells[2].state, cells[9].state, cells[9].text) == ("covered", "prediction", "70")
