"""After an upgrade everything is made beside the server: by itself, once, and for no longer than the server lives."""

import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from time import monotonic, sleep

import pytest

from config.one_at_a_time import give_back, take
from tests.config.commands import ROOT, environment, manage
from tests.config.serving import served

ADD_COUNTS = """
from accounts.models import User
from grade_bands.models import Grade, GradeBand
from routines.demo.plans import PLANS
from routines.plans.actions import start_routine
band = GradeBand.objects.create(name="all", order=1)
for demo in PLANS[:3]:
    Grade.objects.get_or_create(name=demo.plan.grade, defaults={"level": 2, "order": Grade.objects.count(), "band": band})
    start_routine(plan=demo.plan, by=User.objects.get())
"""
AS_AFTER_AN_UPGRADE = """
from routines.models import Routine, WorkedOut
Routine.objects.update(engine_version="older")
WorkedOut.objects.update(made_by="older")
"""
LOOK = """
from routines.models import Routine, WorkedOut
from routines.counting import ENGINE_VERSION
from routines.worked_out.made_by import made_by
print(WorkedOut.objects.filter(made_by=made_by()).count(), Routine.objects.filter(engine_version=ENGINE_VERSION).count())
"""


def shell(folder: Path, words: str) -> str:
    done = manage(folder, "shell", "--verbosity", "0", "-c", words)
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


def wait_for(what: Callable[[], bool]) -> None:
    until = monotonic() + 300  # it yields to everything else that this machine does
    while not what():
        assert monotonic() < until
        sleep(0.2)


@pytest.fixture
def upgraded(founded, tmp_path) -> Path:
    """A school with three counts, of which an older program worked out what is kept."""
    folder = tmp_path / "data"
    shutil.copytree(founded, folder)
    shell(folder, ADD_COUNTS)
    assert shell(folder, LOOK) == "6 3"
    shell(folder, AS_AFTER_AN_UPGRADE)
    assert shell(folder, LOOK) == "0 0"
    return folder


def test_a_server_makes_what_the_program_before_it_said_and_the_next_start_finds_it_done(upgraded):
    stamp = upgraded / "filled.stamp"
    with served(upgraded):
        wait_for(stamp.exists)
    assert shell(upgraded, LOOK) == "6 3"
    shell(upgraded, "from routines.models import WorkedOut; WorkedOut.objects.all().delete()")
    before = stamp.stat().st_mtime_ns
    with served(upgraded):  # the same program: pages make what somebody deleted
        sleep(3)
    assert shell(upgraded, LOOK) == "0 3"
    assert stamp.stat().st_mtime_ns == before
    stamp.write_text("another program")
    with served(upgraded):
        wait_for(lambda: stamp.read_text() != "another program")
    assert shell(upgraded, LOOK) == "6 3"


def test_a_restored_backup_is_gone_through_again(founded, tmp_path):
    folder = shutil.copytree(founded, tmp_path / "data")
    (written,) = (folder / "backups").glob("*.zip")
    stamp = folder / "filled.stamp"
    stamp.write_text(shell(folder, "from routines.worked_out.made_by import made_by; print(made_by())"))
    look = "from config.filling import filled; print(filled())"
    assert shell(folder, look) == "True"
    damaged = folder / "damaged.zip"
    damaged.write_bytes(b"no backup")
    assert manage(folder, "restore", damaged).returncode == 1
    assert shell(folder, look) == "True"
    done = manage(folder, "restore", written)
    assert done.returncode == 0, done.stderr
    assert shell(folder, look) == "False"


def test_it_ends_when_the_server_does_and_waits_for_no_turn(upgraded):
    with (upgraded / "filling.lock").open("a") as lock:
        assert take(lock)  # so that it can't get far
        process = subprocess.Popen(
            [sys.executable, "-m", "config.filling"], cwd=ROOT, env=environment(upgraded), stdin=subprocess.PIPE
        )
        sleep(3)
        assert process.poll() is None
        process.stdin.close()
        assert process.wait(timeout=20) == 0
        give_back(lock)
    assert not (upgraded / "filled.stamp").exists()
