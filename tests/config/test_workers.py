"""A school with many people at once: on SQLite one process serves, on PostgreSQL three, and nobody notices which.

Real servers, each on a database of its own.
"""

import json
import os
import signal
import subprocess
import sys
import threading
import time
import uuid
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from django.db import connection

from tests.config.commands import ROOT, environment
from tests.config.serving import Browser, served
from tests.routines.lessons.making import event
from tests.routines.printed import pango

__all__ = ["pango"]

pytestmark = pytest.mark.django_db(transaction=True)

ON_POSTGRESQL = connection.vendor == "postgresql"
WORKERS = 3 if ON_POSTGRESQL else 1
CLIENTS = 32
ROUNDS = 4
PASSPHRASE = "otter violin sandwich moon"
PREPARE = f"""
import json
from django.test import Client
from accounts.models import User
from routines.paper.booklet_jobs import start_booklet
from routines.plans.forms.draft import fields_of
from tests.factories import ClassGroupFactory, GradeFactory, SchoolFactory, SchoolYearFactory, UserFactory
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine
SchoolFactory()
grade, year = GradeFactory(name="2"), SchoolYearFactory()
teacher = UserFactory(sign_in_name="teacher", passphrase="{PASSPHRASE}")
ClassGroupFactory(grade=grade, year=year, teachers=[teacher])
lesson = open_lesson(teacher)
versions = [make_routine(teacher, title=f"Plum {{number}}").current_version for number in range(20)]
start_booklet(owner=teacher, title="Plums", versions=versions, contents=["plan", "poster"])
def session(person):
    client = Client()
    client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
    return client.cookies["countfold_session"].value
coaches = [session(UserFactory(role=User.Role.COACH)) for _client in range({CLIENTS})]
fields = fields_of(versions[0].read_plan())
print(json.dumps({{
    "key": str(lesson.key), "session": session(teacher), "coaches": coaches, "plum": versions[0].routine_id, "fields": fields
}}))
"""


def asked(around: dict[str, str], code: str) -> str:
    """What this code prints, run on the school's own database."""
    command = [sys.executable, ROOT / "manage.py", "shell", "--verbosity", "0", "-c", code]
    done = subprocess.run(command, env=around, cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


@pytest.fixture
def around(tmp_path) -> Iterator[dict[str, str]]:
    """The environment of a school with a database of its own."""
    folder = tmp_path / "data"
    folder.mkdir()
    if not ON_POSTGRESQL:
        yield {**environment(folder), "PYTHONPATH": str(ROOT)}
        return
    name = f"school_{uuid.uuid4().hex}"
    with connection.cursor() as cursor:
        cursor.execute(f"CREATE DATABASE {name}")
    kept = connection.settings_dict
    address = f"postgres://{kept['USER']}:{kept['PASSWORD']}@{kept['HOST']}:{kept['PORT']}/{name}"
    yield {**environment(folder), "PYTHONPATH": str(ROOT), "DATABASE_URL": address}
    with connection.cursor() as cursor:
        cursor.execute(f"DROP DATABASE {name} WITH (FORCE)")


class Open:
    """A school that is open: its port, its lesson, whoever serves it."""

    def __init__(self, around: dict[str, str], port: int, parent: int, made: dict[str, Any]) -> None:
        self.around, self.port, self.parent = around, port, parent
        self.key, self.session = made["key"], made["session"]
        self.coaches, self.plum, self.fields = made["coaches"], made["plum"], made["fields"]

    def browser(self, *, signed_in: bool = True) -> Browser:
        return Browser(self.port, self.session if signed_in else "")

    def log(self) -> str:
        return (Path(self.around["COUNTFOLD_DATA"]).parent / "log").read_text()


@pytest.fixture
def school(around) -> Iterator[Open]:
    migrate = [sys.executable, ROOT / "manage.py", "migrate", "--verbosity", "0"]
    subprocess.run(migrate, env=around, check=True)
    made = json.loads(asked(around, PREPARE))
    parents: list[int] = []
    words = ("--workers", str(WORKERS))
    with served(Path(around["COUNTFOLD_DATA"]), *words, around=around, started=parents.append) as (port, _said):
        yield Open(around, port, parents[0], made)


def all_at_once(do: Callable[[int], None]) -> None:
    """In as many threads as there are clients; what one of them finds wrong fails the test."""
    wrong: list[BaseException] = []

    def run(number: int) -> None:
        try:
            do(number)
        except BaseException as error:
            wrong.append(error)

    threads = [threading.Thread(target=run, args=[number]) for number in range(CLIENTS)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(timeout=240)
    assert wrong == []


def answers(browser: Browser) -> int:
    return browser.ask("GET", "/sign-in/")[0]


def children_of(process: int) -> list[int]:
    """Linux writes them down."""
    return [
        int(child) for task in Path(f"/proc/{process}/task").glob("*/children") for child in task.read_text().split()
    ]


def test_of_thirty_two_that_read_then_write_nobody_meets_a_lock_and_nothing_is_lost(school):
    sent: dict[int, list[str]] = {}

    def write(number: int) -> None:
        browser = school.browser()
        sent[number] = []
        for turn in range(ROUNDS):
            assert browser.ask("GET", f"/lessons/{school.key}/events/?after=0")[0] == 200
            events = [event(turn * 2 + one, device=f"d{number}") for one in (1, 2)]
            status, answer = browser.send(f"/lessons/{school.key}/events/", {"epoch": None, "events": events})
            assert (status, json.loads(answer)["rejected"]) == (200, {}), answer
            sent[number] += [one["id"] for one in events]

    all_at_once(write)
    rows = asked(
        school.around,
        "import json; from routines.models import LessonEvent;"
        "print(json.dumps([(str(i), s) for i, s in LessonEvent.objects.order_by('seq').values_list('id', 'seq')]))",
    )
    stored = json.loads(rows)
    mine = [identity for identity, _seq in stored if any(identity in ids for ids in sent.values())]
    assert len(mine) == len(set(mine)) == CLIENTS * ROUNDS * 2
    assert [seq for _identity, seq in stored] == list(range(stored[0][1], stored[0][1] + len(stored)))
    assert "Traceback" not in school.log()
    assert "locked" not in school.log()


def test_of_thirty_two_that_save_the_same_plan_one_is_first_and_the_others_keep_what_they_typed(school):
    """Each read version 1; who writes over a version that was not read would lose somebody's work."""
    address = f"/routines/{school.plum}/edit/"
    answers: dict[int, tuple[int, str]] = {}
    line = threading.Barrier(CLIENTS)

    def save(number: int) -> None:
        browser = Browser(school.port, school.coaches[number])
        assert browser.ask("GET", address)[0] == 200
        fields = {**school.fields, "title": f"Plum of {number}.", "based_on": "1"}
        line.wait(timeout=120)
        status, _where, page = browser.ask("POST", address, **fields)
        answers[number] = status, page

    all_at_once(save)
    statuses = [status for status, _page in answers.values()]
    assert (statuses.count(302), statuses.count(409)) == (1, CLIENTS - 1)
    (first,) = [number for number, (status, _page) in answers.items() if status == 302]
    for number, (status, page) in answers.items():
        assert status == 302 or f"Plum of {number}." in page
    titles = asked(
        school.around,
        "import json; from routines.models import RoutineVersion;"
        f"versions = RoutineVersion.objects.filter(routine={school.plum}).order_by('number');"
        "print(json.dumps([(one.number, one.read_plan().title) for one in versions]))",
    )
    assert json.loads(titles) == [[1, "Plum 0"], [2, f"Plum of {first}."]]
    assert "Traceback" not in school.log()
    assert "locked" not in school.log()


def test_guesses_are_counted_over_all_processes(school):
    def guess(number: int) -> None:
        fields = {"name": "teacher", "passphrase": f"wrong wrong wrong {number}"}
        status, _where, _page = school.browser(signed_in=False).ask("POST", "/sign-in/", **fields)
        assert status in (422, 429)

    all_at_once(guess)
    for _process in range(WORKERS * 4):
        right = school.browser(signed_in=False).ask("POST", "/sign-in/", name="teacher", passphrase=PASSPHRASE)
        assert right[0] == 429


@pytest.mark.usefixtures("pango")
def test_a_booklet_is_made_though_the_process_that_makes_it_is_killed(school):
    def job() -> dict[str, object]:
        return json.loads(
            asked(
                school.around,
                "import json; from routines.models import Job;"
                "print(json.dumps(Job.objects.values('state', 'attempts', 'done', 'said').get()))",
            )
        )

    def until(reached: Callable[[dict[str, object]], object]) -> dict[str, object]:
        for _look in range(200):
            answers(school.browser(signed_in=False))
            found = job()
            if reached(found):
                return found
            time.sleep(0.2)
        raise AssertionError(f"It never came so far: {found}")

    if not ON_POSTGRESQL:
        until(lambda found: found["state"] == "done")  # with one process it is tests/routines/jobs/test_killed.py
        return
    for _process in range(WORKERS * 8):  # all of them wake at their first request
        answers(school.browser(signed_in=False))
    until(lambda found: found["done"])
    (maker,) = [worker for worker in children_of(school.parent) if children_of(worker)]
    os.kill(maker, signal.SIGKILL)
    found = job()
    assert (found["state"], found["attempts"]) == ("running", 1)
    assert answers(school.browser(signed_in=False)) == 200
    asked(
        school.around,
        "from datetime import timedelta; from django.utils import timezone; from routines.models import Job;"
        "Job.objects.filter(state='running').update(claimed_until=timezone.now() - timedelta(seconds=1))",
    )
    found = until(lambda found: found["state"] in ("done", "failed"))
    assert (found["state"], found["attempts"]) == ("done", 2)
    assert "20 counts" in str(found["said"])


def test_several_processes_on_sqlite_are_refused_in_a_sentence(tmp_path):
    command = [sys.executable, "-m", "config.serving", "serve", "--port", "1", "--workers", "2"]
    done = subprocess.run(command, cwd=ROOT, env=environment(tmp_path), capture_output=True, text=True, check=False)
    assert done.returncode == 1
    assert done.stdout == "Several processes need PostgreSQL (DATABASE_URL): SQLite lets one write at a time.\n"
