"""What is said about slips in counts of whole numbers that the table does not name."""

from .slip_words import InTwo, SlipWords

WORDS = {
    "W32": SlipWords(
        InTwo(
            "The word for {b} is made like those of the tens before it: ten tens have no such word.",
            "La palabra de {b} se forma como las decenas de antes: diez decenas tienen otra palabra.",
        ),
        InTwo("What new name do we give to ten tens?", "¿Qué nombre nuevo damos a diez decenas?"),
        InTwo("What do ten tens make after {a}?", "¿Qué forman diez decenas después de {a}?"),
    ),
    "W33": SlipWords(
        InTwo(
            "The word for {b} ends almost like that of a teen number.",
            "La palabra de {b} termina casi como la de un número de diez y algo.",
        ),
        InTwo("How many tens have we counted after {a}?", "¿Cuántas decenas llevamos después de {a}?"),
        InTwo("How many tens come after {a}?", "¿Cuántas decenas hay después de {a}?"),
    ),
    "W34": SlipWords(
        InTwo(
            "At {a} the count turns round and goes up, the way it is known best.",
            "En {a} el conteo da la vuelta y sube, como más se conoce.",
        ),
        InTwo("Are we counting up or back from {a}?", "¿Contamos hacia arriba o hacia atrás desde {a}?"),
        InTwo("Are we counting back from {a}?", "¿Contamos hacia atrás desde {a}?"),
    ),
    "W35": SlipWords(
        InTwo(
            "The end of the word for {b} sounds like that of a ten.",
            "El final de la palabra de {b} suena como el de una decena.",
        ),
        InTwo("How many ones does the next number have?", "¿Cuántas unidades tiene el número que sigue?"),
        InTwo("How many ones come with the ten?", "¿Cuántas unidades van con la decena?"),
    ),
    "W36": SlipWords(
        InTwo(
            "After {a} the count falls back into ones, the count that is known best.",
            "Después de {a} se vuelve a contar de uno en uno, como más se conoce.",
        ),
        InTwo(
            "How far did each of our jumps go before {a}, and how far did this one go?",
            "¿Cuánto avanzó cada salto antes de {a} y cuánto avanzó este?",
        ),
        InTwo("How big is our jump from {a}?", "¿De cuánto es el salto desde {a}?"),
    ),
    "W37": SlipWords(
        InTwo(
            "After {a} the tens are counted on instead of the fives.",
            "Después de {a} se cuentan decenas y no de cinco en cinco.",
        ),
        InTwo(
            "Is there one of our numbers between {a} and that one, and what does it end in?",
            "¿Hay un número nuestro entre {a} y ese, y en qué termina?",
        ),
        InTwo("Did we skip one after {a}?", "¿Nos saltamos uno después de {a}?"),
    ),
    "W38": SlipWords(
        InTwo("After {a} the jump of {size} is doubled.", "Después de {a} se duplica el salto de {size}."),
        InTwo(
            "How far did we jump from {a}, and how far did we jump before?",
            "¿Cuánto saltamos desde {a} y cuánto saltamos antes?",
        ),
    ),
    "W39": SlipWords(
        InTwo(
            "{b} is left out: its word is made in a way of its own.",
            "Se deja fuera {b}: su palabra se forma a su manera.",
        ),
        InTwo("Is there a number between {a} and that one?", "¿Hay un número entre {a} y ese?"),
        InTwo("Did we skip one after {a}?", "¿Nos saltamos uno después de {a}?"),
    ),
    "W40": SlipWords(
        InTwo(
            "The thousands of {b} are written out in full before the rest.",
            "Los millares de {b} se escriben completos antes de lo demás.",
        ),
        InTwo(
            "How many thousands, hundreds, tens and ones do you hear in that number?",
            "¿Cuántos millares, centenas, decenas y unidades oyes en ese número?",
        ),
        of_writing=True,
    ),
}
