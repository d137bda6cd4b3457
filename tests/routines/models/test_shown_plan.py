"""What a plan shows first of all."""

import pytest
from sympy import sympify

from routines.models.shown_plan import ShownPlan
from tests.routines.making import SEVENS


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
