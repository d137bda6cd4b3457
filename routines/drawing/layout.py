"""Where everything of one grid stands: cell size, numeral size, which cells are shown."""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field

from routines.counting import Fill, Grid, Piece

from .entries import Entries, Entry, entry_for
from .fitting import fit_to
from .labels import LABEL, LABEL_HEIGHT, labels_that_fit, larger_units
from .numerals import HALF_DIGIT, Box, Numeral, pieces_of_words, set_numeral
from .said_words import set_within
from .sizes import Size

HALO = 0.12  # kept free around a numeral, of its size
SAID_WIDE, SAID_HIGH = 0.86, 0.6  # what was said otherwise takes no more of its cell


@dataclass(frozen=True, slots=True)
class Layout:
    """One grid fitted to one size. The grid's top left corner is (0, 0)."""

    grid: Grid
    size: Size
    numeral: float
    width: float
    height: float
    first_row: int
    last_row: int
    last_column: int
    landmarks: frozenset[int]
    entries: Entries | None
    upto: int | None
    numerals: Mapping[int, Numeral]
    labels: Mapping[int, str] = field(default_factory=dict)
    places: dict[int, tuple[int, int]] = field(init=False, repr=False)
    terms: dict[tuple[int, int], int] = field(init=False, repr=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "places", dict(self._shown()))
        object.__setattr__(self, "terms", {place: n for n, place in self.places.items()})

    def _shown(self) -> Iterator[tuple[int, tuple[int, int]]]:
        for n in range(1, self.grid.terms + 1):
            row, column = self.grid.place(n)
            if self.first_row <= row <= self.last_row and column <= self.last_column:
                yield n, (row - self.first_row, column - 1)

    @property
    def rows(self) -> int:
        return self.last_row - self.first_row + 1

    @property
    def columns(self) -> int:
        return self.last_column

    @property
    def frame(self) -> Box:
        return Box(0, 0, self.columns * self.width, self.rows * self.height)

    @property
    def is_cut(self) -> bool:
        return self.rows < self.grid.rows or self.columns < self.grid.columns

    @property
    def lit_line(self) -> float:
        """How thick a lit outline and its thread are drawn."""
        return min(max(0.045 * self.height, 1.6), self.size.thickest)

    @property
    def radius(self) -> float:
        return 0.2 * min(self.width, self.height)

    def cell(self, n: int) -> tuple[int, int] | None:
        """Row and column of a term in the drawing, from 0; None where it is not shown."""
        return self.places.get(n)

    def at(self, row: int, column: int) -> int | None:
        """The term drawn in a cell counted from 0; None where the cell is empty or outside."""
        return self.terms.get((row, column))

    def shown(self) -> Iterator[int]:
        """The terms in the drawing, in counting order."""
        return iter(self.places)

    def middle(self, n: int) -> tuple[float, float]:
        """The middle of the numeral of term n; under what is struck it stands a little lower, where there is room."""
        row, column = self.places.get(n, (0, 0))
        numeral, lower = self.numerals.get(n), 0.0
        if numeral and self.entry(n).state == "corrected" and n not in self.labels:
            room = self.height / 2 - numeral.box.bottom - 0.25 * self.numeral
            lower = min(0.16 * self.numeral, max(room, 0.0))
        return (column + 0.5) * self.width, (row + 0.5) * self.height + lower

    def ink(self, n: int) -> Box:
        """The numeral of term n where it stands, or the room of one digit."""
        numeral, half = self.numerals.get(n), HALF_DIGIT * self.numeral
        box = numeral.box if numeral else Box(-0.3 * self.numeral, -half, 0.3 * self.numeral, half)
        return box.moved(*self.middle(n))

    def rectangle(self, n: int) -> Box:
        row, column = self.places.get(n, (0, 0))
        return Box(column * self.width, row * self.height, (column + 1) * self.width, (row + 1) * self.height)

    def is_pleat(self, n: int) -> bool:
        """Whether term n stands in one of the lines that are a shade darker."""
        row, column = self.places.get(n, (0, 0))
        if self.grid.fill == "across-up":
            row = self.rows - 1 - row
        return bool((column if self.grid.fill == "down" else row) % 2)

    def entry(self, n: int) -> Entry:
        return entry_for(n, self.entries, self.upto)

    def halo(self, n: int) -> Box:
        """The place around the numeral of term n that no thread or flag may enter."""
        numeral, (x, y) = self.numerals.get(n), self.middle(n)
        half = HALF_DIGIT * self.numeral
        box, air = numeral.box if numeral else Box(0, -half, 0, half), HALO * self.numeral
        free = Box(box.left + x - air, box.top + y - air, box.right + x + air, box.bottom + y + air)
        if n not in self.labels:
            return free
        return Box(free.left, free.top, free.right, max(free.bottom, y + self.height / 2))


def pieces_in(grid: Grid, n: int, entry: Entry) -> tuple[Piece, ...]:
    """What is written in the cell of term n; nothing where nothing may be read."""
    if entry.state in ("free", "covered", "next", "left-out"):
        return ()
    if entry.state == "prediction":
        return (*_pieces_said(grid, n, entry.text), Piece("symbol", "?"))
    return _pieces_said(grid, n, entry.text)


def _pieces_said(grid: Grid, n: int, text: str) -> tuple[Piece, ...]:
    return pieces_of_words(text) if is_otherwise(grid, n, text) else grid.count.pieces(n)


def is_otherwise(grid: Grid, n: int, text: str) -> bool:
    """Whether what was said is not simply the count as it is written."""
    return bool(text) and text != grid.count.text(n)


def lay_out(
    grid: Grid,
    size: Size,
    landmarks: Collection[int],
    entries: Entries | None = None,
    upto: int | None = None,
    labels: Mapping[int, str] | None = None,
) -> Layout:
    """Fit a grid to a size. Lines are left away only where the size allows it; across-up keeps its lowest rows.

    labels: small words under the numerals, by term; the cells make room for them.
    """
    marked = frozenset(landmarks)

    def weight(n: int) -> str:
        return "bold" if n in marked else "regular"

    # A free cell keeps room for its count, so that the grid does not move while it fills.
    # Nor does it shrink to what was said otherwise: that is set to fit its cell.
    written = {n: pieces_in(grid, n, entry_for(n, entries, upto)) for n in range(1, grid.terms + 1)}
    measured = {n: set_numeral(grid.count.pieces(n), 1.0, weight(n)) for n in written}
    fit = fit_to(size, grid.rows, grid.columns, measured.values())
    if fit.rows < grid.rows and grid.fill is not Fill.DOWN and not size.even:
        kept = [measured[n] for n in measured if _line(grid, n) <= fit.rows]
        fit = fit_to(size, grid.rows, grid.columns, kept)
    up = grid.fill is Fill.ACROSS_UP
    height, small = fit.height, LABEL * fit.numeral
    placed = labels_that_fit(labels or {}, small, fit.width)
    if size.larger_units and entries is None and upto is None and not placed:
        placed = larger_units(grid, marked, small, fit.width)
    if placed:
        deepest = max(numeral.box.bottom for numeral in measured.values()) * fit.numeral
        height = max(height, 2 * (deepest + LABEL_HEIGHT * small))

    def numeral(n: int) -> Numeral:
        if is_otherwise(grid, n, entry_for(n, entries, upto).text):
            return set_within(written[n], fit.numeral, SAID_WIDE * fit.width, SAID_HIGH * height)
        return set_numeral(written[n], fit.numeral, weight(n))

    return Layout(
        grid=grid,
        size=size,
        numeral=fit.numeral,
        width=fit.width,
        height=height,
        first_row=grid.rows - fit.rows + 1 if up else 1,
        last_row=grid.rows if up else fit.rows,
        last_column=fit.columns,
        landmarks=marked,
        entries=entries,
        upto=upto,
        numerals={n: numeral(n) for n, pieces in written.items() if pieces},
        labels=placed,
    )


def _line(grid: Grid, n: int) -> int:
    """Which line of the fill a term stands in, from 1."""
    return (grid.lead + n - 1) // grid.line_length + 1
