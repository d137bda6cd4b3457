"""Long lists that many pages show are read once, and again as soon as anything has changed what they say."""

from uuid import uuid4

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from accounts.models import ListMarks, School
from tests.factories import ClassGroupFactory, UserFactory
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db


def mark(which: str):
    return ListMarks.objects.values_list(which, flat=True).get()


def changes(which: str, change) -> bool:
    before = mark(which)
    change()
    return mark(which) != before


def owners_asked(client, address: str) -> tuple[str, bool]:
    """The menu of who planned counts, and whether the database was asked for it."""
    with CaptureQueriesContext(connection) as queries:
        text = client.get(address).text
    menu = text.split('name="owner"')[1].split("</select>")[0]
    return menu, any("routines_bankowner" in one["sql"] for one in queries)


@pytest.mark.parametrize("address", ["/bank/", "/bank/?q=plum", "/bank/?grade=3"])
def test_who_planned_counts_is_read_once_until_it_changes(owner, teammate, visit, address):
    make_routine(owner, title="Plum")
    client = visit(teammate)
    first, asked = owners_asked(client, address)
    assert asked
    assert owners_asked(client, address) == (first, False)
    owner.display_name = "Another Name"
    owner.save(update_fields=["display_name"])
    again, asked = owners_asked(client, address)
    assert asked
    assert ">Another Name</option>" in again
    make_routine(teammate, title="Plum")
    assert f">{teammate.display_name}</option>" in owners_asked(client, address)[0]


def test_a_restored_school_shows_its_own_people(owner, teammate, visit):
    """Whose mark of long ago may be the one under which a later list was read."""
    make_routine(owner)
    client = visit(teammate)
    owners_asked(client, "/bank/")
    type(owner).objects.filter(pk=owner.pk).update(display_name="As It Was")  # past the actions, as a restore writes
    School.objects.update(epoch=uuid4())
    assert ">As It Was</option>" in owners_asked(client, "/bank/")[0]


def test_without_marks_the_list_is_read_each_time(owner, teammate, visit):
    make_routine(owner)
    ListMarks.objects.all().delete()
    client = visit(teammate)
    first, _ = owners_asked(client, "/bank/")
    assert owners_asked(client, "/bank/") == (first, True)
    type(owner).objects.filter(pk=owner.pk).update(display_name="Nobody Said")
    assert ">Nobody Said</option>" in owners_asked(client, "/bank/")[0]
    teammate.save()
    owners_asked(client, "/bank/")
    assert not owners_asked(client, "/bank/")[1]


def test_what_changes_who_planned_counts(owner, teammate):
    made = make_routine(owner)
    second = make_routine(owner, shared=False)
    assert not changes("owners", second.share)
    assert not changes("owners", second.retire)
    assert changes("owners", made.retire)
    assert changes("owners", made.share)
    assert changes("owners", owner.save)
    assert not changes("owners", owner.sign_out_everywhere)
    assert not changes("owners", UserFactory)  # who has planned nothing


def test_what_changes_the_classes(owner, year, grade_three):
    made = ClassGroupFactory(name="3 Elm", grade=grade_three, year=year, teachers=[owner])
    assert changes("classes", made.save)
    assert changes("classes", made.delete)
    assert changes("classes", lambda: ClassGroupFactory(name="3 Ash", grade=grade_three, year=year))
    assert not changes("classes", owner.save)


def test_a_coach_chooses_among_the_classes_of_today(coach, owner, year, grade_three, visit):
    made = ClassGroupFactory(name="3 Elm", grade=grade_three, year=year, teachers=[owner])
    client = visit(coach)
    for _ in range(2):
        assert ">3 Elm</option>" in client.get("/coverage/").text
    with CaptureQueriesContext(connection) as queries:
        client.get("/coverage/")
    assert not any('"grade_bands_classgroup"."languages"' in one["sql"] and "ORDER BY" in one["sql"] for one in queries)
    made.name = "3 Rowan"
    made.save()
    text = client.get("/coverage/").text
    assert ">3 Rowan</option>" in text
    assert ">3 Elm</option>" not in text
    assert f'value="{made.pk}" selected' in client.get("/coverage/", {"class": made.pk}).text
    made.delete()
    assert ">3 Rowan</option>" not in client.get("/coverage/").text
