"""What is said in Spanish about slips where a ten, a hundred, a whole or a larger unit is crossed, filled or left."""

from ...language import SlipWords


def _kept(place: str, digit: str) -> SlipWords:
    return SlipWords(
        f"El salto desde {{a}} pasa {place} y {digit} queda como estaba.",
        f"Al saltar desde {{a}}, ¿nos quedamos en {place.replace('de una', 'la misma').replace('de un', 'el mismo')}?",
        f"¿Nos quedamos en {place.replace('de una', 'la misma').replace('de un', 'el mismo')}?",
    )


WORDS = {
    "C01": _kept("de una decena", "la cifra de las decenas"),
    "C02": _kept("de una centena", "la cifra de las centenas"),
    "C03": _kept("de un millar", "la cifra de los millares"),
    "C04": _kept("de una unidad", "la parte entera"),
    "C05": SlipWords(
        "El salto desde {a} completa o abre 1 {large}, y los enteros de esa unidad quedan como estaban.",
        "Al saltar desde {a}, ¿cambia la unidad grande o solo la chica?",
        "¿Cambia la unidad grande o solo la chica?",
    ),
    "C06": SlipWords(
        "En el salto desde {a} un lugar se completa o se abre, y el lugar de antes queda como estaba.",
        "¿Qué lugares cambian en el salto desde {a} y cuáles quedan como estaban?",
        "¿Qué cifras de {a} cambian ahora?",
    ),
    "C07": SlipWords(
        "Se olvida decir {b} y se dice el número que sigue.",
        "¿Hay uno de nuestros números entre {a} y ese?",
        "¿Nos saltamos uno después de {a}?",
    ),
    "C08": SlipWords(
        "El salto desde {a} se detiene en el número redondo por el que pasa.",
        "¿Cuánto hay desde {a} hasta ese número: es nuestro salto completo?",
        "¿Es ese nuestro salto completo desde {a}?",
    ),
    "C09": SlipWords(
        "Desde {a} se cuenta un lugar completo y no nuestro salto de {size}.",
        "¿Cuánto avanza cada uno de nuestros saltos y cuánto avanzó este desde {a}?",
        "¿De cuánto es el salto desde {a}?",
    ),
    "C10": SlipWords(
        "Después de {a} se pasa de un número redondo y se dice el redondo que sigue.",
        "¿Cuánto pasa del número redondo nuestro salto desde {a}?",
        "¿De cuánto es el salto desde {a}?",
    ),
    "C11": SlipWords(
        "Se repite {a} mientras se busca el número que sigue.",
        "Acabamos de decir {a}: ¿qué cambia con un salto más?",
        "Ya dijimos {a}: ¿qué cambia con un salto?",
    ),
    "C12": SlipWords(
        "Después de {a} se dice antes de tiempo el número redondo que está debajo de {b}.",
        "¿Cuánto hay desde {a} hasta ese número y de cuánto es nuestro salto?",
        "¿De cuánto es el salto desde {a}?",
    ),
}
