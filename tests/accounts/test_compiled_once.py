"""Querysets compiled once: the same rows as ever, and a refusal for whatever could make another query of an argument."""

from datetime import date, timedelta
from typing import Any

import pytest
from django.db import connection
from django.db.models import Count, F, Model, Q, QuerySet
from django.test.utils import CaptureQueriesContext

from accounts.compiled_once import compiled_once, held, hold
from accounts.models import User
from grade_bands.models import ClassGroup, Grade, SchoolYear
from routines.models import Routine
from routines.plans.actions import copy_routine
from tests.factories import ClassGroupFactory, UserFactory
from tests.routines.making import make_routine


@compiled_once
def in_grades(teacher: User, grades: list[int], *, at_most: int | None = None) -> QuerySet[ClassGroup]:
    return (
        ClassGroup.objects.taught_by(teacher).filter(grade__in=grades).select_related("grade").order_by("pk")[:at_most]
    )


@compiled_once
def began(first: date, last: date) -> QuerySet[SchoolYear, tuple[str, date]]:
    return SchoolYear.objects.filter(starts_on__range=(first, last)).values_list("name", "starts_on")


@compiled_once
def read_by(reader: User) -> QuerySet[User]:
    return User.objects.all() if reader.is_coach else User.objects.filter(pk=reader.pk)


@compiled_once
def by_number(pk: int) -> QuerySet[User]:
    return User.objects.filter(pk=pk)


@compiled_once
def of_order(order: int) -> QuerySet[Grade]:
    return Grade.objects.filter(order=order)


def test_each_argument_finds_its_own_rows(owner, teammate, grade_two, grade_three):
    again = ClassGroupFactory(name="3 Oak", grade=grade_three, year=owner.class_groups.get().year, teachers=[owner])
    first = owner.class_groups.get(grade=grade_two)
    for _ in range(2):
        assert in_grades(owner, [grade_two.pk]) == [first]
        assert in_grades(owner, [grade_three.pk]) == [again]
        assert in_grades(teammate, [grade_three.pk]) == []
        assert in_grades(owner, [grade_two.pk, grade_three.pk]) == [first, again]
        assert in_grades(owner, [grade_two.pk, grade_three.pk], at_most=1) == [first]
        assert in_grades(owner, []) == []
    with CaptureQueriesContext(connection) as queries:
        assert in_grades(owner, [grade_two.pk])[0].grade == grade_two
    assert len(queries) == 1


@compiled_once
def with_all_they_have(teacher: User) -> QuerySet[ClassGroup]:
    """Rows of other models, of no model and of none at all beside them; columns that are left out and that are made anew."""
    groups = ClassGroup.objects.filter(teachers=teacher).select_related("grade__band", "year").defer("name")
    told = groups.annotate(taught_by=Count("teachers"), began=F("year__starts_on"))
    return told.filter(languages__isnull=False).order_by("grade__order", "pk").distinct()


@compiled_once
def names_of(teacher: User) -> QuerySet[ClassGroup, str]:
    return (
        ClassGroup.objects.filter(teachers=teacher).order_by("-grade__order").values_list("name", flat=True).distinct()
    )


@compiled_once
def lists_of(teacher: User) -> QuerySet[ClassGroup, tuple]:
    groups = ClassGroup.objects.filter(teachers=teacher).annotate(n=Count("teachers"))
    return groups.order_by("-grade__order").values_list("n", "languages", "year__starts_on", "name")


@compiled_once
def ordered_by_another(teacher: User) -> QuerySet[ClassGroup, tuple]:
    return ClassGroup.objects.filter(teachers=teacher).order_by("-grade__order").values_list("name", "pk").distinct()


@compiled_once
def copies_with_origin(owner: User) -> QuerySet[Routine]:
    return Routine.objects.filter(owner=owner).select_related("copied_from", "current_version__by").order_by("pk")


@compiled_once
def with_prefetched(teacher: User) -> QuerySet[ClassGroup]:
    return ClassGroup.objects.filter(teachers=teacher).prefetch_related("teachers")


@compiled_once
def as_dicts(teacher: User) -> QuerySet[ClassGroup, dict]:
    return ClassGroup.objects.filter(teachers=teacher).values("pk")


def all_of(row: Model) -> dict[str, Any]:
    """Everything that was read into a row, and into the rows that hang on it."""
    held = {name: value for name, value in vars(row).items() if name != "_state"}
    fields = {name: value and all_of(value) for name, value in row._state.fields_cache.items()}
    return {**held, "_state": (row._state.db, row._state.adding, fields)}


def test_rows_are_those_of_the_queryset(owner, teammate, grade_three, year):
    ClassGroupFactory(name="3 Oak", grade=grade_three, year=year, teachers=[owner, teammate], languages=["en", "es"])
    routine = make_routine(owner)
    copy_routine(routine=routine, by=owner)
    for made in (with_all_they_have, copies_with_origin):
        expected = [all_of(row) for row in made.queryset(owner)]
        assert len(expected) == 2
        assert [all_of(row) for row in made(owner)] == expected
    for listed in (names_of, lists_of, ordered_by_another):
        expected = list(listed.queryset(owner))
        assert len(expected) == 2
        assert listed(owner) == expected
        assert type(listed(owner)[0]) is type(expected[0])


def test_what_would_be_read_otherwise_is_refused(owner):
    with pytest.raises(TypeError, match="further rows"):
        with_prefetched(owner)
    assert as_dicts.how_many(owner) == 1
    with pytest.raises(TypeError, match="only be counted"):
        as_dicts(owner)


def test_days_are_asked_for_as_days(year):
    day = timedelta(days=1)
    assert began(year.starts_on, year.starts_on) == [(year.name, year.starts_on)]
    assert began(year.starts_on + day, year.ends_on) == []


def test_what_a_role_may_read_is_never_read_by_another(owner, coach):
    for _ in range(2):
        assert len(read_by(coach)) == 2
        assert read_by(owner) == [owner]


def test_a_number_in_a_small_column_is_compared(grade_two):
    """A stand-in beyond what the column holds would be left out of the query, and every grade be found."""
    assert of_order(grade_two.order) == [grade_two]
    assert of_order(grade_two.order + 1) == []


def test_a_number_beyond_every_column_finds_nothing(owner):
    assert by_number(2**80) == by_number(-(2**31)) == of_order(2**31) == []
    assert by_number(owner.pk) == [owner]


REFUSED = {
    "arithmetic": lambda number: User.objects.filter(pk=number + 1),
    "a slice": lambda number: User.objects.order_by("pk")[:number],
    "a decision": lambda number: User.objects.filter(Q(pk=number) if number % 2 else Q(pk__gt=number)),
    "a query of its own": lambda number: User.objects.filter(pk__in=list(User.objects.values_list("pk", flat=True))),
}


@pytest.mark.parametrize("make", REFUSED.values(), ids=REFUSED)
def test_what_an_argument_may_not_do_is_refused(make, owner):
    with pytest.raises(TypeError):
        compiled_once(make).compiled([1], {})


def decides_by_name(person: User) -> QuerySet[User]:
    return User.objects.filter(display_name=person.display_name)


def knows_its_person(person: User) -> QuerySet:
    return person.owned_routines.all()


@pytest.mark.parametrize("make", [decides_by_name, knows_its_person])
def test_of_a_row_only_its_key_and_what_shapes_queries_is_known(make, owner):
    with pytest.raises(TypeError):
        compiled_once(make).compiled([owner], {})


def test_what_is_held_is_not_asked_for_again(owner):
    classes = list(owner.class_groups.all())
    reader = User.objects.get(pk=owner.pk)
    assert held(reader, "class_groups") is None
    hold(reader, "class_groups", classes)
    with CaptureQueriesContext(connection) as queries:
        assert list(reader.class_groups.all()) == classes
        assert held(reader, "class_groups") == classes
    assert len(queries) == 0
    assert not reader.class_groups.filter(name="no such class").exists()
    assert UserFactory() != reader
