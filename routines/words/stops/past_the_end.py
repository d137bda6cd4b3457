"""What is answered at the end: a number that comes past it, or one that never comes."""

from dataclasses import replace
from fractions import Fraction

from routines.counting.grid import Fill
from routines.counting.locate import Location
from routines.counting.locate import locate as located

from ..locating import locate
from ..sentences import filled
from .answering import shortly
from .filling import YOUNGEST, Filling

# From grade 6 on the question at the end asks for a rule that serves any number.
BAND_OF_RULES = 3


def answer_past_the_end(filling: Filling, asked: Fraction) -> str:
    """Whether the asked value comes, and how a child can tell."""
    told = _from_its_line(filling, located(filling.grid, asked)) or [
        # What is said to the youngest is short enough for everybody.
        filling.amount(locate(filling.grid, asked, audience).reason)
        for audience in (filling.audience, replace(filling.audience, level=YOUNGEST))
    ]
    return shortly(told, filling.audience.level)


def _where(filling: Filling, n: int) -> str:
    """Row and column; the column alone where the page is filled from below, for its rows above have no numbers yet."""
    grid, language = filling.grid, filling.language
    row, column = grid.place(n)
    if grid.fill is Fill.ACROSS_UP:
        return language.line("column", column)
    return language.cell.format(row=row, column=column)


def _from_its_line(filling: Filling, met: Location) -> list[str]:
    """How the asked value follows from the last count on the board in its line, the fullest first; none where it does not."""
    grid, language, length = filling.grid, filling.language, filling.grid.line_length
    if met.n is None or met.jumps is None or met.n <= grid.terms:
        return []
    lines = -(-(met.n - grid.terms) // length)
    last = met.n - lines * length
    if last < 1:
        return []
    count, words = grid.count, language.stops.past_the_end
    change, clock = lines * length * count.step, count.wrap is not None
    if filling.is_told_by_jumps(change):
        facts = {
            "value": filling.fields["probe"],
            "k": str(met.n - grid.terms),
            "last": filling.written(count.text(grid.terms)),
        }
        return [filled(words.by_jumps, facts)]
    facts = {
        "known": filling.written(filling.in_both(count.text(last), count.value(last))),
        "k": str(lines),
        "change": f"{filling.size(change)} {language.compared(change, clock=clock)}",
        "value": filling.in_both(filling.fields["probe"], met.value),
        "where": _where(filling, met.n),
        "start": filling.written(count.text(1)),
        "jumps": language.many_jumps(met.jumps, filling.size(count.step)),
        "n": str(met.jumps),
        "make": language.locating.make[met.jumps != 1],
        "total": filling.size(met.jumps * count.step),
        "step": filling.size(count.step),
        "more": language.compared(change, clock=clock),
    }
    facts["beyond"] = filled(words.beyond[grid.fill][lines > 1], facts)
    rule = [words.rule[count.step < 0]] if filling.band == BAND_OF_RULES and not clock else []
    return [filled(sentence, facts) for sentence in (*rule, *words.sentences[filling.band])]
