"""Spanish sentences about times of day, in place of those about amounts: later and earlier, after and before."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "step.statement, on a clock": ("cada vez es {d} {more}",),
    "step.core, on a clock": ("cada vez es {d} {more}",),
    "step.says, on a clock": (
        "cada vez que contamos es {d} {more}",
        "con cada salto que damos es {d} {more}",
    ),
    "step.reason, on a clock": ("{d} {after} de {a} llegamos a {b}, y {d} {after} de {b} llegamos a {c}",),
    "step.reason-short, on a clock": ("{d} {after} de {a} llegamos a {b}",),
    "neighbour.statement, on a clock": ("{direction} es {diff} {more}", "{direction} siempre es {diff} {more}"),
    "neighbour.says, on a clock": (
        "veo que es {diff} {more} {direction}",
        "{going}, veo que es {diff} {more}",
        "mira, {diff} {more} {direction}",
    ),
    "neighbour.core, on a clock": (
        "{direction} siempre es {diff} {more}",
        "{direction} cada vez es {diff} {more}",
    ),
    "run.reason-jumps, on a clock": ("{jumps}", "{jumps}, así que cada vez es {total} {more}"),
    "run.reason-one, on a clock": ("cada salto es de {total}",),
    "reason.line-change, on a clock": ("{n} por {fills}: {jumps}, y {total} {more} {the_feats} son iguales",),
    "reason.stays, on a clock": ("{jumps}, y {total} {more} {the_feats} son iguales",),
    "reason.comes-back, on a clock": ("{jumps}, y {total} {more} {the_feats} son iguales",),
    "no.step, on a clock": ("{diff} {after} de {a} llegamos a {b}",),
    "no.neighbour, on a clock": ("{direction}, desde {a} llegamos a {b}, {diff} {more}",),
}
