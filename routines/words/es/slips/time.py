"""What is said in Spanish about slips in counts of time."""

from ...language import SlipWords
from . import measurement

_HUNDRED_MINUTES = SlipWords(
    "En el salto desde {a:el} la hora se trata como cien minutos.",
    "¿Cuántos minutos quedan de la hora a {a}, y es más largo nuestro salto?",
)
_HOUR_KEPT = SlipWords(
    "Los minutos vuelven a empezar después {a:del}, pero la hora se queda.",
    "Los minutos dieron toda la vuelta: ¿es eso más tarde que {a:el}?",
)
WORDS = {
    "T01": SlipWords(
        "Después {a:del} los minutos llegan a sesenta y no empieza otra hora.",
        "¿Cuántos minutos faltan desde {a:el} para completar la hora? ¿Qué hora empieza?",
    ),
    "T02": _HUNDRED_MINUTES,
    "T03": _HOUR_KEPT,
    "T04": SlipWords(
        "Después {a:del} las horas pasan de doce, como en un reloj de 24 horas después del mediodía.",
        "¿Adónde apunta entonces la aguja de las horas y cómo lo llama nuestro reloj?",
    ),
    "T05": SlipWords(
        "Después {a:del} no se cambia a. m. por p. m. al pasar el mediodía.",
        "A esa hora que dices, ¿almorzamos o dormimos?",
    ),
    "T06": SlipWords(
        "Después {a:del} se confunden la medianoche y el mediodía.",
        "¿Cuándo empieza un día nuevo: con luz o de noche?",
    ),
    "T07": SlipWords(
        "Se deja fuera el lugar vacío de las decenas en los minutos de {b}.",
        "¿Cuántas cifras escribimos para los minutos y qué muestra cada una?",
        "¿Cuántas cifras muestran los minutos?",
    ),
    "T08": SlipWords(
        "Después {a:del} los minutos vuelven a empezar, pero no baja la hora.",
        "Contamos hacia atrás: ¿es esa hora antes {a:del}, o después?",
    ),
    "T09": SlipWords(
        "En el salto desde {a:el} se cree que cien minutos, y no sesenta, llenan la hora.",
        "¿Cuántos de todos esos minutos llenarían otra hora completa?",
    ),
    "T10": SlipWords(
        "Después {a:del} las horas se siguen contando más allá de la medianoche.",
        "¿Qué muestra nuestro reloj cuando empieza un día nuevo después {a:del}?",
    ),
    "T11": SlipWords(
        "El salto hacia atrás desde {a:el} pasa de la hora y la hora no baja.",
        "Al saltar hacia atrás desde {a:el}, ¿nos quedamos en la misma hora?",
    ),
    "T12": _HUNDRED_MINUTES,
    "T13": _HOUR_KEPT,
    "T15": SlipWords(
        "La media hora se dice con la hora que viene: la aguja de las horas ya va hacia ella.",
        "¿Qué hora ya empezó y cuál no ha empezado todavía?",
        "¿Ya empezó esa hora?",
    ),
    "T17": SlipWords(
        "Después {a:del} se dicen las horas en punto, que son las más conocidas.",
        "¿Cuánto hay desde {a:el} hasta {that_one} y de cuánto es nuestro salto?",
        "¿Es ese nuestro salto completo desde {a:el}?",
    ),
    "T14": SlipWords(
        "Después {a:del} los minutos llenan una hora y vuelven a empezar, pero no se suma la hora.",
        "Los minutos llenaron otra hora después {a:del}: ¿dónde se ve esa hora?",
    ),
}
WORDS["T09 named"] = measurement.WORDS["L01"]
WORDS["T04 named"] = WORDS["T04"]._replace(
    why="Después {a:del} las horas pasan de doce, como en un reloj de 24 horas: es la misma hora."
)
for _key in ("T04", "T04 named"):
    WORDS[_key.replace("T04", "T16")] = WORDS[_key]._replace(show="¿Qué viene después de las doce en nuestro reloj?")
WORDS["T10 named"] = WORDS["T10"]._replace(
    why="Después {a:del} las horas se siguen contando más allá de la medianoche: es la misma hora."
)
