"""Phrases about whether, where and why a value is counted, and the ways to it through the grid."""

from tests.words.number_names import MONEY, MULTIPLES
from tests.words.place_checks import (
    all_of_parity,
    ends_alike,
    ends_in,
    far_from_start,
    goes,
    is_behind,
    is_met,
    is_met_later,
    is_met_now,
    is_probe_landmark,
    is_skipped,
    is_start_itself,
    jumps_on,
    jumps_past_the_end,
    jumps_say,
    jumps_to_asked,
    left_past_whole,
    like_a_count,
    like_a_mark,
    lines_on,
    lines_past_the_end,
    multiple_of_the_step,
    neighbours_are,
    part_is_only,
    past_multiple,
    reached_and_passed,
    route_of_jumps,
    route_of_moves,
    rule_for_any_number,
    short_of_a_jump,
    stands_above,
)
from tests.words.rule_pieces import MORE, more
from tests.words.sentence_checker import Rule

AT_EN = "row <row:N>, column <column:N>"
AT_ES = "fila <row:N>, columna <column:N>"
PART_EN = r"(?: (?P<part_W>(?:in the|at) [a-z]+))?"
PART_ES = r"(?: (?P<part_W>(?:de la|del) [a-zñí]+))?"
JUMPS_EN = "<k:N> jumps? of <s:D>"
JUMPS_ES = "<k:N> saltos? de <s:D>"
DOWN = r"(?P<down_W>down to 0, |hasta(?: el)? 0: )?"
A_MARK_EN, A_MARK_ES = (f"{a} (?P<mark_W>{MONEY}|{MULTIPLES})" for a in ("an?", "una?"))
PARITY_EN, PARITY_ES = "(?P<p_W>even|odd)", "(?P<p_W>pares|impares)"


def change(number: str) -> str:
    """What a move changes, in brackets, where it is said."""
    return rf"(?: \(<d{number}:D> {more('more' + number)}\))?"


def moves(way: str, and_: str) -> str:
    """One move through the grid, or two."""
    first, second = (rf"<k{n}:N> (?P<way{n}_W>{way}){change(n)}" for n in "12")
    return f"{first}(?: {and_} {second})?"


BEYOND_EN = "(?:<k:N> (?:rows|columns) )?(?P<way_W>under|beside|past|above)"
BEYOND_ES = "(?:<k:N> (?:filas|columnas) )?(?P<way_W>debajo|al lado|después|encima) de(?: las?| el)?"
WAY_EN = "rows? down|rows? up|right|left"
WAY_ES = "filas? abajo|filas? arriba|a la derecha|a la izquierda"

UP_EN = "column <column:N>, (?:<lines:N> lines? above|in) today's top line"
UP_ES = "columna <column:N>, (?:<lines:N> líneas? por encima de la|en la línea) más alta de hoy"

RULES: tuple[Rule, ...] = (
    Rule(
        (f"yes, if we go on: <v:V> comes{PART_EN} in {UP_EN}",),
        (f"sí, si seguimos: decimos <v:V>{PART_ES} en la {UP_ES}",),
        lambda c, h: is_met_later(c, h) and stands_above(c, h),
    ),
    Rule((UP_EN,), (UP_ES,), stands_above),
    # how it follows from the last count on the board in its line
    Rule(
        (
            f"^yes, (?:<v:V>|in {AT_EN}): {BEYOND_EN} <a:V>, <d:D> {MORE}",
            f"^yes, in {AT_EN}: <d:D> {MORE} than <a:V>",
            f"^yes, in column <column:N>: {BEYOND_EN} <a:V>, <d:D> {MORE}",
            f"^yes, in column <column:N>: <d:D> {MORE} than <a:V>",
            f"(?<=: ){BEYOND_EN} <a:V>, <d:D> {MORE}",
            f"(?<=: )<d:D> {MORE} than <a:V>",
        ),
        (
            f"^sí, (?:<v:V>|en la {AT_ES}): {BEYOND_ES} <a:V>, <d:D> {MORE}",
            f"^sí, en la {AT_ES}: <d:D> {MORE} que <a:V>",
            f"^sí, en la columna <column:N>: {BEYOND_ES} <a:V>, <d:D> {MORE}",
            f"^sí, en la columna <column:N>: <d:D> {MORE} que <a:V>",
            f"(?<=: ){BEYOND_ES} <a:V>, <d:D> {MORE}",
            f"(?<=: )<d:D> {MORE} que <a:V>",
        ),
        lines_past_the_end,
    ),
    Rule(
        (
            r"^yes[.] rule: go (?P<way_W>on|back) in whole jumps of <s:D> from <a:V>; "
            rf"<v:V> is <t:D> {more('more2')}, <k:N> × <again:D>",
        ),
        (
            r"^sí[.] regla: (?P<way_W>avanzar|retroceder) a saltos completos de <s:D> desde <a:V>; "
            rf"<v:V> (?:es|son) <t:D> {more('more2')}, <k:N> × <again:D>",
        ),
        rule_for_any_number,
    ),
    Rule(
        ("^yes, <v:V>: <k:N> more jumps from <a:V>",),
        ("^sí, <v:V>: <k:N> saltos más desde <a:V>",),
        jumps_past_the_end,
    ),
    Rule(
        (
            rf"(?<=; )or {JUMPS_EN} from <a:V>(?=[.](?!\d)|$)",
            r"(?<=; )or <k:N> jumps from <a:V>(?=[.](?!\d)|$)",
            rf"(?<=; )as a rule, {JUMPS_EN} make <t:D>(?=[.](?!\d))",
        ),
        (
            rf"(?<=; )o {JUMPS_ES} desde <a:V>(?=[.](?!\d)|$)",
            r"(?<=; )o <k:N> saltos desde <a:V>(?=[.](?!\d)|$)",
            rf"(?<=; )como regla, {JUMPS_ES} hacen <t:D>(?=[.](?!\d))",
        ),
        jumps_to_asked,
    ),
    # numbers to ask about
    Rule(
        (
            f"the <n:O> count, in {AT_EN}: a landmark, a multiple of <m:D>",
            f"the <n:O> count, in {AT_EN}: a landmark, {A_MARK_EN}",
        ),
        (
            f"es el <n:O> número, en la {AT_ES}: un punto de referencia, un múltiplo de <m:D>",
            f"es el <n:O> número, en la {AT_ES}: un punto de referencia, {A_MARK_ES}",
        ),
        is_probe_landmark,
    ),
    Rule(
        (f"the <n:O> count, in {AT_EN}: <k:N> lines on from <a:V>",),
        (f"es el <n:O> número, en la {AT_ES}: <k:N> líneas después de <a:V>",),
        lines_on,
    ),
    Rule(
        (f"the <n:O> count, in {AT_EN}: one line on from <a:V>",),
        (f"es el <n:O> número, en la {AT_ES}: una línea después de <a:V>",),
        lambda c, h: lines_on(c, h | {"k": 1}),
    ),
    Rule(
        (f"the <n:O> count, in {AT_EN}: (?:one jump|<k:N> jumps) on from <a:V>",),
        (f"es el <n:O> número, en la {AT_ES}: (?:un salto|<k:N> saltos) después de <a:V>",),
        jumps_on,
    ),
    Rule(
        (f"past the end, the <n:O> count, in {AT_EN}",),
        (f"más allá del final, es el <n:O> número, en la {AT_ES}",),
        is_met_later,
    ),
    Rule(
        ("it is a multiple of <m:D>, and each jump is <s:D>, but the count starts at <a:V>",),
        ("es un múltiplo de <m:D>, y cada salto es de <s:D>, pero el conteo empieza con <a:V>",),
        multiple_of_the_step,
    ),
    Rule(
        ("it ends in <y:N>, as <a:V> does",),
        ("termina en <y:N>, igual que <a:V>",),
        ends_alike,
    ),
    Rule(
        (
            "like (?:every count here|<a:V>), it is <x:D> more than a multiple of <m:D>",
            "like (?:every count here|<a:V>), it is a multiple of <m:D>",
        ),
        (
            "(?:como todos los de este conteo|igual que <a:V>), es <x:D> más que un múltiplo de <m:D>",
            "(?:como todos los de este conteo|igual que <a:V>), es un múltiplo de <m:D>",
        ),
        like_a_count,
    ),
    Rule(
        (f"like <a:V>, it is {A_MARK_EN}",),
        (f"igual que <a:V>, es {A_MARK_ES}",),
        like_a_mark,
    ),
    Rule(
        ("but it is jumped over, from <a:V> to <b:V>", "it is jumped over, from <a:V> to <b:V>"),
        ("pero lo saltamos, de <a:V> a <b:V>", "lo saltamos, de <a:V> a <b:V>"),
        neighbours_are,
    ),
    Rule(
        ("it lies on the other side of <a:V>: each jump of <s:D> goes away from it",),
        ("queda al otro lado de <a:V>: cada salto de <s:D> se aleja de ahí",),
        is_behind,
    ),
    # ways to it
    Rule(
        (f"from <a:V>(?:, the <o:O> count)?: {JUMPS_EN}{change('')}(?=[.]$)",),
        (f"desde <a:V>(?:, el <o:O> número)?: {JUMPS_ES}{change('')}(?=[.]$)",),
        route_of_jumps,
    ),
    Rule(
        (f"from <a:V>(?:, the <o:O> count)?: {moves(WAY_EN, 'and')}",),
        (f"desde <a:V>(?:, el <o:O> número)?: {moves(WAY_ES, 'y')}",),
        route_of_moves,
    ),
    # the start
    Rule(
        (f"<v:V> is (?:where we start|where the count starts|the start itself)(?:: {AT_EN})?",),
        (f"(?:el conteo empieza|empezamos) con <v:V>(?:: {AT_ES}|(?=[.] señala))",),
        is_start_itself,
    ),
    Rule(
        ("it takes <k:N> jumps, so it is the <n:O> count",),
        ("hacen falta <k:N> saltos: es el <n:O> número",),
        lambda c, h: is_met(c, h) and h["k"] == h["n"] - 1,
    ),
    # it is counted
    Rule((f"<v:V> is there: {AT_EN}",), (f"decimos <v:V>: {AT_ES}",), is_met_now),
    Rule(
        (f"yes, if we go on: <v:V> comes{PART_EN},? in (?:row <row:N>(?:, column <column:N>)?|column ~)",),
        (f"sí, si seguimos: decimos <v:V>{PART_ES},? en la (?:fila <row:N>(?:, columna <column:N>)?|columna ~)",),
        is_met_later,
    ),
    Rule(
        (
            f"from <a:V>, {JUMPS_EN} (?P<verb_W>makes?) <t:D>: <v:V> (?:is|comes) in(?: {AT_EN})?",
            f"{JUMPS_EN} from <a:V> leads? to <v:V>{PART_EN}(?:(?:: |, in ){AT_EN})?",
        ),
        (
            f"desde <a:V>, {JUMPS_ES} (?P<verb_W>hacen?) <t:D>: llegamos a <v:V>(?:(?: en la|,) {AT_ES})?",
            f"{JUMPS_ES} desde <a:V> llevan? a <v:V>{PART_ES}(?:(?:: |, en la ){AT_ES})?",
        ),
        jumps_to_asked,
    ),
    Rule(
        (f"the first <v:V> comes{PART_EN}",),
        (f"llegamos por primera vez a <v:V>{PART_ES}",),
        is_met_later,
    ),
    Rule(
        (
            f"<v:V> (?:is|would be|must be) the <n:O> count(?:(?:: |, in ){AT_EN})?",
            f"it is the <n:O> count(?:, the <turn:O> time around the clock)?(?:(?:: |, in |, ){AT_EN})?",
        ),
        (
            f"<v:V> es el <n:O> número(?:(?:: |, en la ){AT_ES})?",
            f"(?:es|sería|tiene que ser) el <n:O> número(?:, en la <turn:O> vuelta del reloj)?(?:(?:: |, en la |, ){AT_ES})?",
        ),
        is_met,
    ),
    # it is jumped over
    Rule(
        ("<v:V> is <t:D> away from <a:V>, less than one jump of <s:D>",),
        ("de <a:V> a <v:V> van <t:D>, menos que un salto de <s:D>",),
        short_of_a_jump,
    ),
    Rule(
        (),
        (f"{JUMPS_ES} solo (?P<verb_W>hacen?) <t:D>, y uno más hace <u:D>",),
        lambda c, h: reached_and_passed(c, h) and jumps_say(c, h),
    ),
    Rule(
        (
            "we say <a:V>, then <b:V>",
            f"from <start:V>, {JUMPS_EN} leads? to <a:V> and one more to <b:V>",
            "the very first jump leads from <a:V> to <b:V>",
        ),
        (
            "decimos <a:V> y luego <b:V>",
            f"desde <start:V>, {JUMPS_ES} llevan? a <a:V> y uno más a <b:V>",
            "el primer salto ya lleva de <a:V> a <b:V>",
        ),
        neighbours_are,
    ),
    Rule(
        ("we jump over <v:V>", "<v:V> is jumped over", "<v:V> never comes"),
        ("saltamos por encima de <v:V>", "nunca llegamos a <v:V>"),
        is_skipped,
    ),
    # it lies behind
    Rule(
        ("we start at <a:V> and go (?P<way_W>up|down), away from <v:V>",),
        ("empezamos con <a:V> y contamos hacia (?P<way_W>arriba|abajo), lejos de <v:V>",),
        lambda c, h: goes(c, h) and is_behind(c, h),
    ),
    Rule(
        (
            "the count starts at <a:V> and goes (?P<way_W>up|down), so <v:V> is behind it",
            "the count starts at <a:V> and goes (?P<way_W>up|down) by <s:D>, so it never comes back to <v:V>, <t:D> behind",
        ),
        (
            "el conteo empieza con <a:V> y va hacia (?P<way_W>arriba|abajo); <v:V> queda atrás",
            "el conteo empieza con <a:V> y va hacia (?P<way_W>arriba|abajo) de <s:D> en <s2:D>: nunca vuelve a <v:V>, <t:D> más",
        ),
        lambda c, h: goes(c, h) and is_behind(c, h),
    ),
    Rule(
        ("<v:V> lies <t:D> behind <a:V>, and every jump of <s:D>",),
        ("de <v:V> a <a:V> van <t:D>, y cada salto de <s:D> se aleja más de <w:V>",),
        lambda c, h: is_behind(c, h) and h.get("w", h["v"]) == h["v"],
    ),
    # how far it is
    Rule(
        (f"from <a:V> to <v:V>{PART_EN} is <t:D>", f"<v:V>{PART_EN} is <t:D> away from <a:V>"),
        (f"de <a:V> a <v:V>{PART_ES} van <t:D>",),
        far_from_start,
    ),
    Rule(
        (f"{JUMPS_EN} (?P<verb_W>makes?)(?: exactly)? <t:D>",),
        (f"{JUMPS_ES} (?P<verb_W>hacen?)(?: exactamente)? <t:D>",),
        lambda c, h: jumps_say(c, h) and jumps_to_asked(c, h),
    ),
    # marks
    Rule(
        (f"every count here is {PARITY_EN}, and <v:V> is (?P<q_W>even|odd)",),
        (f"aquí todos los números son {PARITY_ES}, y <v:V> es (?P<q_W>par|impar)",),
        all_of_parity,
    ),
    Rule(
        (DOWN + "(?:every count here ends in|the endings here are only) <x:S>; <v:V> ends in <y:S>",),
        (DOWN + "aquí (?:todos los números terminan|los números solo terminan) en <x:S>; <v:V> termina en <y:S>",),
        ends_in,
    ),
    Rule(
        (DOWN + "the <f:W> here are (?:always|only) <x:L>; <v:V> has <y:L>",),
        (DOWN + "aquí, en <f:W>, (?:siempre|solo) hay <x:L>; (?:en|a) <v:V> hay <y:L>",),
        part_is_only,
    ),
    Rule(
        (
            DOWN
            + "past (?:its|the) last whole, (?:every count here has|the counts here have only) <x:S> left; <v:V> has <y:S>",
        ),
        (DOWN + "aquí, después del último entero, (?:siempre queda|solo quedan) <x:S>; (?:en|a) <v:V> queda <y:S>",),
        left_past_whole,
    ),
    Rule(
        (
            "every count here is <x:D> more than a multiple of <m:D>; <v:V> is <y:D> more",
            "every count here is a multiple of <m:D>; <v:V> is <y:D> more than a multiple",
            "<v:V> is a multiple of <m:D>; every count here is <x:D> more than a multiple",
        ),
        (
            "aquí cada número es <x:D> más que un múltiplo de <m:D>; <v:V> (?:es|son) <y:D> más",
            "aquí cada número es un múltiplo de <m:D>; <v:V> (?:es|son) <y:D> más que un múltiplo",
            "<v:V> es un múltiplo de <m:D>; aquí cada número es <x:D> más que un múltiplo",
        ),
        past_multiple,
    ),
    Rule(("it is the <n:O> count",), ("es el <n:O> número",), is_met),
)
