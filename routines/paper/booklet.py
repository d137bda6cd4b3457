"""A booklet of several counts: a table of contents with page numbers, then the chosen prints of each, as one document.

One document, not merged pages: its tags, its outline and its page numbers are then right without another library.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum

from django.template.loader import render_to_string
from django.utils.safestring import SafeString, mark_safe

from routines.paper.document import Document
from routines.paper.print import Wishes
from routines.paper.prints import PRINTS
from routines.paper.styles import logo_colours
from routines.paper.subject import Subject

AT_MOST = 40


class Part(StrEnum):
    """What is written at the moment."""

    COUNTS = "counts"
    PAGES = "pages"


def pages_expected(counts: int, contents: Iterable[str]) -> int:
    """How many pages a booklet usually has, for the progress shown."""
    return 1 + counts * sum(PRINTS[name].pages for name in contents)


@dataclass(frozen=True, slots=True)
class Booklet:
    """What goes into it. `subjects` are one to forty, `contents` names of prints."""

    title: str
    subjects: Sequence[Subject]
    contents: Sequence[str] = ("plan",)

    def document(self, told: Callable[[int], None] = lambda count: None) -> Document:
        """`told` hears of each count whose sheets are written."""
        first = self.subjects[0]
        chapters = []
        for number, sheets in enumerate(self._sheets(), 1):
            chapters.append(_chapter(number, sheets))
            told(number)
        return Document(
            title=self.title,
            author=first.school.name,
            language=first.say.main,
            paper=first.school.paper,
            sheets=[self._cover(), *chapters],
        )

    def _sheets(self) -> Iterable[list[SafeString]]:
        """The sheets of each count, made one after another."""
        for subject in self.subjects:
            yield [sheet for name in self.contents for sheet in PRINTS[name].sheets(subject, Wishes())]

    def _cover(self) -> SafeString:
        first = self.subjects[0]
        context = {
            "booklet": self,
            "say": first.say,
            "school": first.school,
            "main": first.say.main,
            "logo": logo_colours(),
            "kind": "sheet-cover",
            "foot_left": first.school.name,
            "foot_right": f"{first.phrase('foot')} · {first.phrase('booklet_of', counts=len(self.subjects))}",
        }
        return mark_safe(render_to_string("paper/sheets/cover.html", context))  # noqa: S308 - our own template


def _chapter(number: int, sheets: list[SafeString]) -> SafeString:
    return mark_safe(render_to_string("paper/sheets/chapter.html", {"number": number, "sheets": sheets}))  # noqa: S308
