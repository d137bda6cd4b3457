"""The bank's totals are what it holds, after everything that can happen to a count."""

import pytest

from grade_bands.models import Grade
from routines.models import BankTotal, Routine, RoutineVersion
from routines.models.bank_total import count_bank_again, wrong_bank_owners, wrong_bank_totals
from routines.plans.actions import copy_routine, restore_version, save_version
from tests.at_once import at_once
from tests.factories import GradeFactory
from tests.routines.making import SEVENS, make_routine

pytestmark = pytest.mark.django_db


@pytest.fixture
def next_grade(owner) -> Grade:
    return GradeFactory(name="4", level=4)


def kept() -> dict[tuple[str, str], int]:
    """Totals by grade and area, none of them other than what the bank holds, and neither is who has some in it."""
    assert (wrong_bank_totals(), wrong_bank_owners()) == (set(), set())
    rows = BankTotal.objects.filter(counts__gt=0)
    return {(grade, area): counts for grade, area, counts in rows.values_list("grade__name", "area", "counts")}


def saved_for(routine: Routine, grade: str, area: str = "whole") -> None:
    now = Routine.objects.get(pk=routine.pk)
    plan = SEVENS.changed(title=f"{routine.title} for {grade}", grade=grade, area=area)
    save_version(routine=now, plan=plan, based_on=now.current_version, by=now.owner)


def test_a_count_is_in_them_while_it_is_in_the_bank(owner):
    routine = make_routine(owner, shared=False)
    assert kept() == {}
    routine.share()
    assert kept() == {("2", "whole"): 1}
    copy_routine(routine=routine, by=owner)  # a draft
    routine.share()
    assert kept() == {("2", "whole"): 1}
    routine.retire()
    assert kept() == {}
    routine.share()
    assert kept() == {("2", "whole"): 1}


def test_a_save_takes_it_from_one_place_to_the_other(owner, next_grade):
    routine, draft = make_routine(owner), make_routine(owner, shared=False, title="Not shared")
    saved_for(routine, "4")
    assert kept() == {("4", "whole"): 1}
    saved_for(routine, "4", "money")
    assert kept() == {("4", "money"): 1}
    restore_version(version=RoutineVersion.objects.get(routine=routine, number=1), by=owner)
    assert kept() == {("2", "whole"): 1}
    saved_for(draft, "4")
    assert kept() == {("2", "whole"): 1}


def test_it_is_counted_where_it_stands_by_now(owner, next_grade):
    """Shared from a page that was opened before somebody saved it for another grade."""
    routine = make_routine(owner, shared=False)
    saved_for(routine, "4")
    assert routine.grade.name == "2"
    routine.share()
    assert kept() == {("4", "whole"): 1}


def test_counting_again_changes_nothing(owner):
    routine = make_routine(owner)
    for _ in range(2):
        count_bank_again([(routine.grade_id, "whole"), (routine.grade_id, "money")])
    assert kept() == {("2", "whole"): 1}


@pytest.mark.django_db(transaction=True)
def test_counts_that_are_shared_at_one_moment_are_all_counted(owner):
    """On PostgreSQL none of these sees the others in the bank before they are written."""
    routines = [make_routine(owner, shared=False, title=f"Sevens {number}") for number in range(6)]
    at_once(*(routine.share for routine in routines))
    assert kept() == {("2", "whole"): 6}
    at_once(*(routine.retire for routine in routines[:3]), *(routine.share for routine in routines[3:]))
    assert kept() == {("2", "whole"): 3}


@pytest.mark.django_db(transaction=True)
def test_counts_that_change_places_at_one_moment_wait_in_no_ring(owner, next_grade):
    routines = [make_routine(owner, title=f"Sevens {number}") for number in range(4)]

    def move(routine: Routine, grades: tuple[str, ...]) -> None:
        for grade in grades * 2:
            saved_for(routine, grade)

    ways = [("4", "2"), ("2", "4")]
    at_once(*(lambda one=one, at=at: move(one, ways[at % 2]) for at, one in enumerate(routines)))
    assert sum(kept().values()) == 4


@pytest.mark.django_db(transaction=True)
def test_one_that_is_shared_while_it_is_saved_for_another_grade_is_counted_there(owner, next_grade):
    routines = [make_routine(owner, shared=False, title=f"Sevens {number}") for number in range(4)]
    at_once(*(ask for one in routines for ask in (one.share, lambda one=one: saved_for(one, "4"))))
    assert kept() == {("4", "whole"): 4}
