"""Phrases about slips: the count before, the one that is due, the jump between them, and what was said instead."""

from fractions import Fraction
from typing import Any

from tests.words.rule_pieces import LINE_EN, LINE_ES
from tests.words.sentence_checker import Context, Rule


def at(c: Context) -> int:
    """The count at which it is said."""
    return int(c.extra["n"])  # type: ignore[call-overload]


def before_it(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(at(c) - 1), h["a"])


def said_and_before(c: Context, h: dict[str, Any]) -> bool:
    return before_it(c, h) and c.same(c.notation.read(str(c.extra["said"])), h["h"])


def due(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(at(c)), h["b"])


def jump_size(c: Context, h: dict[str, Any]) -> bool:
    back = h.get("back") is not None
    return h["s"] == abs(Fraction(c.grid.count.step)) and (not back or c.grid.count.step < 0)


def jump_from(c: Context, h: dict[str, Any]) -> bool:
    return before_it(c, h) and jump_size(c, h)


def line_before(c: Context, h: dict[str, Any]) -> bool:
    """The line that is filled, through the count before."""
    row, column = c.place(at(c) - 1, upto=c.grid.terms)
    along_row = c.grid.fill != "down"
    named_row = str(h["line"]).lower() in ("row", "fila")
    return named_row == along_row and h["i"] == (row if along_row else column)


def away(c: Context) -> Fraction:
    """How far what was said is from what was due; on a clock the short way round."""
    count = c.grid.count
    said = c.notation.read(str(c.extra["said"])) - c.value(at(c))
    if count.wrap is None:
        return said
    turn = 1440 if count.style.halves else count.wrap
    said %= turn
    return said - turn if said > turn // 2 else said


def off_by(c: Context, h: dict[str, Any]) -> bool:
    more = str(h["more"]).lower() in ("much", "más", "late", "tarde")
    return away(c) == (h["d"] if more else -h["d"])


def off_by_jumps(c: Context, h: dict[str, Any]) -> bool:
    ahead = str(h["which"]).lower() in ("too many", "sobra", "sobran")
    jumps = h["k"] * Fraction(c.grid.count.step) * (1 if ahead else -1)
    wrap = c.grid.count.wrap
    right = jumps == away(c) if wrap is None else (jumps - away(c)) % wrap == 0
    return right and jump_size(c, h)


def twice_the_jump_size(c: Context, h: dict[str, Any]) -> bool:
    """Spanish names a jump twice: de 5 en 5."""
    return jump_size(c, h) and h["again"] == h["s"]


def jump_made(c: Context, h: dict[str, Any]) -> bool:
    """How far what was heard is from the count before; Spanish names it twice."""
    step = Fraction(c.grid.count.step)
    return c.same(away(c) + step, h["s"] if step > 0 else -h["s"]) and h.get("again", h["s"]) == h["s"]


def wrong_way(c: Context, h: dict[str, Any]) -> bool:
    return jump_size(c, h) and away(c) == -2 * Fraction(c.grid.count.step)


def said_before(c: Context, h: dict[str, Any]) -> bool:
    """What is said now was said (or due) just before."""
    earlier = dict(c.extra.get("earlier", {}))  # type: ignore[call-overload]
    last = earlier.get(at(c) - 1, c.grid.count.text(at(c) - 1))
    return c.same(h["a"], c.notation.read(str(c.extra["said"]))) and c.same(h["a"], c.notation.read(last))


def carried_on(c: Context, h: dict[str, Any]) -> bool:
    """From that count on everything said was off by as much."""
    earlier = dict(c.extra["earlier"])  # type: ignore[call-overload]
    since = range(h["n"], at(c))
    return bool(since) and all(c.same(c.notation.read(earlier[n]) - c.value(n), away(c)) for n in since)


def left_out(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(at(c) + h["k"]), c.notation.read(str(c.extra["said"])))


def makes_a_ten(c: Context, h: dict[str, Any]) -> bool:
    return jump_from(c, h) and h["a"] % 10 + h["s"] % 10 >= 10


def ends_in_nine(c: Context, h: dict[str, Any]) -> bool:
    return before_it(c, h) and h["a"] % 10 == 9


def begun_elsewhere(c: Context, h: dict[str, Any]) -> bool:
    return jump_size(c, h) and c.same(h["a"], c.value(1)) and h["a"] % h["s"] != 0


BACK_EN, BACK_ES = "(?P<back_W>back )?", "(?P<back_W>hacia atrás )?"

RULES: tuple[Rule, ...] = (
    # what was heard
    Rule(("what other name does <b:V> have",), ("qué otro nombre tiene <b:V>",), due),
    Rule(("another name for <b:V>",), ("otro nombre de <b:V>",), due),
    Rule(("^<a:V> was said just before",), ("se acaba de decir <a:V>",), said_before),
    Rule(("it goes on from the <n:O> count",), ("viene desde el <n:O> número",), carried_on),
    Rule(("<k:N> counts were left out",), ("se dejaron fuera <k:N> números",), left_out),
    Rule(("the jump of <s:D> went the other way",), ("el salto de <s:D> fue en la otra dirección",), wrong_way),
    Rule(
        ("<k:N> jumps? of <s:D> (?P<which_W>too many|more to go)",),
        ("(?P<which_W>sobran?|faltan?) <k:N> saltos? de <s:D>",),
        off_by_jumps,
    ),
    Rule(
        ("<d:D> too (?P<more_W>much|little|late|early)",),
        ("<d:D> (?:de|demasiado) (?P<more_W>más|menos|tarde|temprano)",),
        off_by,
    ),
    # what was said, beside the count before; of two names of one amount, what is due
    Rule(("are there in <b:V>",), ("hay en <b:V>(?=[?])",), due),
    Rule(
        ("is <h:V> (?:more|less|more or less) than <a:V>",),
        ("es <h:V> (?:más|menos|más o menos) que <a:V>",),
        said_and_before,
    ),
    Rule(
        ("what other name does <h:V> have",),
        ("qué otro nombre tiene <h:V>",),
        lambda c, h: c.same(c.notation.read(str(c.extra["said"])), h["h"]),
    ),
    # the jump
    Rule(
        ("the ones of <a:V> and of <s:D> make a new ten",),
        ("las unidades de <a:V> y de <s:D> forman otra decena",),
        makes_a_ten,
    ),
    Rule(
        ("multiples of <s:D> take over, though the count began at <a:V>",),
        ("los múltiplos conocidos de <s:D>, aunque el conteo empezó con <a:V>",),
        begun_elsewhere,
    ),
    Rule(
        (
            f"jump {BACK_EN}of <s:D> from <a:V>",
            "after <a:V> the jump of <s:D>",
            "from <a:V> a whole is taken away instead of <s:D>",
        ),
        (
            f"salto {BACK_ES}de <s:D> desde <a:V>",
            "después de <a:V> se duplica el salto de <s:D>",
            "de <a:V> se quita una unidad entera y no <s:D>",
        ),
        jump_from,
    ),
    Rule(
        ("by their simplest names <a:V> and the jump of <s:D> have unlike parts",),
        ("con sus nombres más simples, <a:V> y el salto de <s:D> no tienen partes iguales",),
        lambda c, h: jump_from(c, h) and Fraction(h["a"]).denominator != Fraction(h["s"]).denominator,
    ),
    Rule(
        (f"jump {BACK_EN}(?:of )?<s:D>",),
        (f"salto {BACK_ES}(?:de )?<s:D>",),
        jump_size,
    ),
    Rule(
        ("to take <s:D> away", "of our <s:D>", "without our jump of <s:D>", "easier to work with than <s:D>"),
        ("sin dar nuestro salto de <s:D>", "suficientes unidades y quitar <s:D>"),
        jump_size,
    ),
    Rule(
        ("and not by <s:D>", "(?:larger|smaller) part of <s:D>"),
        ("un salto más cómodo que el de <s:D>", "la parte (?:mayor|menor) de <s:D>"),
        jump_size,
    ),
    Rule(("goes on by <s:D>",), ("se cuenta de <s:D> en <again:D>",), jump_made),
    Rule((), ("y no de <s:D> en <again:D>",), twice_the_jump_size),
    Rule((LINE_EN,), (LINE_ES,), line_before),
    # the count before, with something that is so of it
    Rule(
        ("the nine (?:in|at the end of) <a:V>",),
        ("el nueve (?:de|en|del final de) <a:V>", "llegan a nueve en <a:V>"),
        ends_in_nine,
    ),
    Rule(
        ("when <a:V> ends in zero",),
        ("cuando <a:V> termina en cero",),
        lambda c, h: before_it(c, h) and h["a"] % 10 == 0,
    ),
    Rule(("the word for <a:V> sounds like ninety",), ("la palabra de <a:V> suena como noventa",), before_it),
    # the count that is due
    Rule(
        (
            "the word for (?:the hundreds of )?<b:V>",
            "a ten other than <b:V>",
            "<b:V> has no hundreds",
            "(?:the whole )?<b:V> is left out",
            "the value of <b:V>",
            "the zero at the end of <b:V>",
            "<b:V> is said in hundreds",
            "(?:each spoken part|the hundreds|the thousands|the whole and the top number) of <b:V>",
            "(?:the|in the) (?:<w:W>) of <b:V> (?:is|are) (?:left out|written)",
            "the same (?:number|amount), <b:V>",
            "<b:V> has another name",
            "the round number that follows <b:V>",
            "a zero can stand at the end of <b:V>",
            "the parts of <b:V> are named",
            "<b:V> begins with",
            "for <b:V>(?=[.])",
            "the round number below <b:V>",
            "the tens and the ones of <b:V> change places",
            "the zero inside <b:V>",
            "the (?:empty tenths|hundreds) of <b:V>",
        ),
        (
            "la palabra (?:de|para) (?:las centenas de )?<b:V>",
            "otra decena y no <b:V>",
            "se olvida decir <b:V>",
            "el valor de <b:V>",
            "el cero del final de <b:V>",
            "(?:cada parte que se oye|las centenas|los millares|la parte entera y el número de arriba) de <b:V>",
            "la palabra de las centenas de <b:V>",
            "en (?:los|las) <w:W> (?:de|en) <b:V>",
            "entre <w:W> en <b:V>",
            "en <b:V> (?:los|las) <w:W> se escriben",
            "(?:el mismo número|la misma cantidad), <b:V>",
            "<b:V> tiene (?:también )?otro nombre",
            "el número redondo que sigue a <b:V>",
            "al final de <b:V> puede ir un cero",
            "las partes de <b:V> se nombran",
            "<b:V> empieza con",
            "signo de los <w:W> para <b:V>",
            "decenas y unidades en la palabra de <b:V>",
            "el número redondo que está por debajo de <b:V>",
            "las decenas y las unidades de <b:V> cambian de lugar",
            "el cero que está dentro de <b:V>",
            "las (?:centenas|décimas) vacías de <b:V>",
            "en <b:V> no se oyen",
            "en <b:V> se dicen las centenas",
        ),
        due,
    ),
    Rule((), (r"(?:décimos|parte) de (?P<one_N>1)(?= [^\W\d]{3})",), lambda c, h: True),
    # the count before
    Rule(
        (
            "(?:after|from|at|between|is|touch|above|below|past|up to|next to|before|than|with|said|on|in|of|both|does) <a:V>",
            "when <a:V>",
            "<a:V> (?:is said again|was renamed)",
        ),
        (
            "(?:después de|desde|en|entre|toca|señala|de|más allá de|hasta|antes de|que|con|decir|dijimos|a|tiene|tanto) <a:V>",
            "cuando <a:V>",
            "se repite <a:V>",
            "<a:V> recibió",
        ),
        before_it,
    ),
    # one of something, and the other clock
    Rule(
        ("a (?P<clock_W>24)-hour clock",),
        ("un reloj de (?P<clock_W>24) horas",),
        lambda c, h: c.grid.count.style.clock == 12,
    ),
    Rule((), (r"(?P<one_N>1)(?= [^\W\d]{3})",), lambda c, h: True),
)
