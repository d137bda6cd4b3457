"""What is said about slips of the Spanish number words. They are foreseen where a class counts in Spanish."""

from .slip_words import InTwo, SlipWords

WORDS = {
    "S01": SlipWords(
        InTwo(
            "Sesenta and setenta sound alike, so after {a} the other of the two is said.",
            "Sesenta y setenta suenan parecido y después de {a} se dice la otra.",
        ),
        InTwo(
            "How many tens does {a} have, and which word goes with the next one?",
            "¿Cuántas decenas tiene {a} y qué palabra va con la que sigue?",
        ),
        InTwo("How many tens come after {a}?", "¿Cuántas decenas vienen después de {a}?"),
    ),
    "S02": SlipWords(
        InTwo(
            "After {a} the words that begin with dieci- are run on.",
            "Después de {a} se siguen las palabras que empiezan con dieci-.",
        ),
        InTwo("What do two tens make after {a}?", "¿Qué forman dos decenas después de {a}?"),
        InTwo("What do two tens make?", "¿Qué forman dos decenas?"),
    ),
    "S03": SlipWords(
        InTwo(
            "The word for {b} is made up like dieciséis.",
            "La palabra para {b} se forma como dieciséis.",
        ),
        InTwo(
            "Which special word did we learn for the next one?", "¿Qué palabra especial aprendimos para el que sigue?"
        ),
        InTwo("Which special word comes next?", "¿Qué palabra especial sigue?"),
        of_writing=True,
    ),
    "S04": SlipWords(
        InTwo(
            "The y between tens and ones is left out in the word for {b}.",
            "Se deja fuera la y entre decenas y unidades en la palabra de {b}.",
        ),
        InTwo("Which little word joins the tens and the ones?", "¿Qué palabrita une las decenas y las unidades?"),
        InTwo("Which little word joins them?", "¿Qué palabrita las une?"),
        of_writing=True,
    ),
    "S05": SlipWords(
        InTwo(
            "The word for the hundreds of {b} is built from its digit, as the other hundreds are.",
            "La palabra de las centenas de {b} se forma con su cifra, como las otras centenas.",
        ),
        InTwo(
            "Which hundreds have a word of their own, unlike the others we have said?",
            "¿Qué centenas tienen una palabra propia, distinta de las otras que dijimos?",
        ),
        of_writing=True,
    ),
    "S06": SlipWords(
        InTwo(
            "Cien is kept where the number goes on: {b} begins with ciento.",
            "Se deja cien cuando el número sigue: {b} empieza con ciento.",
        ),
        InTwo(
            "How does the word for a hundred change when more comes after it?",
            "¿Cómo cambia la palabra cien cuando viene algo más después?",
        ),
        InTwo("How does cien change when more comes?", "¿Cómo cambia cien si sigue algo?"),
        of_writing=True,
    ),
    "S07": SlipWords(
        InTwo(
            "The parts of {b} are named like places in a row: terceros for tercios.",
            "Las partes de {b} se nombran como lugares en una fila: terceros y no tercios.",
        ),
        InTwo(
            "What do we call one part when the whole is cut into three equal parts?",
            "¿Cómo llamamos a una parte cuando la unidad se corta en tres partes iguales?",
        ),
        of_writing=True,
    ),
}
