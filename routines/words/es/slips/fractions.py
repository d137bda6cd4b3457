"""What is said in Spanish about slips in counts of fractions."""

from ...language import SlipWords

WORDS = {
    "F01": SlipWords(
        "Después {a:del} se calculan por separado el número de arriba y el de abajo, como si fueran dos números enteros.",
        "Contamos hacia arriba: ¿es {heard} más que {a}?",
    ),
    "F02": SlipWords(
        "Después {a:del} se cuenta el número de abajo, aunque las partes no cambian.",
        "¿Qué nos dice el número de abajo sobre las partes, y cambian?",
    ),
    "F03": SlipWords(
        "Después {a:del} suben uno los dos números.",
        "¿Qué número cuenta las partes y cuál dice su tamaño?",
    ),
    "F04": SlipWords(
        "La unidad se toma por el final y después {a:del} el conteo vuelve a empezar.",
        "Después {a:del}, ¿el número que sigue es más que la unidad o menos?",
    ),
    "F05": SlipWords(
        "Se cree que las fracciones son menores que uno y el conteo se detiene después {a:del}.",
        "¿Podemos dar un salto más desde {a:el}, y qué tenemos entonces?",
    ),
    "F06": SlipWords(
        "Después {a:del} un grupo completo de partes no se cambia por una unidad: es el mismo número, {b}.",
        "Ese número tiene un nombre más corto: ¿qué forman juntas todas sus partes?",
    ),
    "F07": SlipWords(
        "Se cuenta la unidad de {a} y no sus partes.",
        "¿Qué crece con cada uno de nuestros saltos: las unidades o las partes?",
    ),
    "F08": SlipWords(
        "Se juntan la parte entera y el número de arriba de {b}.",
        "¿Qué número cuenta ahí las unidades y cuál las partes que sobran?",
    ),
    "F09": SlipWords(
        "{b} tiene también otro nombre: es el mismo número.",
        "¿Qué otro nombre tiene {heard}, y sigue siendo el mismo número?",
    ),
    "F10": SlipWords(
        "{a} recibió otro nombre con partes mayores y el número de arriba se cuenta desde ahí.",
        "¿Qué nombre de {a} tiene partes del mismo tamaño que nuestro salto?",
    ),
    "F11": SlipWords(
        "Dos cifras arriba parecen pedir otro número abajo y los décimos se vuelven centésimos.",
        "¿Cambió el tamaño de las partes después {a:del}, o solo cuántas tenemos?",
    ),
    "F12": SlipWords(
        (
            "Con sus nombres más simples, {a} y el salto de {size} no tienen partes iguales, y se toman como si lo "
            "fueran."
        ),
        "¿Cuántas partes forman una unidad en ese número y cuántas en {a}?",
    ),
    "F13": SlipWords(
        "De {a} se quita una unidad entera y no {size}.",
        "¿Cuánto de una unidad quitamos en el salto desde {a:el}?",
    ),
    "F14": SlipWords(
        "En el salto desde {a:el} se cuentan mal las partes que quedan después de la unidad.",
        "¿Cuántas partes del salto desde {a:el} llenan la unidad y cuántas quedan?",
    ),
    "F15": SlipWords(
        "El salto hacia atrás desde {a:el} pasa de una unidad y la unidad no baja.",
        "Al saltar hacia atrás desde {a:el}, ¿nos quedamos en la misma unidad?",
    ),
    "F16": SlipWords(
        "Las partes se quitan al revés en el salto hacia atrás desde {a:el}: las menos de las más.",
        "¿Tiene {a} partes suficientes para quitar nuestro salto sin descomponer una unidad?",
    ),
    "F17": SlipWords(
        "En el salto hacia atrás desde {a:el} se descompone una unidad en diez partes.",
        "¿Cuántas de nuestras partes salen al descomponer una unidad de {a}?",
    ),
}
WORDS["F18"] = WORDS["F09"]._replace(ask="¿Cuántos enteros llenan las partes de ese número y cuántas partes sobran?")
WORDS |= {"F19": WORDS["F01"], "F20": WORDS["F18"], "F21": WORDS["F09"]}
