"""What is said in Spanish about slips of counts in two units and of clocks that the table leaves to other grades."""

from ...language import SlipWords
from . import integers, measurement, time

WORDS = {
    "U01": measurement.WORDS["L01"]._replace(show="¿Cuánt{as} {smalls} hacen 1 {large}?"),
    "U02": SlipWords(
        "Después {a:del} los minutos siguen más allá del final de la hora.",
        "¿Cuántos minutos faltan desde {a:el} para completar la hora? ¿Qué hora empieza?",
        "¿Cuántos minutos llenan una hora?",
    ),
    "U03": SlipWords(
        "En el salto hacia atrás desde {a:el} se descompone la hora en cien minutos.",
        "¿Cuántos minutos nos da descomponer una hora, y cuántos quitamos?",
    ),
    "U04": measurement.WORDS["L13"],
    "U05": SlipWords(
        "Los minutos de {a} quedaron sin cambiar y ahora cien de ellos se toman por una hora.",
        time.WORDS["T09"].ask,
    ),
    "U06": SlipWords(
        "Las cifras decimales de {a} se leen como un número entero que sigue.",
        "¿Qué forman ahora todas las partes después de la marca y dónde lo escribimos?",
    ),
    "U07": integers.WORDS["N05"],
}
