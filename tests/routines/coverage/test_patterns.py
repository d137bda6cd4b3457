"""Target patterns behind a cell: seen, not yet, not recorded, from lessons whose log the reader may open alone."""

import re
from datetime import date

import pytest
from django.urls import reverse
from django.utils import timezone

from routines.counting.claims import FAMILIES
from routines.coverage.patterns import NAMES
from routines.lessons.recording import delete_lesson, keep_events, made_event, next_t
from routines.models import RoutineVersion
from tests.routines.making import make_lesson, make_routine

DAYS = {"first": "2026-08-17", "last": "2026-11-20"}


def say(lesson, **seen) -> None:
    """What the teacher said of the targets by their place: say(lesson, t0="seen")."""
    for place, said in seen.items():
        data = {"position": int(place[1:]), "seen": said}
        keep_events(lesson=lesson, events=[made_event(next_t(lesson), "d", timezone.now(), "target", data)])


def table_of(client, grade, area="whole", **days) -> list[list[str]]:
    page = client.get(reverse("coverage_cell", args=[grade.pk, area]), days or DAYS)
    assert page.status_code == 200
    found = re.search(r'patterns-seen">.*?<tbody>(.*?)</tbody>', page.text, re.DOTALL)
    rows = re.findall(r"<tr>(.*?)</tr>", found[1]) if found else []
    return [re.findall(r"<t[hd][^>]*>(.*?)</t[hd]>", row) for row in rows]


@pytest.fixture
def sevens(owner):
    """Its targets: the step, and jumps down the columns."""
    return make_routine(owner)


def test_every_family_has_a_name_here():
    assert list(NAMES) == list(FAMILIES)


def test_what_was_said_is_added_up_and_the_rest_is_not_recorded(sevens, owner, grade_two, visit):
    say(make_lesson(sevens, owner, taught_on=date(2026, 9, 1)), t0="seen", t1="not-yet")
    say(make_lesson(sevens, owner, taught_on=date(2026, 9, 8)), t0="seen")
    make_lesson(sevens, owner, taught_on=date(2026, 9, 15))
    assert table_of(visit(owner), grade_two) == [["the step itself", "2", "0", "1"], ["equal jumps", "0", "1", "2"]]


def test_each_lesson_is_counted_by_the_version_that_it_taught(sevens, owner, grade_two, visit):
    say(make_lesson(sevens, owner), t1="seen")
    plan = {**sevens.current_version.plan, "targets": [{"claim": {"family": "opposites"}}]}
    second = RoutineVersion.objects.create(routine=sevens, number=2, by=owner, plan=plan)
    sevens.current_version = second
    make_lesson(sevens, owner, taught_on=date(2026, 10, 1))
    assert table_of(visit(owner), grade_two) == [
        ["the step itself", "0", "0", "1"],
        ["equal jumps", "1", "0", "0"],
        ["opposites", "0", "0", "1"],
    ]


def test_other_days_practice_and_deleted_lessons_are_not_counted(sevens, owner, grade_two, visit):
    say(make_lesson(sevens, owner, taught_on=date(2026, 9, 1)), t0="seen")
    say(make_lesson(sevens, owner, practice=True), t0="seen")
    say(gone := make_lesson(sevens, owner, taught_on=date(2026, 9, 2)), t0="seen")
    delete_lesson(lesson=gone)
    client = visit(owner)
    assert table_of(client, grade_two) == [["the step itself", "1", "0", "0"], ["equal jumps", "0", "0", "1"]]
    assert table_of(client, grade_two, first="2026-09-02", last="2026-09-30") == []


@pytest.mark.parametrize(
    ("sharing", "readers"),
    [("only-me", {"owner"}), ("team", {"owner", "teammate"}), ("team-coach", {"owner", "teammate", "coach"})],
)
@pytest.mark.parametrize("name", ["owner", "teammate", "coach", "administrator"])
def test_nobody_reads_off_the_total_what_a_log_says_that_is_not_shared(
    request, sevens, owner, teammate, grade_two, visit, sharing, readers, name
):
    say(make_lesson(sevens, owner, sharing=sharing), t0="not-yet")
    client = visit(request.getfixturevalue(name))
    expected = [["the step itself", "0", "1", "0"], ["equal jumps", "0", "0", "1"]] if name in readers else []
    assert table_of(client, grade_two) == expected
    page = client.get(reverse("coverage_cell", args=[grade_two.pk, "whole"]), DAYS).text
    told = "The log of one lesson is not shared with you" in page
    assert told is (name not in readers and name != "administrator")
    assert ("Target patterns" in page) is (name != "administrator")


def test_plans_without_targets_say_so(owner, grade_two, visit):
    make_lesson(make_routine(owner, targets=()), owner)
    page = visit(owner).get(reverse("coverage_cell", args=[grade_two.pk, "whole"]), DAYS).text
    assert "The plans that were taught name no target patterns." in page


def test_a_plan_that_cannot_be_read_takes_nothing_from_the_others(sevens, owner, grade_two, visit):
    make_lesson(sevens, owner)
    broken = make_routine(owner, title="Broken")
    make_lesson(broken, owner)
    RoutineVersion.objects.filter(routine=broken).update(plan={"targets": "nonsense"})
    assert table_of(visit(owner), grade_two) == [["the step itself", "0", "0", "1"], ["equal jumps", "0", "0", "1"]]


def test_its_queries_do_not_grow(sevens, owner, grade_two, visit, django_assert_max_num_queries):
    client, cell = visit(owner), reverse("coverage_cell", args=[grade_two.pk, "whole"])
    make_lesson(sevens, owner)
    client.get(cell, DAYS)
    with django_assert_max_num_queries(40) as before:
        client.get(cell, DAYS)
    few = len(before)
    for number in range(5):
        say(make_lesson(sevens, owner, taught_on=date(2026, 10, 1 + number)), t0="seen")
    client.get(cell, DAYS)  # its card says that it was taught more often, and is written anew
    with django_assert_max_num_queries(few):
        client.get(cell, DAYS)
