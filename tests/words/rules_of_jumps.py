"""Phrases about jumps, the ends of claims, places in the count, steps."""

from tests.words.landmark_checks import is_own_multiple, mark_at_break
from tests.words.line_checks import note_shows, parity_of
from tests.words.number_checks import (
    breaks,
    change_is,
    jump_is,
    jump_so_many,
    jumps_make,
    jumps_so_many,
    term_is,
)
from tests.words.rule_pieces import AFTER, LINE_EN, LINE_ES, MORE
from tests.words.sentence_checker import Rule
from tests.words.sum_checks import opposite, table_term
from tests.words.verdict_checks import line_up_to, reads_there, two_of_a_line

RULES: tuple[Rule, ...] = (
    # names that hold a number
    Rule(("remainders? past a multiple of <m:D>",), ("residuos? al dividir entre <m:D>",), is_own_multiple),
    Rule(("parts? past an? <m:M>",), ("partes? que pasan? de (?:una? )?<m:M>",), is_own_multiple),
    # jumps
    Rule(
        (
            "<k:N> jumps of <s:D> make <t:D>, which is <q:N> <m:M>",
            "<k:N> jumps of <s:D> make <t:D>, which is <q:N> × <m:D>",
        ),
        (
            "<k:N> saltos de <s:D> hacen <t:D>, (?:o sea,|que es lo mismo que) <q:N> <m:M>",
            "<k:N> saltos de <s:D> hacen <t:D>, (?:o sea,|que es lo mismo que) <q:N> × <m:D>",
        ),
        jumps_so_many,
    ),
    Rule(
        (
            "each jump is <s:D>, which is <q:N> <m:M>",
            "each jump is <s:D>, which is <q:N> × <m:D>",
            "each jump of <s:D> is <q:N> <m:M>",
            "each jump of <s:D> is <q:N> × <m:D>",
        ),
        (
            "cada salto es de <s:D>, (?:o sea,|que es lo mismo que) <q:N> <m:M>",
            "cada salto es de <s:D>, (?:o sea,|que es lo mismo que) <q:N> × <m:D>",
            "cada salto de <s:D> es <q:N> <m:M>",
            "cada salto de <s:D> es <q:N> × <m:D>",
        ),
        jump_so_many,
    ),
    Rule(("<k:N> jumps of <s:D> make <t:D>",), ("<k:N> saltos de <s:D> hacen <t:D>",), jumps_make),
    Rule(
        ("a jump of <a:D> is (?P<p_W>even|odd): from <b:V>, (?P<q_W>even|odd), we come to <c:V>, (?P<r_W>even|odd)",),
        (
            "un salto de <a:D> es (?P<p_W>par|impar): de <b:V>, (?P<q_W>par|impar), llegamos a <c:V>, (?P<r_W>par|impar)",
        ),
        lambda c, h: (
            parity_of(c, h) and parity_of(c, {"a": h["b"], "p": h["q"]}) and parity_of(c, {"a": h["c"], "p": h["r"]})
        ),
    ),
    Rule(
        ("(?:a|each) jump of <a:D> is (?P<p_W>even|odd)",),
        ("(?:un|cada) salto de <a:D> es (?P<p_W>par|impar)",),
        lambda c, h: parity_of(c, h) and jump_is(c, {"s": h["a"]}),
    ),
    Rule(
        (r"each jump is <s:D>(?: more| less)?", "(?:a|each) jump of <s:D>"),
        (r"cada salto es de <s:D>(?: más| menos)?", "(?:un|cada) salto de <s:D>"),
        jump_is,
    ),
    # where something ends
    Rule(
        ("at <v:V> the <f:W> (?:is|are) <y:S>, not <x:S>", "at <v:V> the <f:W> (?:is|are) <y:S> where <x:S> was due"),
        (
            "(?:en|a) <v:V> (?:el|la|los|las) <f:W> (?:es|son) <y:S>, no <x:S>",
            "(?:en|a) <v:V> (?:el|la|los|las) <f:W> (?:es|son) <y:S> y tocaba <x:S>",
        ),
        note_shows,
    ),
    Rule(
        (
            "at <v:V> the <f:W> starts? again at <y:S>",
            "at <v:V> it starts again at <y:S>",
            "at <v:V> it is <y:S>, not <x:S>",
        ),
        (
            "(?:en|a) <v:V> (?:el|la|los|las) <f:W> vuelven? a empezar en <y:S>",
            "(?:en|a) <v:V> vuelve a empezar en <y:S>",
            "(?:en|a) <v:V> es <y:S>, no <x:S>",
        ),
        note_shows,
    ),
    Rule(
        ("at <v:V> the <f:W> (?:is|are) <y:S>",),
        ("(?:en|a) <v:V> (?:el|la|los|las) <f:W> (?:es|son) <y:S>",),
        note_shows,
    ),
    Rule(
        ("<v:V> lands on an? <m:M> too, but it goes in row <row:N>, column <column:N>",),
        ("(?:en|a) <v:V> también caemos en una? <m:M>, pero va en la fila <row:N>, columna <column:N>",),
        mark_at_break,
    ),
    Rule(
        ("<v:V> comes in row <row:N>, column <column:N>, and it is (?P<not_W>not) an? <m:M>",),
        ("<v:V> queda en la fila <row:N>, columna <column:N>, y ahí (?P<not_W>no) hay una? <m:M>",),
        mark_at_break,
    ),
    Rule(
        ("at <v:V> one more pair comes, <a:V> and <b:V>",),
        ("(?:en|a) <v:V> llega una pareja más, <a:V> y <b:V>",),
        lambda c, h: breaks(c, h) and opposite(c, h),
    ),
    Rule(
        (
            "it stops at <v:V>",
            "it is different at <v:V>",
            "that changes at <v:V>",
            "until <v:V>",
            "at <v:V> another pair comes",
        ),
        (
            "deja de cumplirse (?:en|a) <v:V>",
            "(?:en|a) <v:V> cambia",
            "eso cambia (?:en|a) <v:V>",
            "hasta llegar a <v:V>",
            "(?:en|a) <v:V> llega otra pareja",
        ),
        breaks,
    ),
    # the table
    Rule(
        ("the <n:O> is <k:N> jumps of <s:D> from zero", "the <n:O> one we say is <k:N> times <s:D>"),
        ("el <n:O> número está a <k:N> saltos de <s:D> desde cero", "el <n:O> número es <k:N> veces <s:D>"),
        table_term,
    ),
    # terms by their place in the count
    Rule(
        (
            "the <n:O> count is <v:V>, and in " + LINE_EN + " the <f:W> are <s:S>",
            "the <n:O> count is <v:V>, and the <f:W> go <s:S>",
        ),
        (
            "el <n:O> número es <v:V>, y en la " + LINE_ES + " (?:los|las) <f:W> son <s:S>",
            "el <n:O> número es <v:V>, y (?:los|las) <f:W> van así: <s:S>",
        ),
        line_up_to,
    ),
    Rule(
        (f"in {LINE_EN} the <f:W> of <a:V> and <v:V>, in (?:rows|columns) <r:N> and <t:N>, are <s:S>",),
        (f"en la {LINE_ES}, (?:los|las) <f:W> de <a:V> y <v:V>, en las (?:filas|columnas) <r:N> y <t:N>, son <s:S>",),
        two_of_a_line,
    ),
    Rule(
        (
            f"in {LINE_EN}, <a:V> in (?:row|column) <r:N> is (?P<p_W>even|odd), and <v:V> in (?:row|column) <t:N> "
            "is (?P<q_W>even|odd)",
        ),
        (
            f"en la {LINE_ES}, <a:V> en la (?:fila|columna) <r:N> es (?P<p_W>par|impar), y <v:V> en la (?:fila|columna) "
            "<t:N> es (?P<q_W>par|impar)",
        ),
        lambda c, h: (
            two_of_a_line(c, h)
            and h["p"] != h["q"]
            and parity_of(c, {"a": h["a"], "p": h["p"]})
            and parity_of(c, {"a": h["v"], "p": h["q"]})
        ),
    ),
    Rule(
        ("the <n:O> count is <v:V>, and the <f:W> (?:is|are) <x:S>",),
        ("el <n:O> número es <v:V>, y (?:los|las|el|la) <f:W> (?:es|son) <x:S>",),
        reads_there,
    ),
    Rule(
        (
            "the <n:O> count, <v:V>",
            "the <n:O> count is <v:V>",
            "<v:V> is the <n:O> count",
            "the <n:O> one we wrote, <v:V>",
        ),
        (
            "el <n:O> número, <v:V>",
            "el <n:O> número es <v:V>",
            "<v:V> es el <n:O> número",
            "el <n:O> número que escribimos, <v:V>",
        ),
        term_is,
    ),
    Rule(
        ("from the <n:O> count on it holds",),
        ("desde el <n:O> número sí se cumple",),
        lambda c, h: h["n"] == c.true_from,
    ),
    # times
    Rule(
        ("<d:D> " + AFTER + " <a:V> it is <b:V>",),
        ("<d:D> " + AFTER + " de <a:V> llegamos a <b:V>",),
        lambda c, h: change_is(c, {**h, "more": h["after"]}) and c.is_term(h["a"]) and c.is_term(h["b"]),
    ),
    Rule(
        ("from <a:V> we come to <b:V>, <d:D> " + MORE + ", and then to <z:V>, <e:D> (?:later|earlier) again",),
        ("empezamos (?:en|con) <a:V>, <d:D> " + MORE + " llegamos a <b:V> y otros <e:D> (?:más tarde|antes) a <z:V>",),
        lambda c, h: change_is(c, h) and change_is(c, {"a": h["b"], "d": h["e"], "b": h["z"], "more": h["more"]}),
    ),
    Rule(
        (
            "(?:one step [a-z ]+ )?from <a:V> we come to <b:V>, <d:D> " + MORE,
            "from <a:V> to <b:V>, <d:D> " + MORE + " too",
        ),
        (
            "(?:mira: )?(?:des)?de <a:V>,? llegamos a <b:V>, <d:D> " + MORE,
            "de <a:V> a <b:V>, también <d:D> " + MORE,
        ),
        lambda c, h: change_is(c, h) and c.is_term(h["a"]) and c.is_term(h["b"]),
    ),
    # steps and neighbours
    Rule(
        (),
        ("empezamos (?:en|con) <a:V>, con <d:D> " + MORE + " llegamos a <b:V> y con <e:D> (?:más|menos) a <z:V>",),
        lambda c, h: change_is(c, h) and change_is(c, {"a": h["b"], "d": h["e"], "b": h["z"], "more": h["more"]}),
    ),
    Rule(
        (
            "<d:D> " + MORE + " than <a:V> is <b:V>",
            r"from <a:V> to <b:V>(?:, one step [a-z ]+,)? (?:it )?is <d:D> " + MORE,
        ),
        (
            "empezamos (?:en|con) <a:V> y con <d:D> " + MORE + " llegamos a <b:V>",
            "<b:V> (?:es|son) <d:D> " + MORE + " que <a:V>",
            r"(?:mira )?de <a:V> a <b:V>(?:,|:)? hay (?:otra vez |también )?<d:D> " + MORE,
        ),
        lambda c, h: change_is(c, h) and c.is_term(h["a"]) and c.is_term(h["b"]),
    ),
)
