"""Rows of the database as objects: no other than Django itself makes of them."""

from typing import Any

import pytest
from django.apps import apps
from django.db.models import Model
from django.db.models.signals import post_init, pre_init

from accounts.compiled_once import compiled_once
from grade_bands.models import ClassGroup
from routines.models import Routine
from tests.routines.making import make_routine


@pytest.mark.parametrize("model", apps.get_models(), ids=lambda model: model._meta.label)
def test_no_model_does_anything_when_a_row_becomes_an_object(model: type[Model]) -> None:
    assert model.__init__ is Model.__init__
    assert model.__new__ is object.__new__
    assert model.from_db.__func__ is Model.from_db.__func__
    assert not pre_init.has_listeners(model)
    assert not post_init.has_listeners(model)


def told(row: Model) -> dict[str, Any]:
    """All that an object holds, with the rows beside it."""
    state = row._state
    beside = {name: one and told(one) for name, one in state.fields_cache.items()}
    columns = {name: value for name, value in vars(row).items() if name != "_state"}
    return {"of": type(row), "columns": columns, "new": state.adding, "in": state.db, "beside": beside}


def test_they_hold_what_django_would_have_them_hold(owner):
    @compiled_once
    def deep(teacher):
        return (
            ClassGroup.objects.taught_by(teacher)
            .select_related("grade__band")
            .only("name", "grade__name", "grade__band")
        )

    assert [told(row) for row in deep(owner)] == [told(row) for row in deep.queryset(owner)]
    assert deep(owner)[0].grade.band.pk
    assert deep(owner)[0].get_deferred_fields() == deep.queryset(owner)[0].get_deferred_fields()


def test_where_nothing_is_named_nothing_stands_beside(owner):
    @compiled_once
    def original_beside(pk):
        return Routine.objects.filter(pk=pk).select_related("copied_from")

    routine = make_routine(owner)
    assert [told(row) for row in original_beside(routine.pk)] == [
        told(row) for row in original_beside.queryset(routine.pk)
    ]
    assert original_beside(routine.pk)[0].copied_from is None
