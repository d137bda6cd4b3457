"""What is said about slips in counts of money."""

from .slip_words import InTwo, SlipWords

WORDS = {
    "M01": SlipWords(
        InTwo(
            "After {a} the {smalls} run on and are not changed for another {large}.",
            "Después de {a} los {smalls} siguen y no se cambian por 1 {large} más.",
        ),
        InTwo(
            "How many {smalls} make one {large}, and do we have that many now?",
            "¿Cuántos {smalls} hacen 1 {large}, y ya los tenemos?",
        ),
    ),
    "M02": SlipWords(
        InTwo(
            "The empty place in the {smalls} of {b} is left out.",
            "Se deja fuera el lugar vacío en los {smalls} de {b}.",
        ),
        InTwo(
            "How many {smalls} does that amount show, and how many do we mean?",
            "¿Cuántos {smalls} muestra esa cantidad y cuántos queremos decir?",
        ),
        of_writing=True,
    ),
    "M03": SlipWords(
        InTwo("The zero at the end of {b} is left out.", "Se deja fuera el cero del final de {b}."),
        InTwo(
            "How many digits do we write for the {smalls}, so that everybody reads the same?",
            "¿Cuántas cifras escribimos para los {smalls}, para que todos lean lo mismo?",
        ),
        of_writing=True,
    ),
    "M04": SlipWords(
        InTwo(
            "The decimal mark and the sign for {smalls} are used together for {b}.",
            "Se usan juntos la marca decimal y el signo de los {smalls} para {b}.",
        ),
        InTwo(
            "What does that sign count, and is this less than one {small}?",
            "¿Qué cuenta ese signo, y es esto menos de 1 {small}?",
        ),
        of_writing=True,
    ),
    "M05": SlipWords(
        InTwo("After {a} the jump of {size} is doubled.", "Después de {a} se duplica el salto de {size}."),
        InTwo(
            "How much did we jump from {a}, and how much did we jump before?",
            "¿Cuánto saltamos desde {a} y cuánto saltamos antes?",
        ),
    ),
    "M06": SlipWords(
        InTwo(
            "After {a} the {smalls} start again, but the {large} is not taken away.",
            "Después de {a} los {smalls} vuelven a empezar, pero no se quita 1 {large}.",
        ),
        InTwo(
            "We are counting back: is that amount less than {a}, or more?",
            "Contamos hacia atrás: ¿es esa cantidad menor que {a}, o mayor?",
        ),
    ),
    "M07": SlipWords(
        InTwo(
            "After {a} three digits of {smalls} are written.",
            "Después de {a} se escriben tres cifras de {smalls}.",
        ),
        InTwo(
            "What can we do with the {smalls} when they fill another {large}?",
            "¿Qué podemos hacer con los {smalls} cuando completan 1 {large} más?",
        ),
    ),
    "M08": SlipWords(
        InTwo(
            "In the jump back from {a} a {large} is opened, but not taken away.",
            "En el salto atrás desde {a} se abre 1 {large}, pero no se quita.",
        ),
        InTwo(
            "When we jump back from {a}, do we keep as many whole {larges}?",
            "Al saltar atrás desde {a}, ¿nos quedan los mismos {larges}?",
        ),
    ),
}
