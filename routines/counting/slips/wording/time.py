"""What is said about slips in counts of time."""

from .slip_words import InTwo, SlipWords

_HUNDRED_MINUTES = SlipWords(
    InTwo(
        "In the jump from {a} the hour is treated as one hundred minutes.",
        "En el salto desde {a} la hora se trata como cien minutos.",
    ),
    InTwo(
        "How many minutes are left in the hour at {a}, and is our jump longer?",
        "¿Cuántos minutos quedan de la hora a {a}, y es más largo nuestro salto?",
    ),
)
_HOUR_KEPT = SlipWords(
    InTwo(
        "The minutes start again after {a}, but the hour is kept.",
        "Los minutos vuelven a empezar después de {a}, pero la hora se queda.",
    ),
    InTwo(
        "The minutes have gone all the way round: is that later than {a}?",
        "Los minutos dieron toda la vuelta: ¿es eso más tarde que {a}?",
    ),
)
WORDS = {
    "T01": SlipWords(
        InTwo(
            "After {a} the minutes are counted up to sixty instead of opening a new hour.",
            "Después de {a} los minutos llegan a sesenta y no empieza otra hora.",
        ),
        InTwo(
            "How many minutes fill the hour after {a}, and what begins then?",
            "¿Cuántos minutos llenan la hora después de {a} y qué empieza entonces?",
        ),
    ),
    "T02": _HUNDRED_MINUTES,
    "T03": _HOUR_KEPT,
    "T04": SlipWords(
        InTwo(
            "After {a} the hours are counted on past twelve, as a 24-hour clock counts them after noon.",
            "Después de {a} las horas pasan de doce, como en un reloj de 24 horas después del mediodía.",
        ),
        InTwo(
            "Where does the hour hand point then, and what does our clock call it?",
            "¿Adónde apunta entonces la aguja de las horas y cómo lo llama nuestro reloj?",
        ),
        of_writing=True,
    ),
    "T05": SlipWords(
        InTwo(
            "After {a} the half of the day is not changed at noon.",
            "Después de {a} no se cambia la mitad del día al mediodía.",
        ),
        InTwo(
            "What do we do in school at that time: is it morning or afternoon?",
            "¿Qué hacemos en la escuela a esa hora: es la mañana o la tarde?",
        ),
    ),
    "T06": SlipWords(
        InTwo("After {a} midnight and noon are confused.", "Después de {a} se confunden la medianoche y el mediodía."),
        InTwo(
            "When does a new day begin: in the light or in the dark?",
            "¿Cuándo empieza un día nuevo: con luz o de noche?",
        ),
    ),
    "T07": SlipWords(
        InTwo(
            "The empty tens place in the minutes of {b} is left out.",
            "Se deja fuera el lugar vacío de las decenas en los minutos de {b}.",
        ),
        InTwo(
            "How many digits do we write for the minutes, and what does each one show?",
            "¿Cuántas cifras escribimos para los minutos y qué muestra cada una?",
        ),
        InTwo("How many digits show the minutes?", "¿Cuántas cifras muestran los minutos?"),
        of_writing=True,
    ),
    "T08": SlipWords(
        InTwo(
            "After {a} the minutes start again, but the hour is not lowered.",
            "Después de {a} los minutos vuelven a empezar, pero no baja la hora.",
        ),
        InTwo(
            "We are counting back: is that time earlier than {a}, or later?",
            "Contamos hacia atrás: ¿es esa hora antes de {a}, o después?",
        ),
    ),
    "T09": SlipWords(
        InTwo(
            "In the jump from {a} a hundred minutes, not sixty, are taken to fill the hour.",
            "En el salto desde {a} se cree que cien minutos, y no sesenta, llenan la hora.",
        ),
        InTwo(
            "How many of all those minutes would fill another whole hour?",
            "¿Cuántos de todos esos minutos llenarían otra hora completa?",
        ),
    ),
    "T10": SlipWords(
        InTwo(
            "After {a} the hours are counted on past midnight.",
            "Después de {a} las horas se siguen contando más allá de la medianoche.",
        ),
        InTwo(
            "What does our clock show when a new day begins after {a}?",
            "¿Qué muestra nuestro reloj cuando empieza un día nuevo después de {a}?",
        ),
    ),
    "T11": SlipWords(
        InTwo(
            "The jump back from {a} crosses the hour, and the hour is not lowered.",
            "El salto atrás desde {a} pasa de la hora y la hora no baja.",
        ),
        InTwo(
            "When we jump back from {a}, do we stay in the same hour?",
            "Al saltar atrás desde {a}, ¿nos quedamos en la misma hora?",
        ),
    ),
    "T12": _HUNDRED_MINUTES,
    "T13": _HOUR_KEPT,
    "T14": SlipWords(
        InTwo(
            "After {a} the minutes fill an hour and start again, but no hour is added.",
            "Después de {a} los minutos llenan una hora y vuelven a empezar, pero no se suma la hora.",
        ),
        InTwo(
            "The minutes filled another hour after {a}: where do we see that hour?",
            "Los minutos llenaron otra hora después de {a}: ¿dónde se ve esa hora?",
        ),
    ),
}
