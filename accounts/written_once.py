"""Pieces of pages that are written once and remembered in the process.

    written_once("bank/_card.html", card=face, says=Later(mark, read))     the piece as HTML

A template is given these values and nothing else: no request, no reader, no token. So the same values give the same text to
the letter, whoever looks, and what stands in a remembered piece can be nobody's but who was given the same values. There is
nothing to drop: other values are another piece. Tests write each piece that is remembered anew, and compare (tests/conftest.py).

Values must be hashable and must not change. What is large or slow to come by is a `Later`. A value may not be a row of the
database: two of them are equal while their columns differ. Values that anybody may make up, such as a query string, would only
push out others: such a piece is written by `write`.
"""

from collections import OrderedDict
from collections.abc import Callable, Hashable
from datetime import tzinfo
from hashlib import sha256
from threading import Lock
from typing import Any, Generic, NamedTuple, TypeVar

from django.db.models import Model
from django.template.loader import render_to_string
from django.utils import timezone
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import get_language

Said = TypeVar("Said")

MOST_BYTES = 8 * 1024 * 1024
KEY_BYTES = 1024  # about what a key takes


class Later(Generic[Said]):
    """What is read only when somebody asks for it: in a template by its name, in Python by a call.

    mark: two with the same mark say the same. The mark is remembered with a piece, what was read is not.
    """

    __slots__ = ("_read", "_said", "mark")
    __hash__ = None  # type: ignore[assignment]  # hidden inside another value it would be remembered with all it has read

    def __init__(self, mark: Hashable, read: Callable[[], Said]) -> None:
        self.mark, self._read = mark, read

    def __call__(self) -> Said:
        if not hasattr(self, "_said"):
            self._said = self._read()
        return self._said


Values = TypeVar("Values", bound=tuple[Any, ...])


def long(values: Values) -> Later[Values]:
    """Many values, of which only a mark is remembered. Each is told from others by how it is written in Python."""
    return Later(sha256(repr(values).encode()).digest(), lambda: values)


class Remembered:
    """Texts in UTF-8, which takes half the room, by what they follow from: those used last, up to so many bytes."""

    def __init__(self, most_bytes: int) -> None:
        self.most_bytes, self.size = most_bytes, 0
        self._texts: OrderedDict[Hashable, bytes] = OrderedDict()
        self._lock = Lock()

    def get(self, key: Hashable) -> bytes | None:
        with self._lock:
            text = self._texts.get(key)
            if text is not None:
                self._texts.move_to_end(key)
            return text

    def put(self, key: Hashable, text: bytes) -> None:
        """One that takes up more than a tenth of the room is not kept."""
        if len(text) > self.most_bytes // 10:
            return
        with self._lock:
            self.size += len(text) + KEY_BYTES - self._dropped(key)
            self._texts[key] = text
            while self.size > self.most_bytes:
                self.size -= self._dropped(next(iter(self._texts)))

    def clear(self) -> None:
        with self._lock:
            self._texts.clear()
            self.size = 0

    def _dropped(self, key: Hashable) -> int:
        text = self._texts.pop(key, None)
        return len(text) + KEY_BYTES if text is not None else 0


remembered = Remembered(MOST_BYTES)
# Drawings of what somebody types: most are never asked for again, and must not push out what everybody reads.
typed_drawings = Remembered(MOST_BYTES // 8)


class OnPage(NamedTuple):
    """What a piece follows from beside its values: where it stands."""

    language: str | None
    zone: tzinfo


def this_page() -> OnPage:
    """For who writes many pieces: asking takes as long as finding one that is remembered."""
    return OnPage(get_language(), timezone.get_current_timezone())


def written_once(template: str, on: OnPage | None = None, /, **values: Any) -> SafeString:
    """The template with these values, written unless it was. Raises TypeError for a value that cannot be known again."""
    known = ((name, _known_by(value)) for name, value in values.items())
    return made_once((template, *known), lambda: write(template, **values), on=on)


def made_once(
    mark: Hashable, make: Callable[[], SafeString], *, memory: Remembered = remembered, on: OnPage | None = None
) -> SafeString:
    """What follows from the mark, the language and the time zone of the page alone, made unless it was."""
    key = (on or this_page(), mark)
    kept = memory.get(key)
    if kept is not None:
        return as_kept(kept, make)
    text = make()
    memory.put(key, text.encode())
    return text


def as_kept(text: bytes, make: Callable[[], SafeString]) -> SafeString:
    """A piece as it was made. Tests look here whether it would be made so again."""
    return mark_safe(text.decode())  # noqa: S308


def write(template: str, **values: Any) -> SafeString:
    """The template with these values, written and not remembered."""
    return render_to_string(template, values)


def _known_by(value: Any) -> Hashable:
    if isinstance(value, Model):
        raise TypeError(f"A row of {type(value).__name__} is not known by what it holds.")
    return value.mark if isinstance(value, Later) else value
