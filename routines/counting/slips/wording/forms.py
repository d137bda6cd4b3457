"""What is said about forms that nobody may write."""

from .slip_words import InTwo, SlipWords

FORMS = {
    "A01": SlipWords(
        InTwo(
            "Minutes are written past the end of the hour: no clock shows sixty or more.",
            "Se escriben minutos más allá del final de la hora: ningún reloj muestra sesenta o más.",
        ),
        InTwo(
            "How far do the minutes on a clock go before a new hour begins?",
            "¿Hasta dónde llegan los minutos de un reloj antes de que empiece otra hora?",
        ),
        InTwo("How far do the minutes go?", "¿Hasta dónde llegan los minutos?"),
        of_writing=True,
    ),
    "A02": SlipWords(
        InTwo(
            "More than two digits of {smalls} are written after the mark.",
            "Se escriben más de dos cifras de {smalls} después de la marca.",
        ),
        InTwo(
            "How many digits do we write for the {smalls}, and what do we do when there are more?",
            "¿Cuántas cifras escribimos para los {smalls} y qué hacemos cuando hay más?",
        ),
        InTwo("How many digits show the {smalls}?", "¿Cuántas cifras muestran los {smalls}?"),
        of_writing=True,
    ),
    "A03": SlipWords(
        InTwo(
            "The digits after the mark are read as a whole number by themselves.",
            "Las cifras después de la marca se leen como un número entero aparte.",
        ),
        InTwo(
            "What does each digit after the mark tell us, place by place?",
            "¿Qué nos dice cada cifra después de la marca, lugar por lugar?",
        ),
        InTwo("What does each digit tell us?", "¿Qué nos dice cada cifra?"),
        of_writing=True,
    ),
}
