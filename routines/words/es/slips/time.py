"""What is said in Spanish about slips in counts of time."""

from ...language import SlipWords

_HUNDRED_MINUTES = SlipWords(
    "En el salto desde {a} la hora se trata como cien minutos.",
    "¿Cuántos minutos quedan de la hora a {a}, y es más largo nuestro salto?",
)
_HOUR_KEPT = SlipWords(
    "Los minutos vuelven a empezar después de {a}, pero la hora se queda.",
    "Los minutos dieron toda la vuelta: ¿es eso más tarde que {a}?",
)
WORDS = {
    "T01": SlipWords(
        "Después de {a} los minutos llegan a sesenta y no empieza otra hora.",
        "¿Cuántos minutos llenan la hora después de {a} y qué empieza entonces?",
    ),
    "T02": _HUNDRED_MINUTES,
    "T03": _HOUR_KEPT,
    "T04": SlipWords(
        "Después de {a} las horas pasan de doce, como en un reloj de 24 horas después del mediodía.",
        "¿Adónde apunta entonces la aguja de las horas y cómo lo llama nuestro reloj?",
    ),
    "T05": SlipWords(
        "Después de {a} no se cambia la mitad del día al mediodía.",
        "¿Qué hacemos en la escuela a esa hora: es la mañana o la tarde?",
    ),
    "T06": SlipWords(
        "Después de {a} se confunden la medianoche y el mediodía.",
        "¿Cuándo empieza un día nuevo: con luz o de noche?",
    ),
    "T07": SlipWords(
        "Se deja fuera el lugar vacío de las decenas en los minutos de {b}.",
        "¿Cuántas cifras escribimos para los minutos y qué muestra cada una?",
        "¿Cuántas cifras muestran los minutos?",
    ),
    "T08": SlipWords(
        "Después de {a} los minutos vuelven a empezar, pero no baja la hora.",
        "Contamos hacia atrás: ¿es esa hora antes de {a}, o después?",
    ),
    "T09": SlipWords(
        "En el salto desde {a} se cree que cien minutos, y no sesenta, llenan la hora.",
        "¿Cuántos de todos esos minutos llenarían otra hora completa?",
    ),
    "T10": SlipWords(
        "Después de {a} las horas se siguen contando más allá de la medianoche.",
        "¿Qué muestra nuestro reloj cuando empieza un día nuevo después de {a}?",
    ),
    "T11": SlipWords(
        "El salto atrás desde {a} pasa de la hora y la hora no baja.",
        "Al saltar atrás desde {a}, ¿nos quedamos en la misma hora?",
    ),
    "T12": _HUNDRED_MINUTES,
    "T13": _HOUR_KEPT,
    "T14": SlipWords(
        "Después de {a} los minutos llenan una hora y vuelven a empezar, pero no se suma la hora.",
        "Los minutos llenaron otra hora después de {a}: ¿dónde se ve esa hora?",
    ),
}
