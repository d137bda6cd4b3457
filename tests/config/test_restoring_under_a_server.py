"""A backup put back while the school's server runs: real processes, writers and readers, one database.

Before, everything in the school is called Late; in the backup it is called Early. No page may say both.
"""

import json
import re
import sqlite3
import threading
import time
import zipfile
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from tests.config.commands import manage
from tests.config.serving import Browser, served

PEOPLE = 30
WRITERS = range(4)
PASSPHRASE = "otter violin sandwich moon"
EARLY = f"""
from accounts.models import School, User
School.objects.create(pk=1, name="Early School")
admin = User(sign_in_name="admin", display_name="Early admin", role=User.Role.ADMINISTRATOR)
admin.set_password("{PASSPHRASE}")
admin.save()
for number in range({PEOPLE}):
    User.objects.create(sign_in_name=f"person{{number}}", display_name=f"Early {{number}}")
"""
LATE = """
import json
from django.test import Client
from accounts.models import School, User
School.objects.update(name="Late School")
sessions = {}
for person in User.objects.all():
    person.display_name = person.display_name.replace("Early", "Late") + "-0"
    person.save()
    client = Client()
    client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
    sessions[person.sign_in_name] = client.cookies["countfold_session"].value
print(json.dumps(sessions))
"""


def told_by(page: str) -> list[str]:
    """What a page says of either school, short enough to be read when this fails."""
    return [f"{page.count('<tr>')} rows", *re.findall(r"[^<>]*(?:Early|Late)[^<>]*", page)[:60]]


@pytest.fixture
def folder(tmp_path) -> Path:
    folder = tmp_path / "data"
    folder.mkdir()
    for words in (("migrate", "--verbosity", "0"), ("shell", "--verbosity", "0", "-c", EARLY), ("backup",)):
        done = manage(folder, *words)
        assert done.returncode == 0, done.stderr
    return folder


@pytest.fixture
def port(folder) -> Iterator[int]:
    with served(folder) as (port, _said):
        yield port


def test_a_restore_under_a_running_server_shows_no_mix_and_loses_no_acknowledged_save(folder, port):
    (backup,) = sorted((folder / "backups").glob("*.zip"))[:1]
    sessions = json.loads(manage(folder, "shell", "--verbosity", "0", "-c", LATE).stdout)
    over = threading.Event()
    acknowledged: dict[int, int] = {}
    odd: list[object] = []
    pages = {"Early": 0, "Late": 0}

    def read() -> None:
        browser = Browser(port, sessions["admin"])
        while not over.is_set():
            status, location, page = browser.ask("GET", "/school/people/")
            if status == 200 and ("Early" in page) != ("Late" in page) and page.count("<tr>") > PEOPLE:
                pages["Early" if "Early" in page else "Late"] += 1
            elif status == 302 and location.startswith("/sign-in/"):
                browser.ask("POST", "/sign-in/", name="admin", passphrase=PASSPHRASE)
            elif status != 302:
                odd.append((status, told_by(page)))

    def write(number: int) -> None:
        browser = Browser(port, sessions[f"person{number}"])
        for count in range(1, 100_000):
            if over.is_set():
                return
            status, location, page = browser.ask("POST", "/me/", display_name=f"Late {number}-{count}", email="")
            if (status, location) == (302, "/me/"):
                acknowledged[number] = count
                continue
            if status != 401 or f"Late {number}-{count}" not in page:  # signed out, and what was typed is kept
                odd.append((status, location, told_by(page)))
            return

    threads = [threading.Thread(target=read) for _reader in range(3)]
    threads += [threading.Thread(target=write, args=[number]) for number in WRITERS]
    for thread in threads:
        thread.start()
    time.sleep(2)
    done = manage(folder, "restore", backup)
    deadline = time.monotonic() + 30
    while not pages["Early"] and time.monotonic() < deadline:
        time.sleep(0.1)
    over.set()
    for thread in threads:
        thread.join(timeout=60)

    assert done.returncode == 0, done.stderr
    assert odd == []
    assert pages["Late"] > 0
    assert pages["Early"] > 0, "nobody signed in again"
    assert set(acknowledged) == set(WRITERS)
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        names = [name for (name,) in database.execute("SELECT display_name FROM accounts_user")]
        assert database.execute("PRAGMA integrity_check").fetchone() == ("ok",)
    assert [name for name in names if "Late" in name] == []

    kept = Path(done.stdout.split("is kept: ")[1].strip())
    with zipfile.ZipFile(kept) as archive:
        archive.extract("countfold.sqlite3", folder / "kept")
    with closing(sqlite3.connect(folder / "kept/countfold.sqlite3")) as database:
        for number, count in acknowledged.items():
            query = "SELECT display_name FROM accounts_user WHERE sign_in_name = ?"
            ((name,),) = database.execute(query, [f"person{number}"])
            assert int(name.rpartition("-")[2]) >= count
    assert "Traceback" not in (folder.parent / "log").read_text()
