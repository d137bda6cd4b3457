"""What is said in Spanish about slips where another jump is made than the one that is due."""

from ...language import SlipWords

_ONES = SlipWords(
    "Después {a:del} se cuenta de {least} en {least} y no de {size} en {size}.",
    "¿Cuánto avanza cada uno de nuestros saltos y cuánto avanzó este desde {a:el}?",
    "¿De cuánto es el salto desde {a:el}?",
)
_OTHER_WAY = SlipWords(
    "Desde {a:el} el conteo va al revés.",
    "¿Hacia dónde contamos desde {a:el} y de qué lado está ese número?",
    "¿Hacia dónde contamos desde {a:el}?",
)
WORDS = {
    "J01": _ONES,
    "J02": _ONES,
    "J03": SlipWords(
        "Desde {a:el} se da un salto más cómodo que {size}.",
        "¿De cuánto es nuestro salto y cuánto hay desde {a:el} hasta ese número?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "J04": _OTHER_WAY,
    "J05": _OTHER_WAY,
    "J06": SlipWords(
        "Desde {a:el} solo se cuenta la parte mayor de {size}.",
        "¿Qué partes tiene nuestro salto y cuáles dimos desde {a:el}?",
        "¿Dimos el salto completo desde {a:el}?",
    ),
    "J07": SlipWords(
        "Desde {a:el} solo se cuenta la parte menor de {size}.",
        "¿Qué partes tiene nuestro salto y cuáles dimos desde {a:el}?",
        "¿Dimos el salto completo desde {a:el}?",
    ),
    "J08": SlipWords(
        "Después {a:del} se deja fuera un número.",
        "¿Hay uno de nuestros números entre {a:el} y ese?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "J09": SlipWords(
        "Se repite {a:el} mientras se busca el número que sigue.",
        "Acabamos de decir {a:el}: ¿qué cambia con un salto más?",
        "Ya dijimos {a:el}: ¿qué cambia con un salto?",
    ),
}
