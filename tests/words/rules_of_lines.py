"""Phrases about what stands in rows and columns, and the short lines that others contain."""

from typing import Any

from tests.words.line_checks import (
    always_shows,
    block_of_line,
    count_shows,
    count_wrote,
    each_line_starts,
    length_is,
    line_shows,
    line_stays,
    line_wrote,
    parity_of,
    starts_with_two,
)
from tests.words.number_checks import claim_of
from tests.words.rule_pieces import LINE_EN, LINE_ES, MORE
from tests.words.sentence_checker import Context, Rule
from tests.words.sum_checks import neighbour_is, step_is
from tests.words.verdict_checks import claim_has_blocks, run_goes


def lines_end_the_same(c: Context, h: dict[str, Any]) -> bool:
    """In every row, or column, all counts have the same last digit."""
    along = "row" if str(h["line"]).lower() in ("row", "fila") else "column"
    return all(len({abs(c.value(n)) % 10 for n in line}) == 1 for line in c.readings.lines(along))


RULES: tuple[Rule, ...] = (
    Rule(
        ("in each (?P<line_W>row|column) they all end the same",),
        ("en cada (?P<line_W>fila|columna) todos terminan igual",),
        lines_end_the_same,
    ),
    # readings along lines
    Rule(
        (
            "in " + LINE_EN + ", from <a:V> to <b:V>, the <f:W> stay <x:S>",
            "from <a:V> to <b:V> in " + LINE_EN + " the <f:W> stay <x:S>",
            "from <a:V> to <b:V> the <f:W> stay <x:S>",
        ),
        (
            "en la " + LINE_ES + ", de <a:V> a <b:V>, (?:los|las) <f:W> siguen en <x:S>",
            "de <a:V> a <b:V> en la " + LINE_ES + " (?:los|las) <f:W> siguen en <x:S>",
            "de <a:V> a <b:V> (?:los|las) <f:W> siguen en <x:S>",
        ),
        line_stays,
    ),
    Rule(
        ("in " + LINE_EN + " we wrote <l:S>, always with <x:S>", "look in " + LINE_EN + ": <l:S>, always with <x:S>"),
        (
            "en la " + LINE_ES + " escribimos <l:S>, siempre con <x:S>",
            "mira en la " + LINE_ES + ": <l:S>, siempre con <x:S>",
        ),
        line_wrote,
    ),
    Rule(
        ("look at <l:S>, always with <x:S>", "we wrote <l:S>, always with <x:S>"),
        ("mira <l:S>, siempre con <x:S>", "escribimos <l:S>, siempre con <x:S>"),
        count_wrote,
    ),
    Rule(
        ("in " + LINE_EN + " the <f:W> of <l:S> are <s:S>",),
        ("en la " + LINE_ES + ", (?:los|las) <f:W> de <l:S> son <s:S>",),
        line_wrote,
    ),
    Rule(
        ("in " + LINE_EN + " the <f:W> (?:go|are) <s:S>", "look in " + LINE_EN + ": the <f:W> (?:go|are) <s:S>"),
        (
            "en la " + LINE_ES + ", (?:los|las) <f:W> son <s:S>",
            "mira en la " + LINE_ES + ": (?:los|las) <f:W> son <s:S>",
        ),
        line_shows,
    ),
    Rule(
        ("look at <l:S>: the <f:W> are <s:S>", "the <f:W> of <l:S> are <s:S>"),
        ("mira <l:S>: (?:los|las) <f:W> son <s:S>", "(?:los|las) <f:W> de <l:S> son <s:S>"),
        count_wrote,
    ),
    Rule(
        ("at the start the <f:W> are <s:S>", "the <f:W> begin <s:S>"),
        ("al principio (?:los|las) <f:W> son <s:S>", "(?:los|las) <f:W> empiezan así: <s:S>"),
        count_shows,
    ),
    Rule(
        ("take turns, first <x:S>, then <y:S>", "take turns, <x:S> and <y:S>"),
        ("se alternan(?:,|:) primero <x:S> y luego <y:S>",),
        starts_with_two,
    ),
    Rule(
        (
            "<f:W> repeat every <k:N> counts[^:]*: <s:S> in " + LINE_EN,
            "<f:W> repeat every <k:N> counts[^:,.]*: <s:S>",
            "every [a-z]+ repeats its <f:W> after <k:N>: <s:S>",
            "<f:W> take turns[^:,.]*: <s:S> in " + LINE_EN,
            "<f:W> take turns[^:,.]*: <s:S>",
        ),
        (
            "en cada [a-z]+ se alternan <f:W>: <s:S>",
            "<f:W> se repiten cada <k:N> números[^:]*: <s:S> en la " + LINE_ES,
            "<f:W> se repiten cada <k:N> números[^:,.]*: <s:S>",
            "en cada [a-z]+ se repiten <f:W> después de <k:N>: <s:S>",
            "<f:W> se alternan[^:,.]*: <s:S> en la " + LINE_ES,
            "<f:W> se alternan[^:,.]*: <s:S>",
        ),
        block_of_line,
    ),
    Rule(
        ("<f:W> stay in their [a-z]+: <s:S>", "each [a-z]+ keeps its <f:W>: <s:S>"),
        ("<f:W> se quedan en su [a-z]+: <s:S>", "cada [a-z]+ conserva <f:W>: <s:S>"),
        each_line_starts,
    ),
    Rule(
        (
            "<f:W> stays? at <x:S>",
            "the <f:W> (?:is|are) <x:S> in every count",
            "in all the ones we say the <f:W> (?:is|are) <x:S>",
            "the <f:W> (?:is|are) always <x:S>",
        ),
        (
            "<f:W> se quedan? en <x:S>",
            # Not "al bajar un lugar siempre es ...", which is of a step.
            r"(?<!a )(?:el|la|los|las) <f:W>(?<!lugar)(?<!derecha)(?<!izquierda) siempre (?:es|son) <x:S>",
            "en todos los números <f:W> (?:es|son) <x:S>",
            "(?:contamos|decimos) <f:W> (?:es|son) <x:S>",
        ),
        always_shows,
    ),
    Rule(
        ("the <n:O> count, <a:V>, is (?P<p_W>even|odd)",),
        ("el <n:O> número, <a:V>, es (?P<p_W>par|impar)",),
        lambda c, h: c.same(c.value(h["n"]), h["a"]) and parity_of(c, h),
    ),
    Rule(
        ("the <f:W> go <s:S>, then <t:S> again",),
        ("(?:los|las) <f:W> van <s:S>, y otra vez <t:S>",),
        lambda c, h: count_shows(c, {"s": h["s"] + h["t"]}),
    ),
    Rule(
        (
            "every <k:N> counts",
            "after (?:every )?<k:N> counts",
            "come around again after <k:N>",
            "come back after <k:N>",
        ),
        (
            "cada <k:N> números",
            "se repiten cada <k:N>(?=[.])",
            "después de <k:N> números",
            "después de <k:N>",
            "tras <k:N>",
        ),
        length_is,
    ),
    # step and neighbour lines
    Rule(
        (
            "<d:D> " + MORE + " each time",
            "each (?:count|one) is <d:D> " + MORE,
            "(?:it is|it gets) <d:D> " + MORE,
            "(?:jump|goes|go) (?P<up_W>up|down) <d:D>",
        ),
        (
            "<d:D> " + MORE + " cada vez",
            "cada (?:número|uno|vez|vez que contamos) es <d:D> " + MORE,
            "(?<!siempre )(?P<up_W>sube|baja) <d:D>",
        ),
        step_is,
    ),
    Rule(
        ("<d:D> " + MORE,),
        ("<d:D> " + MORE, "siempre (?P<more_W>sube|baja) <d:D>"),
        neighbour_is,
    ),
    # how many lines
    Rule(
        ("here (?:are|is) <n:N> [a-z]+, and the claim is about <b:N>",),
        ("aquí hay <n:N> [a-z]+, y la afirmación habla de <b:N>",),
        claim_has_blocks,
    ),
    Rule(
        ("from <a:V> to <b:V> the <f:W> go from <x:N> to <y:N>",),
        ("de <a:V> a <b:V>, (?:los|las) <f:W> pasan de <x:N> a <y:N>",),
        run_goes,
    ),
    Rule(
        (r"\((?P<line_W>rows?|columns?) <s:S>\)",),
        (r"\((?P<line_W>filas?|columnas?) <s:S>\)",),
        lambda c, h: (
            h["s"]
            == [str(c.page_line(i, claim_of(c).parameters.get("along"))) for i in claim_of(c).parameters.get("lines")]
        ),
    ),
)
