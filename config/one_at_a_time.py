"""A lock between processes that a killed one does not keep. Standard library only: run.py uses it before .venv is there.

The lock is on an open file, held by the system for as long as the process lives; the file itself stays and means nothing.
"""

import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO

if sys.platform == "win32":
    import msvcrt

    def take(file: IO[str]) -> bool:
        file.seek(0)
        try:
            msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True

    take_surely = take

    def give_back(file: IO[str]) -> None:
        file.seek(0)
        msvcrt.locking(file.fileno(), msvcrt.LK_UNLCK, 1)

else:
    import fcntl

    def take_surely(file: IO[str]) -> bool:
        fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        return True

    def take(file: IO[str]) -> bool:
        try:
            return take_surely(file)
        except BlockingIOError:
            return False
        except OSError:
            return True  # some network folders know no locks; to go on without is better than never to start

    def give_back(file: IO[str]) -> None:
        try:
            fcntl.flock(file, fcntl.LOCK_UN)
        except OSError:
            return


@contextmanager
def one_at_a_time(path: Path, *, when_waiting: Callable[[], None]) -> Iterator[int]:
    """Hold the lock on `path`; where another process has it, call `when_waiting` once and wait.

    Gives the lock's file descriptor: on POSIX a child that inherits it holds the lock too, for as long as it lives.
    """
    with path.open("a", encoding="ascii") as file:
        if not take(file):
            when_waiting()
            while not take(file):
                time.sleep(0.1)
        try:
            yield file.fileno()
        finally:
            give_back(file)


def nobody_holds(path: Path) -> bool:
    """Whether a process made this lock and is gone. On a file system that knows no locks nobody can tell."""
    try:
        with path.open("r+", encoding="ascii") as file:
            return take_surely(file)  # closed, it is given back
    except OSError:
        return False
