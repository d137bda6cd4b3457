"""What the plan document declares of its fields, as forms, readers and the register of words take it."""

import pytest
from django import forms

from routines.models.declared import declared, declared_at, paths_of_words
from routines.models.plan_document import LIST_LIMIT, SENTENCE_LIMIT, CountSection, NextCount, Plan, Stop
from routines.plans.forms.draft import ROWS
from routines.plans.forms.fields import written
from routines.plans.forms.rows import AnswerRow, StopRow


def test_a_field_has_its_label_its_bounds_and_its_default():
    think = declared(Stop)["think"]
    assert (think.type, think.low, think.high, think.default) == (int, 0, 600, 20)
    assert think.title == "Think, seconds"


def test_of_a_list_its_items_are_declared_too():
    routes = declared(Stop)["routes"]
    assert (routes.type, routes.limit) == (tuple, LIST_LIMIT)
    assert routes.item.limit == SENTENCE_LIMIT
    assert routes.item.is_words


def test_choices_stand_in_their_order():
    assert declared(NextCount)["outcome"].choices == ("not-yet", "as-planned", "ready-for-more")


def test_a_part_that_may_be_missing_is_declared_as_that_part():
    assert declared(NextCount)["count"].type is CountSection


@pytest.mark.parametrize(
    ("place", "title"),
    [(("stops", 0, "share"), "Share, seconds"), (("next_counts", 3, "count", "terms"), "Number of counts")],
)
def test_a_field_is_found_by_its_place_in_a_document(place, title):
    assert declared_at(Plan, place).title == title


def test_words_are_found_inside_parts_and_lists_but_numbers_as_typed_are_none():
    words = set(paths_of_words(Plan))
    assert {"title", "story.text", "stops.*.routes.*", "standards.*", "next_counts.*.why"} <= words
    assert not {path for path in words if path.startswith("count")}


def test_a_row_of_the_form_has_every_field_of_its_part_and_no_other():
    for row in (AnswerRow, StopRow):
        assert set(row({}, 0).fields) == set(declared(row.part)) == set(ROWS[row.section])


def test_a_field_of_a_form_holds_to_what_is_declared():
    field = written(declared(Stop)["partner"], required=True)
    assert field.clean("60") == 60
    with pytest.raises(forms.ValidationError, match="from 0 to 1200"):
        field.clean("1201")
    lines = written(declared(Stop)["routes"])
    assert lines.clean("a\n\n b ") == ("a", "b")
    with pytest.raises(forms.ValidationError, match="400 characters"):
        lines.clean("x" * (SENTENCE_LIMIT + 1))
    with pytest.raises(forms.ValidationError, match="40 lines"):
        lines.clean("x\n" * (LIST_LIMIT + 1))
