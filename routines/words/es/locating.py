"""Spanish sentences about where a value is counted, and why, by level band; and the ways to it."""

from ..language import Locating

SENTENCES: dict[str, tuple[str, ...]] = {
    "start": (
        "Sí, empezamos con {value}. Señala el lugar.",
        "Sí. El conteo empieza con {value}: fila {row}, columna {column}. ¿Qué número decimos después?",
        "El conteo empieza con {value}: fila {row}, columna {column}. No hace falta ningún salto: es el {nth} número.",
        "El conteo empieza con {value}: fila {row}, columna {column}. Hacen falta 0 saltos: es el {nth} número.",
    ),
    "here": (
        "Sí, decimos {value}: fila {row}, columna {column}. Señala el lugar.",
        "Sí. Desde {start:el}, {jumps} {make} {total}: llegamos a {value}, fila {row}, columna {column}. ¿Hay otro camino?",
        "De {start} a {value} van {total}, y {jumps} {make} {total}. Por eso {value} es el {nth} número: fila {row}, "
        "columna {column}.",
        "De {start} a {value} van {total}, y {jumps} {make} exactamente {total}: un número entero de saltos. Por eso "
        "{value} es el {nth} número, en la fila {row}, columna {column}.",
    ),
    "later": (
        "Sí, si seguimos: decimos {value} en {where}.",
        "Sí, si seguimos. Desde {start:el}, {jumps} {make} {total}: llegamos a {value} en {where}.",
        "Todavía no está en la pizarra. De {start} a {value} van {total}, y {jumps} {make} {total}. Sería el {nth} "
        "número, en {where}.",
        "Queda más allá de la pizarra. De {start} a {value} van {total}, y {jumps} {make} exactamente {total}; tiene que "
        "ser el {nth} número, en {where}.",
    ),
    "here, on a clock": (
        "Sí, decimos {value}: fila {row}, columna {column}. Señala el lugar.",
        "Sí. {jumps} desde {start} {lead} a {value} {part}: fila {row}, columna {column}. ¿Hay otro camino?",
        "De {start} a {value} {part} van {total}, y {jumps} {make} {total}. Es el {nth} número: fila {row}, columna "
        "{column}.",
        "De {start} a {value} {part} van {total}, y {jumps} {make} exactamente {total}. Por eso es el {nth} número, en "
        "la fila {row}, columna {column}.",
    ),
    "later, on a clock": (
        "Sí, si seguimos: decimos {value} {part}, en {where}.",
        "Sí, si seguimos: {jumps} desde {start} {lead} a {value} {part}, en {where}.",
        "Todavía no está en la pizarra. Llegamos por primera vez a {value} {part}: {jumps} {make} {total}. Es el {nth} "
        "número, {turn} vuelta del reloj, en {where}.",
        "Queda más allá de la pizarra. Llegamos por primera vez a {value} {part}: {jumps} {make} {total}, y menos no "
        "bastan. Es el {nth} número, {turn} vuelta del reloj, en {where}.",
    ),
    "behind": (
        "No. Empezamos con {start} y contamos hacia {way}, lejos de {value}.",
        "No. El conteo empieza con {start} y va hacia {way}; {value} queda atrás. ¿Hacia dónde tendríamos que contar?",
        "No. El conteo empieza con {start} y va hacia {way} de {step} en {step}: nunca vuelve a {value}, {total} más "
        "atrás.",
        "No. De {value} a {start} van {total}, y cada salto de {step} se aleja más de {value}, por mucho que sigamos "
        "contando.",
    ),
    "skipped": (
        "No. Decimos {before} y luego {after}. Saltamos por encima de {value}.",
        "No. {mark} Decimos {before} y luego {after}. Saltamos por encima de {value}.",
        "No. {mark} Desde {start:el}, {jumps} {lead} a {before} y uno más a {after}: saltamos por encima de {value}.",
        "No. {mark} De {start} a {value} van {total}. Desde {start:el}, {jumps} {lead} a {before} y uno más a {after}. No cabe "
        "un número entero de saltos.",
    ),
    "skipped at once": (
        "No. Decimos {before} y luego {after}. Saltamos por encima de {value}.",
        "No. {mark} Decimos {before} y luego {after}. Saltamos por encima de {value}.",
        "No. {mark} El primer salto ya lleva de {before} a {after}: saltamos por encima de {value}.",
        "No. {mark} De {start} a {value} van {total}, menos que un salto de {step}: el primer salto ya lo pasa.",
    ),
    "skipped, on a clock": (
        "No. Decimos {before} y luego {after}. Saltamos por encima de {value}.",
        "No. {mark} Decimos {before} y luego {after}. ¿Serviría seguir contando?",
        "No. {mark} Decimos {before} y luego {after}, y dar otra vuelta al reloj no cambia nada.",
        "No. {mark} Decimos {before} y luego {after}; una vuelta entera del reloj no cambia nada, así que nunca llegamos "
        "a {value}.",
    ),
}

MARKS = {
    "even": "Aquí todos los números son pares, y {value} es impar.",
    "odd": "Aquí todos los números son impares, y {value} es par.",
    "ending, one": "Aquí todos los números terminan en {shown}; {value} termina en {own}.",
    "ending": "Aquí los números solo terminan en {either}; {value} termina en {own}.",
    "part, one": "Aquí, en {part}, siempre hay {shown}; {value:en} hay {own}.",
    "part": "Aquí, en {part}, solo hay {shown}; {value:en} hay {own}.",
    "left, one": "Aquí, después del último entero, siempre queda {shown}; {value:en} queda {own}.",
    "left": "Aquí, después del último entero, solo quedan {shown}; {value:en} queda {own}.",
    "remainder": "Aquí cada número es {shown} más que un múltiplo de {modulus}; {value} {value:es} {own} más.",
    "multiple": "Aquí cada número es un múltiplo de {modulus}; {value} {value:es} {own} más que un múltiplo.",
    "not multiple": "{value} es un múltiplo de {modulus}; aquí cada número es {shown} más que un múltiplo.",
}

PARTS_OF_DAY = {
    "midnight": "de la medianoche",
    "madrugada": "de la madrugada",
    "mañana": "de la mañana",
    "noon": "del mediodía",
    "tarde": "de la tarde",
    "noche": "de la noche",
}

WAYS = {
    "down": ("fila abajo", "filas abajo"),
    "up": ("fila arriba", "filas arriba"),
    "right": ("a la derecha", "a la derecha"),
    "left": ("a la izquierda", "a la izquierda"),
}

LOCATING = Locating(
    SENTENCES,
    MARKS,
    PARTS_OF_DAY,
    WAYS,
    way="Desde {known}: {moves}.",
    known="{value}, el {nth} número",
    down_to_zero="Hasta el 0: ",
    make=("hace", "hacen"),
    lead=("lleva", "llevan"),
    above=(
        "la columna {column}, en la línea más alta de hoy",
        "la columna {column}, 1 línea por encima de la más alta de hoy",
        "la columna {column}, {lines} líneas por encima de la más alta de hoy",
    ),
    forwards=("arriba", "abajo"),
)
