"""What lights up by itself."""

from itertools import product

import pytest

from routines.counting import Grid, ended_runs, ideas
from routines.counting.claims import DigitClaim, DigitRunClaim, LandmarksClaim, SumsClaim
from routines.demo.plans import PLANS
from routines.models.plan_document import CountSection, Fold, Plan, Target
from routines.models.shown_plan import ShownPlan
from tests.routines.making import SEVENS
from tests.what_a_teacher_hears.counts import COUNTS as HEARD_COUNTS

WITHOUT_TARGETS = [demo.plan.changed(targets=()) for demo in PLANS]
# Forwards and back, in lines of every usual length, at every band of levels.
COUNTS = [
    SEVENS.changed(count=CountSection(kind, start, step, terms), fold=Fold(length), targets=())
    for kind, start, step in [
        ("whole", "10", "6"), ("whole", "0", "5"), ("whole", "7", "50"), ("whole", "103", "-3"), ("whole", "1", "1"),
        ("decimal", "0.4", "0.2"), ("fraction", "2/3", "1/3"), ("length", "10 in", "4 in"), ("money", "$0.35", "$0.25"),
        ("clock", "10:20", "20 min"),
    ]
    for terms, length in [(25, 5), (20, 10), (12, 4)]
]  # fmt: skip
HEARD = [
    SEVENS.changed(
        count=CountSection(heard.kind, heard.start, heard.step, heard.terms, style=heard.style),
        fold=Fold(heard.line_length, heard.fill, heard.lead),
        targets=(),
    )
    for heard in HEARD_COUNTS
]
plans = pytest.mark.parametrize(
    "plan", WITHOUT_TARGETS + COUNTS + HEARD, ids=lambda plan: f"{plan.count.start} {plan.count.step}"
)
levels = pytest.mark.parametrize("level", [0, 3, 6])


def shown(level: int = 3, *, plan: Plan = SEVENS, **changes: object) -> ShownPlan:
    return ShownPlan(plan.changed(**{"targets": (), **changes}), level)


def test_one_that_always_holds_and_one_that_a_class_follows_until_it_stops() -> None:
    by_six = shown(count=CountSection("whole", "10", "6", 25), fold=Fold(5))
    tens, run = (item.pattern for item in by_six.lit)
    assert (tens.holds, tens.cells) == ("always", (1, 6, 11, 16, 21))
    assert (run.holds, run.breaks_at, by_six.grid.count.text(16)) == ("shown", 16, "100")
    assert run.claim == DigitRunClaim(1, None, "column", 3)


def test_the_targets_come_first_in_the_teachers_order() -> None:
    ones = {"family": "digit", "place": 0, "along": "column", "blocks": [[0], [6], [2], [8], [4]]}
    landmarks = {"family": "landmarks", "multiple": "10", "every": 5, "first": 1, "lie": "column", "lines": [1]}
    for targets in ((ones, landmarks), (landmarks, ones)):
        by_six = shown(
            count=CountSection("whole", "10", "6", 25), fold=Fold(5), targets=tuple(Target(claim) for claim in targets)
        )
        assert [item.pattern.claim.as_dict() for item in by_six.lit] == list(targets)


def test_beside_a_single_target_lights_what_holds_in_the_other_way() -> None:
    step = {"family": "step", "difference": "6"}
    by_six = shown(count=CountSection("whole", "10", "6", 25), fold=Fold(5), targets=(Target(step),))
    assert [(item.target, item.pattern.holds) for item in by_six.lit] == [(True, "always"), (False, "shown")]


def test_of_two_targets_that_both_fill_the_grid_the_first_lights() -> None:
    assert [item.target for item in ShownPlan(SEVENS, 2).lit][:1] == [True]
    assert sum(item.target for item in ShownPlan(SEVENS, 2).lit) == 1


def test_whole_inches_are_not_said_to_be_whole() -> None:
    cubes = shown(0, count=CountSection("length", "2 in", "2 in", 10), fold=Fold(5))
    claims = [item.pattern.claim for item in cubes.patterns]
    assert any(claim.family == "remainder" and claim.parameters.get("modulus") == 1 for claim in claims)
    assert cubes.lit
    for item in cubes.lit:
        assert item.pattern.claim.family != "step"
        assert item.pattern.claim.parameters.get("modulus") != 1


@levels
@plans
def test_every_count_lights_something_and_nothing_that_may_not(plan: Plan, level: int) -> None:
    one = ShownPlan(plan, level)
    lit = [item.pattern for item in one.lit]
    assert 1 <= len(lit) <= 2
    assert len({pattern.holds for pattern in lit}) == len(lit)
    assert sum(set(pattern.cells) == set(range(1, one.grid.terms + 1)) for pattern in lit) <= 1
    assert not any(isinstance(pattern.claim, SumsClaim) for pattern in lit)
    for pattern in lit:
        if pattern.holds == "shown":
            assert isinstance(pattern.claim, DigitClaim | DigitRunClaim | LandmarksClaim)
            assert pattern.breaks_at <= 1.5 * one.grid.terms
    assert all(item in one.listed for item in one.lit)


def test_a_digit_that_hardly_any_count_writes_is_not_lit() -> None:
    """Of 0, 7, 14 ... 133 five write hundreds; that each row keeps its hundreds until 203 is for nobody to see."""
    sevens = shown(count=CountSection("whole", "0", "7", 20), fold=Fold(5))
    hundreds = [item.pattern for item in sevens.patterns if item.pattern.claim.parameters.get("place") == 2]
    assert any(pattern.breaks_at and pattern.breaks_at <= 30 for pattern in hundreds)
    assert not any(item.pattern in hundreds for item in sevens.lit)


@plans
def test_the_runs_that_ended_are_those_among_all_ideas(plan: Plan) -> None:
    """The short way to them and the search for every idea agree."""
    grid: Grid = plan.grid()
    among_all = {
        (idea.claim, idea.seen_at, idea.dies_at, idea.lasts)
        for idea in ideas(grid)
        if isinstance(idea.claim, DigitRunClaim)
        and idea.dies_at is not None
        and idea.seen_at + 3 <= idea.dies_at <= grid.terms
    }
    ended = ended_runs(grid)
    assert {(idea.claim, idea.seen_at, idea.dies_at, idea.lasts) for idea in ended} == among_all
    lives = [(idea.dies_at or 0) - idea.seen_at for idea in ended]
    assert lives == sorted(lives, reverse=True)


def test_what_is_listed_begins_with_what_is_lit_and_leaves_nothing_out() -> None:
    for plan, level in product(COUNTS[:6], (0, 3)):
        one = ShownPlan(plan, level)
        assert one.listed[: len(one.lit)] == one.lit
        assert {item.key for item in one.patterns} <= {item.key for item in one.listed}
        assert len({item.key for item in one.listed}) == len(one.listed)
