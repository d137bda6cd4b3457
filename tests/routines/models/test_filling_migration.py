"""A school that had counts and lessons before anything was kept beside them has all of it after the migration."""

from itertools import cycle

import pytest
from django.core.management import call_command
from django.db import connection
from django.db.migrations.executor import MigrationExecutor
from django.db.models import Sum

from routines.lessons.recording import delete_lesson
from routines.lessons.totals import NUMBERS_OF_A_DAY
from routines.models import (
    BankOwner,
    BankTotal,
    Lesson,
    Routine,
    SearchWord,
    TaughtInWeek,
    TaughtInYear,
    TaughtOn,
    TimesTaught,
)
from tests.routines.lessons.making import append, event
from tests.routines.making import make_lesson, make_routine

BEFORE = [("routines", "0012_worked_out_once")]
KEPT = {
    SearchWord: ("routine", "word", "in_title"),
    TimesTaught: ("routine", "year", "grade", "class_group", "teacher", "lessons"),
    TaughtInYear: ("routine", "year", "lessons", "classes"),
    TaughtOn: ("year", "grade", "area", "day", "monday", *reversed(NUMBERS_OF_A_DAY)),
    TaughtInWeek: ("year", "grade", "area", "monday", *reversed(NUMBERS_OF_A_DAY)),
    Lesson: ("pk", "targets_seen", "targets_not_yet", "targets_not_recorded"),
    Routine: ("pk", "shows"),
    BankTotal: ("grade", "area", "counts"),
    BankOwner: ("has_counts", "owner"),
}


def everything_kept():
    """Totals of nothing are as good as none."""
    return {
        model.__name__: sorted(
            row for row in model.objects.values_list(*columns) if row[-1] or columns[-1] not in ("lessons", "counts")
        )
        for model, columns in KEPT.items()
        if model is not TaughtInYear
    } | {"TaughtInYear": sorted(TaughtInYear.objects.filter(lessons__gt=0).values_list(*KEPT[TaughtInYear]))}


@pytest.mark.django_db(transaction=True)
def test_the_old_state_is_filled_as_the_actions_would_have(owner, teammate, co_author, other_teacher, monkeypatch):
    migration = "routines.migrations.0014_fill_kept_numbers_and_search"
    monkeypatch.setattr(f"{migration}.COUNTS_AT_A_TIME", 2)  # so that there are several parts
    monkeypatch.setattr(f"{migration}.ROWS_AT_A_TIME", 3)
    monkeypatch.setattr("routines.migrations.0021_fill_what_was_said_of_targets.LESSONS_AT_A_TIME", 3)
    sharing = cycle(["team-coach", "only-me", "team"])
    people = (owner, teammate, co_author, other_teacher)
    routines = [make_routine(owner, title=title) for title in ("Plums", "Añil 1,325", "No lesson", "Draft")]
    for at, routine in enumerate(routines[:2]):
        for person in people[at:]:
            lesson = make_lesson(routine, person, sharing=next(sharing))
            append(lesson, event(900, "target", {"position": at, "seen": "seen"}))
            make_lesson(routine, person, practice=True)
    delete_lesson(lesson=make_lesson(routines[3], teammate))
    routines[2].retire()
    as_kept = everything_kept()
    leaves = [node for node in MigrationExecutor(connection).loader.graph.leaf_nodes() if node[0] == "routines"]
    try:
        MigrationExecutor(connection).migrate(BEFORE)
        assert "routines_searchword" not in connection.introspection.table_names()
    finally:
        MigrationExecutor(connection).migrate(leaves)
    assert everything_kept() == as_kept
    assert len(as_kept["TimesTaught"]) == 7
    assert {tuple(said) for _, *said in as_kept["Lesson"]} == {
        (1, 0, 1),
        (0, 0, 2),
        (0, 0, 0),
    }  # the last: of the deleted
    assert TaughtOn.objects.aggregate(team=Sum("team_seen"), coach=Sum("coach_seen")) == {"team": 5, "coach": 3}
    assert [counts for *_, counts in as_kept["BankTotal"]] == [3]
    call_command("check_kept")
