"""Starts that can't be: each ends with a sentence, and two at once with one of each thing. Real processes."""

import re
import shutil
import socket
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing

import pytest
from django.conf import settings
from django.db import NotSupportedError

from config import serving
from tests.config.commands import ROOT, environment, manage
from tests.config.serving import served


def start(folder: str, port: int, *, what: str = "serve", **more: str) -> subprocess.Popen:
    return subprocess.Popen(
        [sys.executable, "-m", "config.serving", what, "--port", str(port)],
        cwd=ROOT,
        env={**environment(folder), **more},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )


def said(process: subprocess.Popen) -> str:
    output, _ = process.communicate(timeout=120)
    assert process.returncode == 1
    assert "Traceback" not in output
    return output


@pytest.fixture
def port() -> Iterator[int]:
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        yield taken.getsockname()[1]


@pytest.mark.parametrize(
    ("folder", "sentence"), [("data", "whole path"), (str(ROOT / "manage.py"), "must be a folder")]
)
def test_a_data_folder_that_is_relative_or_a_file(folder, sentence):
    assert re.fullmatch(f"COUNTFOLD_DATA .*{sentence}.*\n", said(start(folder, 8109)))
    done = manage(folder, "backup")
    assert (done.returncode, done.stderr.count("\n")) == (1, 1)
    assert sentence in done.stderr


def test_a_database_that_is_none(tmp_path):
    (tmp_path / "countfold.sqlite3").write_bytes(b"no database " * 1000)
    output = said(start(str(tmp_path), 8109))
    assert "can't be used: file is not a database" in output
    assert f"run.py restore lists those in {tmp_path / 'backups'}" in output


def test_a_disk_too_full_to_begin_on(small_disk, fill):
    disk = small_disk("1m")
    manage(disk, "check")  # the secret key is there
    fill(disk)
    assert f"The disk is full: {disk}" in said(start(str(disk), 8109))


def test_a_port_that_another_program_took_meanwhile(founded, tmp_path, port):
    folder = shutil.copytree(founded, tmp_path / "data")
    output = said(start(folder, port))
    assert f"Port {port} can't be opened" in output
    assert "Countfold is open" not in output


def test_a_postgresql_that_does_not_answer(tmp_path, port):
    address = f"postgres://countfold@127.0.0.1:{port}/none?connect_timeout=2"
    assert "The database at DATABASE_URL can't be used" in said(start(tmp_path, 8109, DATABASE_URL=address))


def test_a_postgresql_that_is_too_old(monkeypatch):
    """As Django says it when it opens the first connection."""
    monkeypatch.setitem(settings.DATABASES["default"], "ENGINE", "django.db.backends.postgresql")
    said = serving.why_not_started(NotSupportedError("PostgreSQL 14 or later is required (found 13.5)."))
    assert said == "The database at DATABASE_URL can't be used: PostgreSQL 14 or later is required (found 13.5)."


def test_an_upgrade_is_not_done_without_a_backup(founded, small_disk, fill):
    disk = small_disk("4m")
    folder = shutil.copytree(founded, disk / "data")
    manage(folder, "migrate", "--verbosity", "0", "sessions", "zero")
    fill(disk, but=300_000)
    output = said(start(folder, 8109))
    assert "The disk is too full for a backup" in output
    assert "not done without a backup" in output


def test_a_database_of_a_newer_version_is_left_alone(founded, tmp_path):
    folder = shutil.copytree(founded, tmp_path / "data")
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        database.execute(
            "INSERT INTO django_migrations (app, name, applied) VALUES ('routines', '9999_later', '2026-01-01')"
        )
        database.commit()
    shutil.copy(ROOT / "manage.py", folder / "backups/countfold-9999-12-31-000000-000000.zip")  # the newest, and none
    before = {path: path.read_bytes() for path in sorted((folder / "backups").iterdir())}
    output = said(start(folder, 8109))
    assert "by a newer Countfold" in output
    assert f"run.py restore {min(before).name}\n" in output
    assert {path: path.read_bytes() for path in sorted((folder / "backups").iterdir())} == before
    # The sentence is true: what was written before brings this version back.
    backup = min(before)
    done = manage(folder, "restore", backup)
    assert done.returncode == 0, done.stderr
    with served(folder) as (_port, spoken):
        assert any("Countfold is open" in line for line in spoken)


def test_a_secret_key_that_was_lost_is_said_before_a_backup_is_needed(founded, tmp_path):
    folder = shutil.copytree(founded, tmp_path / "data")
    kept = (folder / "secret_key").read_text()
    (folder / "secret_key").unlink()
    with served(folder) as (_port, spoken):
        assert "Note: 1 of the backups were not written with the secret key of this server." in "".join(spoken)
    (folder / "secret_key").write_text(kept)
    for path in sorted((folder / "backups").glob("*.zip"))[1:]:
        path.unlink()
    with served(folder) as (_port, spoken):
        assert "Note" not in "".join(spoken)


def test_two_first_starts_at_once_make_one_school(tmp_path):
    with socket.socket() as one, socket.socket() as other:
        one.bind(("127.0.0.1", 0))
        other.bind(("127.0.0.1", 0))
        ports = [one.getsockname()[1], other.getsockname()[1]]
    starts = [start(tmp_path, port, what="demo", COUNTFOLD_DEMO="1") for port in ports]
    outputs = []
    for process in starts:
        lines = []
        for line in process.stdout:
            lines.append(line)
            if "The demo school is open" in line:
                break
        outputs.append("".join(lines))
    for process in starts:
        process.terminate()
        process.communicate(timeout=20)
    assert all("The demo school is open" in output for output in outputs), outputs
    assert sum("Making the demo school" in output for output in outputs) == 1
    assert sum("Another start is getting the data ready. Waiting for it" in output for output in outputs) == 1
    # The second found data there, and kept them first, as the pages under School say of every start.
    assert len(list((tmp_path / "backups").glob("*.zip"))) == 1


def test_what_is_a_fault_of_this_program_is_not_talked_away():
    assert serving.why_not_started(KeyError("x")) is None
