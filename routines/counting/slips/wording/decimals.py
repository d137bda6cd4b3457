"""What is said about slips in decimal counts."""

from .slip_words import InTwo, SlipWords

WORDS = {
    "D01": SlipWords(
        InTwo(
            "The decimal digits of {a} are read as a whole number that goes on.",
            "Las cifras decimales de {a} se leen como un número entero que sigue.",
        ),
        InTwo("What do ten tenths make, and where do we write it?", "¿Qué forman diez décimas y dónde lo escribimos?"),
    ),
    "D02": SlipWords(
        InTwo(
            "In the jump from {a} the tenths pass ten and are not renamed as a whole.",
            "En el salto desde {a} las décimas pasan de diez y no se cambian por una unidad.",
        ),
        InTwo(
            "How many tenths does the jump from {a} make, and how many fill a whole?",
            "¿Cuántas décimas forma el salto desde {a} y cuántas llenan una unidad?",
        ),
    ),
    "D03": SlipWords(
        InTwo(
            "In the jump from {a} the hundredths pass one hundred and are not renamed.",
            "En el salto desde {a} las centésimas pasan de cien y no se cambian.",
        ),
        InTwo(
            "What do a hundred hundredths make, and where do we write it?",
            "¿Qué forman cien centésimas y dónde lo escribimos?",
        ),
    ),
    "D04": SlipWords(
        InTwo(
            "After {a} the ten is written behind the digit that already stands there.",
            "Después de {a} se escribe el diez detrás de la cifra que ya está.",
        ),
        InTwo(
            "What do ten hundredths make, and in which place do we write it?",
            "¿Qué forman diez centésimas y en qué lugar lo escribimos?",
        ),
    ),
    "D05": SlipWords(
        InTwo(
            "The last place of {a} passes nine and is not renamed.",
            "El último lugar de {a} pasa de nueve y no se cambia.",
        ),
        InTwo(
            "What do ten thousandths make, and in which place do we write it?",
            "¿Qué forman diez milésimas y en qué lugar lo escribimos?",
        ),
    ),
    "D06": SlipWords(
        InTwo(
            "A zero at the end is thought to change the value of {b}.",
            "Se cree que un cero al final cambia el valor de {b}.",
        ),
        InTwo(
            "Does a zero at the end change how much there is, or only how we write it?",
            "¿Un cero al final cambia cuánto hay o solo cómo lo escribimos?",
        ),
        of_writing=True,
    ),
    "D07": SlipWords(
        InTwo(
            "The digits of the jump {size} are {joined} one place too far to the left.",
            "Las cifras del salto {size} se {joined} un lugar más a la izquierda.",
        ),
        InTwo(
            "In which place does the last digit of our jump belong, and what stands there in {a}?",
            "¿En qué lugar va la última cifra de nuestro salto y qué hay ahí en {a}?",
        ),
    ),
    "D08": SlipWords(
        InTwo(
            "After {a} the wholes are counted, because no other digit is left to see.",
            "Después de {a} se cuentan las unidades, porque no se ve otra cifra.",
        ),
        InTwo(
            "Does our jump change the wholes of {a}, or the places after them?",
            "¿Nuestro salto cambia las unidades de {a} o los lugares que siguen?",
        ),
    ),
    "D09": SlipWords(
        InTwo("The whole {b} is left out of the count.", "Se deja fuera {b}, un número entero."),
        InTwo(
            "How far is it from {a} to that number: one jump, or more?",
            "¿Cuánto hay desde {a} hasta ese número: un salto, o más?",
        ),
    ),
    "D10": SlipWords(
        InTwo(
            "After {a} the decimal digits start again, but the whole is not lowered.",
            "Después de {a} las cifras decimales vuelven a empezar, pero no baja la unidad.",
        ),
        InTwo(
            "We are counting back from {a}: how many wholes can be left?",
            "Contamos hacia atrás desde {a}: ¿cuántas unidades pueden quedar?",
        ),
    ),
    "D11": SlipWords(
        InTwo(
            "The jump back from {a} crosses a whole, and the whole is not lowered.",
            "El salto atrás desde {a} pasa de una unidad y la unidad no baja.",
        ),
        InTwo(
            "When we jump back from {a}, do we stay above the same whole?",
            "Al saltar atrás desde {a}, ¿nos quedamos en la misma unidad?",
        ),
    ),
}
