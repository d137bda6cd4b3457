"""About how tall a sheet will be, told by what stands on it, so that the look that is tried first is most likely the one."""

import re
from dataclasses import dataclass

from routines.paper.styles import LOOKS

MARKUP = re.compile(r"<svg.*?</svg>|<[^>]*>", re.DOTALL)
PICTURE = re.compile(r'<svg[^>]* height="([\d.]+)')
GUESSED_WITH = 2  # the look that the numbers are for


@dataclass(frozen=True, slots=True)
class Guess:
    """In points: how tall a sheet is without words and picture, and by how much each point of the picture and each letter
    make it taller; `beside` where the picture stands beside words. growth: of what is no picture, from a look to the next
    roomier one.

    Where it is wrong a page is laid out once more than it might be: what fits is found all the same (`fitting.py`).
    """

    empty: float
    picture: float
    letter: float
    beside: float
    growth: float

    def first_look(self, sheet: str, room: float) -> int:
        """The roomiest look with which this sheet (HTML) is thought to fit a page with so many points of room."""
        picture = max(map(float, PICTURE.findall(sheet)), default=0.0)
        letters = len(" ".join(MARKUP.sub("", sheet).split()))
        height = self.empty + self.picture * picture + self.letter * letters
        if "desk-beside" in sheet:
            height += self.beside
        for look in range(len(LOOKS)):
            if picture + (height - picture) * self.growth ** (GUESSED_WITH - look) <= room:
                return look
        return len(LOOKS) - 1


# Fitted to the plans of the demo school, in two languages and on two papers.
PLAN_GUESS = Guess(empty=336, picture=0.6, letter=0.156, beside=-70, growth=1.14)
SUBSTITUTE_GUESS = Guess(empty=248, picture=0.7, letter=0.128, beside=-12, growth=1.11)
