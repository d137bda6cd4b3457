"""What is said in Spanish about slips in counts that go below zero."""

from ...language import SlipWords

WORDS = {
    "N01": SlipWords(
        "El cero se toma por el número más pequeño y el conteo se queda ahí.",
        "¿Qué hay un salto por debajo {a:del} y a qué distancia del cero está?",
    ),
    "N02": SlipWords(
        "Se olvida decir {b:el}: no se considera un número.",
        "¿Qué hay entre los números mayores que cero y los menores, y caemos ahí?",
    ),
    "N03": SlipWords(
        "El conteo vuelve a empezar en cero: se olvida la parte del salto que llevó de {a} a cero.",
        "¿Cuánto del salto desde {a:el} nos lleva a cero y cuánto queda?",
    ),
    "N04": SlipWords(
        "Las cifras mayores se toman por números mayores y el conteo va al revés desde {a:el}.",
        "Contamos hacia arriba: en una recta numérica, ¿ese número es mayor que {a:el} o menor?",
    ),
    "N05": SlipWords(
        "Se dice la distancia al cero sin el signo.",
        "¿De qué lado del cero está el número después {a:del} y cómo lo mostramos?",
    ),
    "N06": SlipWords(
        (
            "Después {a:del} el final del número vuelve a empezar, pero no cambia lo que está antes: subir acerca al "
            "cero."
        ),
        "Al subir desde {a:el}, ¿nos acercamos al cero o nos alejamos?",
    ),
    "N07": SlipWords(
        "Después {a:del} el final del número vuelve a empezar, pero lo que está antes tiene que alejarse del cero.",
        "Al contar hacia abajo desde {a:el}, ¿cómo cambia la distancia al cero?",
    ),
    "N08": SlipWords(
        "El número después {a:del} ya está más allá del cero, pero se dice como si siguiéramos del lado de donde venimos.",
        "¿Hacia dónde seguimos desde {a:el} y de qué lado del cero está el número que sigue?",
        "¿De qué lado del cero seguimos después {a:del}?",
    ),
    "N09": SlipWords(
        "Por debajo del cero el conteo da la vuelta en {a:el} y regresa hacia el cero.",
        "Contamos hacia atrás: ¿ese está más abajo del cero que {a:el}, o más cerca?",
        "¿Bajamos más después {a:del}?",
    ),
    "N10": SlipWords(
        "Se olvida decir {b:el}: no se considera un número.",
        "¿Qué hay entre los números mayores que cero y los menores, y caemos ahí?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "N11": SlipWords(
        "El cero se toma por el número más pequeño y el conteo se queda ahí.",
        "¿Qué hay un salto por debajo {a:del} y a qué distancia del cero está?",
        "¿Qué viene debajo {a:del}?",
    ),
    "N12": SlipWords(
        "El conteo vuelve a empezar en cero: se olvida la parte del salto que llevó de {a} a cero.",
        "¿Cuánto del salto desde {a:el} nos lleva a cero y cuánto queda?",
        "¿Es ese nuestro salto completo desde {a:el}?",
    ),
}
WORDS["N13"] = WORDS["N08"]
