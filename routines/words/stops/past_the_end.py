"""What is answered at the end: a number that comes past it, or one that never comes."""

from fractions import Fraction

from routines.counting.grid import Fill
from routines.counting.locate import Location
from routines.counting.locate import locate as located

from ..locating import locate, where_past_the_end
from ..sentences import filled
from .filling import Filling


def answer_past_the_end(filling: Filling, asked: Fraction) -> str:
    """Whether the asked value comes, and how a child can tell."""
    met = located(filling.grid, asked)
    return _from_its_line(filling, met) or locate(filling.grid, asked, filling.audience).reason


def _from_its_line(filling: Filling, met: Location) -> str:
    """How the asked value follows from the last count on the board in its line; empty where it does not."""
    grid, language, length = filling.grid, filling.language, filling.grid.line_length
    if met.n is None or met.jumps is None or met.n <= grid.terms:
        return ""
    lines = -(-(met.n - grid.terms) // length)
    last = met.n - lines * length
    if last < 1:
        return ""
    count, words = grid.count, language.stops.past_the_end
    change = lines * length * count.step
    more = f"{count.difference_text(abs(change))} {language.compared(change, clock=count.wrap is not None)}"
    row, column = grid.place(last)
    facts = {
        "known": filling.written(count.text(last)),
        "line": language.line("row", row) if grid.fill is Fill.DOWN else language.line("column", column),
        "moved": words.moved[grid.fill][lines > 1].format(k=lines),
        "change": words.change[lines > 1].format(change=more),
        "value": filling.in_both("probe", met.value),
        "where": where_past_the_end(grid, met.n, language),
        "start": filling.written(count.text(1)),
        "jumps": language.many_jumps(met.jumps, count.difference_text(abs(count.step))),
        "make": language.locating.make[met.jumps != 1],
        "total": count.difference_text(met.jumps * abs(count.step)),
    }
    return filled(words.sentences[filling.band], facts)
