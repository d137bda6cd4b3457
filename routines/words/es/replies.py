"""Spanish endings of a reply, which send children back to the grid: by level band, the shortest last.

{along} is the line as far as it is written, where it holds enough to look along; without it, the ending is not said.
"""

from ..language import Replies
from .notes import NOTES
from .slips import WORDS

ABOUT_A_JUMP: tuple[tuple[str, ...], ...] = (
    ("Señala y muéstranos.", "Muéstralo en la cuadrícula.", "Toca {a:el} y sigue.", "Señálalo."),
    (
        "Señala {a:el} en {line} y muestra por qué.",
        "Mira a lo largo de {along} y di por qué.",
        "Haz otra vez el salto desde {a:el} en la cuadrícula. ¿Por qué?",
        "Muestra en la cuadrícula cómo lo sabes.",
        "Usa la cuadrícula. ¿Por qué?",
    ),
    (
        "Empieza con {a:el} en {line}, haz {jump} en la cuadrícula y di cómo lo sabes.",
        "Compáralo con los otros números de {along}: ¿qué hace ahí {jump}?",
        "Haz {jump} una vez más desde {a:el} y muestra en la cuadrícula qué cambia y qué se queda.",
        "Muestra {jump} en la cuadrícula y explica cómo lo sabes.",
        "Compruébalo en la cuadrícula.",
    ),
    (
        "Di qué hace siempre {jump} en un lugar así y ponlo a prueba en {along}.",
        "Escribe una regla para {jump} y pruébala con cada número de {along}.",
        "¿Qué tendría que cumplir {jump} para que funcione? Busca en {along} un número que lo contradiga.",
        "Muestra de dos maneras en la cuadrícula {jump} desde {a:el} y di qué tienen en común.",
        "Di como regla qué hace {jump} y muéstralo en la cuadrícula desde {a:el} en {line}.",
        "Ponlo a prueba en la cuadrícula.",
    ),
)

ABOUT_WRITING: tuple[tuple[str, ...], ...] = (
    ("Señala y muéstranos.", "Muéstralo en la cuadrícula.", "Señálalo."),
    (
        "Mira a lo largo de {along}: ¿cómo escribimos los otros y por qué?",
        "Léelo en voz alta junto {a:al} de la cuadrícula. ¿Qué oyes?",
        "Compáralo con {a:el} en la cuadrícula. ¿Por qué?",
        "Usa la cuadrícula. ¿Por qué?",
    ),
    (
        "Mira los números de {along} y di qué nos dice cada parte.",
        "Compáralo con {a:el} en la cuadrícula y explica qué nos dice cada parte.",
        "Léelo en voz alta junto {a:al} de la cuadrícula y explica las partes que oyes.",
        "Compruébalo en la cuadrícula.",
    ),
    (
        "Escribe una regla para escribir un número así y pruébala con cada número de {along}.",
        "¿Cuándo nombran un solo número dos formas de escribir? Prueba tu idea con los números de {along}.",
        "Di como regla qué nos dice cada parte de un número y pruébala con {a:el} en {line} de la cuadrícula.",
        "Ponlo a prueba en la cuadrícula.",
    ),
)

REPLIES = Replies(
    WORDS,
    ABOUT_A_JUMP,
    ABOUT_WRITING,
    jump=("un salto de {size}", "un salto hacia atrás de {size}"),
    joined=("suman", "quitan"),
    cent="céntimo",
    notes=NOTES,
)
