"""What a plan shows first of all."""

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
