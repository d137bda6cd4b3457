"""Asking a printing process for a PDF, with a time limit."""

import atexit
import json
import logging
import subprocess
import sys
import threading
from collections.abc import Callable, Sequence
from pathlib import Path

from django.conf import settings
from django.utils.translation import gettext as _

logger = logging.getLogger(__name__)

TIME_LIMIT = 60.0
BOOKLET_TIME_LIMIT = 600.0
MOST_IN_HAND = 3  # pages that people wait for, one being printed: the server's fourth thread stays free for others
LARGEST_DOCUMENT, LARGEST_BOOKLET = 8_000_000, 80_000_000  # bytes of HTML


class PaperError(Exception):
    """The page could not be printed; `str()` is a sentence for the teacher."""


class PrintingProcess:
    """One process that prints, started when first needed and again after it failed. It prints one thing at a time."""

    def __init__(self, *words: str, largest: int = LARGEST_DOCUMENT, most_in_hand: int | None = None) -> None:
        self.words = words
        self.largest = largest
        self.in_hand = None if most_in_hand is None else threading.BoundedSemaphore(most_in_hand)
        self.turn = threading.Lock()
        self.process: subprocess.Popen[bytes] | None = None
        self.given_up = False
        atexit.register(self.stop)

    def pdf(
        self,
        html: str,
        css: str,
        *,
        looks: Sequence[str] = (),
        time_limit: float = TIME_LIMIT,
        on_page: Callable[[int], None] | None = None,
    ) -> bytes:
        """Of several looks (CSS) the first that brings all on one page is taken. `on_page` hears of each page laid out.

        Units: seconds, from when it is this print's turn. Raises PaperError when it takes longer, cannot be printed, is too
        large, or when too many wait already.
        """
        if len(html) > self.largest:
            raise PaperError(_("This is too long to print in one go. Print fewer counts at a time."))
        if self.in_hand is None:
            return self._in_turn(html, css, looks, time_limit, on_page)
        if not self.in_hand.acquire(blocking=False):
            raise PaperError(_("Others are printing just now. Try again in a minute, or print from the browser."))
        try:
            return self._in_turn(html, css, looks, time_limit, on_page)
        finally:
            self.in_hand.release()

    def _in_turn(
        self,
        html: str,
        css: str,
        looks: Sequence[str],
        time_limit: float,
        on_page: Callable[[int], None] | None,
    ) -> bytes:
        with self.turn:
            process = self._running()
            self.given_up = False
            late = threading.Event()
            timer = threading.Timer(time_limit, self._too_late, (process, late))
            timer.start()
            try:
                return self._ask(process, html, css, looks, on_page)
            except (OSError, ValueError) as error:
                self.stop()
                if late.is_set():
                    raise PaperError(
                        _("This page took too long to print. Try again, or print from the browser.")
                    ) from error
                if self.given_up:
                    raise PaperError(_("This print was stopped.")) from error
                logger.exception("The printing process stopped")
                raise PaperError(_("The PDF could not be made. Print from the browser instead.")) from error
            except BaseException:  # `on_page` ended it: what this process would still answer is nobody's any more
                self.stop()
                raise
            finally:
                timer.cancel()

    def give_up(self) -> None:
        """End what is being printed, from another thread; the next print has a process again."""
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
            fonts = Path(settings.BASE_DIR) / "static" / "fonts"
            self.process = subprocess.Popen(  # noqa: S603 - our own module, no outside words in the command
                [sys.executable, "-m", "routines.paper.worker", str(fonts), *self.words],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                cwd=settings.BASE_DIR,
            )
        return self.process

    @staticmethod
    def _too_late(process: subprocess.Popen[bytes], late: threading.Event) -> None:
        late.set()
        process.kill()

    @staticmethod
    def _ask(
        process: subprocess.Popen[bytes],
        html: str,
        css: str,
        looks: Sequence[str],
        on_page: Callable[[int], None] | None,
    ) -> bytes:
        if process.stdin is None or process.stdout is None:
            raise ValueError("The printing process has no pipes.")
        texts = [text.encode() for text in (html, css, *looks)]
        lengths = [len(text) for text in texts]
        message = {"html": lengths[0], "css": lengths[1], "looks": lengths[2:]}
        process.stdin.write(json.dumps(message).encode() + b"\n" + b"".join(texts))
        process.stdin.flush()
        while "pdf" not in (answer := json.loads(process.stdout.readline() or b'{"pdf": 0, "error": "It ended."}')):
            if on_page is not None:
                on_page(answer["page"])
        pdf = process.stdout.read(answer["pdf"])
        if answer["error"]:
            raise ValueError(answer["error"])
        return pdf


printing = PrintingProcess(most_in_hand=MOST_IN_HAND)
# A process of their own, and one that steps back for others: a booklet keeps neither a page nor a lesson waiting.
booklet_printing = PrintingProcess("--after-others", largest=LARGEST_BOOKLET)
