"""What is handed to slips, stops and next counts in a wrong shape is refused at its own field, never answered."""

from collections.abc import Callable
from fractions import Fraction

import pytest

from routines.counting import (
    Audience,
    Claim,
    Count,
    CountError,
    Grid,
    classify,
    likely_slips,
    next_counts,
    suggest_stops,
)
from routines.errors import say
from tests.counting.claims import a_claim

GRID = Grid(Count.parse(kind="whole", start="58", step="6", terms=20), 5)

NOT_TEXT = [
    None,
    True,
    0,
    76,
    -1,
    7.0,
    float("nan"),
    Fraction(76),
    b"76",
    [],
    ["76"],
    ("76",),
    {},
    {"76"},
    object(),
    str,
]
NOT_A_COUNT = [None, True, False, 0, -1, 10**9 + 1, 10**5000, 3.0, Fraction(3), "3", b"3", [], [3], {}, object()]
NOT_A_LIST = [None, True, 5, 2.5, Fraction(1, 2), "58", "", b"58", {"58"}, frozenset(), object(), a_claim("step")]
NOT_EARLIER = [
    None,
    5,
    True,
    58,
    58.0,
    b"58",
    (),
    (1,),
    (1, "58", "x"),
    (None, "58"),
    ("1", "58"),
    (True, "58"),
    (0, "58"),
]
NOT_EARLIER_PAIRS = [(1, None), (1, 58), (1, b"58"), [1, ["58"]], {1: "58"}, {"58"}, object(), Audience(), GRID]
NOT_A_CLAIM = [
    None,
    True,
    5,
    2.5,
    "x",
    "step",
    b"step",
    [],
    ["step"],
    (),
    object(),
    Claim,
    GRID,
    Audience(),
    Fraction(6),
]
NOT_A_LEVEL = [True, -1, 9, 99, 10**30, 3.0, Fraction(3), "3", "K", b"3", [], [3], {}, object()]
NOT_AN_OUTCOME = [None, True, 0, "", "good", "Not-yet", "not yet", b"not-yet", [], ["not-yet"], {}, object()]
NOT_A_GRID = [None, 5, "58", [], {}, GRID.count, Grid, object()]
NOT_AN_AUDIENCE = ["en", 3, True, [], {}, (3, "en"), object(), Audience]


def refused(ask: Callable[[], object], field: str) -> None:
    with pytest.raises(CountError) as error:
        ask()
    assert error.value.field == field
    assert 10 < len(say(error.value)) < 200


@pytest.mark.parametrize("said", NOT_TEXT, ids=lambda value: type(value).__name__)
def test_what_was_said_is_text(said: object) -> None:
    refused(lambda: classify(GRID, 3, said), "said")  # type: ignore[arg-type]


@pytest.mark.parametrize("n", NOT_A_COUNT, ids=lambda value: type(value).__name__)
def test_a_count_has_a_number_from_one_on(n: object) -> None:
    refused(lambda: classify(GRID, n, "70"), "n")  # type: ignore[arg-type]
    refused(lambda: next_counts(GRID, "not-yet", slips=[n]), "slips")


@pytest.mark.parametrize("given", NOT_A_LIST, ids=lambda value: type(value).__name__)
def test_a_list_is_a_list(given: object) -> None:
    refused(lambda: classify(GRID, 3, "70", given), "earlier")  # type: ignore[arg-type]
    refused(lambda: suggest_stops(GRID, given), "targets")  # type: ignore[arg-type]
    refused(lambda: next_counts(GRID, "not-yet", slips=given), "slips")  # type: ignore[arg-type]
    refused(lambda: next_counts(GRID, "not-yet", unseen=given), "unseen")  # type: ignore[arg-type]


@pytest.mark.parametrize("entry", [*NOT_EARLIER, *NOT_EARLIER_PAIRS], ids=lambda value: type(value).__name__)
def test_what_was_said_before_is_text_with_or_without_its_count(entry: object) -> None:
    refused(lambda: classify(GRID, 3, "70", [entry]), "earlier")  # type: ignore[list-item]


@pytest.mark.parametrize("entry", [None, "2", True, 0, -1, 2.0, (1,), Fraction(2)], ids=repr)
def test_what_was_said_before_is_keyed_by_the_number_of_its_count(entry: object) -> None:
    refused(lambda: classify(GRID, 3, "70", {entry: "64"}), "earlier")  # type: ignore[dict-item]


@pytest.mark.parametrize("said", [None, 64, b"64", ["64"], object()], ids=lambda value: type(value).__name__)
def test_what_is_keyed_by_its_count_is_text(said: object) -> None:
    refused(lambda: classify(GRID, 3, "70", {2: said}), "earlier")  # type: ignore[dict-item]


@pytest.mark.parametrize("given", NOT_A_CLAIM, ids=lambda value: type(value).__name__)
def test_what_is_to_be_seen_is_a_claim(given: object) -> None:
    refused(lambda: suggest_stops(GRID, [given]), "targets")
    refused(lambda: next_counts(GRID, "as-planned", unseen=[given]), "unseen")


@pytest.mark.parametrize(
    ("data", "field"),
    [
        ({}, "family"),
        ({"family": None}, "family"),
        ({"family": "tens"}, "family"),
        ({"family": "step", "difference": "six"}, "difference"),
        ({"family": "digit", "place": 0.5, "along": "column"}, "place"),
        ({"family": "remainder", "modulus": "0", "along": "count"}, "modulus"),
    ],
)
def test_the_data_of_a_claim_is_refused_at_the_parameter_at_fault(data: dict[str, object], field: str) -> None:
    refused(lambda: suggest_stops(GRID, [data]), field)
    refused(lambda: next_counts(GRID, "not-yet", unseen=[data]), field)


@pytest.mark.parametrize("level", NOT_A_LEVEL, ids=lambda value: type(value).__name__)
def test_a_level_runs_from_kindergarten_to_eight(level: object) -> None:
    refused(lambda: likely_slips(GRID, level), "level")  # type: ignore[arg-type]
    refused(lambda: suggest_stops(GRID, [], level), "level")  # type: ignore[arg-type]
    refused(lambda: next_counts(GRID, "not-yet", level), "level")  # type: ignore[arg-type]


@pytest.mark.parametrize("outcome", NOT_AN_OUTCOME, ids=lambda value: type(value).__name__)
def test_how_it_went_is_one_of_three(outcome: object) -> None:
    refused(lambda: next_counts(GRID, outcome), "outcome")  # type: ignore[arg-type]


@pytest.mark.parametrize("grid", NOT_A_GRID, ids=lambda value: type(value).__name__)
def test_a_grid_is_a_grid(grid: Grid) -> None:
    for ask in (
        lambda: likely_slips(grid),
        lambda: classify(grid, 3, "70"),
        lambda: suggest_stops(grid),
        lambda: next_counts(grid, "not-yet"),
    ):
        refused(ask, "grid")


@pytest.mark.parametrize("audience", NOT_AN_AUDIENCE, ids=lambda value: type(value).__name__)
def test_an_audience_is_an_audience(audience: Audience) -> None:
    for ask in (
        lambda: likely_slips(GRID, audience=audience),
        lambda: classify(GRID, 3, "70", audience=audience),
        lambda: suggest_stops(GRID, audience=audience),
        lambda: next_counts(GRID, "not-yet", audience=audience),
    ):
        refused(ask, "audience")


def test_without_a_level_or_an_audience_the_usual_one_is_meant() -> None:
    assert likely_slips(GRID, None) == likely_slips(GRID, audience=Audience())
    assert suggest_stops(GRID, (), None) == suggest_stops(GRID, audience=Audience())
