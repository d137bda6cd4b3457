"""Making .venv, with real processes: killed at any moment, started twice at once, without room, without the right to write.

The clones here are small: run.py as it is, one package made on the spot, and a manage.py that only says it came up.
"""

import hashlib
import os
import shutil
import signal
import subprocess
import sys
import time
import zipfile
from collections.abc import Callable
from pathlib import Path

import pytest

from config import virtual_environment

ROOT = Path(__file__).resolve().parents[2]
FILES = ("run.py", "config/__init__.py", "config/one_at_a_time.py", "config/virtual_environment.py")
CAME_UP = "import larks, larks.last; print('came up with', larks.last.NAME)"
# Enough for pip to be busy with for a while, so that it can be killed at it.
MODULES = 400


@pytest.fixture(scope="session")
def wheel(tmp_path_factory) -> Path:
    path = tmp_path_factory.mktemp("wheels") / "larks-1.0-py3-none-any.whl"
    names = ["larks/__init__.py", *(f"larks/bird_{number}.py" for number in range(MODULES)), "larks/last.py"]
    with zipfile.ZipFile(path, "w") as archive:
        for name in names:
            archive.writestr(name, "NAME = 'every file'\n" * 30)
        about = "larks-1.0.dist-info"
        archive.writestr(f"{about}/METADATA", "Metadata-Version: 2.1\nName: larks\nVersion: 1.0\n")
        archive.writestr(f"{about}/WHEEL", "Wheel-Version: 1.0\nRoot-Is-Purelib: true\nTag: py3-none-any\n")
        archive.writestr(f"{about}/RECORD", "".join(f"{name},,\n" for name in names))
    return path


def lay_out(clone: Path, wheel: Path) -> Path:
    for name in FILES:
        (clone / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(ROOT / name, clone / name)
    (clone / "manage.py").write_text(CAME_UP)
    digest = hashlib.sha256(wheel.read_bytes()).hexdigest()
    (clone / "requirements.txt").write_text(f"larks==1.0 --hash=sha256:{digest}\n")
    return clone


@pytest.fixture
def start(wheel) -> Callable[..., subprocess.Popen]:
    """Starts `run.py backup` in a clone, without a network, in a group of processes of its own."""
    started = []

    def start_in(clone: Path) -> subprocess.Popen:
        environment = {
            **os.environ,
            "PIP_NO_INDEX": "1",
            "PIP_FIND_LINKS": str(wheel.parent),
            "PIP_CONFIG_FILE": os.devnull,
        }
        process = subprocess.Popen(
            [sys.executable, "run.py", "backup"],
            cwd=clone,
            env=environment,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            start_new_session=True,
        )
        started.append(process)
        return process

    yield start_in
    for process in started:
        if process.poll() is None:
            os.killpg(process.pid, signal.SIGKILL)
        process.communicate()


def wait_for(there: Callable[[], object]) -> None:
    for _attempt in range(6000):
        if there():
            return
        time.sleep(0.005)
    pytest.fail("It never came that far.")


def said(process: subprocess.Popen) -> str:
    output, _ = process.communicate(timeout=120)
    assert "Traceback" not in output
    return output


@pytest.mark.skipif(os.name != "posix", reason="groups of processes are killed as POSIX does it")
def test_killed_at_any_moment_it_comes_up_the_next_time(tmp_path, wheel, start):
    clone = lay_out(tmp_path / "clone", wheel)
    packages = clone / ".venv/lib" / f"python{sys.version_info.major}.{sys.version_info.minor}" / "site-packages"

    first = start(clone)  # killed with all its children while .venv is made
    wait_for((packages / "pip").exists)
    os.killpg(first.pid, signal.SIGKILL)
    first.wait()
    assert (clone / ".venv.unfinished").exists()

    second = start(clone)  # killed alone while pip installs: pip lives on
    wait_for((packages / "larks/bird_50.py").exists)
    second.kill()
    second.wait()

    third, fourth = start(clone), start(clone)  # two starts at once
    outputs = [said(third), said(fourth)]
    assert [output.splitlines()[-1] for output in outputs] == ["came up with every file"] * 2
    assert sum("Another start is making .venv. Waiting for it" in output for output in outputs) >= 1
    assert sum("Making .venv" in output for output in outputs) == 1
    assert not (clone / ".venv.unfinished").exists()

    # What pip gives up by itself leaves whole what was there.
    (clone / "requirements.txt").write_text(f"no-such-bird==1.0 --hash=sha256:{'0' * 64}\n")
    fifth = start(clone)
    assert "could not be installed; the lines above say why" in said(fifth)
    assert fifth.returncode == 1
    assert not (clone / ".venv.unfinished").exists()
    lay_out(clone, wheel)
    assert said(start(clone)).splitlines() == ["came up with every file"]


def test_a_full_disk_is_said(small_disk, wheel, start):
    disk = small_disk("4m")
    clone = lay_out(disk / "clone", wheel)
    process = start(clone)
    assert said(process).splitlines()[-1] == (
        f"The disk is full: .venv in {clone} needs about 300 MB. Make some room, then run this again."
    )
    assert process.returncode == 1
    assert (clone / ".venv.unfinished").exists()


def test_a_clone_that_can_not_be_written_to_is_said(small_disk, wheel, start):
    disk = small_disk("4m")
    clone = lay_out(disk / "clone", wheel)
    subprocess.run(["mount", "-o", "remount,ro", str(disk)], check=True)
    process = start(clone)
    assert said(process) == (
        f"{clone} can't be written to (Read-only file system), and Countfold makes .venv in it. "
        "Copy the folder to a place of your own, and run this there.\n"
    )
    assert process.returncode == 1


# What a start decides, without making anything


@pytest.fixture
def installed(monkeypatch, tmp_path) -> list[str]:
    """A finished .venv of nothing; hands out the names of what is installed into it."""
    names = []
    python = tmp_path / ".venv/bin/python"
    python.parent.mkdir(parents=True)
    python.touch()
    version = f"{sys.version_info.major}.{sys.version_info.minor}.0"
    (tmp_path / ".venv/pyvenv.cfg").write_text(f"home = {tmp_path}\nversion = {version}\n")
    (tmp_path / ".venv/made.stamp").touch()
    for name, value in {
        "HERE": tmp_path,
        "VENV": tmp_path / ".venv",
        "UNFINISHED": tmp_path / ".venv.unfinished",
        "LOCK": tmp_path / ".venv.lock",
        "PYTHON": python,
        "make": lambda lock: names.append("made"),
        "install": lambda name, lock: (names.append(name), virtual_environment.stamp(name).write_text(digest(name))),
    }.items():
        monkeypatch.setattr(virtual_environment, name, value)
    digest = virtual_environment.digest
    (tmp_path / "requirements.txt").write_text("one")
    return names


def prepare() -> None:
    virtual_environment.prepare(("requirements.txt",))


def test_requirements_are_installed_once_for_each_content(installed, tmp_path):
    prepare()
    prepare()
    assert installed == ["requirements.txt"]
    (tmp_path / "requirements.txt").write_text("two")
    prepare()
    assert installed == ["requirements.txt", "requirements.txt"]


@pytest.mark.parametrize(
    "spoil",
    [
        lambda folder: (folder / ".venv.unfinished").touch(),
        lambda folder: (folder / ".venv/bin/python").unlink(),
        lambda folder: (folder / ".venv/made.stamp").unlink(),
        lambda folder: (folder / ".venv/pyvenv.cfg").write_bytes(b"\xff\xfe"),
        lambda folder: (folder / ".venv/pyvenv.cfg").write_text(f"home = {folder}\nversion = 2.7.18\n"),
        lambda folder: (folder / ".venv/pyvenv.cfg").write_text(
            f"home = {folder}/gone\nversion = {sys.version_info.major}.{sys.version_info.minor}.0\n"
        ),
    ],
    ids=["cut off", "no Python", "never finished", "damaged", "another version", "its Python is gone"],
)
def test_what_is_not_whole_is_made_anew(installed, tmp_path, spoil):
    spoil(tmp_path)
    prepare()
    assert installed == ["made", "requirements.txt"]
