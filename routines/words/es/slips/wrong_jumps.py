"""What is said in Spanish about slips where another jump is made than the one that is due."""

from ...language import SlipWords

_ONES = SlipWords(
    "Después {a:del} se cuenta de {least} en {least} y no de {size} en {size}: es el conteo que mejor se conoce.",
    "¿Cuánto hay desde {a:el} hasta {that_one} y de cuánto es nuestro salto?",
    "¿De cuánto es el salto desde {a:el}?",
)
_OTHER_WAY = SlipWords(
    "Desde {a:el} el conteo da la vuelta.",
    "¿Hacia dónde contamos desde {a:el} y de qué lado está {that_one}?",
    "¿Hacia dónde contamos desde {a:el}?",
)
_UP_AGAIN = SlipWords(
    "Desde {a:el} el conteo vuelve a subir.",
    "Contamos hacia atrás: ¿es {heard} más o menos que {a:el}?",
    "¿Es {heard} más o menos que {a:el}?",
)
WORDS = {
    "J01": _ONES,
    "J02": _ONES,
    "J03": SlipWords(
        "Desde {a:el} se da un salto más cómodo que el de {size}.",
        "¿Cuánto hay desde {a:el} hasta {that_one} y de cuánto es nuestro salto?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "J04": _OTHER_WAY,
    "J04 back": _UP_AGAIN,
    "J05": _OTHER_WAY,
    "J05 back": _UP_AGAIN,
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
        "Después {a:del} se deja fuera {some_one}.",
        "¿Hay {one_of_ours} entre {a:el} y {that_one}?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "J09": SlipWords(
        "Se repite {a:el} mientras se busca {the_next_one}.",
        "Acabamos de decir {a:el}: ¿qué cambia con un salto más?",
        "Ya dijimos {a:el}: ¿qué cambia con un salto?",
    ),
}
