"""The list of what was erased, in a file beside the database, so that no restore can bring it back: hashes, no words.

Each entry says how many words, their keyed hash, in whose texts (None: everybody's) and in which columns they are taken
out, which events became stubs, and whether everything is done. Whoever has the data folder and the server's key could
try names one by one; the words themselves are nowhere.
"""

import json
import logging
import os
import tempfile
import uuid
from collections.abc import Callable, Iterable
from dataclasses import asdict, dataclass, field, replace
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from django.conf import settings
from django.db import transaction
from django.utils.translation import gettext as _

from accounts.models import School

from .matching import Sought, keyed

logger = logging.getLogger(__name__)
FORMAT = 1


class ListDamaged(Exception):
    """The list can't be read; `str()` says so to an administrator."""


@dataclass(frozen=True, slots=True)
class Erasure:
    length: int
    mark: str
    places: tuple[str, ...]
    whose: int | None
    by: int | None
    begun_at: str
    id: str = field(default_factory=lambda: str(uuid.uuid4()))
    events: tuple[str, ...] = ()
    plans: tuple[str, ...] = ()
    finished_at: str = ""
    taken_out: int = 0
    backups: int = 0
    not_rewritten: tuple[str, ...] = ()

    def sought(self) -> Sought:
        return Sought([(self.length, self.mark)])

    @property
    def began(self) -> datetime:
        return datetime.fromisoformat(self.begun_at)


def now_said() -> str:
    return datetime.now(UTC).isoformat(timespec="milliseconds")


def file() -> Path:
    return settings.DATA_DIR / "erasures.json"


def read() -> list[Erasure]:
    """Oldest first. Raises: ListDamaged."""
    try:
        written = json.loads(file().read_text(encoding="utf-8"))
        if written["format"] != FORMAT:
            raise ValueError("another format")
        return [_entry(one) for one in written["erasures"]]
    except FileNotFoundError:
        return []
    except (OSError, ValueError, TypeError, KeyError) as error:
        raise ListDamaged(
            _(
                "%(name)s, the list of words that were removed, can't be read (%(error)s). "
                "Put it back from a copy of the data folder; without it, a restore could bring those words back."
            )
            % {"name": file().name, "error": error}
        ) from error


def _entry(one: dict[str, Any]) -> Erasure:
    said: dict[str, Any] = {name: tuple(value) if isinstance(value, list) else value for name, value in one.items()}
    entry = Erasure(**said)
    if not isinstance(entry.length, int) or not isinstance(entry.mark, str):
        raise TypeError("an entry that is none")
    return entry


def change(changed: Callable[[list[Erasure]], list[Erasure]]) -> list[Erasure]:
    """Rewrite the list, one writer at a time: the turn is the school's row. Raises: ListDamaged."""
    with transaction.atomic():
        School.objects.select_for_update().first()
        entries = changed(read())
        _write(entries)
    return entries


def _write(entries: Iterable[Erasure]) -> None:
    """It appears whole or not at all, and is on the disk before anything is erased."""
    handle, beside = tempfile.mkstemp(dir=file().parent, prefix="erasures.")
    try:
        with os.fdopen(handle, "w", encoding="utf-8") as written:
            json.dump({"format": FORMAT, "erasures": [asdict(entry) for entry in entries]}, written, indent=1)
            written.flush()
            os.fsync(handle)
        Path(beside).replace(file())
    finally:
        Path(beside).unlink(missing_ok=True)


def add(entry: Erasure) -> Erasure:
    change(lambda entries: [*entries, entry])
    return entry


def update(ids: Iterable[str], changed: Callable[[Erasure], Erasure]) -> None:
    wanted = set(ids)
    change(lambda entries: [changed(entry) if entry.id in wanted else entry for entry in entries])


def remember(entry: Erasure, *, events: Iterable[str] = (), plans: Iterable[str] = ()) -> Erasure:
    """The entry with these too: events that became stubs, plans (as `plan_key` names them) as they were before."""
    return replace(
        entry,
        events=tuple(dict.fromkeys([*entry.events, *events])),
        plans=tuple(dict.fromkeys([*entry.plans, *plans])),
    )


def plan_key(version: int, mark: str) -> str:
    """Names a saved plan as it was before, without the plain hash of its words."""
    return keyed(f"plan {version} {mark}")


@dataclass(frozen=True, slots=True)
class Known:
    """What every lesson and every form asks: kept until the file changes."""

    stamp: tuple[int, int, int]
    events: frozenset[str]
    plans: frozenset[str]
    entries: tuple[Erasure, ...] = ()


_known: dict[Path, Known] = {}


def known() -> Known:
    """A damaged list stops no lesson."""
    path = file()
    try:
        state = path.stat()
    except OSError:
        return Known((0, 0, 0), frozenset(), frozenset())
    stamp = state.st_mtime_ns, state.st_size, state.st_ino
    held = _known.get(path)
    if held is None or held.stamp != stamp:
        try:
            entries = read()
        except ListDamaged as damaged:
            logger.error("%s", damaged)
            entries = []
        held = Known(
            stamp,
            frozenset(event for entry in entries for event in entry.events),
            frozenset(plan for entry in entries for plan in entry.plans),
            tuple(entries),
        )
        _known[path] = held
    return held
