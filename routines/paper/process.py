"""A module of ours in a process of its own: it is told something, and answers in lines of JSON while it works at it."""

import atexit
import json
import os
import subprocess
import sys
import threading
from collections.abc import Callable
from typing import Any

from django.conf import settings

STEP_BACK = 10  # of niceness on POSIX; Windows has a class for it
Answer = dict[str, Any]


class GivenUp(Exception):
    """It was ended from outside before it had done."""


class TookTooLong(GivenUp):
    """It was ended because its time was over."""


class Failed(Exception):
    """It ended by itself, or could not do it; `str()` says why, for the log."""


class Process:
    """Started when first needed and again after it failed. It does one thing at a time; `after_others` lets pages go first.

    Each answer is a line of JSON; the last one holds "file", the length of the bytes that follow it, and "error", "" where
    all is well.
    """

    def __init__(self, module: str, *words: str, after_others: bool = False) -> None:
        self.command = [sys.executable, "-m", module, *words]
        self.after_others = after_others
        self.turn = threading.Lock()
        self.process: subprocess.Popen[bytes] | None = None
        self.given_up = False
        atexit.register(self.stop)

    def ask(
        self, message: bytes, *, time_limit: float, on_answer: Callable[[Answer], None] | None = None
    ) -> tuple[Answer, bytes]:
        """Give its last answer with the file; `on_answer` hears those before it.

        Units: seconds, from when it is this one's turn. Raises TookTooLong, GivenUp, Failed, and what `on_answer` raises;
        each of these ends the process, since what it would still answer is nobody's any more.
        """
        with self.turn:
            process = self._running()
            self.given_up = False
            late = threading.Event()
            timer = threading.Timer(time_limit, self._too_late, (process, late))
            timer.start()
            try:
                return self._ask(process, message, on_answer)
            except (OSError, ValueError) as error:
                self.stop()
                if late.is_set():
                    raise TookTooLong from error
                if self.given_up:
                    raise GivenUp from error
                raise Failed(str(error)) from error
            except BaseException:
                self.stop()
                raise
            finally:
                timer.cancel()

    def give_up(self) -> None:
        """End what it is at, from another thread; the next one has a process again."""
        process = self.process
        if process is not None:
            self.given_up = True
            process.kill()

    def stop(self) -> None:
        if self.process is not None:
            self.process.kill()
            self.process.wait()
            for pipe in (self.process.stdin, self.process.stdout):
                if pipe is not None:
                    pipe.close()
            self.process = None

    def _running(self) -> subprocess.Popen[bytes]:
        if self.process is None or self.process.poll() is not None:
            self.process = subprocess.Popen(  # noqa: S603 - our own module, no outside words in the command
                self.command,
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                cwd=settings.BASE_DIR,
                creationflags=getattr(subprocess, "BELOW_NORMAL_PRIORITY_CLASS", 0) if self.after_others else 0,
            )
            if self.after_others and sys.platform != "win32":
                niceness = min(os.getpriority(os.PRIO_PROCESS, 0) + STEP_BACK, 19)
                os.setpriority(os.PRIO_PROCESS, self.process.pid, niceness)
        return self.process

    @staticmethod
    def _too_late(process: subprocess.Popen[bytes], late: threading.Event) -> None:
        late.set()
        process.kill()

    @staticmethod
    def _ask(
        process: subprocess.Popen[bytes], message: bytes, on_answer: Callable[[Answer], None] | None
    ) -> tuple[Answer, bytes]:
        if process.stdin is None or process.stdout is None:
            raise ValueError("The process has no pipes.")
        process.stdin.write(message)
        process.stdin.flush()
        while "file" not in (answer := json.loads(process.stdout.readline() or b'{"file": 0, "error": "It ended."}')):
            if on_answer is not None:
                on_answer(answer)
        file = process.stdout.read(answer["file"])
        if answer["error"]:
            raise ValueError(answer["error"])
        return answer, file
