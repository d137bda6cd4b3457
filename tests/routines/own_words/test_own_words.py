"""All that somebody wrote as a file of her own: every column of the register, hers alone, and no formula among it."""

import csv
import io
import json
import zipfile

import pytest
from django.urls import reverse
from django.utils import timezone

from accounts.models import OneTimeLink, User
from routines.exchange.reading import read
from routines.jobs.queue import drop_files_of_words
from routines.jobs.runner import do_next
from routines.lessons.recording import record_paper_lesson, save_reflection
from routines.models import ImportFile, Job, LessonEvent, Suggestion
from routines.models.people_words import ALL, IN_A_PLAN
from routines.models.plan_document import ExpectedAnswer, Stop
from routines.own_words import said_places
from routines.own_words.gathering import GIVEN_OUT, OF_THE_SCHOOL
from routines.plans.actions import keep_draft, save_version
from tests.routines.lessons.making import event
from tests.routines.making import SEVENS, make_routine

FORMULA = "=HYPERLINK(1)"


def planted(word: str, column: str) -> str:
    return f"{FORMULA} {word} {column}"


@pytest.fixture
def write_everything(school):
    """Somebody writes something in every column that people write in; each text says in which column it stands."""

    def write(person: User, word: str) -> None:
        routine = make_routine(person, title=planted(word, "Routine.title"), notes=planted(word, "RoutineVersion.plan"))
        newer = SEVENS.changed(title=planted(word, "a newer save"))
        save_version(routine=routine, plan=newer, based_on=routine.newest_save, by=person)
        keep_draft(by=person, fields={"typed": {"notes": [planted(word, "PlanDraft.fields")]}, "steps": []})
        ImportFile.objects.create(
            by=person,
            name=planted(word, "ImportFile.name"),
            plans=[SEVENS.changed(title=planted(word, "ImportFile.plans")).as_dict()],
            refused=[["1", planted(word, "ImportFile.refused"), "", ""]],
        )
        Job.objects.create(
            kind="booklet", owner=person, title=planted(word, "Job.title"), said=planted(word, "Job.said")
        )
        routine.notes.create(by=person, text=planted(word, "RoutineNote.text"))
        Suggestion.objects.create(routine=routine, by=person, to_teacher=person, why=planted(word, "Suggestion.why"))
        lesson = record_paper_lesson(
            version=routine.current_version,
            class_group=person.class_groups.select_related("grade", "year").get(),
            teacher=person,
            taught_on=timezone.localdate(),
            noticed=[(planted(word, "LessonEvent.data"), None)],
        )
        texts = {name: planted(word, f"Reflection.{name}") for name in ("seen", "stuck", "next_step", "to_next_year")}
        save_reflection(lesson=lesson, outcome="as-planned", sharing="team-coach", **texts)
        OneTimeLink.objects.issue(
            purpose="invitation",
            created_by=person,
            display_name=planted(word, "OneTimeLink.display_name"),
            role="teacher",
        )
        person.display_name = planted(word, "User.display_name")
        person.email = f"{word}@school.example"
        person.save()

    return write


@pytest.fixture
def opened(visit):
    """The files of the zip that this person is given, by name."""

    def of(person: User) -> dict[str, str]:
        client = visit(person)
        assert client.post(reverse("own_words")).status_code == 302
        assert do_next(Job.Kind.OWN_WORDS)
        job = Job.objects.get(kind=Job.Kind.OWN_WORDS, owner=person)
        page = client.get(reverse("own_words")).text
        address = reverse("own_words_zip", args=[job.key])
        assert address in page, page
        answer = client.get(address)
        assert "no-store" in answer["Cache-Control"]
        with zipfile.ZipFile(io.BytesIO(answer.content)) as archive:
            return {name: archive.read(name).decode("utf-8-sig") for name in archive.namelist()}

    return of


def test_every_column_that_somebody_can_write_in_is_given_out_or_is_the_schools():
    given = {str(column) for column in GIVEN_OUT}
    follow_the_newest_save = {"routines.Routine.title", "routines.Routine.story", "routines.Routine.search_text"}
    assert given | {str(column) for column in OF_THE_SCHOOL} | follow_the_newest_save == {str(one) for one in ALL}
    assert {str(column) for column in OF_THE_SCHOOL} == {
        str(column) for column in ALL if column.model.startswith(("grade_bands.", "accounts.School"))
    }


def test_it_holds_every_column_in_every_file(owner, write_everything, opened):
    write_everything(owner, "plum")
    files = opened(owner)
    assert set(files) == {"words.html", "words.csv", "words.json", "counts.json"}
    everything = json.loads(files["words.json"])
    assert {one["kept_in"] for one in everything["words"]} == {str(column) for column in GIVEN_OUT}
    for column in GIVEN_OUT:
        word = "plum@" if column.field == "email" else f"plum {column.model.split('.')[1]}.{column.field}"
        if column.field == "sign_in_name":
            word = owner.sign_in_name
        for name in ("words.html", "words.csv", "words.json"):
            assert word in files[name], f"{column} is not in {name}"


def test_every_save_is_in_it_and_the_newest_can_be_brought_in_again(owner, write_everything, opened):
    write_everything(owner, "plum")
    files = opened(owner)
    saves = [
        one for one in json.loads(files["words.json"])["words"] if one["kept_in"] == "routines.RoutineVersion.plan"
    ]
    assert [one["value"]["title"] for one in saves] == [
        planted("plum", "Routine.title"),
        planted("plum", "a newer save"),
    ]
    found = read(files["counts.json"].encode(), {"2"})
    assert [plan.title for plan in found.plans] == [planted("plum", "a newer save")]


def test_it_holds_nothing_that_others_wrote(owner, teammate, write_everything, opened):
    write_everything(owner, "plum")
    write_everything(teammate, "quince")
    assert "quince" not in "".join(opened(owner).values()).casefold()
    assert "plum" not in "".join(opened(teammate).values()).casefold()


def test_what_a_board_wrote_in_ones_own_lesson_is_in_it_and_what_a_colleague_wrote_there_is_not(
    owner, teammate, write_everything, opened
):
    write_everything(owner, "plum")
    lesson = owner.lessons.get()
    for place, (user, text) in enumerate(((None, "said at the board"), (teammate, "by a second teacher")), start=50):
        made = event(place, "notice.add", {"text": text, "expected": None})
        LessonEvent.objects.create(
            lesson=lesson, seq=place, id=made["id"], t=place, device="d", at=timezone.now(), kind=made["kind"],
            data=made["data"], user=user,
        )  # fmt: skip
    files = opened(owner)
    assert "said at the board" in files["words.csv"]
    assert "second teacher" not in "".join(files.values())


def test_every_text_of_a_plan_stands_under_what_it_is_and_what_no_person_wrote_is_left_out(owner, opened):
    """As it is read: a stop's question, its answer and routes, then the next stop; everything stays in the file for programs."""
    stops = (Stop(5, "First?", "One", ("by tens", "by fives")), Stop(10, "Second?", "Two"))
    expected = (ExpectedAnswer("It ends in 4", "Always?"),)
    routine = make_routine(owner, stops=stops, expected=expected, notes="Slowly")
    group = owner.class_groups.select_related("grade", "year").get()
    record_paper_lesson(
        version=routine.current_version, class_group=group, teacher=owner, taught_on=timezone.localdate(),
        noticed=[("down is 35", None)], heard={3: ["19"]},
    )  # fmt: skip
    files = opened(owner)
    rows = [row[3:] for row in csv.reader(io.StringIO(files["words.csv"]))]
    plan = rows[rows.index(["Stop 1: question", "First?"]) : rows.index(["Notes", "Slowly"]) + 1]
    assert plan == [
        ["Stop 1: question", "First?"], ["Stop 1: answer", "One"],
        ["Stop 1: a route to it", "by tens"], ["Stop 1: a route to it", "by fives"],
        ["Stop 2: question", "Second?"], ["Stop 2: answer", "Two"],
        ["Expected answer 1", "It ends in 4"], ["What you ask back at answer 1", "Always?"], ["Notes", "Slowly"],
    ]  # fmt: skip
    assert ["Noticed", "down is 35"] in rows
    assert ["Written at count 3", "19"] in rows
    assert "<p><strong>Stop 1: question:</strong> First?</p>" in files["words.html"]
    for name in ("words.html", "words.csv"):
        assert "paper" not in files[name]
    assert '"surface": "paper"' in files["words.json"]


def test_each_place_of_words_in_a_plan_has_a_name():
    assert set(said_places.IN_A_PLAN) == set(IN_A_PLAN)


def test_no_cell_of_the_table_is_a_formula(owner, write_everything, opened):
    write_everything(owner, "plum")
    cells = [cell for row in csv.reader(io.StringIO(opened(owner)["words.csv"])) for cell in row]
    assert any(FORMULA in cell for cell in cells)
    assert [cell for cell in cells if cell.startswith(("=", "+", "-", "@", "\t"))] == []


def test_rows_are_read_some_at_a_time(owner, write_everything, opened, monkeypatch):
    monkeypatch.setattr("routines.own_words.gathering.READ_AT_A_TIME", 2)
    write_everything(owner, "plum")
    assert {one["kept_in"] for one in json.loads(opened(owner)["words.json"])["words"]} == {str(c) for c in GIVEN_OUT}


def test_it_is_gone_once_words_are_removed_and_when_its_owner_drops_it(owner, visit):
    client = visit(owner)
    client.post(reverse("own_words"))
    do_next(Job.Kind.OWN_WORDS)
    drop_files_of_words()
    assert not Job.objects.filter(kind=Job.Kind.OWN_WORDS).exists()
    client.post(reverse("own_words"))
    job = Job.objects.get(kind=Job.Kind.OWN_WORDS)
    assert "It begins in a moment" in client.get(reverse("own_words")).text
    assert client.get(reverse("own_words_zip", args=[job.key])).status_code == 404
    client.post(reverse("own_words_drop", args=[job.key]))
    assert not Job.objects.filter(kind=Job.Kind.OWN_WORDS).exists()


def test_asking_twice_makes_one(owner, visit):
    client = visit(owner)
    client.post(reverse("own_words"))
    client.post(reverse("own_words"))
    assert Job.objects.filter(kind=Job.Kind.OWN_WORDS).count() == 1
    assert "Your words" in client.get(reverse("accounts:own_account")).text
