"""A search is counted before it is done: what it says it will take bounds what it takes, and too much is refused."""

import sys
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from routines.counting import Claim, CountError, Limits, design_grids
from routines.counting.designing import candidates, work
from routines.counting.grid import Fill
from routines.errors import say
from tests.counting.claims import a_claim
from tests.saying import saying

WANTED = {
    "landmarks in a column": a_claim("landmarks", multiple=10, lie="column"),
    "landmarks on a diagonal": a_claim("landmarks", multiple=10, lie="down-right"),
    "any landmarks": a_claim("landmarks"),
    "a digit that stays": a_claim("digit", place=0, along="column", length=1),
    "digits that take turns": a_claim("digit", place=0, along="column", length=2),
    "any digit": a_claim("digit"),
    "a run of a digit": a_claim("digit-run", place=1),
    "any run": a_claim("digit-run"),
    "a remainder": a_claim("remainder", modulus=7, along="row", length=2),
    "any remainder": a_claim("remainder"),
    "digit sums": a_claim("digit-sum"),
    "so many in each": a_claim("how-many", multiple=10, block=[2, 2, 1]),
    "a rhythm": a_claim("how-many", multiple=1000),
    "any rhythm": a_claim("how-many"),
    "sums": a_claim("sums"),
    "a times table": a_claim("table"),
    "opposites": a_claim("opposites"),
    "a step": a_claim("step", difference=6),
    "any step": a_claim("step"),
    "a jump": a_claim("neighbour", direction="down", difference=60),
}

# (limits, what is wanted, the field that is named)
TOO_WIDE = [
    ({"steps": (1, 99_999)}, "any step", "step"),
    ({"steps": (1, 10**9)}, "landmarks in a column", "step"),
    ({"steps": (-(10**40), 10**40)}, "a digit that stays", "step"),
    ({"steps": (1, 10**9)}, "any digit", "step"),
    ({"steps": (1, 10**9)}, "a rhythm", "step"),
    ({"grain": Fraction(1, 1000), "kind": "decimal", "steps": (1, 1000)}, "any step", "step"),
    ({"starts": (0, 10**9), "at_most": None}, "landmarks in a column", "start"),
    ({"starts": (0, 10**9), "steps": (7, 7), "at_most": None}, "any step", "start"),
    ({"starts": (-(10**40), 10**40)}, "digit sums", "start"),
    ({"terms": (2, 200), "line_lengths": (2, 4), "fills": tuple(Fill)}, "any digit", "terms"),
    ({"terms": (150, 200), "line_lengths": (1, 200)}, "a times table", "line_length"),
]

# Limits that no class will ever need, answered all the same because arithmetic leaves little to try.
WIDE_AND_CHEAP = [
    ({"starts": (0, 99_999_999)}, "landmarks in a column"),
    ({"starts": (-(10**9), 10**9)}, "landmarks on a diagonal"),
    ({"starts": (0, 10**9)}, "a digit that stays"),
    ({"starts": (0, 10**9)}, "digits that take turns"),
    ({"starts": (0, 10**9)}, "so many in each"),
    ({"starts": (0, 10**9)}, "any step"),
    ({"steps": (1, 10**9)}, "a times table"),
    ({"steps": (1, 10**9)}, "a step"),
    ({"steps": (1, 10**9)}, "a jump"),
    ({"starts": (0, 10**9), "steps": (1, 300)}, "landmarks in a column"),
]


def limits_with(**changed) -> Limits:
    usual = {"starts": (0, 60), "steps": (2, 12), "line_lengths": (3, 8), "terms": (18, 24), "at_most": 500}
    return Limits(**{**usual, **changed})


def calls_of(wanted: list[Claim], limits: Limits) -> int:
    """The calls of Python functions during a search, whether it answers or refuses."""
    counted = 0

    def count(frame, event, argument) -> None:
        nonlocal counted
        counted += event == "call"

    sys.setprofile(count)
    try:
        design_grids(wanted, limits)
    except CountError:
        pass
    finally:
        sys.setprofile(None)
    return counted


@pytest.mark.parametrize(("changed", "wanted", "field"), TOO_WIDE)
def test_what_is_too_much_names_the_limit_to_narrow(changed, wanted, field):
    with pytest.raises(CountError) as refused:
        design_grids([WANTED[wanted]], limits_with(**changed))
    assert refused.value.field == field
    assert "closer together" in say(refused.value)


@pytest.mark.parametrize(("changed", "wanted"), WIDE_AND_CHEAP)
def test_wide_limits_are_answered_where_arithmetic_leaves_little_to_try(changed, wanted):
    found = design_grids([WANTED[wanted]], limits_with(**changed))
    assert found.grids


def test_too_much_is_refused_before_any_grid_is_tried(monkeypatch):
    tried = []
    monkeypatch.setattr(candidates, "_grid", lambda *given: tried.append(given))
    with pytest.raises(CountError):
        design_grids([WANTED["any step"]], limits_with(starts=(0, 10**6), at_most=None))
    assert tried == []


def test_a_wish_too_open_for_the_narrowest_limits_says_so():
    one = work.Work(limits_with(starts=(1, 1), steps=(1, 1), terms=(20, 20), line_lengths=(5, 5)))
    with pytest.raises(CountError) as refused:
        one.will_take(work.MOST_LOOKS + 1, "start", "step")
    assert (refused.value.field, "Say more of what" in say(refused.value)) == ("family", True)


def test_the_sentence_says_how_many_there_are_to_choose_from():
    one = work.Work(limits_with(starts=(0, 99_999)))
    with pytest.raises(CountError, check=saying("100,000 starts are more than can be looked through here")):
        one.will_take(work.MOST_LOOKS + 1, "start", "step")


def pairs(low: int, high: int):
    return st.tuples(st.integers(low, high), st.integers(low, high)).map(lambda two: (min(two), max(two)))


wide_limits = st.fixed_dictionaries(
    {
        "starts": pairs(-(10**10), 10**10) | pairs(0, 200),
        "steps": pairs(-(10**6), 10**10) | pairs(1, 30),
        "terms": pairs(2, 200) | pairs(18, 20),
        "line_lengths": pairs(1, 200) | pairs(3, 5),
        "fills": st.sampled_from([tuple(Fill), ("across",)]),
        "off_multiple": st.sampled_from([None, True, False]),
        "at_most": st.sampled_from([None, 1, 500]),
    }
)
kinds = st.sampled_from(
    [
        ("whole", 1),
        ("decimal", Fraction(1, 1000)),
        ("fraction", Fraction(1, 7)),
        ("money", 5),
        ("length", 1),
        ("clock", 5),
    ]
)
wishes = st.lists(st.sampled_from(sorted(WANTED)), max_size=2)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(limits=wide_limits, wanted=wishes, kind_and_grain=kinds)
def test_what_a_search_does_stays_within_what_it_counted(limits, wanted, kind_and_grain, monkeypatch):
    """However wide the limits, a search that may take so many looks calls so many functions at most."""
    most = 50_000
    monkeypatch.setattr(work, "MOST_LOOKS", most)
    kind, grain = kind_and_grain
    assert calls_of([WANTED[one] for one in wanted], Limits(kind=kind, grain=grain, **limits)) < 12 * most


small_limits = st.fixed_dictionaries(
    {
        "starts": pairs(-20, 60),
        "steps": pairs(-6, 12),
        "terms": pairs(8, 12),
        "line_lengths": pairs(3, 5),
        "off_multiple": st.sampled_from([None, True, False]),
        "at_most": st.sampled_from([None, 3, 100]),
    }
)


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(limits=small_limits, wanted=st.sampled_from(sorted(WANTED)), most=st.integers(100, 300_000))
def test_inside_its_bound_a_search_answers_as_one_without_a_bound(limits, wanted, most, monkeypatch):
    monkeypatch.setattr(work, "MOST_LOOKS", 10**9)
    unbounded = design_grids([WANTED[wanted]], Limits(**limits))
    monkeypatch.setattr(work, "MOST_LOOKS", most)
    try:
        bounded = design_grids([WANTED[wanted]], Limits(**limits))
    except CountError:
        return
    assert bounded == unbounded


@settings(max_examples=40, deadline=None)
@given(limits=small_limits, wanted=st.sampled_from(sorted(WANTED)))
def test_the_grids_tried_were_counted(limits, wanted):
    """Every cell of every grid that is tried was said before, five looks each."""
    made, tried = [], 0
    real_grid = candidates._grid

    def watched(given):
        made.append(work.Work(given))
        return made[0]

    def counting(one, *given):
        nonlocal tried
        tried += one.fold.terms
        assert tried * candidates.FOR_A_TRIED_CELL <= made[0].looks
        return real_grid(one, *given)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("routines.counting.designing.Work", watched)
        patch.setattr(candidates, "_grid", counting)
        patch.setattr(work, "MOST_LOOKS", 10**9)
        design_grids([WANTED[wanted]], Limits(**limits))
    assert made[0].looks > 0
