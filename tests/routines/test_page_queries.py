"""No page asks the database more often when there is more to show."""

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from django.urls import reverse

from accounts.written_once import remembered
from routines.plans.actions import copy_routine
from tests.factories import StandardFactory
from tests.routines.making import make_lesson, make_routine

MOST = 26


@pytest.fixture
def addresses(owner, teammate, coach, grade_two, all_through):
    """A school with something on every page, and a way to put more there."""
    standard = StandardFactory(code="LS.2", grade=grade_two, area="whole")
    with all_through():
        routine = make_routine(owner, standards=("LS.2",))

    def fill(times: int) -> None:
        for number in range(times):
            with all_through():
                make_routine(owner, notes=f"Another {number % 5}", standards=("LS.2",))
                copy_routine(routine=routine, by=teammate).share()
            make_lesson(routine, owner, sharing="team")
            make_lesson(routine, teammate, sharing="team")
            routine.notes.create(by=teammate, text="worked")

    fill(21)  # and more notes, lessons and copies than a page shows at first
    lesson = make_lesson(routine, owner, sharing="team")
    pages = [
        reverse("home"),
        reverse("bank"),
        reverse("week"),
        reverse("suggestions"),
        reverse("my_plans"),
        reverse("routine", args=[routine.pk]),
        reverse("plan_edit", args=[routine.pk]),
        reverse("plan_history", args=[routine.pk]),
        reverse("print", args=[routine.pk]),
        reverse("lesson_taught", args=[routine.pk]),
        reverse("lessons"),
        lesson.get_absolute_url(),
        reverse("coverage"),
        reverse("coverage_cell", args=[grade_two.pk, "whole"]),
        reverse("coverage_standards"),
        reverse("coverage_standard", args=[grade_two.pk, standard.pk]),
        reverse("import"),
    ]
    return pages, fill


def asked(client, address: str) -> int:
    with CaptureQueriesContext(connection) as queries:
        assert client.get(address).status_code == 200
    return len(queries)


def test_eighty_counts_take_as_many_queries_as_forty(addresses, owner, visit):
    pages, fill = addresses
    client = visit(owner)
    for address in pages:
        client.get(address)
    few = {address: asked(client, address) for address in pages}
    remembered.clear()
    few_anew = {address: asked(client, address) for address in pages}
    fill(20)
    for address in pages:
        client.get(address)
    many = {address: asked(client, address) for address in pages}
    assert few == many
    remembered.clear()
    assert few_anew == {address: asked(client, address) for address in pages}
    assert {address: number for address, number in many.items() if number > MOST} == {}
