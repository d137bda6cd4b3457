"""Asking the printing process for a page that somebody waits for, with a time limit."""

import json
import logging
import threading
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path

from django.conf import settings
from django.utils.translation import gettext as _

from routines.paper.fitting import Fit
from routines.paper.process import Failed, Process, TookTooLong

logger = logging.getLogger(__name__)

TIME_LIMIT = 60.0
MOST_IN_HAND = 3  # pages that people wait for, one being printed: the server's fourth thread stays free for others
LARGEST_DOCUMENT = 8_000_000  # characters of HTML


class PaperError(Exception):
    """The page could not be printed; `str()` is a sentence for the teacher."""


class PrintingProcess:
    """One process that prints, one thing at a time."""

    def __init__(self, *, largest: int = LARGEST_DOCUMENT, most_in_hand: int | None = None) -> None:
        fonts = Path(settings.BASE_DIR) / "static" / "fonts"
        self.process = Process("routines.paper.worker", str(fonts))
        self.largest = largest
        self.in_hand = None if most_in_hand is None else threading.BoundedSemaphore(most_in_hand)

    def pdf(
        self,
        html: str,
        css: str,
        *,
        looks: Sequence[str] = ("",),
        fit: Fit | None = None,
        time_limit: float = TIME_LIMIT,
    ) -> bytes:
        """Of several looks (CSS) the first that brings all on one page is taken; without a `fit`, the first of all.

        Units: seconds, from when it is this print's turn. Raises PaperError when it takes longer, cannot be printed, is too
        large, or when too many wait already.
        """
        if len(html) > self.largest:
            raise PaperError(_("This is too long to print in one go. Print fewer counts at a time."))
        if self.in_hand is None:
            return self._in_turn(_message(html, css, looks, fit), time_limit)
        if not self.in_hand.acquire(blocking=False):
            raise PaperError(_("Others are printing just now. Try again in a minute, or print from the browser."))
        try:
            return self._in_turn(_message(html, css, looks, fit), time_limit)
        finally:
            self.in_hand.release()

    def _in_turn(self, message: bytes, time_limit: float) -> bytes:
        try:
            return self.process.ask(message, time_limit=time_limit)[1]
        except TookTooLong as error:
            raise PaperError(_("This page took too long to print. Try again, or print from the browser.")) from error
        except Failed as error:
            logger.exception("The printing process stopped")
            raise PaperError(_("The PDF could not be made. Print from the browser instead.")) from error

    def stop(self) -> None:
        self.process.stop()


def _message(html: str, css: str, looks: Sequence[str], fit: Fit | None) -> bytes:
    texts = [text.encode() for text in (html, css, *looks)]
    html_length, css_length, *look_lengths = map(len, texts)
    head = {"html": html_length, "css": css_length, "looks": look_lengths, "fit": fit and asdict(fit)}
    return json.dumps(head).encode() + b"\n" + b"".join(texts)


printing = PrintingProcess(most_in_hand=MOST_IN_HAND)
