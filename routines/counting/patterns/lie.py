"""How the landmarks of one multiple lie on the page, and the first term that contradicts it (EXACT 9).

Source: proof of how long - the break is found by walking on. Where the landmarks come every k-th count and k divides the
line length, they stay in the same cells of every line, and a turn of one line decides; where it does not, a landmark
leaves its line across the fill within two lines. A diagonal ends at the edge of the page.
"""

from __future__ import annotations

from itertools import pairwise

from ..claims import LIES, LieName, LineAlong
from ..grid import Fill, Grid
from .lines import axis

Terms = tuple[int, ...]

FILLED: dict[LieName, LineAlong] = {"rows": "row", "columns": "column"}
"""The lies in which landmarks fill whole lines."""


class Lie:
    """How the landmarks lie on one grid: a name, and the lines it names on the page."""

    def __init__(self, grid: Grid, name: LieName, lines: Terms | None, rhythm: tuple[int, int] | None) -> None:
        self.grid, self.name, self.rhythm = grid, name, rhythm
        self.stated = lines
        self.lines: Terms = lines or ()

    @classmethod
    def seen_in(cls, grid: Grid, every: int, first: int) -> Lie:
        """The lie of two or more landmarks in view."""
        terms = tuple(range(first, grid.terms + 1, every))
        for name in LIES:
            lie = cls(grid, name, None, (every, first))
            if name == "scattered" or lie.fits(terms):
                return lie
        raise AssertionError("landmarks are scattered where nothing else fits")

    def fits(self, terms: Terms) -> bool:
        """Whether the landmarks in view lie so; fills in the lines where none are stated."""
        alone = self.grid.rows == 1 or self.grid.columns == 1
        if self.name == "scattered":
            others = (name for name in LIES if name != "scattered")
            lies = (Lie(self.grid, name, None, self.rhythm) for name in others)
            return not self.stated and (alone or not any(lie.fits(terms) for lie in lies))
        if alone:
            return False
        if self.name in ("row", "column"):
            return self._stay_in_one(terms, self.name)
        if self.name in FILLED:
            return self._fill_lines(terms, FILLED[self.name])
        return not self.stated and len(terms) >= 3 and all(map(self._on_diagonal, terms, terms[1:]))

    def _stay_in_one(self, terms: Terms, along: LineAlong) -> bool:
        if not terms:
            return True
        number = self._number(terms[0], along)
        if any(self._number(n, along) != number for n in terms):
            return False
        self.lines = (number,)
        return self.stated is None or self.stated == self.lines

    def _fill_lines(self, terms: Terms, along: LineAlong) -> bool:
        if self.rhythm is None or axis(self.grid, along)[0] % self.rhythm[0]:
            return False  # the next cell of such a line is no landmark
        numbers = tuple(sorted({self._number(n, along) for n in terms}))
        if len(numbers) < 2 or (self.stated is not None and numbers != self.stated):
            return False
        named = set(numbers)
        lines = [line for line in self.grid.lines(along) if self._number(line[0], along) in named]
        if any(len(line) < 2 for line in lines) or sum(map(len, lines)) != len(terms):
            return False
        self.lines = numbers
        return True

    def contradicted_by(self, terms: Terms) -> int | None:
        """The first landmark that does not lie as said; None where no single one is to blame."""
        if self.grid.rows == 1 or self.grid.columns == 1:
            return None
        if self.name in ("row", "column"):
            said = self.stated or tuple(self._number(n, self.name) for n in terms[:1])
            return next((n for n in terms if self._number(n, self.name) not in said), None)
        if self.name in ("down-right", "down-left"):
            return next((m for n, m in pairwise(terms) if not self._on_diagonal(n, m)), None)
        return None

    def breaks_at(self) -> int | None:
        """The first term beyond the view that contradicts the lie; None if none ever does."""
        if self.name == "scattered" or self.rhythm is None:
            return None
        every, first = self.rhythm
        terms, length = self.grid.terms, self.grid.line_length
        last = terms - (terms - first) % every if terms >= first else None
        following = first if last is None else last + every
        if self.name in ("down-right", "down-left"):
            n = last
            while n is not None and self._on_diagonal(n, n + every):
                n += every
            return None if n is None else n + every
        if self.name in ("row", "column"):
            lines = self.lines or (self._number(following, self.name),)
            landmarks = range(following, following + (length + 1) * every, every)
            return next((n for n in landmarks if self._number(n, self.name) not in lines), None)
        along = FILLED[self.name]
        for n in range(terms + 1, terms + 2 * length + every + 1):
            if ((n - first) % every == 0 and n >= first) != (self._number(n, along) in self.lines):
                return n
        return None

    def _number(self, n: int, along: LineAlong) -> int:
        """The number of the row or column of a term on the page in view, carried on past its edges."""
        grid = self.grid
        line, at = divmod(grid.lead + n - 1, grid.line_length)
        if (along == "row") == (grid.fill is Fill.DOWN):
            return at + 1
        return grid.fill_lines - line if grid.fill is Fill.ACROSS_UP else line + 1

    def _on_diagonal(self, n: int, m: int) -> bool:
        down = self._number(m, "row") - self._number(n, "row")
        right = self._number(m, "column") - self._number(n, "column")
        return abs(down) == 1 and right == (down if self.name == "down-right" else -down)
