"""What is said about slips in counts of fractions."""

from .slip_words import InTwo, SlipWords

WORDS = {
    "F01": SlipWords(
        InTwo(
            "After {a} top and bottom are worked out apart, as if they were two whole numbers.",
            "Después de {a} se calcula aparte arriba y abajo, como si fueran dos números enteros.",
        ),
        InTwo(
            "Do the parts change their size when we jump from {a}, or only their number?",
            "Al saltar desde {a}, ¿cambia el tamaño de las partes o solo cuántas hay?",
        ),
    ),
    "F02": SlipWords(
        InTwo(
            "The bottom number is counted on after {a}, though the parts stay the same size.",
            "Después de {a} se cuenta el número de abajo, aunque las partes no cambian.",
        ),
        InTwo(
            "What does the bottom number tell us about the parts, and do they change?",
            "¿Qué nos dice el número de abajo sobre las partes, y cambian?",
        ),
    ),
    "F03": SlipWords(
        InTwo("After {a} both numbers go up by one.", "Después de {a} suben uno los dos números."),
        InTwo(
            "Which number counts the parts, and which one names their size?",
            "¿Qué número cuenta las partes y cuál dice su tamaño?",
        ),
    ),
    "F04": SlipWords(
        InTwo(
            "One whole is taken for the end, so after {a} the count starts again.",
            "La unidad se toma por el final y después de {a} el conteo vuelve a empezar.",
        ),
        InTwo(
            "After {a}, is the next count more than a whole or less?",
            "Después de {a}, ¿el número que sigue es más que la unidad o menos?",
        ),
    ),
    "F05": SlipWords(
        InTwo(
            "Fractions are thought to be less than one, so the count stops after {a}.",
            "Se cree que las fracciones son menores que uno y el conteo se detiene después de {a}.",
        ),
        InTwo(
            "Can we take one more jump from {a}, and what do we then have?",
            "¿Podemos dar un salto más desde {a}, y qué tenemos entonces?",
        ),
    ),
    "F06": SlipWords(
        InTwo(
            "After {a} a full set of parts is not renamed as a whole: it is the same number, {b}.",
            "Después de {a} un grupo completo de partes no se cambia por una unidad: es el mismo número, {b}.",
        ),
        InTwo(
            "That number has a shorter name: what do all its parts make together?",
            "Ese número tiene un nombre más corto: ¿qué forman juntas todas sus partes?",
        ),
    ),
    "F07": SlipWords(
        InTwo(
            "The whole in {a} is counted on instead of its parts.",
            "Se cuenta la unidad de {a} y no sus partes.",
        ),
        InTwo(
            "What grows with each of our jumps: the wholes or the parts?",
            "¿Qué crece con cada uno de nuestros saltos: las unidades o las partes?",
        ),
    ),
    "F08": SlipWords(
        InTwo(
            "The whole and the top number of {b} are run together.",
            "Se juntan la parte entera y el número de arriba de {b}.",
        ),
        InTwo(
            "Which number there counts the wholes, and which counts the parts left over?",
            "¿Qué número cuenta ahí las unidades y cuál las partes que sobran?",
        ),
        of_writing=True,
    ),
    "F09": SlipWords(
        InTwo(
            "{b} has another name in other parts, and the two names are taken for two numbers.",
            "{b} tiene otro nombre con otras partes y los dos nombres se toman por dos números.",
        ),
        InTwo(
            "Are these two names for the same number, or two different numbers?",
            "¿Son dos nombres del mismo número, o dos números distintos?",
        ),
        of_writing=True,
    ),
    "F10": SlipWords(
        InTwo(
            "{a} was renamed in larger parts, and the next top number is counted from that name.",
            "{a} recibió otro nombre con partes mayores y el número de arriba se cuenta desde ahí.",
        ),
        InTwo(
            "Which name of {a} has parts of the same size as our jump?",
            "¿Qué nombre de {a} tiene partes del mismo tamaño que nuestro salto?",
        ),
    ),
    "F11": SlipWords(
        InTwo(
            "Two digits on top seem to ask for a new bottom number, so tenths turn into hundredths.",
            "Dos cifras arriba parecen pedir otro número abajo y los décimos se vuelven centésimos.",
        ),
        InTwo(
            "Has the size of the parts changed after {a}, or only how many we have?",
            "¿Cambió el tamaño de las partes después de {a}, o solo cuántas tenemos?",
        ),
    ),
    "F12": SlipWords(
        InTwo(
            "By their simplest names {a} and the jump of {size} have unlike parts, and these are taken as if they were "
            "alike.",
            "Con sus nombres más simples, {a} y el salto de {size} no tienen partes iguales, y se toman como si lo "
            "fueran.",
        ),
        InTwo(
            "How many parts make one whole in that number, and how many in {a}?",
            "¿Cuántas partes forman una unidad en ese número y cuántas en {a}?",
        ),
    ),
    "F13": SlipWords(
        InTwo(
            "From {a} a whole is taken away instead of {size}.",
            "De {a} se quita una unidad entera y no {size}.",
        ),
        InTwo(
            "How much of one whole do we take away in the jump from {a}?",
            "¿Cuánto de una unidad quitamos en el salto desde {a}?",
        ),
    ),
    "F14": SlipWords(
        InTwo(
            "In the jump from {a} the parts left over after the whole are miscounted.",
            "En el salto desde {a} se cuentan mal las partes que quedan después de la unidad.",
        ),
        InTwo(
            "How many parts of the jump from {a} fill the whole, and how many are left?",
            "¿Cuántas partes del salto desde {a} llenan la unidad y cuántas quedan?",
        ),
    ),
    "F15": SlipWords(
        InTwo(
            "The jump back from {a} crosses a whole, and the whole is not lowered.",
            "El salto atrás desde {a} pasa de una unidad y la unidad no baja.",
        ),
        InTwo(
            "When we jump back from {a}, do we stay above the same whole?",
            "Al saltar atrás desde {a}, ¿nos quedamos en la misma unidad?",
        ),
    ),
    "F16": SlipWords(
        InTwo(
            "The parts are taken the other way round in the jump back from {a}: the fewer from the more.",
            "Las partes se quitan al revés en el salto atrás desde {a}: las menos de las más.",
        ),
        InTwo(
            "Does {a} have enough parts to take our jump away without opening a whole?",
            "¿Tiene {a} partes suficientes para quitar nuestro salto sin abrir una unidad?",
        ),
    ),
    "F17": SlipWords(
        InTwo(
            "In the jump back from {a} a whole is opened into ten parts.",
            "En el salto atrás desde {a} se abre una unidad en diez partes.",
        ),
        InTwo(
            "How many of our parts do we get when we open one whole of {a}?",
            "¿Cuántas de nuestras partes salen al abrir una unidad de {a}?",
        ),
    ),
}
