"""What is said before the first count stands in the count's language: on the board, and as the title of a next count taken."""

import pytest

from routines.lessons.next_count import next_grids, start_next
from routines.models.plan_document import CountSection, Fold
from routines.models.shown_plan import ShownPlan
from routines.words import title_of_count
from tests.routines.making import SEVENS, make_routine


@pytest.mark.parametrize(
    ("step", "language", "said"),
    [
        ("7", "en", "By 7 from 100"),
        ("-7", "en", "Back by 7 from 100"),
        ("7", "es", "De 7 en 7 desde 100"),
        ("-7", "es", "Hacia atrás de 7 en 7 desde 100"),
    ],
)
def test_forward_and_back(step, language, said):
    grid = Fold(5).grid(CountSection("whole", "100", step, 10).count())
    assert title_of_count(grid, language) == said


@pytest.mark.parametrize(("language", "begins"), [("en", ("By ", "Back by ")), ("es", ("De ", "Hacia atrás de "))])
def test_a_next_count_that_is_taken_is_named_in_its_own_language(owner, language, begins):
    routine = make_routine(owner, plan=SEVENS.changed(language=language))
    taken = next_grids(ShownPlan(routine.plan, 2))[0]
    draft = start_next(version=routine.current_version, taken=taken, by=owner)
    assert draft.title.startswith(begins)
    assert draft.plan.title == draft.title
