"""A full disk: told from other failures, and met by a school's server on a disk of a few megabytes."""

import errno
import re
import shutil
import sqlite3
from contextlib import closing
from html import unescape

import psycopg
import pytest
from django.db import DatabaseError, OperationalError
from django.http import HttpResponse
from django.test import RequestFactory

from config import full_disk
from config.full_disk import is_disk_full
from config.views import server_error
from tests.config.commands import manage
from tests.config.serving import Browser, served

# Which failure is one


def led_to_by(cause: Exception) -> Exception:
    error = OperationalError(str(cause))
    error.__cause__ = cause
    return error


def sqlite_full() -> sqlite3.Error:
    """SQLite's own error, from a database that may not grow."""
    with closing(sqlite3.connect(":memory:")) as database:
        database.execute("PRAGMA max_page_count = 3")
        with pytest.raises(sqlite3.OperationalError) as caught:
            database.executescript("CREATE TABLE t (x); INSERT INTO t VALUES (zeroblob(100000))")
    return caught.value


def test_the_errors_of_the_system_and_of_both_databases_are_known():
    assert is_disk_full(OSError(errno.ENOSPC, "No space left on device"))
    assert is_disk_full(OSError(errno.EDQUOT, "Disk quota exceeded"))
    assert is_disk_full(led_to_by(sqlite_full()))
    assert is_disk_full(led_to_by(psycopg.errors.DiskFull("could not extend file")))


def test_other_errors_are_not_taken_for_it():
    for error in (OSError(errno.EACCES, "no"), ValueError("full"), led_to_by(psycopg.errors.UniqueViolation("twice"))):
        assert not is_disk_full(error)
    with closing(sqlite3.connect(":memory:")) as database, pytest.raises(sqlite3.OperationalError) as caught:
        database.execute("SELECT * FROM none")
    assert not is_disk_full(led_to_by(caught.value))
    assert not is_disk_full(None)


def test_an_error_that_leads_to_itself_ends():
    error = ValueError()
    error.__cause__ = DatabaseError()
    error.__cause__.__cause__ = error
    assert not is_disk_full(error)


# What is answered


@pytest.fixture
def meets_a_full_disk(monkeypatch, owner, visit):
    """The owner's browser, whose saves of her own details meet a full disk."""

    def full(*args: object, **options: object) -> None:
        raise led_to_by(sqlite_full())

    monkeypatch.setattr("accounts.forms.PersonDetails.save", full)
    return visit(owner)


def test_a_save_is_answered_with_what_was_typed(meets_a_full_disk):
    response = meets_a_full_disk.post("/me/", {"display_name": 'Ana "Lu" & co', "email": ""})
    assert response.status_code == 507
    page = response.content.decode()
    assert "disk is full" in page
    assert 'name="display_name" value="Ana &quot;Lu&quot; &amp; co"' in page
    assert 'action="/me/"' in page


def test_scripts_get_one_sentence(meets_a_full_disk):
    response = meets_a_full_disk.post("/me/", {"display_name": "Ana"}, headers={"HX-Request": "true"})
    assert (response.status_code, response.content.decode()) == (507, full_disk.SENTENCE)
    assert response["Content-Type"].startswith("text/plain")


def test_a_passphrase_is_not_written_into_the_page(meets_a_full_disk, monkeypatch):
    response = meets_a_full_disk.post("/me/", {"display_name": "Ana", "passphrase": "otter violin"})
    page = response.content.decode()
    assert response.status_code == 507
    assert "otter violin" not in page
    assert "Go back one page" in page


def test_what_fails_outside_of_the_views_is_known_too(db):
    request = RequestFactory().post("/me/", content_type="application/json", data="{}")
    try:
        raise OSError(errno.ENOSPC, "No space left on device")
    except OSError:
        response = server_error(request)
    assert isinstance(response, HttpResponse)
    assert response.status_code == 507
    try:
        raise ValueError
    except ValueError:
        assert server_error(request).status_code == 500


# With real processes

ADMINISTRATOR = """
from django.test import Client
from accounts.models import User
admin = User.objects.create(sign_in_name="ota", display_name="Ota", role=User.Role.ADMINISTRATOR)
client = Client()
client.force_login(admin, backend="accounts.backends.NameOrEmailBackend")
print(client.cookies["countfold_session"].value)
"""


def test_a_school_on_a_full_disk_loses_nothing_and_opens_again(founded, small_disk, fill):
    disk = small_disk("24m")
    folder = shutil.copytree(founded, disk / "data")
    session = manage(folder, "shell", "--verbosity", "0", "-c", ADMINISTRATOR).stdout.strip()
    with served(folder) as (port, said):
        assert "NO BACKUP" not in "".join(said)
        browser = Browser(port, session)
        assert browser.ask("POST", "/me/", display_name="Ota One", email="")[0] == 302
        fill(disk)
        typed = "Ota Two " + "é" * 30
        for _attempt in range(3):  # the log of SQLite may still have a page or two to write on
            status, _, page = browser.ask("POST", "/me/", display_name=typed, email="")
            if status == 507:
                break
        assert status == 507, page[:500]
        assert unescape(re.search(r'name="display_name" value="([^"]*)"', page)[1]) == typed
        status, _, sentence = browser.ask("POST", "/me/", {"HX-Request": "true"}, display_name=typed, email="")
        assert (status, sentence) == (507, full_disk.SENTENCE)
        status, _, page = browser.ask("GET", "/school/people/")  # reading goes on
        assert status == 200
        assert "Only 0 MB are free" in page

    (disk / "filler").unlink()
    fill(disk, but=500_000)  # too little for a backup
    with served(folder) as (port, said):
        assert "NO BACKUP: The disk is too full for a backup: 0 MB are free. The school opens all the same." in "".join(
            said
        )
        browser = Browser(port, session)
        status, _, page = browser.ask("GET", "/school/people/")
        assert "could not be written, because the server’s disk is too full" in " ".join(page.split())
        (disk / "filler").unlink()
        assert browser.ask("POST", "/me/", display_name=typed, email="")[0] == 302
        assert typed in browser.ask("GET", "/me/")[2]

    assert manage(folder, "backup").returncode == 0
    with served(folder) as (port, _said):
        page = Browser(port, session).ask("GET", "/school/people/")[2]
        assert "could not be written" not in page
    assert "Traceback" not in (disk / "log").read_text()
