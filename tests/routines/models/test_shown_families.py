"""Each family of patterns has a bit of its own, and a bank filtered by bits is one filtered by patterns."""

import pytest

from routines.counting.claims import FAMILIES
from routines.models import Routine, RoutinePattern
from routines.models.plan_document import CountSection, Fold
from routines.models.shown_families import BIT_OF, FOR_A_WHILE
from tests.routines.making import make_routine


def test_every_family_has_a_bit_of_its_own():
    assert set(BIT_OF) == set(FAMILIES)
    assert len(set(BIT_OF.values())) == len(BIT_OF)
    assert max(BIT_OF.values()) < FOR_A_WHILE.bit_length() - 1 < 31  # of what both databases hold in the column


@pytest.mark.django_db
def test_what_is_shown_is_what_the_patterns_say(owner):
    for start, step, length in (("4", "7", 5), ("10", "5", 2), ("-6", "2", 4), ("6", "6", 5), ("160", "-8", 5)):
        make_routine(
            owner,
            title=f"{start} {step}",
            count=CountSection("whole", start, step, 16),
            fold=Fold(length),
            targets=(),
            stops=(),
        )
    rows = RoutinePattern.objects.exclude(lie="scattered")
    for family in FAMILIES:
        of_rows = set(rows.filter(family=family).values_list("routine", flat=True))
        assert set(Routine.objects.showing([family]).values_list("pk", flat=True)) == of_rows
    for_a_while = set(RoutinePattern.objects.filter(holds="shown").values_list("routine", flat=True))
    assert set(Routine.objects.staying_for_a_while().values_list("pk", flat=True)) == for_a_while
    both = Routine.objects.showing(["table"]).staying_for_a_while()
    assert {routine.title for routine in both} == {routine.title for routine in Routine.objects.showing(["table"])} & {
        routine.title for routine in Routine.objects.staying_for_a_while()
    }
