"""Saving, copying, restoring: versions only grow, nobody's text is lost, and only those who may can write."""

import pytest
from django.core.exceptions import PermissionDenied

from routines.models import PlanDraft, RoutineVersion
from routines.plans.actions import StaleSave, copy_routine, keep_draft, restore_version, save_version
from tests.routines.making import SEVENS, make_routine


def test_a_new_routine_is_its_owners_draft_with_its_first_version(owner):
    routine = make_routine(owner, shared=False)
    assert routine.status == "draft"
    assert routine.current_version.number == 1
    assert routine.plan == SEVENS


def test_the_facts_are_those_of_the_count(owner):
    # 4, 11, ..., 4 + 19 x 7 = 137
    routine = make_routine(owner)
    assert (routine.kind, routine.direction, routine.terms) == ("whole", "forward", 20)
    assert (routine.step_numerator, routine.step_denominator) == (7, 1)
    assert (routine.largest_numerator, routine.largest_denominator) == (137, 1)
    assert routine.patterns.filter(family="step", holds="always").count() == 1


def test_exact_facts_of_a_fraction_count_going_down(owner):
    from routines.models.plan_document import CountSection, Fold

    plan = SEVENS.changed(
        area="fractions", count=CountSection("fraction", "5", "-2/3", 6), fold=Fold(3), targets=(), stops=()
    )
    routine = make_routine(owner, plan=plan)
    assert routine.direction == "backward"
    assert (routine.step_numerator, routine.step_denominator) == (-2, 3)
    assert (routine.largest_numerator, routine.largest_denominator) == (5, 1)


def test_a_save_makes_the_next_version_and_keeps_the_first(owner):
    routine = make_routine(owner)
    version = save_version(
        routine=routine, plan=SEVENS.changed(title="Sevens again"), based_on=routine.current_version, by=owner
    )
    routine.refresh_from_db()
    assert version.number == 2
    assert routine.title == "Sevens again"
    assert [kept.plan["title"] for kept in routine.versions.all()] == ["Sevens from four", "Sevens again"]


def test_saving_the_same_plan_makes_no_version(owner):
    routine = make_routine(owner)
    save_version(routine=routine, plan=SEVENS, based_on=routine.current_version, by=owner)
    assert routine.versions.count() == 1


def test_a_stale_save_writes_nothing_and_names_the_other_version(owner, co_author):
    routine = make_routine(owner, co_authors=[co_author])
    first = routine.current_version
    theirs = save_version(routine=routine, plan=SEVENS.changed(title="Theirs"), based_on=first, by=co_author)
    with pytest.raises(StaleSave) as stale:
        save_version(routine=routine, plan=SEVENS.changed(title="Mine"), based_on=first, by=owner)
    assert stale.value.theirs == theirs
    assert RoutineVersion.objects.count() == 2


@pytest.mark.parametrize(
    ("person", "shared", "may"),
    [
        ("owner", True, True),
        ("owner", False, True),
        ("co_author", True, True),
        ("co_author", False, True),
        ("coach", True, True),
        ("coach", False, False),
        ("teammate", True, False),
        ("other_teacher", True, False),
        ("administrator", True, False),
    ],
)
def test_who_may_save(request, owner, co_author, person, shared, may):
    who = request.getfixturevalue(person)
    routine = make_routine(owner, co_authors=[co_author], shared=shared)
    plan = SEVENS.changed(title="Changed")
    if may:
        assert save_version(routine=routine, plan=plan, based_on=routine.current_version, by=who).by == who
    else:
        with pytest.raises(PermissionDenied):
            save_version(routine=routine, plan=plan, based_on=routine.current_version, by=who)


def test_a_copy_is_a_draft_of_ones_own_that_remembers_the_version_it_came_from(owner, teammate):
    routine = make_routine(owner)
    copy = copy_routine(routine=routine, by=teammate)
    assert (copy.owner, copy.status) == (teammate, "draft")
    assert (copy.copied_from, copy.copied_from_version) == (routine, routine.current_version)
    assert copy.plan == routine.plan


def test_restoring_an_older_version_is_a_new_save(owner):
    routine = make_routine(owner)
    first = routine.current_version
    save_version(routine=routine, plan=SEVENS.changed(title="Second"), based_on=first, by=owner)
    routine.refresh_from_db()
    restored = restore_version(version=RoutineVersion.objects.get(pk=first.pk), by=owner)
    assert restored.number == 3
    assert restored.plan["title"] == "Sevens from four"


def test_one_draft_per_person_and_routine(owner, co_author):
    routine = make_routine(owner, co_authors=[co_author])
    for text in ("a", "ab"):
        keep_draft(by=owner, routine=routine, fields={"title": text}, based_on=routine.current_version)
    keep_draft(by=co_author, routine=routine, fields={"title": "other"})
    assert sorted(draft.fields["title"] for draft in PlanDraft.objects.all()) == ["ab", "other"]


def test_a_save_puts_away_the_draft(owner):
    routine = make_routine(owner)
    keep_draft(by=owner, routine=routine, fields={"title": "a"})
    save_version(routine=routine, plan=SEVENS.changed(title="b"), based_on=routine.current_version, by=owner)
    assert not PlanDraft.objects.exists()
