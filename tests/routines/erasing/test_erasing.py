"""Words are taken out of every place where they may stand, and everything else stays readable."""

import json
import uuid

import pytest
from django.utils import timezone

from accounts.models import User
from routines.erasing import doing
from routines.erasing import taking_out as erasing
from routines.erasing.doing import begin
from routines.erasing.looking import look_for
from routines.erasing.places import CALLED
from routines.erasing.taking_out import take_out
from routines.lessons.making_again import make_again
from routines.models import (
    ImportFile,
    Job,
    JobFile,
    LessonEvent,
    PlanDraft,
    Reflection,
    Routine,
    RoutineNote,
    RoutineVersion,
    SearchWord,
    Suggestion,
    WorkedOut,
)
from routines.models.facts import facts_of
from routines.models.people_words import COLUMNS
from routines.models.plan_reading import read_document
from routines.models.search_word import words_of as searched_words_of
from routines.plans.actions import start_routine
from routines.words_erased import list_of_erasures
from routines.words_erased.matching import Sought, mark_of, words_of
from routines.words_erased.stubs import put_stubs
from routines.worked_out import mark_of as mark_of_stored
from routines.worked_out import save_of
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_lesson, make_routine
from tests.routines.models.test_plan_document import PLAN

NAME = "Zebulina"


@pytest.fixture(autouse=True)
def own_data_folder(settings, tmp_path):
    settings.DATA_DIR = tmp_path


def plant(owner, teammate) -> Routine:
    """The name in every column of the register."""
    routine = make_routine(owner, title=f"{NAME}’s sevens", notes=f"For {NAME}.")
    routine.story = f"{NAME} has 4 cups."
    routine.save(update_fields=["story"])
    lesson = make_lesson(routine, owner, seen=f"{NAME} saw it")
    Reflection.objects.filter(lesson=lesson).update(
        stuck=f"{NAME} got stuck", next_step=f"ask {NAME}", to_next_year=f"think of {NAME}"
    )
    append(lesson, event(900, "notice.add", {"text": f"{NAME}: tens go up", "expected": None}))
    RoutineNote.objects.create(routine=routine, by=owner, text=f"{NAME} liked it")
    Suggestion.objects.create(routine=routine, by=owner, to_teacher=teammate, why=f"as with {NAME}")
    PlanDraft.objects.create(person=owner, fields={"typed": {"title": [f"{NAME} again"]}, "steps": []})
    ImportFile.objects.create(
        by=owner,
        name=f"{NAME}.json",
        plans=[routine.current_version.plan],
        refused=[["1", f"{NAME}’s count", "title", f"{NAME} is no count"]],
    )
    Job.objects.create(kind=Job.Kind.IMPORT, owner=owner, title=f"{NAME}.json", said=f"{NAME} could not be read")
    return routine


def places_of(name=NAME) -> set[str]:
    sought = Sought.in_words(name)
    return {
        str(column)
        for column in COLUMNS
        for row in column.model_in()._default_manager.all()
        if any(sought.stands_in(text) for _, text in column.texts(row))
    }


def erase(by, *, words=NAME, whose=None, places=tuple(CALLED)):
    """To the point where the words are out of the database; its file and the backups have tests of their own."""
    entry = begin(*mark_of(words), by=by, places=places, whose=whose)
    take_out([entry], remember=doing.remember)
    return entry


def test_every_column_has_a_name_on_the_page():
    assert set(CALLED) == {str(column) for column in COLUMNS}


def test_words_are_taken_out_of_every_column(owner, teammate, administrator):
    plant(owner, teammate)
    assert places_of() == set(CALLED)
    erase(administrator)
    assert places_of() == set()
    assert Reflection.objects.get().seen == "[words removed] saw it"


def test_saves_stay_plans_and_only_the_words_go(owner, administrator):
    routine = make_routine(owner, title=f"{NAME}’s sevens", notes=f"For {NAME}.")
    before = routine.current_version.read_plan()
    erase(administrator)
    after = RoutineVersion.objects.get().read_plan()
    assert after == before.changed(title="[words removed]’s sevens", notes="For [words removed].")


def test_the_bank_finds_a_count_no_longer_by_the_words_and_still_by_the_others(owner, administrator):
    routine = make_routine(owner, title=f"{NAME}’s sevens")
    erase(administrator)
    assert not Routine.objects.matching(NAME).exists()
    assert Routine.objects.matching("sevens").get() == routine
    assert not SearchWord.objects.filter(word__contains=NAME.casefold()).exists()  # not as a part of one either
    routine.refresh_from_db()
    assert dict(SearchWord.objects.values_list("word", "in_title")) == searched_words_of(
        routine.title, routine.search_text
    )
    assert routine.title == "[words removed]’s sevens"
    # as if the plan had just been saved
    assert routine.search_text == facts_of(routine.plan, routine.grade.level).columns["search_text"]


def test_a_stub_fits_where_there_is_little_room(owner, administrator):
    make_routine(owner, title="Al " * 39 + "Al")
    erase(administrator, words="al")
    title = RoutineVersion.objects.get().read_plan().title
    assert title == Routine.objects.get().title == "… " * 39 + "…"
    assert len(title) <= 120


def test_a_plan_that_was_unreadable_before_is_cleaned_too(owner, administrator):
    routine = make_routine(owner)
    RoutineVersion.objects.update(plan={"schema": 99, "title": NAME})
    erase(administrator)
    assert NAME not in json.dumps(RoutineVersion.objects.get(routine=routine).plan)


def test_an_event_becomes_a_stub_with_its_id_and_number(owner, administrator):
    lesson = open_lesson(owner)
    told = event(7, "notice.add", {"text": f"{NAME}: tens go up", "expected": None})
    other = event(8, "notice.add", {"text": "ones stay", "expected": None})
    seqs = append(lesson, told, other).accepted
    erase(administrator)
    stub = LessonEvent.objects.get(pk=told["id"])
    assert (stub.data, stub.erased, stub.seq, stub.kind) == ({}, True, seqs[told["id"]], "notice.add")
    assert LessonEvent.objects.get(pk=other["id"]).data["text"] == "ones stay"
    assert append(lesson, told).accepted == {told["id"]: stub.seq}
    assert NAME not in json.dumps(LessonEvent.objects.get(pk=told["id"]).as_dict())


def test_an_erased_event_that_no_backup_held_comes_back_as_its_stub(owner, administrator):
    lesson = open_lesson(owner)
    told = event(7, "notice.add", {"text": f"{NAME}: tens go up", "expected": None})
    append(lesson, told)
    erase(administrator)
    LessonEvent.objects.filter(pk=told["id"]).delete()  # as an older backup leaves it
    assert told["id"] in append(lesson, told).accepted
    assert LessonEvent.objects.get(pk=told["id"]).data == {}
    assert LessonEvent.objects.get(pk=told["id"]).erased


def test_a_lesson_is_made_again_for_a_plan_whose_words_were_taken_out(owner, administrator):
    lesson = open_lesson(owner, routine=make_routine(owner, title=f"{NAME}’s sevens"))
    opening = lesson.events.get().as_dict()
    opening["data"]["taught_on"] = timezone.localdate().isoformat()
    erase(administrator)
    LessonEvent.objects.all().delete()
    lesson.delete()
    assert make_again(key=uuid.uuid4(), batch=[opening], by=owner) is not None


def test_only_what_one_wrote_is_changed(owner, teammate):
    routine = make_routine(owner, title=f"{NAME} a")
    theirs = RoutineNote.objects.create(routine=routine, by=teammate, text=f"{NAME} b")
    erase(teammate, whose=teammate.pk)
    theirs.refresh_from_db()
    assert theirs.text == "[words removed] b"
    assert places_of() == {
        "routines.Routine.title",
        "routines.Routine.search_text",
        "routines.RoutineVersion.plan",
    }


def test_places_that_were_not_chosen_stay(owner, teammate, administrator):
    plant(owner, teammate)
    erase(administrator, places=("routines.RoutineNote.text",))
    assert places_of() == set(CALLED) - {"routines.RoutineNote.text"}


def test_names_of_people_and_classes_stay(owner, administrator):
    erase(administrator, words="Owner")
    assert User.objects.get(pk=owner.pk).display_name == "Owner Ota"


def test_booklets_are_dropped(owner, administrator):
    job = Job.objects.create(kind=Job.Kind.BOOKLET, owner=owner, title="Our counts")
    JobFile.objects.create(job=job, content=NAME.encode())
    erase(administrator)
    assert not JobFile.objects.exists()


def test_the_list_holds_no_words_and_finds_them_again(owner, teammate, administrator):
    erase(administrator)
    written = list_of_erasures.file().read_text(encoding="utf-8")
    assert NAME.casefold() not in written.casefold()
    plant(owner, teammate)  # as an older backup brings them back
    take_out(list_of_erasures.read())
    assert places_of() == set()


def test_again_changes_nothing_more(owner, teammate, administrator):
    plant(owner, teammate)
    erase(administrator)
    before = [column.model_in()._default_manager.values_list(column.field) for column in COLUMNS]
    kept = [list(rows) for rows in before]
    assert take_out(list_of_erasures.read()).texts == 0
    assert [list(rows.all()) for rows in before] == kept


def test_what_somebody_saves_meanwhile_is_not_written_over(owner, administrator, monkeypatch):
    """The row is read again when it is held, so that the newer text stays, without the words."""
    note = RoutineNote.objects.create(routine=make_routine(owner), by=owner, text=f"{NAME}: old")
    read = erasing.parts_of

    def parts_then_a_save(columns, **asked):
        for part in read(columns, **asked):
            RoutineNote.objects.filter(pk=note.pk).update(text=f"new, with {NAME}")
            yield part

    monkeypatch.setattr(erasing, "parts_of", parts_then_a_save)
    erase(administrator)
    note.refresh_from_db()
    assert note.text == "new, with [words removed]"


@pytest.mark.parametrize("reached", [1, 3, 5])
def test_stopped_in_the_middle_it_is_gone_on_with_and_has_forgotten_nothing(
    owner, teammate, administrator, monkeypatch, reached
):
    """Whatever was changed before the stop is remembered as if there had been none: stubs, plans, how many texts."""
    plant(owner, teammate)
    found = look_for(Sought.in_words(NAME), whose=None)
    saved = erasing.put_stubs
    calls = []

    def killed(*args):
        calls.append(1)
        if len(calls) == reached:
            raise KeyboardInterrupt
        return saved(*args)

    monkeypatch.setattr(erasing, "put_stubs", killed)
    with pytest.raises(KeyboardInterrupt):
        erase(administrator)
    monkeypatch.setattr(erasing, "put_stubs", saved)
    assert places_of()
    (entry,) = doing.unfinished()
    take_out([entry], remember=doing.remember)
    assert places_of() == set()
    (entry,) = doing.unfinished()
    assert set(entry.events) == {
        str(key) for key in LessonEvent.objects.filter(erased=True).values_list("pk", flat=True)
    }
    assert len(entry.plans) == 1
    assert entry.taken_out == sum(place.texts for place in found.places.values()) > 12


def test_what_is_copied_while_it_goes_on_does_not_stay(owner, administrator, monkeypatch):
    """The titles are behind it when a colleague's request copies a plan that it has not come to yet."""
    monkeypatch.setattr(doing, "rewrite_pages", lambda: None)
    routine = make_routine(owner, title=f"{NAME}’s sevens")
    read = erasing.parts_of
    copies = []

    def parts_and_a_copy(columns, **asked):
        for part in read(columns, **asked):
            if isinstance(part[0], RoutineVersion) and not copies:
                copies.append(start_routine(plan=routine.current_version.read_plan(), by=owner))
            yield part

    monkeypatch.setattr(erasing, "parts_of", parts_and_a_copy)
    begin(*mark_of(NAME), by=administrator, places=tuple(CALLED), whose=None)
    doing.finish()
    assert copies
    assert places_of() == set()


def test_a_plan_stays_readable_whichever_of_its_words_goes():
    version = RoutineVersion(plan=PLAN.as_dict())
    (column,) = (column for column in COLUMNS if str(column) == "routines.RoutineVersion.plan")
    words = {word for _, text in column.texts(version) for word, _, _ in words_of(text)}
    assert len(words) > 20
    for word in words:
        version = RoutineVersion(plan=PLAN.as_dict())
        put_stubs(version, [(column, Sought.in_words(word))])
        assert read_document(version.plan).count == PLAN.count


def test_what_was_worked_out_of_a_plan_with_the_words_goes(owner, administrator, all_through):
    """Its rows hold no words, but the mark of a plan that does: who has the rest of it could try words out on that."""
    with all_through():
        routine = make_routine(owner, title=f"{NAME}’s sevens")
        make_routine(owner, title="Others")
    before = mark_of_stored(save_of(routine.newest_save, 2).document)
    assert WorkedOut.objects.of_documents([before]).count() == 2
    erase(administrator)
    assert not WorkedOut.objects.of_documents([before]).exists()
    assert WorkedOut.objects.count() == 2
