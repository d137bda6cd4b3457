"""A school in a data folder with its backup, and a disk of a few megabytes, to be full on."""

import os
import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests.absent import absent
from tests.config.commands import manage

MAKE_SCHOOL = """
from accounts.models import School, User
School.objects.create(pk=1, name="Larkfield School")
User.objects.create(sign_in_name="ames", display_name="Ada Ames")
"""


@pytest.fixture(scope="session")
def founded(tmp_path_factory) -> Path:
    """For reading only; a test that changes something copies it."""
    folder = tmp_path_factory.mktemp("founded")
    for words in (("migrate", "--verbosity", "0"), ("shell", "--verbosity", "0", "-c", MAKE_SCHOOL), ("backup",)):
        done = manage(folder, *words)
        assert done.returncode == 0, done.stderr
    return folder


@pytest.fixture
def small_disk(tmp_path) -> Iterator[Callable[[str], Path]]:
    """Mounts a file system of its own: `small_disk("6m")`; `small_disk("6m,ro")` can't be written to."""
    mounted = []

    def mount(size_and_options: str) -> Path:
        place = tmp_path / f"disk-{len(mounted)}"
        place.mkdir()
        command = ["mount", "-t", "tmpfs", "-o", f"size={size_and_options}", "tmpfs", str(place)]
        try:
            done = subprocess.run(command, capture_output=True, text=True, check=False)
        except FileNotFoundError:
            absent("A small disk (mount)")
        if done.returncode:
            absent(f"A small disk (a tmpfs mounted as root: {done.stderr.strip()})")
        mounted.append(place)
        return place

    yield mount
    for place in mounted:
        subprocess.run(["umount", "--lazy", str(place)], check=False)


@pytest.fixture
def fill() -> Callable[..., None]:
    """Fills the disk up, to the last byte or but for so many."""

    def fill_up(disk: Path, *, but: int = 0) -> None:
        filler = disk / "filler"
        with filler.open("ab", buffering=0) as file:
            try:
                while True:
                    file.write(b"-" * 4096)
            except OSError:
                pass
        if but:
            os.truncate(filler, max(0, filler.stat().st_size - but))

    return fill_up
