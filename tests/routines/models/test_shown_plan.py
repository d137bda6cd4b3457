"""What a plan shows first of all."""

import pytest
from sympy import sympify

from routines.models.plan_document import CountTyped, Fold
from routines.models.shown_plan import ShownPlan
from tests.routines.making import SEVENS


def test_a_card_says_nothing_that_the_count_says_already() -> None:
    cubes = SEVENS.changed(count=CountTyped("length", "2 in", "2 in", 10), fold=Fold(5), targets=())
    shown = ShownPlan(cubes, 0)
    claims = [one.pattern.claim for one in shown.patterns]
    assert any(
        claim.family == "remainder" and claim.parameters.get("modulus") == 1 for claim in claims
    )  # all whole inches
    assert len(shown.best_two) == 2
    for one in shown.best_two:
        assert one.pattern.claim.family != "step"
        assert one.pattern.claim.parameters.get("modulus") != 1


@pytest.mark.parametrize(("level", "rule"), [(4, ""), (5, "7 × n \u2212 3"), (8, "7 × n \u2212 3")])
def test_a_rule_is_written_from_level_five_on(level: int, rule: str) -> None:
    """Common Core State Standards, 5.OA.B.3 and 6.EE.A.2: rules of patterns, then expressions with letters for numbers."""
    shown = ShownPlan(SEVENS, level)
    assert shown.rule == rule


def test_the_rule_that_is_written_gives_every_count() -> None:
    """Read by sympy, not by us."""
    shown = ShownPlan(SEVENS, 6)
    read = sympify(shown.rule.replace("×", "*").replace("\u2212", "-"))
    values = [read.subs("n", n) for n in range(1, shown.grid.terms + 1)]
    assert values == [shown.grid.count.value(n) for n in range(1, shown.grid.terms + 1)]
