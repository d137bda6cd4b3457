"""Phrases about what a grid is good for: which landmark is crossed and where, which number to ask about."""

from fractions import Fraction
from typing import Any

from routines.counting.kinds.measure import Measure
from tests.brute_force.locating import first_meeting, first_meeting_on_clock, place_by_writing
from tests.words.number_checks import is_round
from tests.words.sentence_checker import Context, Rule

LATER_EN, LATER_ES = "(?P<later_W> later,)?", "(?P<later_W> más adelante,)?"


def crosses(c: Context, h: dict[str, Any]) -> bool:
    """The jump to the n-th count comes to the landmark, or has it on the way, or leaves it; past the view where it says so."""
    n, mark, wrap = h["n"], h["a"], c.grid.count.wrap
    before, here = c.value(n - 1), c.value(n)
    if wrap:
        mark += (min(before, here) - mark + wrap - 1) // wrap * wrap
    so = {
        "on": here == mark,
        "over": before < mark < here,
        "below": here < mark <= before,
    }
    return (n > c.grid.terms) == ("later" in h) and is_worth_a_stop(c, h["a"]) and so[WAYS[str(h["way"]).lower()]]


def is_worth_a_stop(c: Context, mark: Fraction) -> bool:
    """Zero, a round number, a whole where parts are counted, a hundredth in thousandths, a ten of the unit that is written."""
    form = c.grid.count.form
    unit = form.small.size if isinstance(form, Measure) else Fraction(1)
    whole = c.grid.count.scale > 1 and mark.denominator == 1
    whole = whole or (c.grid.count.kind == "decimal" and c.grid.count.scale > 100 and (100 * mark).denominator == 1)
    return mark == 0 or whole or is_round(c, mark) or mark / unit % 10 == 0


WAYS = {
    "lands on": "on",
    "llega a": "on",
    "crosses": "over",
    "pasa de": "over",
    "drops below": "below",
    "goes back past": "below",
    "baja de": "below",
    "retrocede a antes de": "below",
}


def never_comes(c: Context, h: dict[str, Any]) -> bool:
    return _met(c, h["a"]) is None


def will_stand(c: Context, h: dict[str, Any]) -> bool:
    """It comes past the end; where, on a page written on until it stands there."""
    n = _met(c, h["a"])
    if n is None or n <= c.grid.terms:
        return False
    row, column = place_by_writing(n, c.grid.line_length, c.grid.fill, c.grid.lead)
    column_said = str(h["line"]).lower() in ("column", "columna")
    return bool(h["i"] == (column if column_said else row))


def _met(c: Context, value: Fraction) -> int | None:
    count = c.grid.count
    if count.wrap is None:
        return first_meeting(Fraction(count.start), Fraction(count.step), value)
    return first_meeting_on_clock(Fraction(count.start), Fraction(count.step), value, count.wrap)


RULES: tuple[Rule, ...] = (
    Rule(
        ("(?P<way_W>lands on|crosses|drops below|goes back past) <a:V>" + LATER_EN + " at the <n:O> count",),
        ("(?P<way_W>llega a|pasa de|baja de|retrocede a antes de) <a:V>" + LATER_ES + " en el <n:O> número",),
        crosses,
    ),
    Rule(("ask about <a:V>: it never comes",), ("pregunta por <a:V>: no se dice nunca",), never_comes),
    Rule(
        ("ask where <a:V> will stand: (?P<line_W>row|column) <i:N>",),
        ("pregunta por el lugar de <a:V>: la (?P<line_W>fila|columna) <i:N>",),
        will_stand,
    ),
)
