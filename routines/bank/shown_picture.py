"""The picture of a count that a page shows: which one, which dozen of its terms, and what else there is to choose."""

from collections.abc import Mapping
from dataclasses import dataclass

from django.utils.translation import gettext_lazy as _

from accounts.typed_numbers import typed_whole
from routines.counting import Count
from routines.drawing.pictures import DOZEN, pictures_for

HOW_TO_READ = {
    "line": _("Each arc is one jump. The smaller numbers lie between: which of them does the count pass by?"),
    "clock": _("The shaded turn is how far the minute hand moved since the time before. Watch the hour hand too."),
    "ruler": _("Each arc is one jump along the edge; every count has its own mark."),
    "scale": _("The shaded turn is how far the pointer moved for one jump."),
    "jugs": _("The arrow beside a jug is one jump: from the level before to this one."),
    "coins": _("Each amount in the fewest everyday notes and coins. Where do some of them turn into a larger one?"),
    "bars": _("Grey parts were there before; the parts under the bracket are the last jump. Where is a whole full?"),
}


@dataclass(frozen=True, slots=True)
class ShownPicture:
    """choices: name and label of every picture that fits. before, after: the first terms of the neighbouring dozens."""

    kind: str
    choices: tuple[tuple[str, str], ...]
    first: int
    last: int
    terms: int

    @property
    def has_more(self) -> bool:
        return self.terms > DOZEN

    @property
    def is_first(self) -> bool:
        return self.first == 1

    @property
    def is_last(self) -> bool:
        return self.last == self.terms

    @property
    def before(self) -> int:
        """Before the first dozen stands the last one, so that there is always a way on."""
        return (self.terms - 1) // DOZEN * DOZEN + 1 if self.is_first else max(self.first - DOZEN, 1)

    @property
    def after(self) -> int:
        return 1 if self.is_last else self.last + 1

    @property
    def label(self) -> str:
        return dict(self.choices)[self.kind]

    @property
    def how_to_read(self) -> str:
        return str(HOW_TO_READ[self.kind])


def shown_picture(count: Count, asked: Mapping[str, str]) -> ShownPicture:
    """What a query string asks for (`picture`, `first`); the best picture and the first dozen where it asks for nothing known."""
    choices = pictures_for(count)
    names = [name for name, _ in choices]
    kind = asked.get("picture", "")
    first = typed_whole(asked.get("first", ""), 1, count.terms) or 1
    last = min(first + DOZEN - 1, count.terms)
    return ShownPicture(kind if kind in names else names[0], choices, first, last, count.terms)
