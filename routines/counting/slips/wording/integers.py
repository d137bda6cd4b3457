"""What is said about slips in counts that go below zero."""

from .slip_words import InTwo, SlipWords

WORDS = {
    "N01": SlipWords(
        InTwo(
            "Zero is taken for the smallest number, so the count stays there.",
            "El cero se toma por el número más pequeño y el conteo se queda ahí.",
        ),
        InTwo(
            "What lies one jump below {a}, and how far from zero is it?",
            "¿Qué hay un salto por debajo de {a} y a qué distancia del cero está?",
        ),
    ),
    "N02": SlipWords(
        InTwo(
            "{b} is left out: it is not taken for a number of its own.",
            "Se deja fuera {b}: no se toma por un número.",
        ),
        InTwo(
            "What stands between the counts above zero and those below, and do we land there?",
            "¿Qué hay entre los números mayores que cero y los menores, y caemos ahí?",
        ),
    ),
    "N03": SlipWords(
        InTwo(
            "The count starts again at zero: the part of the jump that led from {a} to zero is forgotten.",
            "El conteo vuelve a empezar en cero: se olvida la parte del salto que llevó de {a} a cero.",
        ),
        InTwo(
            "How much of the jump from {a} takes us to zero, and how much is left?",
            "¿Cuánto del salto desde {a} nos lleva a cero y cuánto queda?",
        ),
    ),
    "N04": SlipWords(
        InTwo(
            "Larger digits are taken for larger numbers, so the count goes the wrong way from {a}.",
            "Las cifras mayores se toman por números mayores y el conteo va al revés desde {a}.",
        ),
        InTwo(
            "We are counting up: is that nearer to zero than {a}, or further away?",
            "Contamos hacia arriba: ¿está más cerca del cero que {a}, o más lejos?",
        ),
    ),
    "N05": SlipWords(
        InTwo(
            "The distance from zero is said without the sign.",
            "Se dice la distancia al cero sin el signo.",
        ),
        InTwo(
            "On which side of zero is the count after {a}, and how do we show that?",
            "¿De qué lado del cero está el número después de {a} y cómo lo mostramos?",
        ),
    ),
    "N06": SlipWords(
        InTwo(
            "After {a} the end of the number starts again, but what stands before it is not changed: going up leads "
            "nearer to zero.",
            "Después de {a} el final del número vuelve a empezar, pero no cambia lo que está antes: subir acerca al "
            "cero.",
        ),
        InTwo(
            "Going up from {a}, do we come nearer to zero or move away from it?",
            "Al subir desde {a}, ¿nos acercamos al cero o nos alejamos?",
        ),
    ),
    "N07": SlipWords(
        InTwo(
            "After {a} the end of the number starts again, but what stands before it must lie further from zero.",
            "Después de {a} el final del número vuelve a empezar, pero lo que está antes tiene que alejarse del cero.",
        ),
        InTwo(
            "Counting down from {a}, how does the distance from zero change?",
            "Al contar hacia abajo desde {a}, ¿cómo cambia la distancia al cero?",
        ),
    ),
}
