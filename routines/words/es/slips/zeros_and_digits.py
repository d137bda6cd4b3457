"""What is said in Spanish about digits that change places, and zeros inside a number that are lost."""

from ...language import SlipWords
from . import money, time, whole_numbers

_EMPTY_PLACE = "¿Qué lugar de ese número está vacío y cómo lo mostramos?"

WORDS = {
    "Z01": SlipWords(
        "Las decenas y las unidades de {b} cambian de lugar.",
        "¿Qué cifra dice cuántas decenas hay y cuál dice las unidades?",
        "¿Qué cifra muestra las decenas?",
    ),
    "Z02": whole_numbers.WORDS["W18"]._replace(show="¿Cuántas centenas y decenas oyes?"),
    "Z03": SlipWords("Se deja fuera el cero que está dentro de {b}.", _EMPTY_PLACE, "¿Cómo mostramos un lugar vacío?"),
    "Z04": SlipWords(
        "Se dejan fuera las centenas vacías de {b} y otras cifras ocupan su lugar.",
        "¿Cuántos millares, centenas, decenas y unidades queremos decir?",
    ),
    "Z05": SlipWords(
        "Se deja fuera el cero del final de {b} y la cifra de antes vale menos.",
        "¿Qué nos dice la última cifra de ese número y cuánto queremos decir?",
    ),
    "Z06": SlipWords("Se dejan fuera las décimas vacías de {b}.", _EMPTY_PLACE),
    "Z07": money.WORDS["M02"],
    "Z08": time.WORDS["T07"],
}
