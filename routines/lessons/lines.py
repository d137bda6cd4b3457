"""Lists of lessons: what stands in the line of each, and the lines as they are drawn."""

from collections.abc import Iterable
from datetime import date
from functools import lru_cache
from typing import NamedTuple
from uuid import UUID

from django.template.loader import render_to_string
from django.utils.safestring import SafeString
from django.utils.translation import get_language

from routines.models import Lesson, Reflection

COLUMNS = (
    "key", "title", "class_group__name", "taught_on", "practice", "reflection__outcome", "sharing", "teacher__display_name",
)  # fmt: skip
"""What a line is read from, of lessons with their titles."""

LISTS_REMEMBERED = 100  # of about 10 KB each


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
    return drawn_lines("lessons/_own_lines.html", tuple(lines), get_language())


def shared_lines(lines: Iterable[Line]) -> SafeString:
    return drawn_lines("lessons/_shared_lines.html", tuple(lines), get_language())


@lru_cache(maxsize=LISTS_REMEMBERED)
def drawn_lines(template: str, lines: tuple[Line, ...], language: str | None) -> SafeString:
    """Lists of which the lines say the same are the same to the letter, whoever reads them."""
    return render_to_string(template, {"lines": lines})
