"""Spanish endings of a reply, which send children back to the grid: by level band, the shortest last."""

from ..language import Replies
from .notes import NOTES
from .slips import WORDS

ABOUT_A_JUMP: tuple[tuple[str, ...], ...] = (
    ("Señala y muéstranos.", "Muéstralo en la cuadrícula.", "Toca {a:el} y sigue.", "Señálalo."),
    (
        "Señala {a:el} en {line} y muestra por qué.",
        "Mira a lo largo de {line} y di por qué.",
        "Haz otra vez el salto desde {a:el} en la cuadrícula. ¿Por qué?",
        "Muestra en la cuadrícula cómo lo sabes.",
        "Usa la cuadrícula. ¿Por qué?",
    ),
    (
        "Empieza con {a:el} en {line}, haz {jump} en la cuadrícula y di cómo lo sabes.",
        "Compáralo con los otros números de {line}: ¿qué hace ahí {jump}?",
        "Haz {jump} una vez más desde {a:el} y muestra en la cuadrícula qué cambia y qué se queda.",
        "Muestra {jump} en la cuadrícula y explica cómo lo sabes.",
        "Compruébalo en la cuadrícula.",
    ),
    (
        "Di qué hace siempre {jump} en un lugar así y ponlo a prueba en {line}.",
        "Escribe una regla para {jump} y pruébala con cada número de {line}.",
        "¿Qué tendría que cumplir {jump} para que funcione? Busca en la cuadrícula un número que lo contradiga.",
        "Ponlo a prueba en {line} de la cuadrícula.",
    ),
)

ABOUT_WRITING: tuple[tuple[str, ...], ...] = (
    ("Señala y muéstranos.", "Muéstralo en la cuadrícula.", "Señálalo."),
    (
        "Mira a lo largo de {line}: ¿cómo escribimos los otros y por qué?",
        "Busca uno parecido en la cuadrícula y di por qué.",
        "Compáralo con {a:el} en la cuadrícula. ¿Por qué?",
        "Usa la cuadrícula. ¿Por qué?",
    ),
    (
        "Mira los números de {line} y di qué nos dice cada parte.",
        "Compáralo con {a:el} en la cuadrícula y explica qué nos dice cada parte.",
        "Busca en la cuadrícula otro número así, léelo y explica sus partes.",
        "Compruébalo en la cuadrícula.",
    ),
    (
        "Escribe una regla para escribir un número así y pruébala con cada número de {line}.",
        "¿Cuándo nombran un solo número dos formas de escribir? Prueba tu idea con los números de {line}.",
        "Ponlo a prueba en {line} de la cuadrícula.",
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
