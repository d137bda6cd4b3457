"""Real processes that are killed in the middle: what they were making is made by another, once and whole."""

import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from datetime import timedelta
from pathlib import Path

import pytest
from django.db import connection
from django.utils import timezone

from routines.exchange.importing import hold_file, start_adding
from routines.exchange.reading import read
from routines.exchange.writing import written
from routines.models import Job, Routine
from routines.paper.booklet_jobs import start_booklet
from tests.factories import UserFactory
from tests.routines.making import SEVENS, make_routine
from tests.routines.printed import Printed, pango

__all__ = ["pango"]

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def process() -> Iterator[Callable[[str], subprocess.Popen]]:
    """Starts a process that works on this test's database: "serve" or "run"."""
    started = []

    def start(how: str) -> subprocess.Popen:
        path = Path(__file__).with_name("runner_process.py")
        running = subprocess.Popen([sys.executable, path, str(connection.settings_dict["NAME"]), how])
        started.append(running)
        return running

    yield start
    for running in started:
        running.kill()
        running.wait()


def until(question: Callable[[], object]) -> None:
    for _ in range(1200):
        if question():
            return
        time.sleep(0.1)
    raise AssertionError("It never came so far.")


def let_the_lease_run_out() -> None:
    assert Job.objects.filter(state="running").update(claimed_until=timezone.now() - timedelta(seconds=1))


def kill(running: subprocess.Popen) -> None:
    running.kill()
    running.wait()


def test_a_booklet_goes_on_in_another_server_after_a_kill(owner, process, pango):
    # Long enough that its last write is not on its way to the database already when the server is killed.
    versions = [make_routine(owner, title=f"Plum {number}").current_version for number in range(20)]
    start_booklet(owner=owner, title="Plums", versions=versions, contents=["plan", "poster"])
    first = process("serve")
    until(lambda: Job.objects.get().done)
    kill(first)
    job = Job.objects.get()
    assert (job.state, job.attempts) == ("running", 1)
    let_the_lease_run_out()
    process("serve")
    until(lambda: Job.objects.get().finished)
    job = Job.objects.get()
    assert (job.state, job.attempts) == ("done", 2)
    assert "20 counts" in job.said
    text = Printed(bytes(job.file.content)).text()
    assert all(f"Plum {number}" in text for number in range(20))


def test_an_import_goes_on_where_it_was_and_adds_nothing_twice(owner, process):
    plans = [SEVENS.changed(title=f"Sevens {number}") for number in range(120)]
    file = hold_file(by=owner, name="sevens.json", read=read(written(plans), {"2"}))
    start_adding(file=file, into_bank=False)
    first = process("run")
    until(lambda: Job.objects.get().done)
    kill(first)
    assert 0 < Routine.objects.count() < 120
    let_the_lease_run_out()
    process("run")
    until(lambda: Job.objects.get().finished)
    file.refresh_from_db()
    assert (file.added, file.already_here, file.not_added) == (120, 0, 0)
    assert Routine.objects.values("title").distinct().count() == Routine.objects.count() == 120


def test_two_processes_make_no_job_twice(owner, grade_two, process):
    """Each job is begun once, though both look at the same moment; each import adds its own counts."""
    for number in range(8):
        plans = [SEVENS.changed(title=f"Sevens {number} {one}") for one in range(3)]
        file = hold_file(by=UserFactory(), name=f"{number}.json", read=read(written(plans), {"2"}))
        start_adding(file=file, into_bank=False)
    process("run")
    process("run")
    until(lambda: not Job.objects.unfinished().exists())
    assert list(Job.objects.values_list("state", "attempts")) == [("done", 1)] * 8
    assert Routine.objects.count() == 24


def test_told_to_end_it_hands_back_what_it_was_making(owner, process):
    plans = [SEVENS.changed(title=f"Sevens {number}") for number in range(120)]
    file = hold_file(by=owner, name="sevens.json", read=read(written(plans), {"2"}))
    start_adding(file=file, into_bank=False)
    running = process("run")
    until(lambda: Job.objects.get().done)
    running.send_signal(signal.SIGTERM)
    assert running.wait(60) == 0
    job = Job.objects.get()
    assert (job.state, job.attempts, job.claim) == ("waiting", 0, None)
