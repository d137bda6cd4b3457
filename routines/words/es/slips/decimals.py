"""What is said in Spanish about slips in decimal counts."""

from ...language import SlipWords

WORDS = {
    "D01": SlipWords(
        "Las cifras decimales de {a} se leen como un número entero que sigue.",
        "¿Qué forman diez décimas y dónde lo escribimos?",
    ),
    "D02": SlipWords(
        "En el salto desde {a:el} las décimas pasan de diez y no se cambian por una unidad.",
        "Contamos hacia arriba: ¿es {heard} más que {a}, y cuántas décimas hacen una unidad?",
    ),
    "D03": SlipWords(
        "En el salto desde {a:el} las centésimas pasan de cien y no se cambian.",
        "¿Qué forman cien centésimas y dónde lo escribimos?",
    ),
    "D04": SlipWords(
        "Después {a:del} se escribe el diez detrás de la cifra que ya está.",
        "¿Qué forman diez centésimas y en qué lugar lo escribimos?",
    ),
    "D05": SlipWords(
        "El último lugar de {a} pasa de nueve y no se cambia.",
        "¿Qué forman diez milésimas y en qué lugar lo escribimos?",
    ),
    "D06": SlipWords(
        "Al final de {b} puede ir un cero o no: es el mismo número.",
        "¿Un cero al final cambia cuánto hay o solo cómo lo escribimos?",
    ),
    "D07": SlipWords(
        "Las cifras del salto {size} se {joined} un lugar más a la izquierda.",
        "¿En qué lugar va la última cifra de nuestro salto y qué hay ahí en {a}?",
    ),
    "D08": SlipWords(
        "Después {a:del} se cuentan las unidades, porque no se ve otra cifra.",
        "¿Nuestro salto cambia las unidades de {a} o los lugares que siguen?",
    ),
    "D09": SlipWords(
        "Se olvida decir {b:el}, un número entero.",
        "¿Cuánto hay desde {a:el} hasta ese número: un salto, o más?",
    ),
    "D10": SlipWords(
        "Después {a:del} las cifras decimales vuelven a empezar, pero no baja la unidad.",
        "Contamos hacia atrás: ¿es {heard} menos que {a}?",
    ),
    "D11": SlipWords(
        "El salto hacia atrás desde {a:el} pasa de una unidad y la unidad no baja.",
        "Al saltar hacia atrás desde {a:el}, ¿nos quedamos en la misma unidad?",
    ),
}
