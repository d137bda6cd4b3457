"""Phrases about the count to do next: what changes from the one before, and what stays."""

import itertools
import re
from fractions import Fraction
from typing import Any

from routines.counting import Grid
from tests.words.number_checks import is_round
from tests.words.sentence_checker import Context, Rule
from tests.words.written_values import UNIT_SIZES


def old(c: Context) -> Grid:
    return c.extra["old"]  # type: ignore[return-value]


def size(grid: Grid) -> Fraction:
    return abs(Fraction(grid.count.step))


def jumps_are(c: Context, h: dict[str, Any]) -> bool:
    """The new jumps; the same as before, where that is said; and what they were."""
    same = h.get("same") is None or size(old(c)) == size(c.grid)
    return h["s"] == size(c.grid) and same and h.get("o", size(old(c))) == size(old(c))


def starts_at(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(1), h["a"])


def ends_at(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(c.grid.terms), h["b"])


def lines_are(c: Context, h: dict[str, Any]) -> bool:
    return h["n"] == c.grid.line_length


def so_many_counts(c: Context, h: dict[str, Any]) -> bool:
    first = "a" not in h or starts_at(c, h)
    return h["k"] == c.grid.terms and first and ("b" not in h or ends_at(c, h))


def jump_comes_early(c: Context, h: dict[str, Any]) -> bool:
    """The hard jump of the old count is one of the first in the new one."""
    was = [Fraction(old(c).count.start) + n * Fraction(old(c).count.step) for n in range(old(c).terms + 5)]
    found = any(c.same(a, h["a"]) and c.same(b, h["b"]) for a, b in itertools.pairwise(was))
    return found and any(c.same(c.value(n), h["a"]) and c.same(c.value(n + 1), h["b"]) for n in range(1, 5))


def before_the_hard_one(c: Context, h: dict[str, Any]) -> bool:
    hard = c.extra.get("hard")
    return hard is not None and c.same(h["a"] + Fraction(c.grid.count.step), Fraction(hard))  # type: ignore[arg-type]


def comes_early(c: Context, h: dict[str, Any]) -> bool:
    return any(c.same(h["a"], c.value(n)) for n in range(2, 6))


def in_place_of(c: Context, h: dict[str, Any]) -> bool:
    """A smaller landmark is passed now, a tenth of the larger one or less."""
    return starts_at(c, h) and is_round(c, h["l"]) and 0 < h["l"] < h["m"] and passes_or_reaches(c, h["l"])


def passes_or_reaches(c: Context, landmark: Fraction) -> bool:
    values = [c.value(n) for n in c.terms]
    return min(values) <= landmark <= max(values)


def goes_on(c: Context, h: dict[str, Any]) -> bool:
    """The new count goes on from where the old one ended."""
    last = Fraction(old(c).count.start) + (old(c).terms - 1) * Fraction(old(c).count.step)
    return jumps_are(c, h) and c.same(h["a"], last)


def as_before(c: Context, h: dict[str, Any]) -> bool:
    """From line to line it was so much before."""
    return is_beside(c, h) and h["d"] == size(old(c)) * old(c).line_length


SIDES = {"across": ("below", "debajo"), "across-up": ("above", "arriba"), "down": ("beside", "al lado")}


def is_beside(c: Context, h: dict[str, Any]) -> bool:
    """On the page the next count in the same place of the next line is on this side."""
    return str(h.get("side") or SIDES[c.grid.fill][0]).lower() in SIDES[c.grid.fill]


def empty_first(c: Context, h: dict[str, Any]) -> bool:
    """The new board begins with so many empty cells, and the old one with another number of them."""
    return h.get("k", 0) == c.grid.lead != old(c).lead


def kept_in_every_cell(c: Context, of: int | Fraction) -> bool:
    """What is left past multiples is the same as before in the cell of every count."""
    first, step = Fraction(old(c).count.start), Fraction(old(c).count.step)
    same_cells = (c.grid.lead, c.grid.line_length) == (old(c).lead, old(c).line_length)
    return same_cells and all(c.value(n) % of == (first + (n - 1) * step) % of for n in c.terms)


def landings(c: Context) -> int:
    r = c.grid.count.form.round_number()
    return sum(c.value(n) % r == 0 for n in c.terms if n > 1)


def grown_by(c: Context, h: dict[str, Any]) -> bool:
    return h["d"] == abs(size(c.grid) - size(old(c)))


def tenfold(c: Context, h: dict[str, Any]) -> bool:
    """The new jump; ten times the old one, or a tenth of it, where that is said."""
    times = str(h.get("times") or "").lower()
    factor = Fraction(10) if "ten times" in times or "diez" in times else Fraction(1, 10) if times else None
    return h["s"] == size(c.grid) and (factor is None or h["s"] == factor * size(old(c)))


def all_of_them(c: Context, h: dict[str, Any]) -> bool:
    """Each count is ten times, or a tenth of, the one in its place before."""
    times = Fraction(10) if str(h["times"]).lower() in ("ten times", "diez veces el", "lejos") else Fraction(1, 10)
    start, step = Fraction(old(c).count.start), Fraction(old(c).count.step)
    return (Fraction(c.grid.count.start), Fraction(c.grid.count.step)) == (times * start, times * step)


def lowest(c: Context) -> Fraction:
    return min(c.value(n) for n in c.terms)


def some_land(c: Context, h: dict[str, Any]) -> bool:
    """Some counts are multiples of what is round, and some jumps go over one."""
    r = c.grid.count.form.round_number()
    pairs = list(itertools.pairwise(c.value(n) for n in c.terms))
    over = [b for a, b in pairs if a % r and b % r and a // r != b // r]
    enough = landings(c) == 1 if h.get("one") else landings(c) >= int(h.get("least", 1))
    return h["s"] == size(c.grid) and bool(over) and enough


def comes_back(c: Context, h: dict[str, Any]) -> bool:
    """After so many jumps, and after so many before, what is left past something round is the same again."""
    r = c.grid.count.form.round_number()
    now, then = ((size(g) / r).denominator for g in (c.grid, old(c)))
    return h["s"] == size(c.grid) and h["k"] == now > then == h["o"]


def all_multiples(c: Context, h: dict[str, Any]) -> bool:
    return starts_at(c, h) and all(c.value(n) % h["m"] == 0 for n in c.terms)


def step_and_round(c: Context, h: dict[str, Any]) -> bool:
    return h["s"] == h.get("s2", h["s"]) == size(c.grid) and h["d"] == size(c.grid) - size(old(c))


def same_start(c: Context, h: dict[str, Any]) -> bool:
    return step_and_round(c, h) and c.same(c.value(1), Fraction(old(c).count.start))


def line_to_line(c: Context, h: dict[str, Any]) -> bool:
    """From line to line it is so much; still as before, or only now."""
    now, then = (size(grid) * grid.line_length for grid in (c.grid, old(c)))
    return (
        is_beside(c, h)
        and h["d"] == now
        and (now == then) == (str(h["when"]).lower() in ("still", "la diferencia sigue siendo"))
    )


def the_other_way(c: Context, h: dict[str, Any]) -> bool:
    turned = c.grid.count.step == -old(c).count.step
    return turned and starts_at(c, h) and ends_at(c, h) and h["s"] == h.get("s2", h["s"]) == size(c.grid)


def nearly(c: Context, h: dict[str, Any]) -> bool:
    """A step next to a number of one digit and zeros, one less than a ten, or next to the step that the class knows."""
    leading = re.sub(r"\D", "", c.grid.count.text_of(h["r"])).strip("0")
    near = h["r"] == h["r2"] and 0 < abs(h["r"] - h["s"]) <= h["r"] / 10
    next_ten = c.grid.count.kind == "whole" and h["r"] % 10 == 0 and h["r"] - h["s"] == 1
    known = len(leading) == 1 or leading == "25" or next_ten or h["r"] == size(old(c))
    return h["s"] == size(c.grid) and known and near


def lands_on_all(c: Context, h: dict[str, Any]) -> bool:
    """So many jumps make what is round, the board comes to it past zero, and no multiple of it in view is jumped over."""
    r, values = c.grid.count.form.round_number(), {c.value(n) for n in c.terms}
    every = [many for many in range(int(-(-min(values) // r)), int(max(values) // r) + 1) if many]
    made = h["s"] == size(c.grid) and h["k"] * h["s"] == h["r"] == r == h.get("m", r)
    return made and bool(every) and all(many * r in values for many in every)


def does_not_fill(c: Context, h: dict[str, Any]) -> bool:
    own = h.get("s", size(c.grid)) == size(c.grid)
    return own and is_round_amount(c, h["r"]) and h["r"] % size(c.grid) != 0


def is_round_amount(c: Context, amount: Fraction) -> bool:
    """One, ten, a hundred or a thousand of some unit that such counts are written in."""
    units = [UNIT_SIZES[unit] for unit in UNITS_BY_BASE.get(c.grid.count.base_unit, ())] or [Fraction(1)]
    return any(amount / unit in (1, 10, 100, 1000) for unit in units)


def left_past_each(c: Context, h: dict[str, Any]) -> bool:
    """What is left past a round amount is spoken of; where it is as before, the jumps differ by such amounts."""
    same = h.get("same") is None or (size(c.grid) - size(old(c))) % h["m"] == 0
    return is_round_amount(c, h["m"]) and same


def one_for_many(c: Context, h: dict[str, Any]) -> bool:
    return h["s"] == size(c.grid) == h["k"] * h["o"] and h["o"] == size(old(c))


def is_large(c: Context, landmark: Fraction) -> bool:
    """A landmark ten times as large as what is passed in every line; on a clock noon or midnight.

    Where parts of a unit are counted, what is passed in every line is the unit itself."""
    if c.grid.count.wrap is not None:
        return landmark % c.grid.count.wrap in (0, 720)
    in_parts = c.grid.count.base_unit and any(re.search(r"\d[/.,]\d", c.grid.count.text(n)) for n in c.terms)
    return is_round(c, landmark / 10) or (bool(in_parts) and is_round_amount(c, landmark))


def passes(c: Context, h: dict[str, Any]) -> bool:
    values = [c.value(n) for n in c.terms]
    low, high = min(values), max(values)
    wrap = c.grid.count.wrap
    landmark = h["l"] if not wrap else h["l"] + -((h["l"] - low) // wrap) * wrap
    return is_large(c, h["l"]) and low < landmark < high


def lands_on(c: Context, landmark: Fraction) -> bool:
    return any(c.same(c.value(n), landmark) for n in c.terms)


def passes_by(c: Context, h: dict[str, Any]) -> bool:
    """The landmark is jumped over."""
    return passes(c, h) and not lands_on(c, h["l"])


def reaches(c: Context, h: dict[str, Any]) -> bool:
    """The landmark is a count, and others come after it."""
    return passes(c, h) and lands_on(c, h["l"])


def stands_where_stood(c: Context, h: dict[str, Any]) -> bool:
    """A count and the one of before in its cell differ by round amounts, as all of them do."""
    first, step = Fraction(old(c).count.start), Fraction(old(c).count.step)
    there = [n for n in c.terms if (c.value(n), first + (n - 1) * step) == (h["a"], h["b"])]
    return bool(there) and kept_in_every_cell(c, old(c).count.form.round_number())


UNITS_BY_BASE = {
    "in": ("in", "ft", "yd", "mi"),
    "cm": ("mm", "cm", "m", "km"),
    "oz": ("oz", "lb", "ton"),
    "g": ("g", "kg"),
    "fl oz": ("fl oz", "cup", "pt", "qt", "gal"),
    "mL": ("mL", "L"),
    "min": ("s", "min", "h", "d"),
}

RULES: tuple[Rule, ...] = (
    Rule(
        ("only <k:N> counts, from <a:V>", "only <k:N> counts the other way", "only the first <k:N>, as far as <b:V>"),
        (
            "solo <k:N> (?:números|lugares), desde <a:V>",
            "solo <k:N> (?:números|lugares) al",
            "solo los primeros <k:N>, hasta <b:V>",
        ),
        so_many_counts,
    ),
    Rule(
        ("the jump from <a:V> to <b:V> comes early",),
        ("el salto de <a:V> a <b:V> llega pronto",),
        jump_comes_early,
    ),
    Rule(
        ("the jump from <a:V> to <b:V> is the hard one again",),
        ("el salto de <a:V> a <b:V> es otra vez el difícil",),
        lambda c, h: any(c.same(c.value(n), h["a"]) and c.same(c.value(n + 1), h["b"]) for n in c.terms),
    ),
    Rule(
        ("each count is (?P<times_W>ten times|a tenth) as large as before",),
        ("cada número es (?P<times_W>diez veces el|la décima parte del) de antes",),
        lambda c, h: all_of_them(c, h) and lowest(c) >= 0,
    ),
    Rule(
        ("each count is (?P<times_W>ten times|a tenth) as far from zero as before",),
        ("cada número queda diez veces más (?P<times_W>lejos|cerca) del cero que antes",),
        lambda c, h: all_of_them(c, h) and lowest(c) < 0,
    ),
    Rule(
        ("some jumps of <s:D> land right on",),
        ("algunos saltos de <s:D> caen justo en",),
        lambda c, h: some_land(c, {**h, "least": 2}),
    ),
    Rule(
        ("which jumps of <s:D> land right on",),
        ("qué saltos de <s:D> caen justo en",),
        lambda c, h: some_land(c, {**h, "least": 2}),
    ),
    Rule(
        ("(?:here only one|which) jump of <s:D> lands right on",),
        ("(?:aquí un solo|qué) salto de <s:D> cae justo en",),
        lambda c, h: some_land(c, {**h, "one": True}),
    ),
    Rule(
        ("and here every (?:multiple of <m:D>|[^,.]+) is jumped over",),
        ("y aquí pasan por encima de cada",),
        lambda c, h: not any(c.value(n) % c.grid.count.form.round_number() == 0 for n in c.terms),
    ),
    Rule(("with no empty cell",), ("sin celdas vacías",), empty_first),
    Rule(
        ("with <k:N> empty cells? first",),
        ("con <k:N> celdas? vacías? al principio",),
        empty_first,
    ),
    Rule(
        ("in every cell the ones digit is the same as before",),
        ("en cada celda la cifra de las unidades es la misma que antes",),
        lambda c, h: kept_in_every_cell(c, 10),
    ),
    Rule(
        ("in every cell the last two digits are the same as before",),
        ("en cada celda las dos últimas cifras son las mismas que antes",),
        lambda c, h: kept_in_every_cell(c, 100),
    ),
    Rule(
        ("in every cell the minutes past the last full hour are the same as before",),
        ("en cada celda los minutos después de la hora en punto son los mismos que antes",),
        lambda c, h: kept_in_every_cell(c, 60),
    ),
    Rule(
        ("with jumps of <s:D>, [^,]+ comes back only every <k:N> jumps, not every <o:N>",),
        ("con saltos de <s:D>, [^,]+ vuelve solo cada <k:N> saltos, no cada <o:N>",),
        comes_back,
    ),
    Rule(("in lines of <n:N>",), ("en líneas de <n:N>",), lines_are),
    Rule(
        ("the same start, each time a jump (?P<back_W>back )?of <s:D>: <d:D> more in each jump",),
        ("el mismo comienzo, cada vez un salto (?P<back_W>hacia atrás )?de <s:D>: <d:D> más en cada salto",),
        lambda c, h: same_start(c, h) and (h.get("back") is not None) == (c.grid.count.step < 0),
    ),
    Rule(
        ("the other way, from <a:V> to <b:V> by <s:D>",),
        ("(?:al )?revés, de <a:V> a <b:V>, de <s:D> en <s2:D>",),
        the_other_way,
    ),
    Rule(
        ("jumps of <s:D>, going on from <a:V>",),
        ("saltos de <s:D>, siguiendo desde <a:V>",),
        goes_on,
    ),
    Rule(
        ("starting at <a:V>, so that we pass <l:V> and not <m:V>",),
        ("desde <a:V>, para que pasemos por <l:V> y no por <m:V>",),
        lambda c, h: in_place_of(c, h) and not lands_on(c, h["l"]),
    ),
    Rule(
        ("starting at <a:V>, so that we reach <l:V> and not <m:V>",),
        ("desde <a:V>, para que lleguemos a <l:V> y no a <m:V>",),
        lambda c, h: in_place_of(c, h) and lands_on(c, h["l"]),
    ),
    Rule(
        ("<s:D> is (?:so near to|nearly) <r:D>(?!:|[.,]\\d)",),
        ("<s:D> es casi <r:D>(?!:|[.,]\\d)",),
        lambda c, h: nearly(c, {**h, "r2": h["r"]}),
    ),
    Rule(
        ("<s:D> is nearly <r:D>: going by <r2:D>",),
        ("<s:D> es casi <r:D>: contar de <r2:D> en <r3:D>",),
        lambda c, h: nearly(c, h) and h.get("r3", h["r"]) == h["r"],
    ),
    Rule(
        ("jumps of <s:D> do not fit evenly into <r:D>",), ("saltos de <s:D> no caben justos en <r:D>",), does_not_fill
    ),
    Rule(
        ("<k:N> jumps of <s:D> make <r:D>, so we land on every(?: multiple of <m:D>)?",),
        ("<k:N> saltos de <s:D> hacen <r:D>, y así llegamos a cada(?: múltiplo de <m:D>)?",),
        lands_on_all,
    ),
    Rule(
        ("(?:one|each) jump of <s:D> does what <k:N> jumps of <o:D> did",),
        ("(?:un|cada) salto de <s:D> hace lo que hacían <k:N> saltos de <o:D>",),
        one_for_many,
    ),
    Rule(
        ("(?P<same_W>the same )?jumps of <s:D>(?: instead of <o:D>)?",),
        ("(?P<same_W>los mismos )?saltos de <s:D>(?: en vez de <o:D>)?",),
        jumps_are,
    ),
    Rule(
        (
            "(?:a number|a time) and the one just (?P<side_W>below|above|beside) it are (?P<when_W>still|now) <d:D> apart",
        ),
        (
            "de (?:un número al|una hora a la) que está justo (?P<side_W>debajo|arriba|al lado) "
            "(?P<when_W>la diferencia sigue siendo|ahora la diferencia es) <d:D>",
        ),
        line_to_line,
    ),
    Rule(
        ("from <a:V> every count is a multiple of <m:D>",),
        ("desde <a:V> cada número es un múltiplo de <m:D>",),
        all_multiples,
    ),
    Rule(
        ("stays: <a:V> where it was <b:V>",),
        ("donde decía <b:V>, ahora dice <a:V>",),
        stands_where_stood,
    ),
    Rule(("the count passes <l:V>",), ("el conteo pase por <l:V>",), passes_by),
    Rule(("the count reaches <l:V>",), ("el conteo llegue a <l:V>",), reaches),
    # questions for the class
    Rule(
        ("(?:we said|after|do to|does a jump (?:back )?of <s:D> do to) <a:V>", "jump from <a:V>"),
        ("(?:dijimos|después de|sigue a|pasa al dar un salto (?:hacia atrás )?de <s:D> desde) <a:V>",),
        lambda c, h: (
            (before_the_hard_one(c, h) or passes(c, {"l": h["a"]})) and h.get("s", size(c.grid)) == size(c.grid)
        ),
    ),
    Rule(
        ("(?:with|does) <n:N> (?:in each line|make it so)", "has <n:N> numbers", "there are <n:N> in each line"),
        ("con <n:N> en cada línea", "tiene ahora <n:N> números", "hay <n:N> en cada línea"),
        lines_are,
    ),
    Rule(
        ("each jump is <d:D> more than before", "when each jump grows by <d:D>"),
        ("cada salto es <d:D> más largo que antes", "cuando cada salto crece <d:D>"),
        grown_by,
    ),
    Rule(
        ("(?:a number|a time) and the one just (?P<side_W>below|above|beside) it were <d:D> apart before",),
        ("de (?:un número al|una hora a la) que está justo (?P<side_W>debajo|arriba|al lado) la diferencia era <d:D>",),
        as_before,
    ),
    Rule(
        ("each jump is nearly <r:D>",),
        ("cada salto es casi <r:D>",),
        lambda c, h: nearly(c, {**h, "r2": h["r"], "s": size(c.grid)}),
    ),
    Rule(
        (
            "(?:jumps?|each jump) (?:back )?(?:of|is) <s:D>(?P<times_W> is (?:ten times as long|a tenth as long) as before)?",
        ),
        (
            "(?:cada salto|saltos?) (?:hacia atrás )?(?:es de|de|es) <s:D>(?P<times_W> (?:es diez veces|mide la décima parte))?",
        ),
        tenfold,
    ),
    Rule(
        ("past (?:each|the last|an?) (?:multiple of )?<m:D>(?P<same_W> stays)?",),
        ("(?P<same_W>queda igual )?lo que sobra después de cada (?:múltiplo de )?<m:D>",),
        left_past_each,
    ),
    Rule(
        ("(?<!past )a multiple of <r:D>",),
        ("un múltiplo de <r:D>",),
        lambda c, h: is_round_amount(c, h["r"]),
    ),
    Rule(("past <l:V>",), ("después de <l:V>",), passes),
    Rule(("pass <l:V>",), ("pasar por <l:V>",), passes_by),
    Rule(("come to <l:V>", "reach <l:V>"), ("(?<!hasta )llegar a <l:V>",), reaches),
    Rule(
        ("from <a:V> to <b:V>",),
        ("desde <a:V> hasta <b:V>",),
        lambda c, h: starts_at(c, h) and ends_at(c, h),
    ),
    Rule(
        ("(?:starting at|start at|go on from|from) <a:V>",),
        ("(?:empezamos (?:en|a)|seguimos desde|desde) <a:V>",),
        starts_at,
    ),
    Rule(
        ("^<a:V> comes early",),
        ("^<a:V> llega pronto",),
        comes_early,
    ),
    # The name of what is round, where it has no other.
    Rule(
        ("(?:each|every|an?|the last) multiple of <m:D>",),
        ("(?:cada|un|el último) múltiplo de <m:D>",),
        lambda c, h: h["m"] == c.grid.count.form.round_number(),
    ),
)
