"""A server that is killed while it removes words: another goes on with it, and nothing is left out."""

import json
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.config.commands import ROOT, environment, manage
from tests.config.test_erased_backups import NAME, PLANT, ask, files_with

EVENTS = 2000
PLANT_A_REMOVAL = f"""
import uuid
from routines.erasing.doing import ask_to_finish, begin
from routines.erasing.places import CALLED
from routines.models import LessonEvent
from routines.words_erased.matching import mark_of
from tests.factories import ClassGroupFactory
from tests.routines.lessons.making import open_lesson
ClassGroupFactory(grade=Grade.objects.get(), teachers=[ames])
lesson = open_lesson(ames, routine=routine)
LessonEvent.objects.bulk_create(
    LessonEvent(
        id=uuid.uuid4(), lesson=lesson, user=ames, seq=number + 1, t=number + 1, device="d1", at=timezone.now(),
        kind="notice.add", data={{"text": f"{NAME} saw {{number}}", "expected": None}},
    )
    for number in range(1, {EVENTS} + 1)
)
begin(*mark_of("{NAME}"), by=ames, places=list(CALLED), whose=None)
ask_to_finish(ames)
"""


@pytest.fixture
def folder(tmp_path) -> Path:
    """A school with a removal that waits for a server."""
    for words in (("migrate", "--verbosity", "0"), ("shell", "--verbosity", "0", "-c", PLANT + PLANT_A_REMOVAL)):
        done = manage(tmp_path, *words)
        assert done.returncode == 0, done.stderr
    assert manage(tmp_path, "backup").returncode == 0
    return tmp_path


def serving(folder: Path) -> subprocess.Popen[bytes]:
    return subprocess.Popen([sys.executable, ROOT / "manage.py", "run_jobs"], env=environment(folder))


def until(reached: Callable[[], bool]) -> None:
    for _ in range(1200):
        if reached():
            return
        time.sleep(0.05)
    raise AssertionError("It was never reached.")


def stubs(folder: Path) -> set[str]:
    return {key.replace("-", "") for (key,) in ask(folder, "SELECT id FROM routines_lessonevent WHERE erased")}


def entry(folder: Path) -> dict:
    (only,) = json.loads((folder / "erasures.json").read_text())["erasures"]
    return only


def test_it_is_gone_on_with_to_the_last_text(folder):
    first = serving(folder)
    try:
        until(lambda: len(stubs(folder)) > 100)
    finally:
        first.kill()  # as `kill -9` does
        first.wait()
    before = stubs(folder)
    assert len(before) < EVENTS, "it was killed in the middle"
    assert before <= {event.replace("-", "") for event in entry(folder)["events"]}, "nothing changed is unremembered"
    assert "countfold.sqlite3" in files_with(folder)
    ask(folder, "UPDATE routines_job SET claimed_until = '2000-01-01'")  # the lease of the killed server has run out
    second = serving(folder)
    try:
        until(lambda: bool(entry(folder)["finished_at"]))
    finally:
        second.terminate()
        second.wait()
    assert len(stubs(folder)) == EVENTS
    assert stubs(folder) == {event.replace("-", "") for event in entry(folder)["events"]}
    assert files_with(folder) == []
    assert ask(folder, "SELECT state, said, attempts FROM routines_job") == [("done", "", 2)]
