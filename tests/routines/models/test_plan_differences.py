"""What differs between two plans, line by line: every field of a stop is told of."""

from dataclasses import replace

import pytest

from routines.models.declared import declared
from routines.models.plan_differences import changes_between
from routines.models.plan_document import Stop
from tests.routines.making import SEVENS

STOP = Stop(10, "What is under 11?", "46", ("5 jumps of 7 make 35", "down one row"), think=20, partner=60, share=90)


def another(value):
    return {int: lambda: value + 1, str: lambda: f"{value} again", tuple: lambda: (*value, "another way")}[
        type(value)
    ]()


@pytest.mark.parametrize("name", declared(Stop))
def test_a_change_of_one_field_of_a_stop_is_told(name):
    changed = replace(STOP, **{name: another(getattr(STOP, name))})
    (change,) = changes_between(SEVENS.changed(stops=(STOP,)), SEVENS.changed(stops=(changed,)))
    assert change.part == "stops"
    assert change.before != change.after


def test_a_stop_is_one_line():
    (change,) = changes_between(SEVENS.changed(stops=()), SEVENS.changed(stops=(STOP,)))
    assert change.after == (
        "After count 10: What is under 11? 46 5 jumps of 7 make 35; down one row (think 20 s, partner 60 s, share 90 s)",
    )
