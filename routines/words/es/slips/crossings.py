"""What is said in Spanish about slips where a ten, a hundred, a whole or a larger unit is crossed, filled or left."""

from ...language import SlipWords


def _not_counted(a_place: str, place: str) -> SlipWords:
    return SlipWords(
        f"El salto desde {{a:el}} completa o abre {a_place} más, y eso no se cuenta.",
        f"Al saltar desde {{a:el}}, ¿completamos o abrimos {a_place}? ¿Dónde se ve?",
        f"¿A qué {place} llegamos ahora?",
    )


WORDS = {
    "C01": _not_counted("una decena", "decena"),
    "C02": _not_counted("una centena", "centena"),
    "C03": _not_counted("un millar", "millar"),
    "C04": _not_counted("un entero", "entero"),
    "C05": SlipWords(
        "Con el salto desde {a:el} tiene que cambiar también la unidad grande ({larges}), y queda como estaba.",
        "Al saltar desde {a:el}, ¿cambia la unidad grande o solo la chica?",
        "¿Cambia la unidad grande o solo la chica?",
    ),
    "C06": SlipWords(
        "En el salto desde {a:el} un lugar se completa o se abre, y eso no se cuenta en el de su izquierda.",
        "En el salto desde {a:el}, ¿qué lugar se completa o se abre y cómo cambia el de su izquierda?",
        "¿Qué cifras de {a} cambian ahora?",
    ),
    "C07": SlipWords(
        "Se olvida decir {b:el} y se dice el número que sigue.",
        "¿Hay uno de nuestros números entre {a:el} y ese?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "C08": SlipWords(
        "El salto desde {a:el} se detiene en el número redondo por el que pasa.",
        "¿Cuánto hay desde {a:el} hasta ese número: es nuestro salto completo?",
        "¿Es ese nuestro salto completo desde {a:el}?",
    ),
    "C09": SlipWords(
        "Desde {a:el} se da un salto redondo y no el nuestro, un salto de {size}.",
        "¿Cuánto avanza cada uno de nuestros saltos y cuánto avanzó este desde {a:el}?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "C10": SlipWords(
        "Después {a:del} se pasa de un número redondo y se dice el redondo que sigue.",
        "¿Cuánto pasa del número redondo nuestro salto desde {a:el}?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "C11": SlipWords(
        "Se repite {a:el} mientras se busca el número que sigue.",
        "Acabamos de decir {a:el}: ¿qué cambia con un salto más?",
        "Ya dijimos {a:el}: ¿qué cambia con un salto?",
    ),
    "C12": SlipWords(
        "Después {a:del} se dice antes de tiempo el número redondo que está por debajo {b:del}.",
        "¿Cuánto hay desde {a:el} hasta ese número y de cuánto es nuestro salto?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
}
