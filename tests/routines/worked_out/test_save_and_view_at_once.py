"""While somebody saves, whoever looks sees the one save or the other whole, never the words of one with the grid of the other."""

import pytest

from routines.models import Routine
from routines.models.plan_document import CountSection, ExpectedAnswer
from routines.plans.actions import save_version
from tests.at_once import at_once
from tests.routines.making import SEVENS, make_routine

pytestmark = pytest.mark.django_db(transaction=True)

SAVES = 6
VIEWS = 9


def by(step: int):
    """A plan in which the teacher's words name its step too."""
    said = ExpectedAnswer(words=f"The step is {step}.")
    return SEVENS.changed(
        title=f"Steps of {step}", count=CountSection("whole", "4", str(step), 20), targets=(), expected=(said,)
    )


def test_no_page_is_a_mix(owner, visit):
    routine = make_routine(owner, plan=by(7))
    reader, address = visit(owner), f"/routines/{routine.pk}/"

    def save_over_and_over() -> None:
        for number in range(SAVES):
            current = Routine.objects.get(pk=routine.pk)
            save_version(routine=current, plan=by(8 - number % 2), based_on=current.newest_save, by=owner)

    def look_over_and_over() -> list[str]:
        return [reader.get(address).content.decode() for _ in range(VIEWS)]

    _, pages = at_once(save_over_and_over, look_over_and_over)
    for page in pages:
        steps = {step for step in (7, 8) if f"Steps of {step}" in page}
        assert len(steps) == 1
        step, other = *steps, *({7, 8} - steps)
        assert f"By {step} from 4" in page
        assert f"The step is {step}." in page
        assert f"each count is {step} more" in page.casefold()
        assert f"By {other} from 4" not in page
        assert f"The step is {other}." not in page
        assert f"each count is {other} more" not in page.casefold()
