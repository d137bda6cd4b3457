"""Words that were removed are in no byte of the data folder, and no restore brings them back.

Each test works on a data folder of its own, through the commands a school uses, on SQLite whatever the suite runs on.
"""

import os
import shutil
import sqlite3
import subprocess
import sys
import zipfile
from contextlib import closing
from pathlib import Path

import pytest

from config.backups import remove_left_workplaces, workplace
from tests.config.commands import manage

NAME = "Zebulina"

PLANT = """
from accounts.models import School, User
from django.utils import timezone
from grade_bands.models import *
from routines.models import RoutineNote
from grade_bands.models import Grade, GradeBand
School.objects.create(pk=1, name="Larkfield School")
ames = User.objects.create(sign_in_name="ames", display_name="Ada Ames", role="administrator")
band = GradeBand.objects.create(name="2-3", order=2)
Grade.objects.create(name="2", order=2, level=2, band=band, areas=["whole"])
from routines.plans.actions import start_routine
from routines.models.plan_document import CountSection, Fold, Plan
count = CountSection("whole", "4", "7", 20)
routine = start_routine(plan=Plan(title="Zebulina’s sevens", grade="2", area="whole", count=count, fold=Fold(5)), by=ames)
for number in range(80):
    RoutineNote.objects.create(routine=routine, by=ames, text=f"Zebulina said so {number} " + "and more " * 40)
"""


def delete_some(folder: Path) -> None:
    """Their words stay in pages that are free now: many builds of SQLite wipe such pages, others don't."""
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        database.execute("PRAGMA secure_delete = OFF")
        database.execute("DELETE FROM routines_routinenote WHERE id > 20")
        database.commit()


ERASE = ("erase_words", "--by", "ames")


@pytest.fixture(scope="module")
def planted(tmp_path_factory) -> Path:
    """A school with a name in its texts, in deleted pages, in two backups; for reading only."""
    folder = tmp_path_factory.mktemp("planted")
    for words in (("migrate", "--verbosity", "0"), ("shell", "--verbosity", "0", "-c", PLANT)):
        done = manage(folder, *words)
        assert done.returncode == 0, done.stderr
    delete_some(folder)
    for _ in range(2):
        assert manage(folder, "backup").returncode == 0
    return folder


@pytest.fixture
def folder(planted, tmp_path) -> Path:
    return shutil.copytree(planted, tmp_path / "data")


def backups(folder: Path) -> list[Path]:
    return sorted((folder / "backups").glob("*.zip"))


def ask(folder: Path, query: str) -> list[tuple]:
    with closing(sqlite3.connect(folder / "countfold.sqlite3")) as database:
        rows = database.execute(query).fetchall()
        database.commit()
    return rows


def files_with(folder: Path, name: str = NAME) -> list[str]:
    """Every file of the folder, and every part of a packed one, whose bytes hold the name in any capitals."""
    found = []
    for path in sorted(folder.rglob("*")):
        if not path.is_file():
            continue
        parts = [path.read_bytes()]
        if zipfile.is_zipfile(path):
            with zipfile.ZipFile(path) as archive:
                parts += [archive.read(member) for member in archive.namelist()]
        if any(name.casefold().encode() in part.lower() for part in parts):
            found.append(path.name)
    return found


def erase(folder: Path, words: str = NAME):
    return manage(folder, *ERASE, typed=f"{words}\nyes\n")


def test_the_words_are_in_no_byte_of_any_file(folder):
    assert set(files_with(folder)) >= {"countfold.sqlite3", *(path.name for path in backups(folder))}
    done = erase(folder)
    assert done.returncode == 0, done.stderr
    assert files_with(folder) == []
    assert ask(folder, "SELECT title FROM routines_routine") == [("[words removed]’s sevens",)]
    assert len(ask(folder, "SELECT text FROM routines_routinenote WHERE text LIKE '[words removed] said so%'")) == 20


HOLD_OPEN = """
import sqlite3, sys
database = sqlite3.connect(sys.argv[1])
database.execute("UPDATE routines_routinenote SET text = text || ' Zebulina'")
database.commit()
print("open", flush=True)
sys.stdin.read()
"""


def test_while_the_database_is_open_the_log_beside_it_holds_none_either(folder):
    # A process of its own: whoever opens and closes the file in the same one takes SQLite's locks from it.
    command = [sys.executable, "-c", HOLD_OPEN, folder / "countfold.sqlite3"]
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True) as server:
        assert server.stdout.readline() == "open\n"
        assert "countfold.sqlite3-wal" in files_with(folder)
        assert erase(folder).returncode == 0
        assert (folder / "countfold.sqlite3-wal").exists()
        assert files_with(folder) == []
        server.stdin.close()


def test_backups_stay_sound_as_old_as_they_were_and_can_be_put_back(folder):
    before = [(path.name, path.stat().st_mtime_ns) for path in backups(folder)]
    erase(folder)
    assert [(path.name, path.stat().st_mtime_ns) for path in backups(folder)] == before
    done = manage(folder, "restore", backups(folder)[0])
    assert done.returncode == 0, done.stderr
    assert ask(folder, "SELECT title FROM routines_routine") == [("[words removed]’s sevens",)]
    assert files_with(folder) == []


KILLED_WHILE_WRITING = """
import os, signal
from config import backups
backups.pack = lambda *words, **more: os.kill(os.getpid(), signal.SIGKILL)
backups.write_backup()
"""


def test_what_a_killed_backup_left_is_gone_too(folder):
    assert manage(folder, "shell", "--verbosity", "0", "-c", KILLED_WHILE_WRITING).returncode == -9
    (left,) = (folder / "backups").glob("tmp*")
    assert (left / "countfold.sqlite3").exists()
    assert erase(folder).returncode == 0
    assert files_with(folder) == []


KILLED_WHILE_REMOVING = f"""
import os, signal
from accounts.models import User
from config import erased_backups
from routines.erasing import doing
from routines.erasing.places import CALLED
from routines.words_erased.matching import mark_of

def die(*words, **more):
    os.kill(os.getpid(), signal.SIGKILL)

PLACE = die
doing.begin(*mark_of("{NAME}"), by=User.objects.get(), places=list(CALLED), whose=None)
doing.finish()
"""


@pytest.mark.parametrize("place", ["doing.rewrite_pages", "erased_backups.pack"])
def test_killed_after_the_texts_it_is_gone_on_with_to_the_last_byte(folder, place):
    """Before the database's file is written anew, and with a backup unpacked beside it."""
    code = KILLED_WHILE_REMOVING.replace("PLACE", place)
    assert manage(folder, "shell", "--verbosity", "0", "-c", code).returncode == -9
    assert files_with(folder) != []
    done = manage(folder, "erase_words", "--finish")
    assert done.returncode == 0, done.stderr
    assert files_with(folder) == []


def test_what_is_being_written_is_left_alone(folder, settings):
    settings.DATA_DIR = folder
    with workplace() as place:
        remove_left_workplaces()
        assert place.exists()
    assert not place.exists()


def test_a_backup_from_before_that_lay_elsewhere_is_cleaned_when_it_is_put_back(folder, tmp_path):
    elsewhere = Path(shutil.copy(backups(folder)[0], tmp_path))
    erase(folder)
    done = manage(folder, "restore", elsewhere)
    assert done.returncode == 0, done.stderr
    assert ask(folder, "SELECT title FROM routines_routine") == [("[words removed]’s sevens",)]
    assert files_with(folder) == []


def test_a_damaged_list_stops_a_restore_with_a_sentence(folder):
    erase(folder)
    (folder / "erasures.json").write_text("{")
    done = manage(folder, "restore", backups(folder)[0])
    assert done.returncode == 1
    assert "erasures.json" in done.stderr
    assert "Traceback" not in done.stderr


def test_a_backup_that_cannot_be_opened_is_named_and_left(folder):
    broken = folder / "backups" / "countfold-2020-01-01-000000-000000.zip"
    broken.write_bytes(b"no zip")
    done = erase(folder)
    assert done.returncode == 0, done.stderr
    assert broken.name in done.stdout
    assert broken.read_bytes() == b"no zip"


def test_nothing_is_changed_without_a_yes(folder):
    done = manage(folder, *ERASE, typed=f"{NAME}\nno\n")
    assert done.returncode == 1
    assert ask(folder, "SELECT title FROM routines_routine") == [("Zebulina’s sevens",)]
    assert not (folder / "erasures.json").exists()


def test_only_an_administrator_is_named(folder):
    ask(folder, "UPDATE accounts_user SET role = 'teacher'")
    done = erase(folder)
    assert done.returncode == 1
    assert done.stderr == "Name an administrator: --by SIGN-IN-NAME.\n"


def test_the_list_is_for_its_owner_alone(folder):
    erase(folder)
    assert os.stat(folder / "erasures.json").st_mode & 0o077 == 0


def test_after_a_database_was_put_back_by_other_means_the_list_is_gone_through_again(folder, planted):
    erase(folder)
    shutil.copy(planted / "countfold.sqlite3", folder)
    done = manage(folder, "erase_words", "--finish")
    assert done.returncode == 0, done.stderr
    assert files_with(folder) == []
