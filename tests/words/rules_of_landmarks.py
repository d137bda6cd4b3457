"""Phrases about runs, landmarks and how many counts lie between them."""

from fractions import Fraction

from tests.words.landmark_checks import (
    DECADES_EN,
    DECADES_ES,
    all_are_marks,
    all_end_in,
    carry_sum,
    ends_change,
    first_marks,
    front_changes,
    holds_so_many,
    is_own_multiple,
    line_total,
    lines_are_stretches,
    marks_every,
    marks_lie,
    place_sum,
    run_change,
    said_between,
    so_many_between,
    so_many_in_ten,
    these_are_marks,
)
from tests.words.number_checks import claim_of
from tests.words.number_names import ENDING
from tests.words.rule_pieces import MORE, more
from tests.words.sentence_checker import Rule
from tests.words.sum_checks import step_is
from tests.words.verdict_checks import marks_here

RULES: tuple[Rule, ...] = (
    # runs
    Rule(
        ("<t:D> " + MORE + " is <q:N> <m:P> (?P<more2_W>more|less)",),
        ("<t:D> " + MORE + " son <q:N> <m:P> (?P<more2_W>más|menos)",),
        place_sum,
    ),
    Rule(
        ("<t:D> " + MORE + " is <x:D> " + more("more2") + " and <y:D> " + more("more3"),),
        ("<t:D> " + MORE + " es lo mismo que <x:D> " + more("more2") + " y <y:D> " + more("more3"),),
        carry_sum,
    ),
    Rule(
        (
            "so each time it is <t:D> " + MORE,
            "<t:D> " + MORE + " does not change the",
            "<t:D> " + MORE + " the [^,.]* are the same",
        ),
        (
            "así que cada vez (?:hay|es) <t:D> " + MORE,
            "con <t:D> " + MORE + " (?:los|las)",
            "<t:D> " + MORE + r" (?:los|las) [^,.]* son iguales",
        ),
        line_total,
    ),
    Rule(
        ("it ends in <d:N> (?P<way_W>more|less)",),
        ("termina en <d:N> (?P<way_W>más|menos)",),
        ends_change,
    ),
    Rule(
        ("the front number (?P<up_W>goes up|goes down) by <d:N>",),
        ("el número de adelante (?P<up_W>sube|baja) <d:N>",),
        front_changes,
    ),
    Rule(
        ("(?P<up_W>goes? up|goes? down|go up|go down|up|down) (?:by )?<d:N>(?= (?:each|along|up|down)|,|[.]|$)",),
        (
            "(?P<up_W>suben?|bajan?) de <d:N> en <e:N>",
            "(?P<up_W>suben?|bajan?) <d:N>(?= (?:cada|a lo|al)|,|[.]|$)",
        ),
        lambda c, h: (
            run_change(c, h) if claim_of(c).family == "digit-run" else step_is(c, {**h, "d": Fraction(h["d"])})
        ),
    ),
    # how many
    Rule(
        (
            "from <a:V> to just before <b:V> we say <n:N>, first <x:V> and last <y:V>",
            "there are <n:N> from <a:V> to just before <b:V>",
            "starting at <a:V> and before <b:V> we say <n:N>, from <x:V> to <y:V>",
        ),
        (
            "desde <a:V> y antes de <b:V> decimos <n:N>, primero <x:V> y al final <y:V>",
            "decimos <n:N> desde <a:V> y antes de <b:V>",
            "a partir de <a:V> y antes de <b:V> decimos <n:N>, de <x:V> a <y:V>",
        ),
        so_many_between,
    ),
    Rule(
        ("from <a:V> to just before <b:V> we say <l:S>", "starting at <a:V> and before <b:V> we say <l:S>"),
        ("(?:desde|a partir de) <a:V> y antes de <b:V> decimos <l:S>",),
        said_between,
    ),
    Rule(
        ("in every <m:M> we say <k:N> numbers, one (?P<fills_W>row|column)",),
        ("de cada <m:M> decimos <k:N>, una (?P<fills_W>fila|columna) entera",),
        lambda c, h: lines_are_stretches(c, h) and holds_so_many(c, h),
    ),
    Rule(
        (
            "there are <s:S> counts from one <m:M> to the next, over and over",
            "from one <m:M> to the next we say <s:S>, and again",
            "there is <k:N> count from one <m:M> to the next",
            "we say <s:S>, then <s2:S> again, <m:M> by <x:M>",
            "we say <s:S>, over and over, <m:M> by <x:M>",
            "we say <k:N> to a <m:M>",
            "we say <k:N> numbers in each <m:M>, one (?P<fills_W>row|column) each",
            "we say <k:N> numbers? in each <m:M>",
            "we say <k:N> in each <m:M>",
            "in every <m:M> we say <k:N> numbers",
        ),
        (
            "hay <s:S> números de una? <m:M> (?:al|a la) siguiente, una y otra vez",
            "de una? <m:M> (?:al|a la) siguiente decimos <s:S>, y otra vez",
            "hay <k:N> número de una? <m:M> (?:al|a la) siguiente",
            "<m:M> por <x:M> decimos <s:S>, y otra vez <s2:S>",
            "<m:M> por <x:M> decimos <s:S>, una y otra vez",
            "decimos <s:S> números de cada <m:M>, una y otra vez",
            "decimos <k:N> por <m:M>",
            "de cada <m:M> decimos <k:N> números, una (?P<fills_W>fila|columna) entera",
            "de cada <m:M> decimos <k:N> números?",
            "<k:N> números? de cada <m:M>",
            "de cada <m:M> decimos siempre <k:N> números",
        ),
        holds_so_many,
    ),
    Rule(
        (f"<k:N> in the (?P<tens_W>{DECADES_EN})", f"only (?P<k_W>one) in the (?P<tens_W>{DECADES_EN})"),
        (f"<k:N> en los (?P<tens_W>{DECADES_ES})", f"solo (?P<k_W>uno) en los (?P<tens_W>{DECADES_ES})"),
        so_many_in_ten,
    ),
    Rule(
        ("the counts in each <m:M> (?P<once_W>go) <s:S>",),
        ("los números en cada <m:M> (?P<once_W>van) así: <s:S>",),
        holds_so_many,
    ),
    # landmarks
    Rule(
        ("all (?:the ones we say )?end in (?P<end_W>0 or 5|[0-9]+)",),
        ("todos (?:los que decimos )?terminan en (?P<end_W>0 o 5|[0-9]+)",),
        all_end_in,
    ),
    Rule(
        (
            "the <m:M> here are <l:S>: counts <n:S>, in rows <rows:S> and columns <columns:S>",
            "only <l:S> lands on an? <m:M> here: count <n:S>, in row <rows:S> and column <columns:S>",
            "the <m:M> here begin <l:S>: counts <n:S>",
        ),
        (
            "aquí (?:los|las) <m:M> son <l:S>: números <n:S>, en las filas <rows:S> y las columnas <columns:S>",
            "aquí hay una? <m:M> solo en <l:S>: número <n:S>, en la fila <rows:S> y la columna <columns:S>",
            "aquí (?:los|las) <m:M> empiezan así: <l:S>, los números <n:S>",
        ),
        marks_here,
    ),
    Rule(
        (
            "the <m:M> (?:are all|are) (?:in )?(?P<line_W>rows?|columns?) <i:S>",
            "I see <m:M> in (?P<line_W>row|column) <i:S>",
            "the <m:M> (?P<all_W>make) (?P<line_W>rows?|columns?) <i:S>",
            "(?P<line_W>rows?|columns?) <i:S> (?P<all_W>hold the|have only) <m:M>",
        ),
        (
            "(?:los|las) <m:M> (?:están siempre|están) en (?:la |las )?(?P<line_W>filas?|columnas?) <i:S>",
            "veo <m:M> en la (?P<line_W>fila|columna) <i:S>",
            "(?:los|las) <m:M> (?P<all_W>forman) (?:la |las )?(?P<line_W>filas?|columnas?) <i:S>",
            "(?P<line_W>filas?|columnas?) <i:S> (?:están siempre|están|tiene) (?:los |las )?<m:M>",
            "(?P<line_W>filas?|columnas?) <i:S> (?P<all_W>tienen|solo hay) (?:los |las )?<m:M>",
        ),
        marks_lie,
    ),
    Rule(
        (
            "<l:S> and so on (?:are|are all) in (?P<line_W>row|column) <i:S>",
            "<l:S> and so on (?:move one|go down|go up)",
        ),
        (
            "<l:S> y los que siguen (?:están|están siempre) en la (?P<line_W>fila|columna) <i:S>",
            "en la (?P<line_W>fila|columna) <i:S> están siempre <l:S> y los que siguen",
            "la (?P<line_W>fila|columna) <i:S> tiene <l:S> y los que siguen",
            "<l:S> y los que siguen (?:bajan|suben)",
        ),
        first_marks,
    ),
    Rule(
        ("look at <l:S>: these are the <m:M>", "we get <m:M> at <l:S>"),
        ("mira <l:S>: ahí están (?:los|las) <m:M>", "encontramos <m:M> en <l:S>"),
        these_are_marks,
    ),
    Rule(
        ("look at <l:S>: all of them are <m:M>", "<l:S> are all <m:M>"),
        ("mira <l:S>: todos son <m:M>", "<l:S> son <m:M>"),
        all_are_marks,
    ),
    Rule(
        (
            "from the <n:O> on, every <k:O> one lands on an? <m:M>",
            "from the <n:O> on, every <k:O> ends in (?P<end_W>0 or 5|0)",
            "every <k:O> ends in (?P<end_W>0 or 5|0)",
            "every <k:O> (?:count|one we say) lands on an? <m:M>(?:, from the <n:O> on)?",
            "<m:M> come every <k:N> counts(?:, from the <n:O> on)?",
            "we land on an? <m:M> every <k:N> counts",
        ),
        (
            "desde el <n:O> número, cada <k:N> números hay una? <m:M>",
            "uno de cada <k:N> termina en (?P<end_W>0 o 5|0)",
            "cada <k:N> números hay una? <m:M>(?:, desde el <n:O> número)?",
            "(?:los|las) <m:M> llegan cada <k:N> números(?:, desde el <n:O> número)?",
            "cada <k:N> números (?:llegamos a|decimos) una? <m:M>",
        ),
        marks_every,
    ),
    Rule(
        (
            f"(?P<m_M>{ENDING}) (?:fill whole|move one|go down|go up|climb)",
            "multiples? of <m:D>",
            "counts? by <m:D>",
            "stretch of <m:D>",
        ),
        (
            f"(?P<m_M>{ENDING}) (?:llenan|bajan|van bajando|suben|van subiendo)",
            "múltiplos? de <m:D>",
            "números? de <x:D> en <m:D>",
            "tramo de <m:D>",
        ),
        lambda c, h: is_own_multiple(c, h) and h.get("x", h["m"]) == h["m"],
    ),
)
