"""What is said in Spanish about slips in counts of whole numbers that the table does not name."""

from ...language import SlipWords
from . import whole_numbers

WORDS = {
    "W32": SlipWords(
        "Se sigue contando con la palabra de la decena de antes, y diez decenas tienen su propio nombre.",
        "¿Qué nombre nuevo damos a diez decenas?",
        "¿Cómo se llaman diez decenas juntas?",
    ),
    "W33": SlipWords(
        "La palabra {b:del} termina casi como la de un número de diez y algo.",
        "¿Cuántas decenas llevamos después {a:del}?",
        "¿Qué decena viene después {a:del}?",
    ),
    "W34": SlipWords(
        "En {a} el conteo da la vuelta y sube, que es como mejor se sabe contar.",
        "¿Contamos hacia arriba o hacia atrás desde {a:el}?",
        "¿Contamos hacia atrás desde {a:el}?",
    ),
    "W35": SlipWords(
        "El final de la palabra {b:del} suena como el de una decena.",
        "¿Cuántas unidades tiene el número que sigue?",
        "¿Cuántas unidades van con la decena?",
    ),
    "W36": SlipWords(
        "Después {a:del} se vuelve a contar de uno en uno, que es como mejor se sabe.",
        "¿Cuánto hay desde {a:el} hasta ese número y de cuánto es nuestro salto?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "W37": SlipWords(
        "Después {a:del} se cuentan decenas y no de cinco en cinco.",
        "¿Hay un número nuestro entre {a:el} y ese, y en qué termina?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "W38": SlipWords(
        "Después {a:del} se duplica el salto de {size}.",
        "¿Cuánto saltamos desde {a:el} y cuánto saltamos antes?",
    ),
    "W39": SlipWords(
        "Se olvida decir {b:el}: su palabra se forma a su manera.",
        "¿Hay un número entre {a:el} y ese?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "W40": SlipWords(
        "Los millares de {b} se escriben completos antes de lo demás.",
        "¿Cuántos millares, centenas, decenas y unidades oyes en ese número?",
    ),
    "W41": whole_numbers.WORDS["W13"],
    "W42": whole_numbers.WORDS["W11"],
    "W44": whole_numbers.WORDS["W08"],
    "W49": whole_numbers.WORDS["W15"],
    "W45": whole_numbers.WORDS["W20"],
    "W43": SlipWords(
        "Se olvida decir {b:el}: las palabras de estos números se confunden.",
        "¿Hay un número entre {a:el} y ese?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "W47": SlipWords(
        "El salto desde {a:el} se cuenta de uno en uno empezando con {a:el}, y se cuenta uno de menos.",
        "Si contamos el salto desde {a:el} de uno en uno, ¿qué número decimos primero?",
    ),
    "W48": SlipWords(
        "En {b} se dicen las centenas como antes del millar: es el mismo número.",
        "¿Cuántas centenas dices, y qué nombre nuevo tienen diez centenas?",
    ),
    "W46": SlipWords(
        "Se olvida decir {b:el}: las palabras de estos números se confunden.",
        "¿Hay un número entre {a:el} y ese?",
        "¿Nos saltamos uno después {a:del}?",
    ),
}
