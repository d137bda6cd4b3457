"""A file that was exported before words were removed here: they do not come back with it, and that is said."""

import json
from datetime import datetime

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.urls import reverse
from django.utils import timezone

from routines.erasing import doing
from routines.erasing.doing import begin
from routines.erasing.places import CALLED
from routines.exchange import importing
from routines.exchange.reading import read
from routines.exchange.removed_words import without_removed_words
from routines.jobs.runner import do_next
from routines.models import ImportFile, Job, Routine
from routines.models.plan_reading import read_document
from routines.words_erased import list_of_erasures
from routines.words_erased.matching import mark_of
from tests.routines.making import SEVENS, make_routine

NAME = "Zebulina"


@pytest.fixture(autouse=True)
def own_data_folder(settings, tmp_path, monkeypatch):
    settings.DATA_DIR = tmp_path
    monkeypatch.setattr(doing, "rewrite_pages", lambda: None)
    monkeypatch.setattr(importing, "PAUSE", 0)


def erase(by, words=NAME, *, whose=None, places=tuple(CALLED)):
    begin(*mark_of(words), by=by, places=places, whose=whose)
    doing.finish()


def exported(client, routine) -> bytes:
    return client.get(reverse("export_routine", args=[routine.pk])).content


def bring_in(client, content, name="counts.json"):
    return client.post(reverse("import"), {"file": SimpleUploadedFile(name, content, "application/json")}, follow=True)


def test_the_words_do_not_come_back_and_the_rest_does(visit, owner, teammate, administrator):
    routine = make_routine(owner, title=f"{NAME}’s sevens", notes=f"For {NAME.upper()}, slowly.")
    file = exported(visit(owner), routine)
    assert NAME in file.decode()
    routine.delete()
    erase(administrator)
    client = visit(teammate)
    look = bring_in(client, file, name=f"{NAME}.json").text
    assert NAME.casefold() not in look.casefold()
    on = datetime.fromisoformat(list_of_erasures.read()[0].begun_at)
    on = timezone.localtime(on)
    day = f"{on:%B} {on.day}, {on.year}"
    assert "Words that were removed here on " in look
    assert f"{day} stood in 2 of its texts; they are left out." in look
    assert NAME.casefold() not in str(list(ImportFile.objects.values())).casefold()
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]))
    assert do_next(Job.Kind.IMPORT)
    plan = Routine.objects.get().plan
    assert plan == SEVENS.changed(title="[words removed]’s sevens", notes="For [words removed], slowly.")


def test_what_was_cleaned_here_is_found_to_be_here_already(visit, owner, administrator):
    routine = make_routine(owner, title=f"{NAME}’s sevens")
    client = visit(owner)
    file = exported(client, routine)
    erase(administrator)
    assert "Already here" in bring_in(client, file).text


def test_what_a_colleague_removed_from_her_own_texts_does_not_come_back_with_another_name_on_it(
    visit, owner, teammate, coach
):
    routine = make_routine(owner, title=f"{NAME}’s sevens")
    file = exported(visit(owner), routine)
    erase(owner, whose=owner.pk)
    assert NAME not in bring_in(visit(coach), file).text
    assert ImportFile.objects.get().plans[0]["title"] == "[words removed]’s sevens"


def test_a_file_without_them_is_taken_as_it_is_and_nothing_is_said(visit, owner, administrator):
    erase(administrator)
    routine = make_routine(owner, title="Zebulinas and sevens")
    look = bring_in(visit(owner), exported(visit(owner), routine)).text
    assert "removed here" not in look
    assert ImportFile.objects.get().plans == [routine.plan.as_dict()]


def test_words_that_were_left_in_saved_plans_are_left_in_a_file(visit, owner, administrator):
    erase(administrator, places=("routines.RoutineNote.text",))
    routine = make_routine(owner, title=f"{NAME}’s sevens")
    assert NAME in bring_in(visit(owner), exported(visit(owner), routine)).text


def test_each_removal_is_said_with_its_own_number_and_one_made_twice_once(administrator):
    for words in ("Zebulina", "Ottokar", "Zebulina", "Nobody Here"):
        erase(administrator, words)
    file = {"format": "countfold-routines", "version": 1, "routines": []}
    file["routines"] = [
        SEVENS.changed(title="Zebulina and Ottokar").as_dict(),
        SEVENS.changed(title="Sevens", notes="zebulina").as_dict(),
    ]
    cleaned = without_removed_words(read(json.dumps(file).encode(), {"2"}), name="ottokar.json")
    assert [number for _, number in cleaned.left_out] == [1, 2]
    assert cleaned.name == "[words removed].json"
    assert [plan["title"] for plan in cleaned.plans] == ["[words removed] and [words removed]", "Sevens"]


def test_an_entry_that_is_refused_shows_none_either(visit, owner, administrator):
    erase(administrator)
    entry = SEVENS.changed(title=f"{NAME}’s sevens").as_dict() | {"grade": NAME}
    file = json.dumps({"format": "countfold-routines", "version": 1, "routines": [entry]}).encode()
    look = bring_in(visit(owner), file).text
    assert "These cannot be added" in look
    assert NAME not in look


def test_a_full_title_stays_one_that_can_be_read(administrator):
    erase(administrator, "al")
    plan = SEVENS.changed(title="Al " * 39 + "Al")
    file = json.dumps({"format": "countfold-routines", "version": 1, "routines": [plan.as_dict()]}).encode()
    (document,) = without_removed_words(read(file, {"2"}), name="").plans
    assert read_document(document).title == "… " * 39 + "…"


def test_with_a_damaged_list_nothing_is_brought_in(visit, owner):
    file = exported(visit(owner), make_routine(owner))
    list_of_erasures.file().write_text("{")
    answer = bring_in(visit(owner), file)
    assert answer.status_code == 422
    assert "erasures.json" in answer.text
    assert not ImportFile.objects.exists()
