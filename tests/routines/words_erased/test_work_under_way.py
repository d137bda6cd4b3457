"""Booklets and files that are being worked on while words are removed: neither brings them back."""

import json

import pytest

from routines.erasing.doing import begin, remember
from routines.erasing.places import CALLED
from routines.erasing.taking_out import take_out
from routines.exchange import importing
from routines.exchange.importing import hold_file, start_adding
from routines.exchange.reading import Read
from routines.jobs.runner import do_next
from routines.models import Job, JobFile, Routine
from routines.paper import booklet_jobs
from routines.paper.booklet_jobs import start_booklet
from routines.paper.booklet_writing import write_booklet
from routines.words_erased.matching import mark_of
from tests.routines.making import SEVENS, make_routine

NAME = "Zebulina"


@pytest.fixture(autouse=True)
def own_data_folder(settings, tmp_path):
    settings.DATA_DIR = tmp_path


def erase(by):
    take_out([begin(*mark_of(NAME), by=by, places=tuple(CALLED), whose=None)], remember=remember)


def sheets_of(message: bytes) -> str:
    """What the process of booklets reads and lays out when it is asked for this one, here and now."""
    job = Job.objects.get(pk=json.loads(message)["job"])
    laid_out = []

    class Press:
        def pdf(self, html: str, *others, **named) -> tuple[bytes, int]:
            laid_out.append(html)
            return b"%PDF", 1

    write_booklet(job, Press(), lambda *how_far: None)
    return laid_out[0]


def test_a_booklet_that_is_being_laid_out_is_not_kept(owner, administrator, monkeypatch):
    version = make_routine(owner, title=f"{NAME}’s sevens").current_version
    laid_out = []

    def lay_out(message, *, time_limit, on_answer):
        laid_out.append(sheets_of(message))
        erase(administrator)
        return {"said": "", "refused": ""}, b"%PDF"

    monkeypatch.setattr(booklet_jobs.writing, "ask", lay_out)
    start_booklet(owner=owner, title="Ours", versions=[version], contents=("plan",))
    assert do_next(Job.Kind.BOOKLET)
    assert NAME in laid_out[0], "it was under way with the words in it"
    assert not JobFile.objects.exists()
    assert not Job.objects.booklets().exists()


def test_one_asked_for_before_and_begun_after_holds_what_is_left(owner, administrator, monkeypatch):
    version = make_routine(owner, title=f"{NAME}’s sevens").current_version
    laid_out = []

    def lay_out(message, *, time_limit, on_answer):
        laid_out.append(sheets_of(message))
        return {"said": "", "refused": ""}, b"%PDF"

    monkeypatch.setattr(booklet_jobs.writing, "ask", lay_out)
    erase(administrator)
    start_booklet(owner=owner, title="Ours", versions=[version], contents=("plan",))
    assert do_next(Job.Kind.BOOKLET)
    assert NAME not in laid_out[0]
    assert JobFile.objects.count() == 1


def test_a_file_that_is_being_added_goes_on_without_them(owner, administrator, monkeypatch):
    plans = [SEVENS.changed(title=f"Sevens {number}", notes=f"Ask {NAME}") for number in range(12)]
    file = hold_file(by=owner, name="ours.json", read=Read(plans=tuple(plans), refused=()))
    start_adding(file=file, into_bank=False)
    pauses = []

    def pause(seconds: float) -> None:
        pauses.append(Routine.objects.count())
        if len(pauses) == 1:
            erase(administrator)

    monkeypatch.setattr(importing.time, "sleep", pause)
    assert do_next(Job.Kind.IMPORT)
    assert pauses[0] == 5
    assert {routine.plan.notes for routine in Routine.objects.all()} == {"Ask [words removed]"}
    assert Routine.objects.count() == 12
