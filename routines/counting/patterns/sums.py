"""Sums: corners of 2x2 blocks, the ends of the count, the middle of 3x3 blocks, totals of lines side by side.

Source: proofs - on the page a value is start + a * row + b * column, so opposite corners of a 2x2 block have the same
sum, and in a 3x3 block the cells around the centre pair off to twice the centre: always. First + last is
2 * start + (T - 1) * step, as is each pair moved in by one: always. Full lines that the fill runs along have L
cells, each L steps from the cell in the next line: totals L * L * step apart, always. Lines across the fill grow: with R
cells each they are R steps apart; two longer ones are full again with the 2nd full cell of the next fill line, at term
R * L + 2 (lead or not: a lead cell keeps its line from ever being full).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction

from ..claims import LINES_ALONG, SUMS, LineAlong, SumName, SumsClaim, stated
from ..errors import CountError
from ..grid import Fill, Grid
from ..results import Pattern, Verdict

Groups = tuple[tuple[int, ...], ...]


def find(grid: Grid) -> Iterator[Pattern]:
    if grid.count.wrap is not None:
        return
    for which, groups_in in ALWAYS.items():
        groups = groups_in(grid)
        if groups:
            yield Pattern.of(SumsClaim(which), groups)
    for along in LINES_ALONG:
        lines = full_lines(grid, along)
        if len(lines) >= 2 and len(lines[0]) >= 2:
            claim = SumsClaim("line-totals", along, apart(grid, along))
            yield Pattern.of(claim, lines, _growth(grid, along))


def completed(claim: SumsClaim, grid: Grid) -> Iterator[SumsClaim]:
    for which in which_meant(claim):
        if which != "line-totals":
            yield SumsClaim(which)
            continue
        for along in LINES_ALONG if claim.along is None else (claim.along,):
            yield SumsClaim(which, along, apart(grid, along) if claim.difference is None else claim.difference)


def which_meant(claim: SumsClaim) -> tuple[SumName, ...]:
    """The sums a claim may mean; only line totals have a way and a difference."""
    if claim.which is not None:
        return (claim.which,)
    return SUMS if claim.along is None and claim.difference is None else ("line-totals",)


def judge(claim: SumsClaim, grid: Grid) -> Verdict:
    if grid.count.wrap is not None:
        raise CountError("family", "sums-on-a-clock")
    which: SumName = stated(claim.which)
    if which == "line-totals":
        return _judge_totals(stated(claim.along), stated(claim.difference), grid)
    return Verdict.so(seen=bool(ALWAYS[which](grid)))


def _judge_totals(along: LineAlong, said: Fraction, grid: Grid) -> Verdict:
    lines = full_lines(grid, along)
    if len(lines) < 2:
        return Verdict.so(False, _first_other_totals(grid, along, said, grid.terms))
    if said == apart(grid, along):
        return Verdict.so(len(lines[0]) >= 2, _growth(grid, along))
    n = _first_other_totals(grid, along, said, 0)
    assert n is not None
    return Verdict.not_so((n - (1 if across_the_fill(grid, along) else grid.line_length), n))


def _first_other_totals(grid: Grid, along: LineAlong, said: Fraction, after: int) -> int | None:
    """The first term beyond `after` at which two lines side by side become full whose totals are not `said` apart."""
    length, lead = grid.line_length, grid.lead
    if not across_the_fill(grid, along):
        both_full = (3 if lead else 2) * length - lead
        return None if said == apart(grid, along) else both_full
    if length - lead < 2:
        return None
    cells = max(0, -(-(after - 1) // length)) + 1  # cells of the lines that are full again next
    if said == cells * grid.count.step:
        cells += 1
    return (cells - 1) * length + 2


def across_the_fill(grid: Grid, along: LineAlong) -> bool:
    """Whether lines in this direction grow by one cell with every line the fill begins."""
    return (along == "column") != (grid.fill is Fill.DOWN)


def apart(grid: Grid, along: LineAlong) -> Fraction:
    """How much more the total of the next full line on the page is."""
    if across_the_fill(grid, along):
        return grid.count.step * grid.fill_lines
    return grid.count.step * (grid.line_length**2 * (-1 if grid.fill is Fill.ACROSS_UP else 1))


def full_lines(grid: Grid, along: LineAlong) -> Groups:
    """The lines with no empty cell in the rows x columns rectangle, page order."""
    cells = grid.columns if along == "row" else grid.rows
    return tuple(line for line in grid.lines(along) if len(line) == cells)


def _growth(grid: Grid, along: LineAlong) -> int | None:
    if not across_the_fill(grid, along):
        return None
    return grid.fill_lines * grid.line_length + 2


def _corners(grid: Grid) -> Groups:
    """The two diagonals of the first full 2x2 block in counting order; () where there is none."""
    length = grid.line_length
    for n in range(1, grid.terms - length):
        if (n + grid.lead - 1) % length != length - 1:
            return ((n, n + length + 1), (n + 1, n + length))
    return ()


def _three_by_three(grid: Grid) -> Groups:
    """The cells of the first full 3x3 block in counting order; () where there is none."""
    length = grid.line_length
    for n in range(1, grid.terms - 2 * length - 1):
        if (n + grid.lead - 1) % length <= length - 3:
            return (tuple(n + line * length + cell for line in range(3) for cell in range(3)),)
    return ()


def _ends(grid: Grid) -> Groups:
    """First and last, second and second last, ...; () with fewer than four terms."""
    terms = grid.terms
    return tuple((n, terms + 1 - n) for n in range(1, terms // 2 + 1)) if terms >= 4 else ()


ALWAYS: dict[SumName, Callable[[Grid], Groups]] = {
    "block-corners": _corners,
    "ends": _ends,
    "centre-mean": _three_by_three,
}
"""The sums that agree in every count, with the cells that show it; () where the grid is too small."""
