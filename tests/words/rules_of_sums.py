"""Phrases about sums, the table, opposites, even and odd, remainders."""

from tests.words.landmark_checks import parity_total
from tests.words.line_checks import all_past, parities_of, parity_of, past_is, two_parities_in_line
from tests.words.number_checks import adds, claim_of, is_product, so_many
from tests.words.rule_pieces import LINE_EN, LINE_ES, MORE
from tests.words.sentence_checker import Rule
from tests.words.sum_checks import (
    always,
    digit_sum,
    ends_move,
    far_from_zero,
    line_adds,
    nine_total,
    opposite,
    opposite_pairs,
    pair_sums,
    pair_total,
    totals_grow,
    totals_product,
)

RULES: tuple[Rule, ...] = (
    # sums
    Rule(
        (
            "<a:V> \\+ <b:V> = <s:D>; one side moves (?:up|down) <p:D>, the other (?:up|down) <q:D>, and <x:V> \\+ <y:V> = <u:D>",
        ),
        (
            "<a:V> \\+ <b:V> = <s:D>; un lado (?:sube|baja) <p:D>, el otro (?:sube|baja) <q:D>, y <x:V> \\+ <y:V> = <u:D>",
        ),
        ends_move,
    ),
    Rule(
        ("<a:V> \\+ <b:V> and <x:V> \\+ <y:V> both make <s:D>",),
        ("<a:V> \\+ <b:V> y <x:V> \\+ <y:V> hacen <s:D> las dos veces",),
        pair_sums,
    ),
    Rule(
        (r"(?P<digits_W>\d(?: \+ \d)+) = <s:N>",),
        (r"(?P<digits_W>\d(?: \+ \d)+) = <s:N>",),
        digit_sum,
        family="digit-sum",
    ),
    Rule(
        ("<a:V> \\+ <b:V> = <x:V> \\+ <y:V>",),
        ("<a:V> \\+ <b:V> = <x:V> \\+ <y:V>",),
        lambda c, h: pair_sums(c, {**h, "s": h["a"] + h["b"]}),
    ),
    Rule(("<a:V> \\+ <b:V> = <s:D>",), ("<a:V> \\+ <b:V> = <s:D>",), adds),
    Rule(
        (
            "<k:N> counts, each <e:D> (?:more|less), make <t:D> (?:more|less): <n:N> × <a:D> = <b:D>",
            "<k:N> counts in a [a-z]+, each <e:D> (?:more|less) than in the [a-z]+ before, and <n:N> × <a:D> = <t:D>",
        ),
        (
            "<k:N> números, cada uno <e:D> (?:más|menos), hacen <t:D> (?:más|menos): <n:N> × <a:D> = <b:D>",
            "<k:N> números en una [a-z]+, cada uno <e:D> (?:más|menos) que en la [a-z]+ anterior, y <n:N> × <a:D> = <t:D>",
        ),
        totals_product,
    ),
    Rule(
        (LINE_EN + " adds to <s:D>", LINE_EN + " to <s:D>"),
        ("la " + LINE_ES + " suma <s:D>",),
        line_adds,
    ),
    Rule(
        (
            "the block's 9 counts add to <s:D>, and 9 × <v:V> = <t:D>",
            "with <v:V> in the middle, nine numbers make <s:D>",
        ),
        ("los 9 del bloque suman <s:D>, y 9 × <v:V> = <t:D>", "con <v:V> en medio, nueve números suman <s:D>"),
        nine_total,
    ),
    Rule(
        ("adds to <d:D> " + MORE + " than", "totals go (?P<up_W>up|down) <d:D> from", "the next has <d:D> " + MORE),
        ("suma <d:D> " + MORE + " que", "el total (?P<up_W>sube|baja) <d:D>", "la siguiente tiene <d:D> " + MORE),
        totals_grow,
    ),
    Rule(
        ("in every (?:2 by 2|3 by 3) block", "of every (?:2 by 2|3 by 3) block", "9 × the middle"),
        ("(?:en|de) cada bloque de (?:2 por 2|3 por 3)", "9 × el centro"),
        always,
    ),
    # more of the table
    Rule(
        ("the start is 1 × <s:D>, and each jump is one more <e:D>",),
        ("empezamos en 1 × <s:D> y cada salto suma <e:D> más",),
        lambda c, h: h["s"] == h["e"] == c.value(1) == c.grid.count.step,
    ),
    Rule(
        ("count the jumps up to <v:V>: there are <k:N>",),
        ("cuenta los saltos hasta <v:V>: hay <k:N>",),
        lambda c, h: h["k"] * c.grid.count.step == h["v"],
    ),
    Rule(
        ("that makes <v:V>", "so that one is <v:V>"),
        ("eso da <v:V>", "por eso ahí está <v:V>"),
        lambda c, h: c.is_term(h["v"]),
    ),
    Rule(
        ("here both make <s:D>", "both times I get <s:D>"),
        ("aquí las dos veces da <s:D>", "las dos veces me da <s:D>"),
        pair_total,
    ),
    Rule(("that is <n:N> × <a:D>",), ("(?<=:) es <n:N> × <a:D>",), lambda c, h: h["a"] == c.grid.count.step),
    Rule(("<n:N> × <a:D> = <b:D>",), ("<n:N> × <a:D> = <b:D>",), is_product),
    Rule(
        ("its place times <s:D>", "n jumps of <s:D>"),
        ("multiplicado por <s:D>", "n saltos de <s:D>"),
        lambda c, h: h["s"] == claim_of(c).parameters.get("step"),
    ),
    # opposites
    Rule(
        (
            "from <a:V> to 0[^,.]* is <d:D>, and from 0[^,.]* to <b:V> is <e:D>",
            "<a:V> is <d:D> below 0(?: and|,) <b:V> is <e:D> above",
        ),
        (
            "de <a:V> a 0[^,.]* hay <d:D>, y de 0[^,.]* a <b:V> hay <e:D>",
            "<a:V> está <d:D> bajo 0 y <b:V> (?:está )?<e:D> sobre",
        ),
        far_from_zero,
    ),
    Rule(("above 0",), ("sobre 0",), always),
    Rule(
        ("opposites here: <s:S>", "<s:S>: opposites pair up", "the opposites here are <s:S>"),
        ("aquí hay opuestos: <s:S>", "van en pareja los opuestos <s:S>", "aquí los opuestos son <s:S>"),
        opposite_pairs,
    ),
    Rule(
        ("<a:V> and <b:V> are equally far", "<a:V> and <b:V> match"),
        ("<a:V> y <b:V> están igual", "<a:V> y <b:V> van juntos"),
        opposite,
    ),
    # parity
    Rule(
        (
            "in " + LINE_EN + " we wrote <l:S>: only (?P<p_W>even|odd)",
            "look in " + LINE_EN + ": <l:S>, only (?P<p_W>even|odd)",
        ),
        (
            "en la " + LINE_ES + " escribimos <l:S>, solo números (?P<p_W>pares|impares)",
            "mira en la " + LINE_ES + ": <l:S>, solo números (?P<p_W>pares|impares)",
        ),
        parities_of,
    ),
    Rule(
        ("look at <l:S>: they are (?P<p_W>even|odd)", "we said <l:S>, and they are (?P<p_W>even|odd)"),
        ("mira <l:S>: son (?P<p_W>pares|impares)", "dijimos <l:S>, y son (?P<p_W>pares|impares)"),
        parities_of,
    ),
    Rule(
        (
            "in " + LINE_EN + " <a:V> is (?P<p_W>even|odd) and <b:V> is (?P<q_W>even|odd)",
            "look in " + LINE_EN + ": <a:V> is (?P<p_W>even|odd), <b:V> is (?P<q_W>even|odd)",
        ),
        (
            "en la " + LINE_ES + ", <a:V> es (?P<p_W>par|impar) y <b:V> es (?P<q_W>par|impar)",
            "mira en la " + LINE_ES + ": <a:V> es (?P<p_W>par|impar) y <b:V> es (?P<q_W>par|impar)",
        ),
        two_parities_in_line,
    ),
    Rule(
        ("the next one, <a:V>, is (?P<p_W>even|odd)",),
        ("el siguiente, <a:V>, es (?P<p_W>par|impar)",),
        parity_of,
    ),
    Rule(
        ("<t:D> " + MORE + " keeps even numbers (?P<p_W>even)",),
        ("con <t:D> " + MORE + " un par sigue siendo (?P<p_W>par)",),
        parity_total,
    ),
    Rule(
        ("<t:D> " + MORE + " turns even into (?P<p_W>odd)",),
        ("con <t:D> " + MORE + " un par pasa a (?P<p_W>impar)",),
        parity_total,
    ),
    Rule(
        ("<a:V> is (?:again )?(?P<p_W>even|odd)",),
        ("<a:V> es (?:otra vez )?(?P<p_W>par|impar)",),
        parity_of,
    ),
    # remainders
    Rule(
        ("(?:every count is|every one is|each one we say is|we are always) <r:D> past an? <m:M>",),
        (
            "cada (?:número|uno|uno que decimos) es <r:D> más que una? <m:M>",
            "nos pasamos <r:D> de una? <m:M>",
        ),
        all_past,
    ),
    Rule(("<a:V> is <r:D> past <m:V>",), ("de <m:V> a <a:V> hay <r:D>",), past_is),
    # so many of a multiple
    Rule(
        ("<t:D> is <q:N> <m:M>", "<t:D> is <q:N> × <m:D>"),
        ("<t:D> (?:es|son) <q:N> <m:M>", "<t:D> (?:es|son) <q:N> × <m:D>"),
        so_many,
    ),
)
