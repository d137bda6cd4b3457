"""What sends children back to the grid at the end of a reply.

By language and level band (K-1, 2-3, 4-5, 6 and up); several each, so that no two replies in a row end alike. The last
of each is the shortest, for when the question before it is long.
"""

from collections.abc import Mapping

Endings = Mapping[str, tuple[tuple[str, ...], ...]]

ABOUT_A_JUMP: Endings = {
    "en": (
        ("Point and show us.", "Show us on the grid.", "Touch {a} and go on.", "Point to it."),
        (
            "Put a finger on {a} in {line} and show us why.",
            "Look along {line} and tell us why.",
            "Make the jump again from {a} on the grid. Why?",
            "Show us on the grid how you know.",
            "Use the grid. Why?",
        ),
        (
            "Start at {a} in {line}, make {jump} on the grid, and say how you know.",
            "Compare it with the other counts in {line}: what does {jump} do there?",
            "Make {jump} once more from {a}, and say on the grid what changes and what stays.",
            "Show {jump} on the grid, and explain how you know.",
            "Check it on the grid.",
        ),
        (
            "Say what you think {jump} always does at such a place, and test it on {line}.",
            "Make a rule for the count after {a}, and test your rule on every count in {line}.",
            "What would have to be true of {jump} for that to work? Look for a count on the grid that says no.",
            "Test it on {line} of the grid.",
        ),
    ),
    "es": (
        ("Señala y muestra.", "Muéstralo en la cuadrícula.", "Toca {a} y sigue.", "Señálalo."),
        (
            "Pon un dedo en {a} en {line} y muestra por qué.",
            "Mira a lo largo de {line} y di por qué.",
            "Haz otra vez el salto desde {a} en la cuadrícula. ¿Por qué?",
            "Muestra en la cuadrícula cómo lo sabes.",
            "Usa la cuadrícula. ¿Por qué?",
        ),
        (
            "Empieza en {a} en {line}, haz {jump} en la cuadrícula y di cómo lo sabes.",
            "Compáralo con los otros números de {line}: ¿qué hace ahí {jump}?",
            "Haz {jump} una vez más desde {a} y di en la cuadrícula qué cambia y qué se queda.",
            "Muestra {jump} en la cuadrícula y explica cómo lo sabes.",
            "Compruébalo en la cuadrícula.",
        ),
        (
            "Di qué hace siempre {jump} en un lugar así y ponlo a prueba en {line}.",
            "Escribe una regla para el número después de {a} y pruébala con cada número de {line}.",
            "¿Qué tendría que cumplir {jump} para que funcione? Busca en la cuadrícula un número que diga que no.",
            "Ponlo a prueba en {line} de la cuadrícula.",
        ),
    ),
}

ABOUT_WRITING: Endings = {
    "en": (
        ("Point and show us.", "Show us on the grid.", "Point to it."),
        (
            "Look along {line}: how did we write the others, and why?",
            "Find one like it on the grid, and tell us why.",
            "Compare it with {a} on the grid. Why?",
            "Use the grid. Why?",
        ),
        (
            "Look at the counts in {line}, and say what each part of them tells us.",
            "Compare it with {a} on the grid, and explain what each part tells us.",
            "Find another count on the grid that is written in this way, and explain its parts.",
            "Check it on the grid.",
        ),
        (
            "Make a rule for writing such a count, and test it on every count in {line}.",
            "When would two ways of writing name one number? Test your idea on the counts in {line}.",
            "Test it on {line} of the grid.",
        ),
    ),
    "es": (
        ("Señala y muestra.", "Muéstralo en la cuadrícula.", "Señálalo."),
        (
            "Mira a lo largo de {line}: ¿cómo escribimos los otros y por qué?",
            "Busca uno parecido en la cuadrícula y di por qué.",
            "Compáralo con {a} en la cuadrícula. ¿Por qué?",
            "Usa la cuadrícula. ¿Por qué?",
        ),
        (
            "Mira los números de {line} y di qué nos dice cada parte.",
            "Compáralo con {a} en la cuadrícula y explica qué nos dice cada parte.",
            "Busca en la cuadrícula otro número escrito así y explica sus partes.",
            "Compruébalo en la cuadrícula.",
        ),
        (
            "Escribe una regla para escribir un número así y pruébala con cada número de {line}.",
            "¿Cuándo nombran un solo número dos formas de escribir? Prueba tu idea con los números de {line}.",
            "Ponlo a prueba en {line} de la cuadrícula.",
        ),
    ),
}
