"""Making booklets beside everything else: a thread asks the booklets' own printing process, files say how far it is.

The files lie in the school's data folder, so that every server process can answer for a booklet; they are kept for an
hour. One booklet for each person: starting another drops the one before.
"""

import json
import logging
import os
import threading
import time
import uuid
from dataclasses import asdict, dataclass, replace
from pathlib import Path

from django.conf import settings

from routines.paper.booklet import Booklet
from routines.paper.press import BOOKLET_TIME_LIMIT, PaperError

logger = logging.getLogger(__name__)

KEPT = 3600.0  # seconds
STOPPED_AFTER = BOOKLET_TIME_LIMIT + 60


@dataclass(frozen=True, slots=True)
class BookletJob:
    """How far a booklet is. `owner` is the person's primary key; `error` a sentence for her; times in seconds since 1970."""

    key: str
    owner: int
    title: str
    counts: int
    expected: int
    pages: int = 0
    done: bool = False
    error: str = ""
    at: float = 0.0

    @property
    def finished(self) -> bool:
        return self.done or bool(self.error)

    @property
    def pdf_path(self) -> Path:
        return _folder() / f"{self.key}.pdf"


def start_booklet(booklet: Booklet, *, owner: int) -> BookletJob:
    """Begin to make it; the answer says under which key to ask how far it is."""
    _drop(lambda job: job.owner == owner)
    job = BookletJob(str(uuid.uuid4()), owner, booklet.title, len(booklet.subjects), booklet.pages_expected())
    _write(job)
    threading.Thread(target=_make, args=(job, booklet), daemon=True, name=f"booklet {job.key}").start()
    return job


def find_booklet(key: uuid.UUID, *, owner: int) -> BookletJob | None:
    """The booklet of this person, or None. One that nobody makes any more says so."""
    _drop(lambda job: False)
    job = _read(_folder() / f"{key}.json")
    if job is None or job.owner != owner:
        return None
    if not job.finished and time.time() - job.at > STOPPED_AFTER:
        return replace(job, error="Making the booklet was interrupted. Start it again.")
    return job


def drop_all_booklets() -> None:
    """Remove every kept booklet, finished or not: after words were erased, none may hold them."""
    _drop(lambda job: True)


def _make(job: BookletJob, booklet: Booklet) -> None:
    def on_page(page: int) -> None:
        nonlocal job
        if page > job.pages:  # the pages are laid out again once their numbers are known
            job = replace(job, pages=page)
            _write(job)

    try:
        pdf = booklet.document().booklet_pdf(on_page)
        if not _is_wanted(job):
            return
        _replace(job.pdf_path, pdf)
        _write(replace(job, done=True))
    except PaperError as error:
        _write(replace(job, error=str(error)))
    except Exception:  # the thread has nobody else to tell
        logger.exception("A booklet could not be made")
        _write(replace(job, error="The booklet could not be made. Try it with fewer counts."))


def _folder() -> Path:
    return Path(settings.DATA_DIR) / "booklets"


def _is_wanted(job: BookletJob) -> bool:
    return (_folder() / f"{job.key}.json").exists()


def _write(job: BookletJob) -> None:
    """Nothing is written for a booklet that was dropped meanwhile."""
    if job.pages == 0 and not job.finished:
        _folder().mkdir(parents=True, exist_ok=True)
    elif not _is_wanted(job):
        return
    _replace(_folder() / f"{job.key}.json", json.dumps(asdict(replace(job, at=time.time()))).encode())


def _replace(path: Path, content: bytes) -> None:
    """Whole or not at all: a reader never finds half a file."""
    beside = path.with_suffix(path.suffix + ".part")
    beside.write_bytes(content)
    os.replace(beside, path)


def _read(path: Path) -> BookletJob | None:
    try:
        return BookletJob(**json.loads(path.read_text(encoding="utf-8")))
    except (OSError, ValueError, TypeError):
        return None


def _drop(unwanted) -> None:
    """Remove the files of unwanted booklets and of those that have been kept long enough."""
    for path in _folder().glob("*.json"):
        job = _read(path)
        if job is None or unwanted(job) or time.time() - job.at > KEPT:
            path.unlink(missing_ok=True)
            path.with_suffix(".pdf").unlink(missing_ok=True)
