"""Spanish sentences about what changes in a next count, and why: for the teacher, and so the same at all grades."""

from routines.counting.grid import Fill

from ..language import NextCounts
from .next_questions import QUESTIONS

CHANGES = {
    "hard place": (
        "Los mismos saltos, pero solo {terms} {places}, desde {start:el}.",
        "El salto {before:del} {hard:al} llega pronto y en un conteo corto, y queda tiempo para mirarlo dos veces.",
    ),
    "hard to write": (
        "Los mismos saltos, pero solo {terms} {places}, desde {start:el}.",
        "{hard} llega pronto y en un conteo corto, y queda tiempo para mirar cómo se escriben él y sus vecinos.",
    ),
    "fold": (
        "El mismo conteo en líneas de {length}.",
        "En líneas de {length} se ve de un vistazo: «{shows}»",
    ),
    "fewer": (
        "El mismo conteo, pero solo los primeros {terms}, hasta {last:el}.",
        "Con menos en la pizarra hay menos que mirar y tiempo para mirar cada línea.",
    ),
    "multiples": (
        "Los mismos saltos de {size}, desde {start:el}.",
        "Desde {start:el} cada número es un múltiplo de {size}, y la clase conoce esos números.",
    ),
    "first jumps": (
        "Los mismos saltos de {size}, con números más pequeños, desde {start:el}.",
        "Con números más pequeños queda más tiempo para mirar lo que hacen los saltos.",
    ),
    "friendlier jump": (
        "Saltos de {size} en vez de {old}, desde {start}.",
        "{many} saltos de {size} hacen {round}, y así llegamos a cada {landmark}.",
    ),
    "round start": (
        "Los mismos saltos de {size}, desde {start:el}.",
        "Desde {start:el} es más fácil seguir lo que sobra después de cada {landmark}.",
    ),
    "smaller place": (
        "Los mismos saltos, desde {start:el}, para que pasemos por {landmark:el} y no por {larger:el}.",
        "El salto {before:del} {hard:al} es otra vez el difícil, con números más pequeños.",
    ),
    "smaller place reached": (
        "Los mismos saltos, desde {start:el}, para que lleguemos {landmark:al} y no {larger:al}.",
        "El salto {before:del} {hard:al} es otra vez el difícil, con números más pequeños.",
    ),
    "round number more": (
        "El mismo comienzo, cada vez {jump}: {round} más en cada salto.",
        "En cada celda queda igual lo que sobra después de cada {landmark}: donde decía {then}, ahora dice {now}.",
    ),
    "ones digit kept": (
        "El mismo comienzo, cada vez {jump}: {round} más en cada salto.",
        "En cada celda la cifra de las unidades es la misma que antes.",
    ),
    "two digits kept": (
        "El mismo comienzo, cada vez {jump}: {round} más en cada salto.",
        "En cada celda las dos últimas cifras son las mismas que antes.",
    ),
    "minutes kept": (
        "El mismo comienzo, cada vez {jump}: {round} más en cada salto.",
        "En cada celda los minutos después de la hora en punto son los mismos que antes.",
    ),
    "other start": (
        "Los mismos saltos de {size} y las mismas líneas, desde {start:el}.",
        "Se ve distinto, y aun así de {one_to_the} que está justo {beside} la diferencia sigue siendo {kept}.",
    ),
    "going on": (
        "Los mismos saltos de {size}, siguiendo desde {end:el}, donde terminó la pizarra.",
        "Lo que se vio se busca más adelante: de {one_to_the} que está justo {beside} la diferencia sigue siendo "
        "{kept}.",
    ),
    "back again": (
        "{same_numbers} al revés, {start:del} {last:al}, de {size} en {size}.",
        "Lo que se vio en una dirección se busca en la otra.",
    ),
    "few back": (
        "Solo {terms} {places} al revés, {start:del} {last:al}, de {size} en {size}.",
        "Lo que se vio en una dirección se busca en la otra.",
    ),
    "two in one": (
        "Saltos de {size}, en líneas de {length}.",
        "Un salto hace lo que hacían dos, y de {one_to_the} que está justo {beside} la diferencia sigue siendo {kept}.",
    ),
    "landmark": (
        "Los mismos saltos de {size}, desde {start:el}, para que el conteo pase por {landmark:el}.",
        "Lo que se vio se pone a prueba donde los números cambian de aspecto.",
    ),
    "landmark reached": (
        "Los mismos saltos de {size}, desde {start:el}, para que el conteo llegue {landmark:al}.",
        "Lo que se vio se pone a prueba donde los números cambian de aspecto.",
    ),
    "nearly round": (
        "Saltos de {size} en vez de {old}.",
        "{size} es casi {round}: contar de {round} en {round} y corregir es un camino que la clase puede encontrar.",
    ),
    "ten times": (
        "Saltos de {size} en vez de {old}, desde {start}.",
        "Cada número es diez veces el de antes: los patrones vuelven un lugar más a la izquierda.",
    ),
    "finer": (
        "Saltos de {size} en vez de {old}, desde {start}.",
        "Cada número es la décima parte del de antes: los patrones vuelven un lugar más a la derecha.",
    ),
    # Por debajo de cero, lo que queda diez veces más lejos de él es menor.
    "ten times from zero": (
        "Saltos de {size} en vez de {old}, desde {start}.",
        "Cada número queda diez veces más lejos del cero que antes: los patrones vuelven un lugar más a la izquierda.",
    ),
    "finer from zero": (
        "Saltos de {size} en vez de {old}, desde {start}.",
        "Cada número queda diez veces más cerca del cero que antes: los patrones vuelven un lugar más a la derecha.",
    ),
    "several parts": (
        "Saltos de {size} en vez de {old}.",
        "Las partes son las mismas y cada salto toma varias, así que no se llega a todos los enteros.",
    ),
    "unfriendly": (
        "Saltos de {size} en vez de {old}.",
        "Los saltos de {size} no caben justos en {round} y aquí pasan por encima de cada {landmark}.",
    ),
    "unfriendly landing": (
        "Saltos de {size} en vez de {old}.",
        "Algunos saltos de {size} caen justo en {a_mark} y otros pasan por encima.",
    ),
    "unfriendly once": (
        "Saltos de {size} en vez de {old}.",
        "Aquí un solo salto de {size} cae justo en {a_mark} y otros pasan por encima.",
    ),
    "unfriendly seldom": (
        "Saltos de {size} en vez de {old}.",
        "Con saltos de {size}, {a_mark} vuelve solo cada {every} saltos, no cada {often}.",
    ),
    "by tens from": (
        "Saltos de {size} en vez de {old}, desde {start}.",
        "Un salto de {size} hace lo que hacían {many} saltos de {old}.",
    ),
    "by tens": (
        "Saltos de {size} en vez de {old}.",
        "Un salto de {size} hace lo que hacían {many} saltos de {old}.",
    ),
    "one more": (
        "El mismo conteo en líneas de {length}.",
        "De {one_to_the} que está justo {beside} ahora la diferencia es {across}: hay que ver qué se alinea y qué se "
        "desliza.",
    ),
    "other fold": (
        "El mismo conteo en líneas de {length}.",
        "Los números son conocidos y todos pueden mirar lo que hacen las líneas.",
    ),
}

NEXT_COUNTS = NextCounts(
    CHANGES,
    QUESTIONS,
    why="{reason} Pregunta: «{ask}»",
    cut="Solo los primeros {cut}, hasta {until}.",
    in_a_line="en líneas de {}",
    empty=("sin celdas vacías", "con {} celda vacía al principio", "con {} celdas vacías al principio"),
    beside={Fill.ACROSS: "debajo", Fill.ACROSS_UP: "arriba", Fill.DOWN: "al lado"},
    along={
        "row": "cada fila de lado a lado",
        "column": "cada columna de arriba abajo",
        "count": "el conteo en orden",
    },
    called={
        False: {"one_to_the": "un número al", "places": "números", "same_numbers": "los mismos números"},
        True: {"one_to_the": "una hora a la", "places": "lugares", "same_numbers": "las mismas horas"},
    },
)
