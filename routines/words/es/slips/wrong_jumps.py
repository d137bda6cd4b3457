"""What is said in Spanish about slips where another jump is made than the one that is due."""

from ...language import SlipWords

_ONES = SlipWords(
    "Después de {a} se cuenta de {least} en {least} y no de {size} en {size}.",
    "¿Cuánto avanza cada uno de nuestros saltos y cuánto avanzó este desde {a}?",
    "¿De cuánto es el salto desde {a}?",
)
_OTHER_WAY = SlipWords(
    "Desde {a} el conteo va al revés.",
    "¿Hacia dónde contamos desde {a} y de qué lado está ese número?",
    "¿Hacia dónde contamos desde {a}?",
)
WORDS = {
    "J01": _ONES,
    "J02": _ONES,
    "J03": SlipWords(
        "Desde {a} se da un salto más cómodo que {size}.",
        "¿De cuánto es nuestro salto y cuánto hay desde {a} hasta ese número?",
        "¿De cuánto es el salto desde {a}?",
    ),
    "J04": _OTHER_WAY,
    "J05": _OTHER_WAY,
    "J06": SlipWords(
        "Desde {a} solo se cuenta la parte mayor de {size}.",
        "¿Qué partes tiene nuestro salto y cuáles dimos desde {a}?",
        "¿Dimos el salto completo desde {a}?",
    ),
    "J07": SlipWords(
        "Desde {a} solo se cuenta la parte menor de {size}.",
        "¿Qué partes tiene nuestro salto y cuáles dimos desde {a}?",
        "¿Dimos el salto completo desde {a}?",
    ),
    "J08": SlipWords(
        "Después de {a} se deja fuera un número.",
        "¿Hay uno de nuestros números entre {a} y ese?",
        "¿Nos saltamos uno después de {a}?",
    ),
    "J09": SlipWords(
        "Se repite {a} mientras se busca el número que sigue.",
        "Acabamos de decir {a}: ¿qué cambia con un salto más?",
        "Ya dijimos {a}: ¿qué cambia con un salto?",
    ),
}
