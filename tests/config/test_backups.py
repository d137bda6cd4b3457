"""Backups: written while the school works, refused when they are not sound, put back in one step.

Each test works on a data folder of its own, through the commands a school uses, on SQLite whatever the suite runs on.
"""

import os
import shutil
import sqlite3
import threading
import time
import zipfile
from contextlib import closing
from pathlib import Path

import pytest

from config import backups
from tests.config.commands import manage


@pytest.fixture
def folder(founded, tmp_path) -> Path:
    return shutil.copytree(founded, tmp_path / "data")


@pytest.fixture
def written(folder) -> Path:
    (path,) = (folder / "backups").glob("*.zip")
    return path


def ask(folder: Path, query: str) -> list[tuple]:
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        rows = database.execute(query).fetchall()
        database.commit()
    return rows


def refusal(folder: Path, path: Path) -> str:
    """What restoring says; and that it changed nothing."""
    ask(folder, "UPDATE accounts_school SET name = 'Now'")
    done = manage(folder, "restore", path)
    assert done.returncode == 1
    assert ask(folder, "SELECT name FROM accounts_school") == [("Now",)]
    assert_is_one_sentence(done.stderr)
    return done.stderr


def assert_is_one_sentence(said: str) -> None:
    assert said.count("\n") == 1
    assert "Error" not in said


def test_restoring_brings_back_what_was_there(folder, written):
    ask(folder, "UPDATE accounts_school SET name = 'Spoilt'")
    ask(folder, "DELETE FROM accounts_user")
    done = manage(folder, "restore", written)
    assert done.returncode == 0, done.stderr
    assert ask(folder, "SELECT name FROM accounts_school") == [("Larkfield School",)]
    assert ask(folder, "SELECT sign_in_name FROM accounts_user") == [("ames",)]


def test_what_was_there_before_a_restore_is_kept_as_a_backup(folder, written):
    ask(folder, "UPDATE accounts_school SET name = 'Newer'")
    manage(folder, "restore", written)
    (newer,) = set((folder / "backups").glob("*.zip")) - {written}
    assert manage(folder, "restore", newer).returncode == 0
    assert ask(folder, "SELECT name FROM accounts_school") == [("Newer",)]


def test_a_restore_signs_everyone_out_and_changes_the_epoch(folder, written):
    before = ask(folder, "SELECT epoch FROM accounts_school")
    ask(folder, "INSERT INTO django_session VALUES ('k', 'd', '2099-01-01')")
    manage(folder, "restore", written)
    assert ask(folder, "SELECT COUNT(*) FROM django_session") == [(0,)]
    assert ask(folder, "SELECT epoch FROM accounts_school") != before


def test_a_restore_works_into_an_empty_data_folder(folder, written, tmp_path):
    empty = tmp_path / "empty"
    empty.mkdir()
    shutil.copy(folder / "secret_key", empty)
    assert manage(empty, "restore", written).returncode == 0
    assert ask(empty, "SELECT name FROM accounts_school") == [("Larkfield School",)]


def test_a_truncated_file_is_refused(folder, written):
    written.write_bytes(written.read_bytes()[:-2000])
    assert "damaged" in refusal(folder, written)


def test_another_servers_backup_is_refused_unless_asked_for(folder, written):
    (folder / "secret_key").write_text("another key " * 6)
    assert "made by another server" in refusal(folder, written)
    assert manage(folder, "restore", written, "--from-another-server").returncode == 0
    assert ask(folder, "SELECT name FROM accounts_school") == [("Larkfield School",)]


@pytest.mark.parametrize(
    "change",
    [
        "ALTER TABLE accounts_user RENAME COLUMN display_name TO called",
        "DROP TABLE axes_accessattempt",
        "UPDATE accounts_user SET display_name = CAST(x'eda080' AS TEXT)",
        "UPDATE accounts_user SET date_joined = '2026-13-45 10:00:00'",
        "DELETE FROM django_migrations WHERE app = 'accounts' AND name LIKE '0001%'",
    ],
)
def test_another_servers_backup_that_no_page_could_read_is_refused(folder, change):
    ask(folder, change)
    assert manage(folder, "backup").returncode == 0
    changed = max((folder / "backups").glob("*.zip"))
    here = shutil.copytree(folder, folder.with_name("here"))
    (here / "secret_key").write_text("another key " * 6)
    done = manage(here, "restore", changed, "--from-another-server")
    assert done.returncode == 1
    assert "can't be brought up to date" in done.stderr
    assert done.stderr.startswith(changed.name)


def test_fourteen_are_kept(folder):
    for number in range(20):
        (folder / "backups" / f"countfold-2020-01-{number + 1:02}-000000-000000.zip").touch()
    manage(folder, "backup")
    kept = sorted(path.name for path in (folder / "backups").glob("*.zip"))
    assert len(kept) == 14
    assert kept[0] == "countfold-2020-01-09-000000-000000.zip"


def named(*times: str) -> list[Path]:
    """Newest first."""
    return [Path(f"countfold-{time}-000000.zip") for time in times]


def test_many_starts_in_one_day_leave_backups_of_the_days_before():
    """A server that ends and is started again all night writes a backup at each start."""
    days = [f"2026-03-{day:02}-070000" for day in range(14, 0, -1)]
    kept = named(*days)
    for start in range(60):
        kept = named(f"2026-03-15-03{start:02}00") + kept
        for path in backups.surplus(kept):
            kept.remove(path)
        assert len(kept) == 14
    assert [path.name[10:20] for path in kept] == ["2026-03-15"] * 7 + [day[:10] for day in days[:7]]
    assert kept[0] == named("2026-03-15-035900")[0]


def test_of_many_in_the_same_two_days_fourteen_are_kept():
    kept = named(
        *(f"2026-03-15-0300{start:02}" for start in range(19, -1, -1)), "2026-03-14-080000", "2026-03-14-070000"
    )
    gone = backups.surplus(kept)
    left = [path for path in kept if path not in gone]
    assert left == [*kept[:13], *named("2026-03-14-080000")]


def test_after_the_clock_was_put_back_a_new_one_is_kept_and_the_next_to_be_put_back(folder, written):
    ahead = [folder / "backups" / f"countfold-2090-01-{day:02}-000000-000000.zip" for day in range(1, 15)]
    for path in ahead:
        shutil.copy(written, path)
        os.utime(path, (3_800_000_000, 3_800_000_000))
    written.unlink()
    done = manage(folder, "backup")
    (new,) = set((folder / "backups").glob("*.zip")) - set(ahead)
    assert done.stdout == f"Written: {new}\n"
    assert not ahead[0].exists()
    ask(folder, "UPDATE accounts_school SET name = 'Now'")
    assert manage(folder, "restore", ahead[-1]).returncode == 0
    (kept,) = set((folder / "backups").glob("*.zip")) - {*ahead, new}
    assert manage(folder, "restore", kept).returncode == 0
    assert ask(folder, "SELECT name FROM accounts_school") == [("Now",)]


def test_where_the_newest_bears_a_time_to_come_one_is_due(folder, written, settings):
    settings.DATA_DIR = folder
    assert not backups.newest_is_old()
    os.utime(written, (3_800_000_000, 3_800_000_000))
    assert backups.newest_is_old()


def spoil(folder: Path) -> None:
    """An index of the database says other than its table: what a power cut with a lying disk leaves."""
    ask(folder, "CREATE TABLE aside (n INTEGER, t TEXT)")
    ask(folder, "INSERT INTO aside VALUES (1, 'one')")
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        database.execute("CREATE INDEX aside_n ON aside (n)")
        database.execute("PRAGMA writable_schema = ON")
        database.execute("UPDATE sqlite_master SET sql = 'CREATE INDEX aside_n ON aside (t)' WHERE name = 'aside_n'")
        database.commit()


def test_of_a_damaged_database_no_backup_is_written_that_could_not_be_put_back(folder, written):
    spoil(folder)
    done = manage(folder, "backup")
    assert done.returncode == 1
    assert_is_one_sentence(done.stderr)
    assert "the database is damaged. Put the newest backup back" in done.stderr
    assert sorted((folder / "backups").glob("countfold-*")) == [written]
    done = manage(folder, "restore", written)
    assert done.returncode == 0, done.stderr
    assert "What was there was damaged" in done.stdout
    assert manage(folder, "backup").returncode == 0


def test_a_file_in_the_place_of_the_backups_is_said(folder, written, tmp_path):
    elsewhere = Path(shutil.move(written, tmp_path / "größer als früher.zip"))
    (folder / "backups").rmdir()
    (folder / "backups").touch()
    for words in (("backup",), ("restore", elsewhere)):
        done = manage(folder, *words)
        assert done.returncode == 1
        assert_is_one_sentence(done.stderr)
        assert f"{folder / 'backups'}: It must be a folder, and is a file." in done.stderr
    (folder / "backups").unlink()
    assert manage(folder, "restore", elsewhere).returncode == 0  # its name may be any


FULL_AT_THE_LIST = """
import errno
from pathlib import Path
from config import backups
from config.opening_backups import BackupRefused

def full(*_words, **_options):
    raise OSError(errno.ENOSPC, "No space left on device")

backups.remember = full
try:
    backups.restore(Path({path!r}))
except BackupRefused as refused:
    print(refused)
"""


def test_a_restore_that_cannot_write_down_what_it_took_out_changes_nothing(folder, written):
    ask(folder, "UPDATE accounts_school SET name = 'Now'")
    done = manage(folder, "shell", "--verbosity", "0", "-c", FULL_AT_THE_LIST.format(path=str(written)))
    assert done.stdout == "The disk is full. Nothing was changed; make some room, then restore again.\n"
    assert ask(folder, "SELECT name FROM accounts_school") == [("Now",)]


def test_a_backup_is_readable_by_its_owner_only(written):
    if os.name == "posix":  # elsewhere the rights of the data folder hold
        assert written.stat().st_mode & 0o077 == 0


def test_a_damaged_database_is_set_aside_and_the_backup_put_in_its_place(folder, written):
    (folder / "countfold.sqlite3").write_bytes(b"no database " * 1000)
    done = manage(folder, "restore", written)
    assert done.returncode == 0, done.stderr
    assert "What was there was damaged" in done.stdout
    assert ask(folder, "SELECT name FROM accounts_school") == [("Larkfield School",)]
    (aside,) = (folder / "backups").glob("damaged-*")
    assert (aside / "countfold.sqlite3").read_bytes().startswith(b"no database")


def test_the_backup_that_is_put_back_is_kept_even_when_it_is_the_oldest(folder, written):
    oldest = written.rename(written.with_name("countfold-2019-01-01-000000-000000.zip"))
    for number in range(20):
        (folder / "backups" / f"countfold-2020-01-{number + 1:02}-000000-000000.zip").touch()
    assert manage(folder, "restore", oldest).returncode == 0
    assert oldest.exists()
    assert len(list((folder / "backups").glob("*.zip"))) == 15


def test_a_folder_or_no_file_at_all_is_refused_in_a_sentence(folder):
    assert "can't be read" in refusal(folder, folder)
    assert "can't be read" in refusal(folder, folder / "none.zip")


def test_a_backup_with_a_migration_missing_is_brought_up_to_date_before_anyone_sees_it(folder, tmp_path):
    """What an older Countfold wrote: here, one whose last migration of the people's app was not made yet."""
    assert manage(folder, "migrate", "--verbosity", "0", "sessions", "zero").returncode == 0
    assert manage(folder, "backup").returncode == 0
    older = max((folder / "backups").glob("*.zip"))
    assert manage(folder, "migrate", "--verbosity", "0").returncode == 0
    done = manage(folder, "restore", older)
    assert done.returncode == 0, done.stderr
    assert ask(folder, "SELECT COUNT(*) FROM django_session") == [(0,)]


def test_a_disk_too_full_to_keep_what_is_there_changes_nothing(founded, small_disk, fill):
    disk = small_disk("8m")
    folder = shutil.copytree(founded, disk / "data")
    (written,) = (folder / "backups").glob("*.zip")
    ask(folder, "UPDATE accounts_school SET name = 'Now'")
    fill(disk, but=900_000)
    done = manage(folder, "restore", written)
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    assert "full" in done.stderr or "Make some room" in done.stderr
    assert ask(folder, "SELECT name FROM accounts_school") == [("Now",)]
    (disk / "filler").unlink()
    assert manage(folder, "restore", written).returncode == 0


def test_a_backup_while_four_write_holds_every_save_from_before_it_and_no_half_of_one(folder):
    """Each writer changes two rows in one transaction; a backup that had one without the other would not be sound."""
    ask(folder, "CREATE TABLE ours (writer INTEGER PRIMARY KEY, one INTEGER, other INTEGER)")
    for writer in range(4):
        ask(folder, f"INSERT INTO ours VALUES ({writer}, 0, 0)")
    over = threading.Event()
    saved = dict.fromkeys(range(4), 0)

    def write(writer: int) -> None:
        with closing(sqlite3.connect(folder / "countfold.sqlite3", timeout=20, isolation_level=None)) as database:
            while not over.is_set():
                database.execute("BEGIN IMMEDIATE")
                database.execute("UPDATE ours SET one = one + 1 WHERE writer = ?", [writer])
                database.execute("UPDATE ours SET other = other + 1 WHERE writer = ?", [writer])
                database.execute("COMMIT")
                saved[writer] += 1
                time.sleep(0.002)

    threads = [threading.Thread(target=write, args=[writer]) for writer in saved]
    for thread in threads:
        thread.start()
    try:
        while min(saved.values()) < 20:
            time.sleep(0.01)
        before = dict(saved)
        done = manage(folder, "backup")
        after = dict(saved)
    finally:
        over.set()
        for thread in threads:
            thread.join()
    assert done.returncode == 0, done.stderr
    assert all(after[writer] > before[writer] for writer in saved), "they wrote all the while"
    with zipfile.ZipFile(done.stdout.removeprefix("Written: ").strip()) as archive:
        archive.extract("countfold.sqlite3", folder / "copy")
    with closing(sqlite3.connect(folder / "copy/countfold.sqlite3")) as database:
        assert database.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        for writer, one, other in database.execute("SELECT * FROM ours"):
            assert one == other
            assert before[writer] <= one <= after[writer] + 1
