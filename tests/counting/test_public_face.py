"""The public face: every name with its parameters, their defaults, and what the answers carry: facts, and no sentence."""

import inspect
from collections.abc import Callable
from fractions import Fraction
from typing import Any

import pytest

import routines.counting as counting
from routines.counting import (
    Count,
    Grid,
    Limits,
    Style,
    check,
    classify,
    compare_folds,
    design_grids,
    explain_cells,
    find_patterns,
    ideas,
    judge_rule,
    likely_slips,
    locate,
    next_counts,
    probes,
    suggest_standards,
    suggest_stops,
)
from tests.counting.claims import a_claim

COUNT = Count.parse(kind="whole", start="58", step="6", terms=20)
GRID = Grid(COUNT, 5)
NONE = inspect.Parameter.empty

# The parameters a caller may give by place, in this order, and their defaults.
BY_PLACE: list[tuple[Callable[..., Any], list[tuple[str, Any]]]] = [
    (find_patterns, [("grid", NONE), ("upto", None), ("implied", False)]),
    (check, [("claim", NONE), ("grid", NONE)]),
    (explain_cells, [("grid", NONE), ("cells", NONE)]),
    (ideas, [("grid", NONE)]),
    (judge_rule, [("typed", NONE), ("count", NONE)]),
    (locate, [("grid", NONE), ("value", NONE)]),
    (probes, [("grid", NONE)]),
    (compare_folds, [("count", NONE), ("line_lengths", range(2, 13)), ("fills", ("across", "down"))]),
    (design_grids, [("wanted", NONE), ("limits", None)]),
    (likely_slips, [("grid", NONE), ("grade", None)]),
    (classify, [("grid", NONE), ("n", NONE), ("said", NONE), ("earlier", ())]),
    (suggest_stops, [("grid", NONE), ("targets", ()), ("grade", None)]),
    (next_counts, [("grid", NONE), ("outcome", NONE)]),
    (suggest_standards, [("grid", NONE), ("standards", NONE)]),
]


@pytest.mark.parametrize(("function", "expected"), BY_PLACE)
def test_parameters_stand_in_their_order_with_their_defaults(
    function: Callable[..., Any], expected: list[tuple[str, Any]]
) -> None:
    parameters = list(inspect.signature(function).parameters.values())[: len(expected)]
    assert [(p.name, p.default) for p in parameters] == expected


def test_every_name_is_there() -> None:
    for name in counting.__all__:
        assert getattr(counting, name) is not None
    with pytest.raises(AttributeError):
        _ = counting.nothing_of_the_kind


def test_a_count_says_its_values_texts_words_parts_and_rule() -> None:
    thirds = Count.parse(kind="fraction", start="2/3", step="1/3", terms=12, style=Style())
    assert thirds.value(1) == Fraction(2, 3)
    assert thirds.value(100) == Fraction(2, 3) + 99 * Fraction(1, 3)
    assert (thirds.text(1), thirds.text(2), thirds.text(3)) == ("2/3", "1", "1 1/3")
    assert thirds.parts(1) == {"top": 2, "bottom": 3}
    assert thirds.words(3, language="en") == "one and one third"
    assert thirds.words(1, language="es") == "dos tercios"
    assert COUNT.words(8) == "one hundred"
    assert COUNT.words(9) == "one hundred six"
    rule = COUNT.rule()
    assert "n" in rule.text
    assert [int(rule.expression.subs("n", n)) for n in (1, 2, 20)] == [58, 64, 172]


def test_a_grid_says_where_each_count_stands() -> None:
    down = Grid(COUNT, line_length=3, fill="down", lead=0)
    assert (down.rows, down.columns) == (3, 7)
    assert down.place(4) == (1, 2)
    cells = down.cells()
    assert [len(row) for row in cells] == [7, 7, 7]
    first, last = cells[0][0], cells[1][6]
    assert first is not None
    assert last is not None
    assert (first.n, first.value, first.text) == (1, 58, "58")
    assert (last.n, last.text) == (20, "172")
    assert cells[2][6] is None


WORDS = {
    *("statement", "student_words", "because", "why", "reply", "reason", "note", "question", "answer", "sentence"),
    *("what", "ask", "name", "text", "routes"),
}


def carries(answer: object, *names: str, words: tuple[str, ...] = ()) -> None:
    """These facts, and no words but the numbers as they are written."""
    for name in names:
        assert hasattr(answer, name), name
    assert {name for name in WORDS if hasattr(answer, name)} == set(words)


def test_answers_carry_what_the_face_promises_and_no_sentence() -> None:
    claim = a_claim("landmarks", multiple=10)
    carries(find_patterns(GRID)[0], *("claim", "cells", "groups", "holds", "breaks_at"))
    carries(check(claim, GRID), "true", "seen", "holds", "true_from", "breaks_at", "counterexample")
    assert 1 <= len(explain_cells(GRID, [3, 8, 13])) <= 3
    carries(ideas(GRID)[0], "claim", "seen_at", "dies_at", "lasts", "pattern")
    where = locate(GRID, 130)
    carries(where, "appears", "n", "row", "column", "before", "after", words=("routes",))
    carries(where.routes[0], "start", "moves")
    carries(probes(GRID)[0], "value", "appears", "n", "sort", words=("text",))
    folds = compare_folds(COUNT, (4, 5))
    carries(folds[1], "lines_up", "slides", "vanishes", "before")
    carries(folds[1].lines_up[0], "of", "way", "claim", "plain")
    assert [(r.line_length, r.fill) for r in folds] == [(4, "across"), (5, "across"), (4, "down"), (5, "down")]
    designs = design_grids([claim], Limits(kind="whole", starts=(58, 58), steps=(6, 6), terms=(20, 20)))
    assert designs.complete
    assert all(isinstance(grid, Grid) for grid in designs.grids)
    carries(likely_slips(GRID, 3)[0], "rule", "n", "heard", "correct", "equal_name")
    carries(classify(GRID, 3, "64"), "n", "said", "correct", "slip")
    carries(
        suggest_stops(GRID, [claim], 3)[0],
        *("after", "claim", "far", "asked", "ways", "think", "partner", "share"),
        words=("reason",),  # why it is a good place, as one of four names
    )
    carries(next_counts(GRID, "as-planned")[0], "outcome", "change", "grid", "shows")


def test_folds_are_compared_from_2_to_12_in_both_ways_unless_told_otherwise() -> None:
    folds = [(report.line_length, report.fill) for report in compare_folds(COUNT)]
    assert folds == [(length, fill) for fill in ("across", "down") for length in range(2, 13)]


def test_tapped_cells_are_given_in_any_order_and_as_any_collection() -> None:
    alike = [explain_cells(GRID, cells) for cells in ([3, 8, 13], (13, 3, 8), {8, 13, 3})]
    assert alike[0] == alike[1] == alike[2]
