"""Rulings 17, 18, 19, 23 and 24: judging claims, error fields, claims as data, ideas, names."""

import json
from fractions import Fraction
from typing import Any

import pytest

from routines.counting import Claim, Count, CountError, Grid, Style
from routines.errors import say
from routines.words import check, find_patterns, ideas, locate, next_counts
from tests.counting.claims import a_claim

from .asking import grid, life, verdict


class TestTooSmallToSee:
    two_rows = grid("18", "1", 10, 5)  # 18 19 20 21 22 / 23 24 25 26 27

    def test_a_block_of_any_length_may_still_come_again(self) -> None:
        said = verdict(self.two_rows, "digit", place=0, along="row")
        assert (said.true, said.seen) == (False, False)  # 8 9 0 1 2: no cell has come again with four or fewer
        said = verdict(self.two_rows, "digit", place=1, along="row", length=4)  # 1 1 2 2 | 2
        assert said.true is False
        said = verdict(grid("1", "3", 12, 12), "digit", place=0, along="count")  # 1 4 7 0 3 6 9 2 5 8 | 1 4
        assert (said.true, said.seen, said.holds) == (True, False, "always")

    def test_blocks_that_leave_cells_untold_are_false_from_no_term_on(self) -> None:
        said = verdict(self.two_rows, "digit", place=0, along="column", blocks=[[8, 3], [9], [0, 5], [1, 6], [2, 7]])
        assert (said.true, said.true_from) == (False, None)


class TestCheck:
    view = grid("58", "6", 20, 5)  # 58 64 70 76 82 / 88 94 100 106 112 / 118 ... / 148 ... 172

    def test_each_column_keeps_its_ones_digit_with_any_digits(self) -> None:
        said = verdict(self.view, "digit", place=0, along="column", length=1)
        assert (said.true, said.seen, said.holds, said.breaks_at, said.true_from) == (True, True, "always", None, 1)

    def test_holds_of_what_is_false_is_none(self) -> None:
        said = verdict(self.view, "digit", place=1, along="column", length=1)  # 5 over 8: the 6th
        assert (said.true, said.seen, said.holds, said.breaks_at, said.counterexample) == (
            False,
            False,
            None,
            6,
            (1, 6),
        )

    def test_true_also_of_what_is_too_small_to_be_seen(self) -> None:
        said = verdict(self.view.cut(5), "digit", place=0, along="column", length=1)
        assert (said.true, said.seen) == (True, False)

    @pytest.mark.parametrize(
        ("family", "parameters", "true"),
        [
            ("step", {}, True),
            ("neighbour", {"direction": "down"}, True),
            ("neighbour", {"difference": 36}, True),  # down-right
            ("neighbour", {"difference": 35}, False),
            ("digit", {"place": 0}, True),
            ("digit", {"place": 0, "along": "column"}, True),
            ("digit", {"along": "column", "blocks": [[8], [4], [0], [6], [2]]}, True),
            ("digit", {"along": "column", "blocks": [[8], [4], [0], [6], [3]]}, False),
            ("digit-run", {"place": 2, "change": 1}, False),
            ("remainder", {"modulus": 6}, True),
            ("remainder", {"modulus": 6, "along": "count", "length": 1}, True),
            ("remainder", {"along": "count", "blocks": [["4"]]}, True),  # by 6
            ("landmarks", {"multiple": 10}, True),
            ("landmarks", {"multiple": 10, "every": 5}, True),
            ("landmarks", {"multiple": 10, "lie": "column"}, True),
            ("landmarks", {"multiple": 10, "lie": "column", "lines": [3]}, True),
            ("landmarks", {"multiple": 10, "lie": "column", "lines": [2]}, False),
            ("landmarks", {"lie": "column"}, True),
            ("landmarks", {"multiple": 6}, False),  # never: every count is 4 past one
            ("how-many", {"multiple": 10}, True),
            ("how-many", {"multiple": 10, "block": [1, 2, 2]}, True),
            ("how-many", {"multiple": 10, "block": [2, 2, 1]}, False),
            ("sums", {"which": "line-totals"}, True),
            ("sums", {"difference": 150}, True),  # from row to row: five counts, each five steps more
            ("sums", {"difference": 999}, False),  # only totals have a difference
            ("sums", {"along": "row", "difference": 149}, False),
            ("sums", {}, True),
            ("table", {}, False),
        ],
    )
    def test_a_parameter_left_out_means_any_value(self, family: str, parameters: dict[str, Any], true: bool) -> None:
        assert verdict(self.view, family, **parameters).true is true

    def test_lines_limit_a_block_claim(self) -> None:
        # 14 8 2 -4 -10 / -16 -22 -28 -34 -40 / ...: column 1: 4, 6; columns 4 and 5 start below zero: 4, 0 for ever.
        view = grid("14", "-6", 20, 5)
        keeps = {"place": 0, "along": "column", "length": 1}
        whole = verdict(view, "digit", **keeps)
        assert (whole.true, whole.breaks_at, whole.true_from) == (False, 6, 4)
        assert life(view, "digit", **keeps, lines=[4, 5]) == (True, "always", None)
        assert life(view, "digit", **keeps, lines=[3, 4])[0] is False  # 2 over -28: 8
        blocks = {"place": 0, "along": "column", "blocks": [[4], [0]], "lines": [4, 5]}
        assert life(view, "digit", **blocks) == (True, "always", None)

    def test_true_from_is_the_first_term_from_which_all_is_so(self) -> None:
        # 23 18 13 8 3 -2 -7 -12: ones 3 8 3 8 3 2 7 2 ...: in pairs false at the 6th, but so from the 6th on.
        said = verdict(grid("23", "-5", 8, 8), "digit", place=0, along="count", length=2)
        assert (said.true, said.breaks_at, said.true_from) == (False, 6, 6)
        # 14 8 2 -4: even all along: from 1.
        assert verdict(grid("14", "-6", 8, 4), "remainder", modulus=2).true_from == 1

    def test_a_word_for_every_verdict(self) -> None:
        for parameters in ({"place": 0, "along": "column", "length": 1}, {"place": 1, "along": "column", "length": 1}):
            assert check(a_claim("digit", **parameters), self.view).because.endswith(".")


ERRORS: list[tuple[str, Any]] = [
    ("kind", lambda: Count.parse(kind="integer", start="1", step="1", terms=5)),
    ("kind", lambda: Count.parse(kind="ratio", start="1", step="1", terms=5)),
    ("start", lambda: Count.parse(kind="whole", start="", step="1", terms=5)),
    ("step", lambda: Count.parse(kind="whole", start="1", step="0", terms=5)),
    ("step", lambda: Count.parse(kind="whole", start="1", step="x", terms=5)),
    ("terms", lambda: Count.parse(kind="whole", start="1", step="1", terms=1)),
    ("terms", lambda: Count.parse(kind="whole", start="1", step="1", terms=201)),
    ("style", lambda: Style(shape="round")),
    ("line_length", lambda: grid("1", "1", 5, 0)),
    ("line_length", lambda: grid("1", "1", 5, 6)),
    ("fill", lambda: grid("1", "1", 5, 5, fill="up")),
    ("lead", lambda: grid("1", "1", 5, 5, lead=5)),
    ("n", lambda: find_patterns(grid("1", "1", 5, 5), upto=0)),
    ("n", lambda: find_patterns(grid("1", "1", 5, 5), upto=6)),
    ("value", lambda: locate(grid("1", "1", 5, 5), "soon")),
    ("family", lambda: a_claim("colour")),
    ("family", lambda: Claim.from_dict({"place": 0})),
    ("place", lambda: a_claim("digit", place="ones")),
    ("along", lambda: a_claim("digit", along="diagonal")),
    ("blocks", lambda: a_claim("digit", blocks=[])),
    ("blocks", lambda: a_claim("digit", blocks=[[]])),
    ("length", lambda: a_claim("digit", length=0)),
    ("change", lambda: a_claim("digit-run", change="1/2")),
    ("modulus", lambda: a_claim("remainder", modulus=0)),
    ("modulus", lambda: a_claim("remainder", modulus=-2)),
    ("multiple", lambda: a_claim("landmarks", multiple="0")),
    ("every", lambda: a_claim("landmarks", every=0)),
    ("first", lambda: a_claim("landmarks", first=0)),
    ("lie", lambda: a_claim("landmarks", lie="circle")),
    ("lines", lambda: a_claim("landmarks", lines=[0])),
    ("block", lambda: a_claim("how-many", block=[])),
    ("which", lambda: a_claim("sums", which="all")),
    ("direction", lambda: a_claim("neighbour", direction="up")),
    ("difference", lambda: a_claim("step", difference=0.5)),
    ("difference", lambda: a_claim("step", difference="much")),
    ("step", lambda: a_claim("table", step=1.0)),
    ("pairs", lambda: a_claim("opposites", pairs=[[2, 1]])),
    ("pairs", lambda: a_claim("opposites", pairs=[[1]])),
]


@pytest.mark.parametrize(("field", "ask"), ERRORS)
def test_an_error_names_its_field(field: str, ask: Any) -> None:
    with pytest.raises(CountError) as refused:
        ask()
    assert refused.value.field == field
    assert isinstance(refused.value, ValueError)
    assert say(refused.value).endswith(".")


class TestRefused:
    @pytest.mark.parametrize("text", ["1e5", "1_000", "nan", "inf", "-inf", "0x1F", "1.5.2"])
    def test_forms_of_machines(self, text: str) -> None:
        for kind in ("whole", "decimal", "fraction"):
            with pytest.raises(CountError):
                Count.parse(kind=kind, start=text, step="1", terms=5)
            with pytest.raises(CountError):
                Count.parse(kind=kind, start="1", step=text, terms=5)

    @pytest.mark.parametrize("value", [0.5, 1.0, float("nan")])
    def test_floats(self, value: Any) -> None:
        with pytest.raises(CountError):
            Count.parse(kind="decimal", start=value, step="1", terms=5)
        with pytest.raises(CountError):
            locate(grid("1", "1", 5, 5), value)
        with pytest.raises(CountError):
            check(a_claim("remainder", modulus=value), grid("1", "1", 5, 5))

    def test_a_denominator_over_1000_of_any_value(self) -> None:
        for start, step in (("1/1001", "1"), ("1", "1/1001"), ("1/7", "1/1000"), ("1/32", "1/33")):
            with pytest.raises(CountError):  # 7 and 1,000 make 7,000, 32 and 33 make 1,056
                Count.parse(kind="fraction", start=start, step=step, terms=5)
        assert Count.parse(kind="fraction", start="1/8", step="1/125", terms=5).value(2) == Fraction(133, 1000)
        with pytest.raises(CountError):
            Count.parse(kind="decimal", start="0.0001", step="1", terms=5)

    def test_a_value_beyond_ten_to_the_ninth(self) -> None:
        assert Count.parse(kind="whole", start="1,000,000,000", step="-1", terms=5).value(1) == 10**9
        with pytest.raises(CountError):
            Count.parse(kind="whole", start="1,000,000,000", step="1", terms=2)
        with pytest.raises(CountError):
            Count.parse(kind="whole", start="0", step="-500,000,001", terms=3)

    def test_a_measure_below_zero_names_the_term(self) -> None:
        # 3 ft, 2 ft, 1 ft, 0 ft, then below zero with the 5th.
        assert Count.parse(kind="length", start="3 ft", step="-1 ft", terms=4).value(4) == 0
        with pytest.raises(CountError) as refused:
            Count.parse(kind="length", start="3 ft", step="-1 ft", terms=9)
        assert "5" in say(refused.value)

    @pytest.mark.parametrize(("kind", "start", "step"), [("length", "1 ft", "1 oz"), ("mass", "1 lb", "1 cup")])
    def test_units_of_different_measures(self, kind: str, start: str, step: str) -> None:
        with pytest.raises(CountError) as refused:
            Count.parse(kind=kind, start=start, step=step, terms=5)
        assert refused.value.field == "step"


KEYS = {
    "step": {"difference"},
    "neighbour": {"direction", "difference"},
    "digit": {"along", "blocks"},
    "digit-run": {"along", "change"},
    "digit-sum": {"along", "blocks"},
    "remainder": {"modulus", "along", "blocks"},
    "landmarks": {"multiple", "every", "first", "lie", "lines"},
    "how-many": {"multiple", "block"},
    "table": {"step"},
    "opposites": {"pairs"},
}

VIEWS = [
    grid("58", "6", 20, 5),
    grid("-7", "2", 16, 4),
    grid("9", "9", 10, 5),
    grid("2/8", "2/8", 12, 4, "fraction", fill="down"),
    grid("1 ft 3 in", "9 in", 12, 4, "length"),
    grid("10:50", "20 min", 12, 3, "clock"),
    grid("$0.35", "$0.25", 12, 4, "money", fill="across-up"),
    grid("0.5", "0.25", 12, 4, "decimal", lead=1),
]


@pytest.mark.parametrize("view", VIEWS)
def test_claims_carry_exactly_the_keys_of_their_family(view: Grid) -> None:
    for found in find_patterns(view, implied=True):
        data = found.claim.as_dict()
        keys = set(data) - {"family"}
        if data["family"] in ("digit", "digit-run"):
            assert len(keys & {"place", "part"}) == 1
            keys -= {"place", "part"}
        if data["family"] == "sums":
            assert keys == ({"which", "along", "difference"} if data["which"] == "line-totals" else {"which"})
            continue
        assert keys == KEYS[data["family"]]


@pytest.mark.parametrize("view", VIEWS)
def test_claims_survive_being_stored_and_are_judged_as_listed(view: Grid) -> None:
    for found in find_patterns(view, implied=True):
        stored = json.loads(json.dumps(found.claim.as_dict()))
        back = Claim.from_dict(stored)
        assert (back, hash(back)) == (found.claim, hash(found.claim))
        said = check(back, view)
        assert (said.true, said.seen, said.holds, said.breaks_at) == (True, True, found.holds, found.breaks_at)


def test_exact_values_are_strings_in_lowest_terms() -> None:
    assert a_claim("step", difference=Fraction(6, 8)).as_dict() == {"family": "step", "difference": "3/4"}
    assert a_claim("step", difference="6/8") == a_claim("step", difference=Fraction(3, 4))
    assert a_claim("remainder", modulus="2/2", along="count", blocks=[["2/4", "0"]]).as_dict()["blocks"] == [
        ["1/2", "0"]
    ]
    assert a_claim("step", difference=-7).as_dict()["difference"] == "-7"


class TestIdeas:
    def test_each_says_when_it_can_first_be_seen_and_when_it_dies(self) -> None:
        # 34 45 56 67 78 89 100 111: the tens run can be seen with the third and dies with 100, the 7th.
        view = grid("34", "11", 12, 4)
        lives = {
            i.claim.parameters.get("place"): (i.seen_at, i.dies_at) for i in ideas(view) if _run_along_count(i.claim)
        }
        assert lives == {0: (3, 7), 1: (3, 7)}

    def test_past_the_view_too(self) -> None:
        # 1,325 1,275 1,225 1,175: tens 2, 7, 2, 7 can be seen with the 4th and die with -25, the 28th.
        tens = next(
            i
            for i in ideas(grid("1,325", "-50", 16, 4))
            if i.claim.family == "digit"
            and i.claim.parameters.get("place") == 1
            and i.claim.parameters.get("along") == "count"
        )
        assert (tens.seen_at, tens.dies_at) == (4, 28)

    def test_the_step_is_seen_with_the_second_count_and_never_dies(self) -> None:
        step = next(i for i in ideas(grid("58", "6", 20, 5)) if i.claim.family == "step")
        assert (step.seen_at, step.dies_at) == (2, None)

    def test_seen_at_and_dies_at_are_those_of_the_growing_board(self) -> None:
        # A digit sum of 9: 9 18 by the second count (twice a block of one), until 99, the 11th.
        nines = next(i for i in ideas(grid("9", "9", 20, 5)) if i.claim.family == "digit-sum" and _along(i.claim))
        assert (nines.seen_at, nines.dies_at) == (2, 11)

    def test_upto_is_the_same_as_the_grid_cut_there(self) -> None:
        view = grid("58", "6", 20, 5, lead=2)
        for n in range(1, 21):
            assert find_patterns(view, upto=n) == find_patterns(view.cut(n))

    def test_what_is_false_early_is_true_from_a_later_term(self) -> None:
        view = grid("14", "-6", 20, 5)
        assert verdict(view, "digit", place=0, along="column", length=1).true_from == 4
        # Going up through zero: -12 -7 -2 3 8 13: ones 2, 7, 2, 3, 8, 3: pairs of 3, 8 from the 4th on.
        assert verdict(grid("-12", "5", 12, 12), "digit", place=0, along="count", length=2).true_from == 4


def _run_along_count(claim: Claim) -> bool:
    return claim.family == "digit-run" and claim.parameters.get("along") == "count"


def _along(claim: Claim) -> bool:
    return bool(claim.parameters.get("along") == "count")


class TestNames:
    @pytest.mark.parametrize(
        ("kind", "start", "step"),
        [
            ("whole", "5", "5"),
            ("decimal", "0.5", "0.5"),
            ("fraction", "1/2", "1/2"),
            ("length", "5 in", "5 in"),
            ("mass", "5 oz", "5 oz"),
            ("capacity", "5 mL", "5 mL"),
            ("money", "$5", "$5"),
            ("clock", "5:00", "5 min"),
            ("elapsed", "5 min", "5 min"),
        ],
    )
    def test_of_kinds(self, kind: str, start: str, step: str) -> None:
        assert Count.parse(kind=kind, start=start, step=step, terms=5).kind == kind

    def test_of_outcomes(self) -> None:
        for outcome in ("not-yet", "as-planned", "ready-for-more"):
            assert next_counts(grid("58", "6", 20, 5), outcome)
        with pytest.raises(CountError) as refused:
            next_counts(grid("58", "6", 20, 5), "well")
        assert refused.value.field == "outcome"
