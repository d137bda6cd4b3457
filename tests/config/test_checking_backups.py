"""The page of the backups, and the button that opens the newest one.

The backups are of a database beside the suite's own, so they are there whatever the suite runs on.
"""

import os
import shutil
from pathlib import Path

import pytest
from django.db import connection

from config import backups, views

ON_SQLITE = connection.vendor == "sqlite"


@pytest.fixture
def kept(founded, tmp_path, settings, monkeypatch) -> Path:
    """The newest backup of a school on SQLite; the secret key is that school's own."""
    settings.DATA_DIR = shutil.copytree(founded, tmp_path / "data")
    settings.SECRET_KEY = (settings.DATA_DIR / "secret_key").read_text()
    monkeypatch.setattr(backups, "on_this_database", lambda: True)
    (path,) = (settings.DATA_DIR / "backups").glob("*.zip")
    return path


def pressed(visit, person) -> str:
    browser = visit(person)
    assert browser.post("/school/backups/").status_code == 302
    return browser.get("/school/backups/").text


def test_the_newest_one_is_opened_and_what_stands_in_it_is_said(visit, administrator, kept):
    os.utime(kept, (1_800_000_000, 1_800_000_000))  # 15 January 2027, 08:00 UTC
    page = pressed(visit, administrator)
    assert "The backup of January 15, 2027, 2:00" in page
    assert "opened: 1 person, 0 counts, 0 lessons." in page
    assert [path.name for path in kept.parent.iterdir()] == [kept.name]


def test_a_damaged_one_is_said(visit, administrator, kept):
    content = bytearray(kept.read_bytes())
    content[len(content) // 2] ^= 0xFF
    kept.write_bytes(content)
    page = pressed(visit, administrator)
    assert "be put back." in page
    assert "Try an older one." in page
    assert "opened:" not in page


def test_where_there_is_none_it_is_said(visit, administrator, kept):
    kept.unlink()
    assert "There is no backup yet." in pressed(visit, administrator)


def test_a_full_disk_is_said(visit, administrator, kept, monkeypatch):
    monkeypatch.setattr("config.checking_backups.open_backup", full)
    assert "no room to open the newest backup" in pressed(visit, administrator)


def test_a_folder_that_can_not_be_used_is_said_on_every_page_under_school(visit, administrator, kept):
    shutil.rmtree(kept.parent)
    kept.parent.touch()
    for path in ("/", "/school/", "/school/people/", "/school/backups/"):
        page = visit(administrator).get(path)
        assert page.status_code == 200, path
        assert "the folder “backups” on the server can’t be used" in page.text, path
    assert "It must be a folder, and is a file" in pressed(visit, administrator)


def full(*_arguments: object, **_options: object) -> Path:
    raise OSError(28, "No space left on device")


def test_the_page_says_where_they_lie_and_how_one_is_put_back(visit, administrator, kept):
    page = visit(administrator).get("/school/backups/").text
    assert f">{kept.parent}</p>" in page
    assert f"run.py restore {kept}</p>" in page
    assert f">{kept.name}</td>" in page


def test_a_path_with_a_space_is_put_in_quotes():
    assert views.putting_back(Path("/data of ours/a.zip")).endswith(' run.py restore "/data of ours/a.zip"')
    assert views.putting_back(Path("/data/a.zip")).endswith(" run.py restore /data/a.zip")


def test_for_administrators_only(visit, owner, coach):
    for person in (owner, coach):
        assert visit(person).get("/school/backups/").status_code == 403
        assert visit(person).post("/school/backups/").status_code == 403


def test_on_postgresql_it_says_who_makes_them(visit, administrator):
    page = visit(administrator).get("/school/backups/").text
    assert ("made outside of this app" in page) == (not ON_SQLITE)
