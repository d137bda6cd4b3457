"""How a lesson went has the same names in what is written of it, in plans and in the engine."""

from routines.counting import Outcome
from routines.models import Reflection
from routines.plans.forms.rows import OUTCOMES
from routines.words import LANGUAGES


def test_every_outcome_can_be_kept_chosen_and_printed() -> None:
    assert Reflection.Outcome.values == list(Outcome) == list(OUTCOMES)
    assert all(outcome in language.paper for language in LANGUAGES.values() for outcome in Outcome)
