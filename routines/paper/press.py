"""Asking the printing process for a PDF, with a time limit."""

import atexit
import json
import logging
import subprocess
import sys
import threading
from pathlib import Path

from django.conf import settings

logger = logging.getLogger(__name__)

TIME_LIMIT = 60.0


class PaperError(Exception):
    """The page could not be printed; `str()` is a sentence for the teacher."""


class PrintingProcess:
    """One process that prints, started when first needed and again after it failed. Pages are printed one at a time."""

    def __init__(self) -> None:
        self.turn = threading.Lock()
        self.process: subprocess.Popen[bytes] | None = None
        atexit.register(self.stop)

    def pdf(self, html: str, css: str, *, time_limit: float = TIME_LIMIT) -> bytes:
        """Units: seconds. Raises PaperError when the page takes longer, or cannot be printed."""
        with self.turn:
            process = self._running()
            late = threading.Event()
            timer = threading.Timer(time_limit, self._give_up, (process, late))
            timer.start()
            try:
                return self._ask(process, html.encode(), css.encode())
            except (OSError, ValueError) as error:
                self.stop()
                if late.is_set():
                    raise PaperError(
                        "This page took too long to print. Try again, or print from the browser."
                    ) from error
                logger.exception("The printing process stopped")
                raise PaperError("The PDF could not be made. Print from the browser instead.") from error
            finally:
                timer.cancel()

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
            fonts = Path(settings.BASE_DIR) / "static" / "fonts"
            self.process = subprocess.Popen(  # noqa: S603 - our own module, no outside words in the command
                [sys.executable, "-m", "routines.paper.worker", str(fonts)],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                cwd=settings.BASE_DIR,
            )
        return self.process

    @staticmethod
    def _give_up(process: subprocess.Popen[bytes], late: threading.Event) -> None:
        late.set()
        process.kill()

    @staticmethod
    def _ask(process: subprocess.Popen[bytes], html: bytes, css: bytes) -> bytes:
        if process.stdin is None or process.stdout is None:
            raise ValueError("The printing process has no pipes.")
        process.stdin.write(json.dumps({"html": len(html), "css": len(css)}).encode() + b"\n" + html + css)
        process.stdin.flush()
        answer = json.loads(process.stdout.readline() or b"null")
        if answer is None:
            raise ValueError("The printing process ended.")
        pdf = process.stdout.read(answer["pdf"])
        if answer["error"]:
            raise ValueError(answer["error"])
        return pdf


printing = PrintingProcess()
