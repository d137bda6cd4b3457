"""An upgrade that is killed (kill -9) in the middle of its migrations: nothing is changed, and the next start ends it.

Real starts on a real data folder, brought back to the tables of an earlier version first. Each is killed where a migration
is done and not yet noted as done. On PostgreSQL the same, as pg_dump tells it.
"""

import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

from tests.config.commands import ROOT, environment, manage
from tests.config.test_compose import client_of_postgresql
from tests.config.test_workers import ON_POSTGRESQL, around, asked

__all__ = ["around"]

PEOPLE = 300
EARLIER = (("accounts", "0005"), ("routines", "0011"))
KILLED_AT = ("0007_recovery_code", "0012_worked_out_once", "0021_fill_what_was_said_of_targets")
PLANT = f"""
from accounts.models import User
User.objects.bulk_create(User(sign_in_name=f"person{{n}}", display_name=f"Person {{n}}") for n in range({PEOPLE}))
"""
START = """
import os, runpy, signal, sys
from django.db.migrations.recorder import MigrationRecorder

killed_at, note = sys.argv.pop(1), MigrationRecorder.record_applied

def note_or_die(recorder, app, name):
    if name == killed_at:
        os.kill(os.getpid(), signal.SIGKILL)
    note(recorder, app, name)

MigrationRecorder.record_applied = note_or_die
runpy.run_module("config.serving", run_name="__main__", alter_sys=True)
"""


def ask(folder: Path, query: str) -> list[tuple]:
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        return database.execute(query).fetchall()


def everything(folder: Path) -> list[list[tuple]]:
    """Every row, and every table's own words."""
    tables = ask(folder, "SELECT sql, name FROM sqlite_master WHERE sql IS NOT NULL ORDER BY name")
    return [tables, *(ask(folder, f"SELECT * FROM {name}") for sql, name in tables if sql.startswith("CREATE TABLE"))]


@pytest.fixture(scope="module")
def earlier(founded, tmp_path_factory) -> Path:
    folder = shutil.copytree(founded, tmp_path_factory.mktemp("earlier") / "data")
    to_earlier = [("migrate", "--verbosity", "0", *to) for to in EARLIER]
    for words in (("shell", "--verbosity", "0", "-c", PLANT), *to_earlier):
        done = manage(folder, *words)
        assert done.returncode == 0, done.stderr
    return folder


def start(around: dict[str, str], killed_at: str) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-c", START, killed_at, "serve", "--port", "0"],
        cwd=ROOT,
        env=around,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )


def assert_killed(around: dict[str, str], at: str) -> None:
    upgrade = start(around, at)
    said, _ = upgrade.communicate(timeout=300)
    assert upgrade.returncode == -9, said


def assert_opens(around: dict[str, str]) -> None:
    again = start(around, "nowhere")
    said = ""
    for line in again.stdout:
        said += line
        if "Countfold is open" in line:
            break
    again.terminate()
    again.communicate(timeout=60)
    assert "Countfold is open" in said, said


@pytest.mark.parametrize("killed_at", KILLED_AT)
def test_killed_in_the_middle_the_next_start_ends_it(earlier, tmp_path, killed_at):
    folder = shutil.copytree(earlier, tmp_path / "data")
    before = everything(folder)
    assert_killed(environment(folder), killed_at)
    assert everything(folder) == before
    assert ask(folder, "PRAGMA integrity_check") == [("ok",)]

    assert_opens(environment(folder))
    assert ask(folder, "SELECT count(*) FROM accounts_user WHERE display_name LIKE 'Person %'") == [(PEOPLE,)]
    assert ask(folder, "SELECT count(*) FROM routines_banktotal") == [(0,)]
    assert ask(folder, "PRAGMA integrity_check") == [("ok",)]
    assert ask(folder, "PRAGMA foreign_key_check") == []


def dumped(address: str) -> list[str]:
    """Every row, and every table's own words. Not the key that pg_dump draws each time, nor the numbers that sequences drew,
    which PostgreSQL never takes back."""
    done = subprocess.run([client_of_postgresql("pg_dump"), address], capture_output=True, text=True, check=True)
    left_out = ("\\restrict", "\\unrestrict", "SELECT pg_catalog.setval")
    return [line for line in done.stdout.splitlines() if not line.startswith(left_out)]


@pytest.mark.django_db(transaction=True)
def test_killed_in_the_middle_on_postgresql_the_next_start_ends_it(around):
    if not ON_POSTGRESQL:
        return
    asked(around, "from django.core.management import call_command; call_command('migrate', verbosity=0)")
    asked(around, PLANT)
    for to in EARLIER:
        asked(around, f"from django.core.management import call_command; call_command('migrate', *{to}, verbosity=0)")
    before = dumped(around["DATABASE_URL"])
    assert any("Person 7" in line for line in before)
    for killed_at in KILLED_AT:
        assert_killed(around, killed_at)
        assert dumped(around["DATABASE_URL"]) == before, killed_at

    assert_opens(around)
    count = "from accounts.models import User; print(User.objects.filter(display_name__startswith='Person ').count())"
    assert asked(around, count).strip() == str(PEOPLE)
    assert "No planned migration operations" in asked(
        around, "from django.core.management import call_command; call_command('migrate', plan=True)"
    )
