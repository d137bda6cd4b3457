"""What is said in Spanish about slips in counts of whole numbers that the table does not name."""

from ...language import SlipWords
from . import whole_numbers

WORDS = {
    "W32": SlipWords(
        "La palabra de {b} se forma como las decenas de antes: diez decenas tienen otra palabra.",
        "¿Qué nombre nuevo damos a diez decenas?",
        "¿Qué forman diez decenas después de {a}?",
    ),
    "W33": SlipWords(
        "La palabra de {b} termina casi como la de un número de diez y algo.",
        "¿Cuántas decenas llevamos después de {a}?",
        "¿Qué decena viene después de {a}?",
    ),
    "W34": SlipWords(
        "En {a} el conteo da la vuelta y sube, como más se conoce.",
        "¿Contamos hacia arriba o hacia atrás desde {a}?",
        "¿Contamos hacia atrás desde {a}?",
    ),
    "W35": SlipWords(
        "El final de la palabra de {b} suena como el de una decena.",
        "¿Cuántas unidades tiene el número que sigue?",
        "¿Cuántas unidades van con la decena?",
    ),
    "W36": SlipWords(
        "Después de {a} se vuelve a contar de uno en uno, como más se conoce.",
        "¿Cuánto avanza cada uno de nuestros saltos y cuánto avanzó este desde {a}?",
        "¿De cuánto es el salto desde {a}?",
    ),
    "W37": SlipWords(
        "Después de {a} se cuentan decenas y no de cinco en cinco.",
        "¿Hay un número nuestro entre {a} y ese, y en qué termina?",
        "¿Nos saltamos uno después de {a}?",
    ),
    "W38": SlipWords(
        "Después de {a} se duplica el salto de {size}.",
        "¿Cuánto saltamos desde {a} y cuánto saltamos antes?",
    ),
    "W39": SlipWords(
        "Se olvida decir {b}: su palabra se forma a su manera.",
        "¿Hay un número entre {a} y ese?",
        "¿Nos saltamos uno después de {a}?",
    ),
    "W40": SlipWords(
        "Los millares de {b} se escriben completos antes de lo demás.",
        "¿Cuántos millares, centenas, decenas y unidades oyes en ese número?",
    ),
    "W41": whole_numbers.WORDS["W13"],
    "W42": whole_numbers.WORDS["W11"],
    "W43": SlipWords(
        "Se olvida decir {b}: las palabras de estos números se confunden.",
        "¿Hay un número entre {a} y ese?",
        "¿Nos saltamos uno después de {a}?",
    ),
}
