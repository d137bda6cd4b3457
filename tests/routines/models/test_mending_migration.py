"""What was stored before there was a gate is mended, and opens for everyone again."""

from importlib import import_module

import pytest
from django.apps import apps
from django.db import connection
from django.db.migrations.executor import MigrationExecutor

from accounts.text import is_text
from grade_bands.models import Grade, Standard
from routines.models import ImportFile, LessonEvent, PlanDraft, Routine, RoutineNote, RoutineVersion
from routines.models.people_words import ALL
from tests.factories import GradeFactory, StandardFactory
from tests.routines.making import SEVENS, make_lesson, make_routine

NAME = "0005_mend_texts"
# PostgreSQL stores neither the NUL nor halves of pairs, so there they never were.
SQLITE = connection.vendor == "sqlite"
NUL, HALF = ("\x00", "\ud83d") if SQLITE else ("\x01", "\ufdd0")


def mend() -> None:
    with connection.cursor():
        import_module(f"routines.migrations.{NAME}").mend(apps, type("editor", (), {"connection": connection}))


def plant(owner) -> Routine:
    routine = make_routine(owner)
    document = {**SEVENS.as_dict(), "title": f"Sev{NUL}ens", "notes": f"half {HALF}"}
    RoutineVersion.objects.filter(routine=routine).update(plan=document)
    Routine.objects.filter(pk=routine.pk).update(title=f"Sev{NUL}ens", search_text=f"sev{NUL}ens")
    PlanDraft.objects.create(person=owner, fields={"typed": {"title": [f"Be{NUL}gun {HALF}"]}, "steps": []})
    ImportFile.objects.create(by=owner, name="a\x1b.json", plans=[document], refused=[[1, f"x{HALF}", "y", "z"]])
    RoutineNote.objects.create(routine=routine, by=owner, text="two\r\nlines\x1b")
    make_lesson(routine, owner)
    LessonEvent.objects.filter(seq=1).update(data={"n": 1, "text": f"4{HALF}"})
    return routine


def not_text() -> list[str]:
    return [
        str(column)
        for column in ALL
        for row in column.model_in().objects.only(column.field)  # others may not be there yet
        for _, text in column.texts(row)
        if not is_text(text)
    ]


def test_every_stored_text_is_mended(owner, visit):
    routine = plant(owner)
    assert len(set(not_text())) == 9
    mend()
    assert not_text() == []
    routine.refresh_from_db()
    assert (routine.title, routine.plan.title) == ("Sevens", "Sevens")
    assert RoutineNote.objects.get().text == "two\nlines"
    assert PlanDraft.objects.get().fields["typed"]["title"][0].startswith("Begun")
    browser = visit(owner)
    for address in (
        "/",
        "/bank/",
        "/plans/",
        f"/routines/{routine.pk}/",
        f"/routines/{routine.pk}/file.json",
        "/lessons/",
    ):
        assert browser.get(address).status_code == 200


def test_mending_twice_changes_nothing_more(owner):
    plant(owner)
    mend()
    before = [list(column.model_in().objects.order_by("pk").values_list(column.field, flat=True)) for column in ALL]
    mend()
    assert before == [
        list(column.model_in().objects.order_by("pk").values_list(column.field, flat=True)) for column in ALL
    ]


def test_names_that_become_the_same_are_told_apart(school):
    GradeFactory(name="7")
    GradeFactory(name="7\x1b")
    GradeFactory(name="\x1b7")
    GradeFactory(name="\x1b234567890\x7f1")
    mend()
    assert sorted(Grade.objects.values_list("name", flat=True)) == ["2345678901", "7", "7 2", "7 3"]


def test_a_name_of_unseen_characters_alone_stays_one(owner):
    StandardFactory(code="\x1b\x7f", framework="Ours")
    mend()
    assert Standard.objects.get(framework="Ours").code == "\ufffd"


def test_more_rows_than_are_taken_at_a_time(owner):
    routine = make_routine(owner)
    RoutineNote.objects.bulk_create(RoutineNote(routine=routine, by=owner, text=f"{n}\x1b") for n in range(250))
    mend()
    assert set(RoutineNote.objects.values_list("text", flat=True)) == {str(n) for n in range(250)}


@pytest.mark.django_db(transaction=True)
def test_the_migration_goes_back_and_forth(owner):
    executor = MigrationExecutor(connection)
    before = [
        parent for parent in executor.loader.graph.node_map[("routines", NAME)].parents if parent[0] == "routines"
    ]
    leaves = [node for node in executor.loader.graph.leaf_nodes() if node[0] == "routines"]
    routine = plant(owner)
    executor.migrate([before[0].key])
    assert not_text()
    executor = MigrationExecutor(connection)
    executor.migrate(leaves)
    assert not_text() == []
    routine.refresh_from_db()
    assert routine.title == "Sevens"
