"""Spanish sentences about steps: step, neighbour, table, digit-run."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "step.statement": ("cada número es {d} {more} que el anterior",),
    "step.core": ("cada uno es {d} {more} que el anterior",),
    "step.says": (
        "cada vez que contamos, el número {up} {d}",
        "en cada salto que damos, el número {up} {d}",
    ),
    "step.reason": ("{b} {b:es} {d} {more} que {a}, y {c} {c:es} {d} {more} que {b}",),
    "step.reason-short": ("{b} {b:es} {d} {more} que {a}",),
    "neighbour.statement": ("{direction} hay {diff} {more}",),
    "neighbour.core": ("{direction} siempre hay {diff} {more}",),
    "neighbour.says": ("veo que {going}, el número siempre {up} {diff}", "veo que hay {diff} {more} {going}"),
    "neighbour.reason": ("{n} por {fills}, y {jumps}, o sea, {diff} {more} {direction}",),
    "neighbour.reason-short": ("{n} por {fills}: {jumps}",),
    "neighbour.reason-one-more": ("{n} por {fills} y 1 más: {jumps}, o sea, {diff} {more} {direction}",),
    "neighbour.reason-one-more-short": ("{n} por {fills} y 1 más: {jumps}",),
    "neighbour.reason-one-less": ("{n} por {fills}, 1 menos: {jumps}, o sea, {diff} {more} {direction}",),
    "neighbour.reason-one-less-short": ("{n} por {fills}, 1 menos: {jumps}",),
    "neighbour.reason-bare": ("{jumps}",),
    "neighbour.reason-one": ("{direction} viene el número siguiente, y cada salto es de {diff}",),
    "table.statement": ("cada número es su lugar multiplicado por {step}",),
    "table.core": (
        "el {nth} número está a {n} saltos de {step} desde cero",
        "el {nth} número es {n} veces {step}",
    ),
    "table.reason": (
        "empezamos en 1 × {factor} y cada salto es un {step} más: {n} × {factor} = {v}",
        "{v} es el {nth} número, y {n} × {factor} = {v}",
    ),
    "run.statement": ("{within} {the_feat} {rises} {change}",),
    "run.core": (
        "{within} {the_short} {rise} de {change} en {change}",
        "{within} {the_short} {rise} {change}",
    ),
    "run along the count.core": ("{within} {the_short_one} {rises} {change}",),
    "run of places along the count.core": ("{within} {the_short} {rise} {change}",),
    "run in front.core": ("{within} el número de adelante {rises} {change}",),
    "run of ends.core": ("{within} termina en {change} {more}",),
    "run.reason-place-line": ("{n} por {fills}: {jumps}, y {total} {more} son {place} {more}",),
    "run.reason-place": ("{jumps}, y {total} {more} son {place} {more}", "{total} {more} son {place} {more}"),
    "run.reason-jumps": ("{jumps}", "{jumps}, así que cada vez hay {total} {more}"),
    "run.reason-one": ("cada salto es de {total}",),
    "run.reason-nearly": ("cada salto de {d} es {aside} {aside_more} que {own}",),
    "run.reason-carry": ("{total} {more} es lo mismo que {carry} {carry_more} y {own} {own_more}",),
    "run.reason-list": (
        "{in_line}, {the_feats} de {some} son {series}",
        "{in_line}, {the_feats} son {series}",
    ),
    "run.reason-list-count": ("{the_feats} de {some} son {series}", "al principio {the_feats} son {series}"),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "step": (
        "Muéstrame un salto. Al empezar otra línea, ¿el salto es igual?",
        "Pon el dedo en dos vecinos. ¿Qué pasa entre ellos?",
    ),
    "neighbour": (
        "Señala dos celdas donde se ve. ¿Qué saltos hay entre ellas?",
        "Prueba desde otra celda. ¿Cuántos saltos hay cada vez?",
    ),
    "digit-run": (
        "¿Qué cifra sigues? ¿Cuál será en la próxima celda?",
        "¿Dónde está esa cifra en cada uno? ¿Qué viene después del 9?",
    ),
    "digit-run in K": (
        "Síguelas con el dedo. ¿Qué viene en el siguiente?",
        "¿Dónde se ve en cada uno? ¿Qué viene después del nueve?",
    ),
    "digit-run of a part": (
        "¿Qué parte de cada uno sigues? ¿Qué viene en la próxima celda?",
        "¿Dónde está esa parte en cada uno? ¿Hasta dónde puede llegar?",
    ),
    "table": (
        "¿Qué lugar tiene en el conteo y cuántos saltos lo forman?",
        "Elige otro. ¿A cuántos saltos está desde cero?",
    ),
}
