"""Phrases about why a pattern is so and why it ends: what a line holds, what jumps make, where a place is full."""

from tests.words.landmark_checks import marks_every
from tests.words.number_checks import jump_is, jumps_make
from tests.words.reason_checks import (
    alike_on_both_sides,
    another_begins,
    beside_a_line,
    clock_turns,
    first_whole_stretch,
    full_place,
    goes_below_zero,
    is_absent,
    is_its_multiple,
    kept_on_both_sides,
    line_and_one,
    line_holds,
    lines_hold,
    multiple_and_rest,
    nearly_of_the_run,
    ones_make_a_ten,
    opened_place,
    start_and_jump_in_parts,
    stays_in_its_lines,
)
from tests.words.sentence_checker import Rule

IN_A = "in a (?P<fills_W>row|column)"
POR = "por (?P<fills_W>fila|columna)"

RULES: tuple[Rule, ...] = (
    # what a line holds
    Rule(
        ("<k:N> is 1 (?P<aside_W>more|less) than the <n:N> " + IN_A,),
        ("<k:N> es 1 (?P<aside_W>más|menos) que los <n:N> de una (?P<fills_W>fila|columna)",),
        lambda c, h: beside_a_line(c, h) and marks_every(c, {"k": h["k"]}),
    ),
    Rule(
        ("<n:N> " + IN_A + "(?: and|,) 1 (?P<aside_W>more|less)",),
        ("<n:N> " + POR + "(?: y|,) 1 (?P<aside_W>más|menos)",),
        line_and_one,
    ),
    Rule(
        ("and <n:N> " + IN_A + " is <q:N> times <k:N>",),
        ("y <n:N> " + POR + " son <q:N> veces <k:N>",),
        lambda c, h: line_holds(c, h) and h["n"] == h["q"] * h["k"] and marks_every(c, {"k": h["k"]}),
    ),
    Rule(
        ("<k:N> jumps make <t:D>",),
        ("<k:N> saltos hacen <t:D>",),
        lambda c, h: marks_every(c, {"k": h["k"]}) and h["t"] == h["k"] * abs(c.grid.count.step),
    ),
    Rule(("<n:N> " + IN_A,), ("<n:N> " + POR,), line_holds),
    Rule(
        ("<k:N> counts are <n:N> (?P<fills_W>row|column)s",),
        ("<k:N> lugares son <n:N> (?P<fills_W>fila|columna)s",),
        lambda c, h: lines_hold(c, h) and marks_every(c, {"k": h["k"]}),
    ),
    Rule(
        ("so they stay in their (?P<lines_W>rows|columns)",),
        ("por eso no salen de sus (?P<lines_W>filas|columnas)",),
        stays_in_its_lines,
    ),
    # what jumps make
    Rule(
        ("<k:N> jumps of <s:D> make <q:N> <m:M>",),
        ("<k:N> saltos de <s:D> hacen <q:N> <m:M>",),
        lambda c, h: jumps_make(c, h | {"t": h["q"] * h["m"]}),
    ),
    Rule(
        ("each jump is <q:N> <m:M>",),
        ("cada salto es de <q:N> <m:M>",),
        lambda c, h: jump_is(c, {"s": h["q"] * h["m"]}),
    ),
    Rule(
        ("and <t:D> is a multiple of <m:D>",),
        ("y <t:D> es un múltiplo de <m:D>",),
        is_its_multiple,
    ),
    # the answer to a table that starts elsewhere
    Rule(
        ("<v:V> is <r:D> more than <b:V>, and <d:V> is <q:N> × <m:D>",),
        ("<v:V> (?:es|son) <r:D> más que <b:V>, y <d:V> (?:es|son) <q:N> × <m:D>",),
        multiple_and_rest,
    ),
    # where whole stretches begin
    Rule(("from <v:V> on,", "below <v:V>,"), ("a partir de <v:V>,", "por debajo de <v:V>,"), first_whole_stretch),
    # why it ends
    Rule(
        ("at <v:V>, <x:N> <p:M> make 1 <m:M>, and 10 <r:M> make 1 <u:M>",),
        ("(?:en|a) <v:V>, <x:N> <p:M> hacen 1 <m:M>, y 10 <r:M> hacen 1 <u:M>",),
        lambda c, h: full_place(c, h) and h["r"] == h["m"] and h["u"] == 10 * h["m"] and h["v"] % h["u"] == 0,
    ),
    Rule(
        ("at <v:V>, <x:N> <p:M> make 1 <m:M>(?: and <y:N> <r:M>)?",),
        ("(?:en|a) <v:V>, <x:N> <p:M> hacen 1 <m:M>(?: y <y:N> <r:M>)?",),
        full_place,
    ),
    Rule(
        ("at <v:V> an? <m:M> is opened into 10 <p:M>, and the <f:W> (?:is|are) <y:S>",),
        ("(?:en|a) <v:V> se cambia una? <m:M> por 10 <p:M>, y (?:el|la|los|las) <f:W> (?:es|son) <y:S>",),
        opened_place,
    ),
    Rule(
        ("at <v:V>, <x:N> and <y:N> ones make a new ten, so the tens go up by <q:N>",),
        ("(?:en|a) <v:V>, <x:N> y <y:N> unidades hacen otra decena, y las decenas suben <q:N>",),
        ones_make_a_ten,
    ),
    Rule(
        ("the <f:W> of <a:V> is <x:N>, and so is that of each jump of <s:D>",),
        ("(?:el|la) <f:W> de <a:V> es <x:N>, y también el de cada salto de <s:D>",),
        start_and_jump_in_parts,
    ),
    Rule(
        ("each jump of <s:D> is <r:D> (?P<aside_W>more|less) than <t:D>",),
        ("cada salto de <s:D> es <r:D> (?P<aside_W>más|menos) que <t:D>",),
        nearly_of_the_run,
    ),
    Rule(
        ("at <v:V> we come to another <m:M>, and the <f:W> (?:is|are) <y:S>",),
        ("(?:en|a) <v:V> llegamos a otr[oa] <m:M>: (?:el|la|los|las) <f:W> (?:es|son) <y:S>",),
        another_begins,
    ),
    Rule(
        ("the <f:W> of <a:V> and of <v:V> (?:is|are) <y:N>",),
        ("(?:el|la|los|las) <f:W> de <a:V> y de <v:V> (?:es|son) <y:N>",),
        alike_on_both_sides,
    ),
    Rule(
        ("(?:every count lands on an?|all lie on) <m:M>, and <t:D> (?P<more_W>more|less) keeps the",),
        ("todos (?:los números )?son <m:M>, y con <t:D> (?P<more_W>más|menos) (?:los|las)",),
        kept_on_both_sides,
    ),
    Rule(("at <v:V> we go below 0",), ("(?:en|a) <v:V> bajamos de 0",), goes_below_zero),
    Rule(
        ("at <v:V> no <f:W> is written",),
        ("(?:en|a) <v:V> no se escribe (?:el|la|los|las) <f:W>(?=[.])",),
        is_absent,
    ),
    Rule(
        ("at <v:V> the <f:W> we write go from <x:N> (?P<turn_W>back|up) to <y:N>",),
        ("(?:en|a) <v:V> (?:el|la|los|las) <f:W> que escribimos (?P<turn_W>vuelven|pasan) de <x:N> a <y:N>",),
        clock_turns,
    ),
)
