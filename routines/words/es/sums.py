"""Spanish sentences about sums and opposites."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "corners.statement": (
        "las esquinas opuestas de cada bloque de 2 por 2 suman lo mismo",
        "en cada bloque de 2 por 2 las dos diagonales suman lo mismo",
    ),
    "corners.core": ("en un cuadrito las dos diagonales suman lo mismo",),
    "corners.says": ("si sumo en cruz en un cuadrito, sale lo mismo",),
    "pair.reason-short": ("{a} + {d} = {b} + {c}",),
    "corners.reason": ("{a} + {d} = {sum} y {b} + {c} = {sum}",),
    "ends.statement": (
        "el primero y el último suman lo mismo que el segundo y el penúltimo",
        "los pares desde los dos extremos suman lo mismo",
    ),
    "ends.core": ("los pares desde los dos extremos suman lo mismo",),
    "ends.says": ("si los junto desde los dos extremos, la suma es igual",),
    "ends.reason": (
        "{a} + {d} = {sum} y {b} + {c} = {sum}",
        "{a} + {d} = {sum}; un lado {up} {step}, el otro {down} {step}, y {b} + {c} = {sum}",
    ),
    "mean.statement": (
        "el centro de cada bloque de 3 por 3 es su promedio",
        "en cada bloque de 3 por 3, 9 × el centro es el total",
    ),
    "mean.core": ("el del centro de nueve es el reparto justo",),
    "mean.reason": ("los 9 del bloque suman {sum}, y 9 × {factor} = {sum}",),
    "totals.row.statement": (
        "cada fila suma {diff} {more} que la fila de arriba",
        "de fila en fila, el total {up} {diff}",
    ),
    "totals.column.statement": (
        "cada columna suma {diff} {more} que la anterior",
        "de columna en columna, el total {up} {diff}",
    ),
    "totals.open.statement": ("los totales de las líneas cambian siempre igual",),
    "totals.open.core": ("los totales de las líneas cambian siempre igual",),
    "totals.core": ("cada {line} suma {diff} {more} que la anterior",),
    "totals.says": ("si sumo una {line}, la siguiente tiene {diff} {more}",),
    "totals.reason": (
        "{k} números, cada uno {each} {more}, hacen {diff} {more}: {k} × {each} = {diff}",
        "{k} números en una {line}, cada uno {each} {more} que en la {line} anterior, y {k} × {each} = {diff}",
    ),
    "totals.reason-short": ("{k} × {each} = {diff}",),
    "opposites.statement": ("van en pareja los opuestos {pairs}", "aquí hay opuestos: {pairs}"),
    "opposites.pair": ("{a} y {b}",),
    "opposites.core": (
        "{a} y {b} están igual de lejos del cero",
        "{a} y {b} van juntos, uno a cada lado del cero",
    ),
    "opposites.reason": (
        "de {low} a 0 hay {far}, y de 0 a {high} hay {far}",
        "{low} está {far} bajo 0 y {high} está {far} sobre 0",
    ),
    "opposites.until": ("; {until:en} llega otra pareja",),
    "opposites.note": ("{until:en} llega una pareja más, {low} y {high}",),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "sums": (
        "Prueba en otro lugar. ¿Qué se queda igual y qué cambia?",
        "¿Qué números sumaste? Muéstranos dónde están.",
    ),
    "opposites": (
        "¿Tienen todos los números aquí su pareja? ¿Cómo lo sabes?",
        "¿A qué distancia está cada uno de cero? Muestra los saltos.",
    ),
}
