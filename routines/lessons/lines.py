"""Lists of lessons: what stands in the line of each, and the lines as they are drawn."""

from collections.abc import Iterable
from datetime import date
from typing import NamedTuple
from uuid import UUID

from django.utils.safestring import SafeString

from accounts.written_once import long, written_once
from routines.models import Lesson, Reflection

COLUMNS = (
    "key", "title", "class_group__name", "taught_on", "practice", "reflection__outcome", "sharing", "teacher__display_name",
)  # fmt: skip
"""What a line is read from, of lessons with their titles."""


class Line(NamedTuple):
    """All that a list says of a lesson. outcome: None where nothing was written of it, "" where no outcome was chosen."""

    key: UUID
    title: str
    class_name: str
    taught_on: date
    practice: bool
    outcome: str | None
    sharing: str
    teacher: str

    @property
    def outcome_in_words(self) -> str:
        return str(Reflection.Outcome(self.outcome).label) if self.outcome else ""

    @property
    def sharing_in_words(self) -> str:
        return str(Lesson.Sharing(self.sharing).label)


def own_lines(lines: Iterable[Line]) -> SafeString:
    return written_once("lessons/_own_lines.html", lines=long(tuple(lines)))


def shared_lines(lines: Iterable[Line]) -> SafeString:
    return written_once("lessons/_shared_lines.html", lines=long(tuple(lines)))
