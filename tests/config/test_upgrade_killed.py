"""An upgrade that is killed (kill -9) in the middle of its migrations: the next start ends it, and nothing is lost.

Real starts on a real data folder, brought back to the tables of an earlier version first.
"""

import shutil
import sqlite3
import subprocess
import sys
import time
from contextlib import closing
from pathlib import Path

import pytest

from tests.config.commands import ROOT, environment, manage

PEOPLE = 3000
EARLIER = (("accounts", "0005"), ("routines", "0011"))
PLANT = f"""
from accounts.models import User
User.objects.bulk_create(User(sign_in_name=f"person{{n}}", display_name=f"Person {{n}}") for n in range({PEOPLE}))
"""
# Seconds after the server has said that it begins; the migrations take about one.
MOMENTS = (0.0, 0.15, 0.4)


def ask(folder: Path, query: str) -> list[tuple]:
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        return database.execute(query).fetchall()


def people(folder: Path) -> list[tuple]:
    return ask(folder, "SELECT id, sign_in_name, display_name, role FROM accounts_user ORDER BY id")


def applied(folder: Path) -> set[tuple]:
    return set(ask(folder, "SELECT app, name FROM django_migrations"))


@pytest.fixture(scope="module")
def earlier(founded, tmp_path_factory) -> Path:
    folder = shutil.copytree(founded, tmp_path_factory.mktemp("earlier") / "data")
    for words in (
        ("shell", "--verbosity", "0", "-c", PLANT),
        *(("migrate", "--verbosity", "0", *to) for to in EARLIER),
    ):
        done = manage(folder, *words)
        assert done.returncode == 0, done.stderr
    return folder


def start(folder: Path) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-m", "config.serving", "serve", "--port", "0"],
        cwd=ROOT,
        env=environment(folder),
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )


def until_said(process: subprocess.Popen[str], words: str) -> None:
    said = []
    for line in process.stdout:
        said.append(line)
        if words in line:
            return
    pytest.fail("".join(said))


def test_killed_in_the_middle_the_next_start_ends_it(earlier, tmp_path):
    everything = applied(earlier)
    seen = set()
    for number, moment in enumerate(MOMENTS):
        folder = shutil.copytree(earlier, tmp_path / str(number))
        before = people(folder)
        upgrade = start(folder)
        until_said(upgrade, "Bringing the database up to date")
        time.sleep(moment)
        upgrade.kill()
        upgrade.wait()
        seen.add(len(applied(folder)))
        assert ask(folder, "PRAGMA integrity_check") == [("ok",)]
        assert people(folder) == before

        again = start(folder)
        until_said(again, "Countfold is open")
        again.terminate()
        again.wait()
        assert applied(folder) > everything
        assert people(folder) == before
        assert ask(folder, "PRAGMA integrity_check") == [("ok",)]
        backups = sorted((folder / "backups").glob("*.zip"))
        assert len(backups) >= 2, "one before the upgrade"
        done = manage(folder, "restore", backups[1])
        assert done.returncode == 0, done.stderr
        assert people(folder) == before
    assert len(seen) > 1, f"every one was killed at the same place: {seen}"
