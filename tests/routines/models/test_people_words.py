"""The register of people's words: it knows every text column, and every place in a document where words may stand."""

import pytest
from django.apps import apps
from django.db import models
from hypothesis import given
from hypothesis import strategies as st

from accounts.people_words import WordsColumn
from routines.models import LessonEvent, RoutineNote, RoutineVersion
from routines.models.people_words import ALL, ALL_WORDLESS, IN_A_PLAN, ONE_BY_ONE
from routines.models.plan_reading import read_document
from tests.routines.making import make_lesson, make_routine
from tests.routines.models.test_plan_document import PLAN

OUR_APPS = ("accounts", "grade_bands", "routines", "config")
HOLDING_TEXT = (models.CharField, models.TextField, models.JSONField, models.FileField, models.BinaryField)


def text_columns() -> set[str]:
    return {
        f"{model._meta.label}.{field.name}"
        for app in OUR_APPS
        for model in apps.get_app_config(app).get_models(include_auto_created=True)
        for field in model._meta.get_fields()
        if isinstance(field, HOLDING_TEXT)
    }


def test_every_text_column_is_listed_or_named_wordless():
    listed = {str(column) for column in ALL}
    assert len(listed) == len(ALL)
    assert not listed & set(ALL_WORDLESS)
    assert not listed & set(ONE_BY_ONE)
    assert listed | set(ALL_WORDLESS) | set(ONE_BY_ONE) == text_columns()


def test_a_column_nobody_listed_would_be_noticed():
    """Sees to it that the test above looks at real columns of all three apps."""
    assert {"accounts.User.email", "grade_bands.Standard.summary", "routines.LessonEvent.data"} <= text_columns()


@pytest.mark.parametrize("column", ALL, ids=str)
def test_a_listed_column_is_there_with_the_way_to_its_author(column, db):
    model = column.model_in()
    field = model._meta.get_field(column.field)
    assert isinstance(field, models.JSONField) == bool(column.parts)
    if column.author:
        assert model.objects.filter(**{column.author: 1}).exists() is False


# A plan with something in every part, and of its texts those that are no words.
NO_WORDS_IN_A_PLAN = {"grade", "area", "language", "kind", "start", "step", "fill", "outcome", "sort", "claim", "style"}


def texts_of(value, place=()):
    if isinstance(value, str):
        yield place
    for name, part in value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ():
        if name not in NO_WORDS_IN_A_PLAN:
            yield from texts_of(part, (*place, str(name)))


def test_every_place_for_words_in_a_plan_is_known():
    version = RoutineVersion(plan=PLAN.as_dict())
    column = WordsColumn("routines.RoutineVersion", "plan", parts=IN_A_PLAN)
    known = {place for place, _ in column.texts(version)}
    assert known == {".".join(place) for place in texts_of(PLAN.as_dict())}
    assert len(known) >= len(IN_A_PLAN)


def test_words_are_changed_in_their_places_and_nowhere_else():
    version = RoutineVersion(plan=PLAN.as_dict())
    column = WordsColumn("routines.RoutineVersion", "plan", parts=IN_A_PLAN)
    assert column.change(version, lambda text: text.replace("cups", "pots"))
    changed = read_document(version.plan)
    assert changed == PLAN.changed(
        story=PLAN.story.__class__("A tray holds 7 pots.", "tray", "100"), notes="Bring pots."
    )
    assert not column.change(version, lambda text: text)


def test_words_of_an_event_of_an_unknown_kind_are_found_and_its_ids_are_not():
    (column,) = [column for column in ALL if str(column) == "routines.LessonEvent.data"]
    event = LessonEvent(data={"event": "abc", "text": "Tens go up", "cells": [{"said": "by ten", "n": 3}]})
    assert dict(column.texts(event)) == {"text": "Tens go up", "cells.0.said": "by ten"}
    assert column.change(event, str.upper)
    assert event.data == {"event": "abc", "text": "TENS GO UP", "cells": [{"said": "BY TEN", "n": 3}]}


def test_the_register_finds_every_word_planted_in_a_school(visit, owner):
    routine = make_routine(owner, title="Planted title", notes="planted notes")
    make_lesson(routine, owner, seen="planted in a reflection")
    RoutineNote.objects.create(routine=routine, by=owner, text="planted in a note")
    found = {
        str(column)
        for column in ALL
        for row in column.model_in().objects.all()
        for _, text in column.texts(row)
        if "planted" in text.casefold()
    }
    assert found == {
        "routines.Routine.title",
        "routines.Routine.search_text",
        "routines.RoutineVersion.plan",
        "routines.RoutineNote.text",
        "routines.Reflection.seen",
    }


JSON = st.recursive(
    st.one_of(st.none(), st.integers(), st.text(max_size=5)),
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(st.text(max_size=5), inner, max_size=3)),
    max_leaves=8,
)


@given(JSON)
def test_no_document_however_broken_is_too_much_for_the_register(document):
    for column in ALL:
        row = column.model_in()(**{column.field: document})
        before = list(column.texts(row))
        assert column.change(row, lambda text: f"{text}!") == bool(before)
        assert [text for _, text in column.texts(row)] == [f"{text}!" for _, text in before]
