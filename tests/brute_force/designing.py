"""Designs found by trying every start, step and fold, and claims judged by looking at every cell.

Imports nothing of the engine. A claim is plain data, as it is stored; a parameter left out may be anything.
"""

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import combinations, pairwise, product
from math import floor
from typing import Any

Parts = Callable[[Fraction], Mapping[str, int]]


def no_parts(value: Fraction) -> Mapping[str, int]:
    return {}


@dataclass(frozen=True)
class Page:
    """A folded count as a dictionary of cells: (row, column) -> term number."""

    start: Fraction
    step: Fraction
    terms: int
    line_length: int
    fill: str
    friendly: Sequence[Fraction] = ()
    parts: Parts = no_parts
    written: Callable[[Fraction], Collection[str]] | None = None
    """The parts that are written of a value, where that is not all of them: 1 ft writes no inches."""
    asked_unwritten: bool = True
    """Whether a part can be asked about that no count in view writes."""
    finest: int | None = None
    """The finest place whose digit is looked at (0 ones, -1 tenths); None where places are not looked at."""
    cells: dict[tuple[int, int], int] = field(init=False, compare=False)

    def __post_init__(self) -> None:
        begun = -(-self.terms // self.line_length)
        cells = {}
        for n in range(1, self.terms + 1):
            line, at = (n - 1) // self.line_length + 1, (n - 1) % self.line_length + 1
            if self.fill == "down":
                cells[at, line] = n
            else:
                cells[line if self.fill == "across" else begun + 1 - line, at] = n
        object.__setattr__(self, "cells", cells)

    @property
    def places(self) -> range:
        """The places from the leading digit of the largest value down to the finest that is looked at."""
        largest = max(abs(self.start), abs(self.value(self.terms)))
        return range(len(str(floor(largest))) - 1, self.finest - 1, -1) if self.finest is not None else range(0)

    @property
    def part_names(self) -> list[str]:
        """Those that some count in view writes."""
        written = self.written or self.parts
        return sorted({name for n in range(1, self.terms + 1) for name in written(self.value(n))})

    @property
    def key(self) -> tuple[Fraction, Fraction, int, int, str]:
        return self.start, self.step, self.terms, self.line_length, self.fill

    def value(self, n: int) -> Fraction:
        return self.start + (n - 1) * self.step

    def lines(self, along: str) -> list[list[int]]:
        if along == "count":
            return [list(range(1, self.terms + 1))]
        axis = 0 if along == "row" else 1
        numbers = sorted({cell[axis] for cell in self.cells})
        return [sorted(n for cell, n in self.cells.items() if cell[axis] == number) for number in numbers]

    @property
    def rows(self) -> int:
        return max(row for row, _ in self.cells)

    @property
    def columns(self) -> int:
        return max(column for _, column in self.cells)


def designs(
    wanted: Sequence[Mapping[str, Any]], pages: Iterable[Page]
) -> set[tuple[Fraction, Fraction, int, int, str]]:
    """Give the pages that show every wanted claim."""
    return {page.key for page in pages if all(shows(claim, page) for claim in wanted)}


def shows(claim: Mapping[str, Any], page: Page) -> bool:
    """Say whether the claim is true of the page and can be seen on it."""
    return JUDGES[claim["family"]](claim, page)


def _step(claim: Mapping[str, Any], page: Page) -> bool:
    return claim.get("difference") in (None, str(page.step))


def _neighbour(claim: Mapping[str, Any], page: Page) -> bool:
    away = {"right": (0, 1), "down": (1, 0), "down-right": (1, 1), "down-left": (1, -1)}
    for direction in _any(claim, "direction", away):
        rows, columns = away[direction]
        changes = [
            page.value(other) - page.value(n)
            for (row, column), n in page.cells.items()
            if (other := page.cells.get((row + rows, column + columns)))
        ]
        if len(changes) >= 2 and len(set(changes)) == 1 and claim.get("difference") in (None, str(changes[0])):
            return True
    return False


def _digit(claim: Mapping[str, Any], page: Page) -> bool:
    return any(
        _repeats(claim, page, along, read)
        for read in _readers(claim, page)
        for along in _any(claim, "along", ("count", "row", "column"))
    )


def _readers(claim: Mapping[str, Any], page: Page) -> Iterator[Callable[[Fraction], int | None]]:
    places = [claim["place"]] if "place" in claim else [] if "part" in claim else page.places
    names = [claim["part"]] if "part" in claim else [] if "place" in claim else page.part_names
    if not page.asked_unwritten:
        names = [name for name in names if name in page.part_names]
    for place in places:
        yield lambda value, place=place: floor(abs(value) / Fraction(10) ** place) % 10
    for name in names:
        yield lambda value, name=name: page.parts(value).get(name)


def _repeats(
    claim: Mapping[str, Any], page: Page, along: str, read: Callable[[Fraction], int | Fraction | None]
) -> bool:
    lines = page.lines(along)
    if "lines" in claim:
        if max(claim["lines"]) > len(lines):
            return False
        lines = [lines[number - 1] for number in claim["lines"]]
    longest = max(map(len, lines))
    shown = [[read(page.value(n)) for n in line] for line in lines]
    if any(reading is None for line in shown for reading in line):
        return False
    if "blocks" in claim:
        blocks = claim["blocks"]
        k = max(map(len, blocks))
        return (
            len(blocks) == len(lines)
            and longest >= 2 * k
            and all(
                at % k < len(block) and str(reading) == str(block[at % k])
                for line, block in zip(shown, blocks, strict=True)
                for at, reading in enumerate(line)
            )
        )
    lengths = [claim["length"]] if "length" in claim else range(1, longest // 2 + 1)
    return any(
        longest >= 2 * k and all(line[at] == line[at - k] for line in shown for at in range(k, len(line)))
        for k in lengths
    )


def _digit_run(claim: Mapping[str, Any], page: Page) -> bool:
    for read, along in product(list(_readers(claim, page)), _any(claim, "along", ("count", "row", "column"))):
        lines = page.lines(along)
        shown = [[read(page.value(n)) for n in line] for line in lines]
        if max(map(len, lines)) < 3 or any(reading is None for line in shown for reading in line):
            continue
        changes = {after - before for line in shown for before, after in pairwise(line)}
        if len(changes) == 1 and 0 not in changes and claim.get("change") in (None, *changes):
            return True
    return False


def _digit_sum(claim: Mapping[str, Any], page: Page) -> bool:
    alongs = _any(claim, "along", ("count", "row", "column"))
    return any(_repeats(claim, page, along, lambda value: sum(map(int, str(abs(value))))) for along in alongs)


def _remainder(claim: Mapping[str, Any], page: Page) -> bool:
    moduli = [Fraction(claim["modulus"])] if "modulus" in claim else page.friendly
    return any(
        _repeats(claim, page, along, lambda value, modulus=modulus: value - modulus * floor(value / modulus))
        for modulus in moduli
        for along in _any(claim, "along", ("count", "row", "column"))
    )


def _landmarks(claim: Mapping[str, Any], page: Page) -> bool:
    for multiple in [Fraction(claim["multiple"])] if "multiple" in claim else page.friendly:
        there = [n for n in range(1, page.terms + 1) if page.value(n) % multiple == 0]
        if len(there) < 2 or there[1] - there[0] < 2:
            continue
        lie, lines = next(_lies(page, there), ("scattered", []))
        fits = {"every": there[1] - there[0], "first": there[0], "lie": lie, "lines": lines}
        if all(name not in claim or claim[name] == fit for name, fit in fits.items()):
            return True
    return False


def _lies(page: Page, there: list[int]) -> Iterator[tuple[str, list[int]]]:
    if page.rows == 1 or page.columns == 1:
        return
    where = {n: cell for cell, n in page.cells.items()}
    for axis, name in enumerate(("row", "column")):
        numbers = sorted({where[n][axis] for n in there})
        if len(numbers) == 1:
            yield name, numbers
        lines = [[n for n, cell in where.items() if cell[axis] == number] for number in numbers]
        if (
            len(numbers) > 1
            and all(len(line) > 1 for line in lines)
            and sorted(n for line in lines for n in line) == there
        ):
            yield name + "s", numbers
    if len(there) >= 3:
        for name, sign in (("down-right", 1), ("down-left", -1)):
            moves = [(where[m][0] - where[n][0], where[m][1] - where[n][1]) for n, m in pairwise(there)]
            if all(abs(down) == 1 and right == sign * down for down, right in moves):
                yield name, []


def _how_many(claim: Mapping[str, Any], page: Page) -> bool:
    values = [page.value(n) for n in range(1, page.terms + 1)]
    low, high = min(values), max(values)
    for multiple in [Fraction(claim["multiple"])] if "multiple" in claim else page.friendly:
        first, last = -floor(-low / multiple), floor(high / multiple)
        counts = [sum(j * multiple <= value < (j + 1) * multiple for value in values) for j in range(first, last)]
        if page.step < 0:
            counts.reverse()
        lengths = [len(claim["block"])] if "block" in claim else range(1, len(counts) // 2 + 1)
        for k in lengths:
            repeats = len(counts) >= 2 * k and all(counts[i] == counts[i - k] for i in range(k, len(counts)))
            if repeats and list(claim.get("block", counts[:k])) == counts[:k]:
                return True
    return False


def _sums(claim: Mapping[str, Any], page: Page) -> bool:
    # Only totals have a direction and a difference: naming one is naming them.
    kinds = ["line-totals"] if claim.keys() & {"along", "difference"} else _any(claim, "which", SUMS)
    return any(SUMS[which](claim, page) for which in kinds)


def _corners(claim: Mapping[str, Any], page: Page) -> bool:
    blocks = [
        [page.cells.get((row + down, column + right)) for down, right in product((0, 1), repeat=2)]
        for row, column in page.cells
    ]
    full = [[page.value(n) for n in block] for block in blocks if None not in block]
    return bool(full) and all(a + d == b + c for a, b, c, d in full)


def _ends(claim: Mapping[str, Any], page: Page) -> bool:
    values = [page.value(n) for n in range(1, page.terms + 1)]
    return len(values) >= 4 and len({values[i] + values[-1 - i] for i in range(len(values) // 2)}) == 1


def _centre_mean(claim: Mapping[str, Any], page: Page) -> bool:
    blocks = [
        [page.cells.get((row + down, column + right)) for down, right in product((0, 1, 2), repeat=2)]
        for row, column in page.cells
    ]
    full = [[page.value(n) for n in block] for block in blocks if None not in block]
    return bool(full) and all(sum(block) == 9 * block[4] for block in full)


def _line_totals(claim: Mapping[str, Any], page: Page) -> bool:
    for along in _any(claim, "along", ("row", "column")):
        full = page.columns if along == "row" else page.rows
        lines = page.lines(along)
        changes = {
            sum(map(page.value, after)) - sum(map(page.value, line))
            for line, after in pairwise(lines)
            if len(line) == len(after) == full >= 2
        }
        if len(changes) == 1 and claim.get("difference") in (None, *map(str, changes)):
            return True
    return False


SUMS = {"block-corners": _corners, "ends": _ends, "centre-mean": _centre_mean, "line-totals": _line_totals}


def _table(claim: Mapping[str, Any], page: Page) -> bool:
    return page.start == page.step and claim.get("step") in (None, str(page.step))


def _opposites(claim: Mapping[str, Any], page: Page) -> bool:
    pairs = [
        [n, m]
        for n, m in combinations(range(1, page.terms + 1), 2)
        if page.value(n) == -page.value(m) and page.value(n) != 0
    ]
    return bool(pairs) and claim.get("pairs") in (None, pairs)


def _any(claim: Mapping[str, Any], name: str, values: Iterable[str]) -> list[str]:
    return [claim[name]] if name in claim else list(values)


JUDGES: dict[str, Callable[[Mapping[str, Any], Page], bool]] = {
    "step": _step,
    "neighbour": _neighbour,
    "digit": _digit,
    "digit-run": _digit_run,
    "digit-sum": _digit_sum,
    "remainder": _remainder,
    "landmarks": _landmarks,
    "how-many": _how_many,
    "sums": _sums,
    "table": _table,
    "opposites": _opposites,
}
