"""Spanish endings of a reply, which send children back to the grid: by level band, the shortest last.

{along} is the line as far as it is written, where it holds enough to look along, {alike} the same where a jump of its sort was
made in it; without them, the ending is not said.
"""

from ..language import Replies
from .notes import NOTES
from .slips import WORDS

ABOUT_A_JUMP: tuple[tuple[str, ...], ...] = (
    ("Señala y muéstranos.", "Muéstralo en la cuadrícula.", "Toca {a:el} y sigue.", "Señálalo."),
    (
        "Señala {a:el} en {line} y muéstranos.",
        "Mira a lo largo de {along} y dinos.",
        "Da otra vez el salto desde {a:el} en la cuadrícula.",
        "Muestra en la cuadrícula cómo lo sabes.",
        "Muéstralo en la cuadrícula.",
    ),
    (
        "Empieza con {a:el} en {line}, da {jump} en la cuadrícula y di cómo lo sabes.",
        "Compáralo con {the_others} de {alike}: ¿qué hace ahí {jump}?",
        "Da otra vez nuestro salto desde {a:el} y muestra en la cuadrícula qué cambia y qué se queda.",
        "Muestra {jump} en la cuadrícula y explica cómo lo sabes.",
        "Compruébalo en la cuadrícula.",
    ),
    (
        "Di qué hace siempre {jump} en un lugar así y ponlo a prueba en {alike}.",
        "Di una regla para {jump} y pruébala con {each_one} de {along}.",
        "¿Qué tendría que cumplir {jump} para que funcione? Busca en {alike} {some_one} que lo contradiga.",
        "Muestra de dos maneras en la cuadrícula {jump} desde {a:el} y di qué tienen en común.",
        "Di como regla qué hace {jump} y muéstralo en la cuadrícula desde {a:el} en {line}.",
        "Ponlo a prueba en la cuadrícula.",
    ),
)

ABOUT_WRITING: tuple[tuple[str, ...], ...] = (
    ("Señala y muéstranos.", "Muéstralo en la cuadrícula.", "Señálalo."),
    (
        "Mira a lo largo de {along} cómo escribimos {the_others} y dinos.",
        "Léelo en voz alta junto {a:al} de la cuadrícula.",
        "Compáralo con {a:el} en la cuadrícula.",
        "Muéstralo en la cuadrícula.",
    ),
    (
        "Mira {the_ones} de {along} y di qué nos dice cada parte.",
        "Compáralo con {a:el} en la cuadrícula y explica qué nos dice cada parte.",
        "Léelo en voz alta junto {a:al} de la cuadrícula y explica las partes que oyes.",
        "Compruébalo en la cuadrícula.",
    ),
    (
        "Di una regla para escribir {some_one} así y pruébala con {each_one} de {along}.",
        "¿Cuándo nombran un solo número dos formas de escribir? Prueba tu idea con {the_ones} de {along}.",
        "Di como regla qué nos dice cada parte de {some_one} y pruébala con {a:el} en {line} de la cuadrícula.",
        "Ponlo a prueba en la cuadrícula.",
    ),
)

ABOUT_SAYING: tuple[tuple[str, ...], ...] = (
    ("Señálalo y dilo despacio.", "Tócalo y dilo."),
    ("Señálalo y dilo en voz alta.", "Señálalo y dilo despacio."),
    (
        "Señálalo, dilo despacio y explica qué parte de la palabra cambia.",
        "Señálalo y dilo despacio.",
    ),
    (
        "Señálalo, dilo despacio y di como regla qué parte de la palabra cambia.",
        "Señálalo y dilo despacio.",
    ),
)

OF_NUMBERS = {
    "one_of_ours": "uno de nuestros números",
    "the_next_one": "el número que sigue",
    "that_one": "ese número",
    "some_one": "un número",
    "each_one": "cada número",
    "the_ones": "los números",
    "the_others": "los otros números",
}
OF_TIMES = {
    "one_of_ours": "una de nuestras horas",
    "the_next_one": "la hora que sigue",
    "that_one": "esa hora",
    "some_one": "una hora",
    "each_one": "cada hora",
    "the_ones": "las horas",
    "the_others": "las otras horas",
}

ABOUT_NAMES: tuple[tuple[str, ...], ...] = (
    ("Muéstralo en la cuadrícula.", "Señálalo."),
    ("Muestra en la cuadrícula cómo lo sabes.", "Muéstralo en la cuadrícula."),
    (
        "Explica cómo lo sabes y busca en la cuadrícula otro número que tenga dos nombres.",
        "Muéstralo en la cuadrícula.",
    ),
    (
        "Explica cómo lo sabes y busca en la cuadrícula otros números que tengan dos nombres.",
        "Muéstralo en la cuadrícula.",
    ),
)

REPLIES = Replies(
    WORDS,
    ABOUT_A_JUMP,
    ABOUT_WRITING,
    ABOUT_SAYING,
    ABOUT_NAMES,
    jump=("un salto de {size}", "un salto hacia atrás de {size}"),
    jumps=("saltos de {size}", "saltos hacia atrás de {size}"),
    joined=("suman", "quitan"),
    cent="céntimo",
    notes=NOTES,
    called=(OF_NUMBERS, OF_TIMES),
    of_gender=({"as": "os"}, {"as": "as"}),
    onward=(("más", "menos"), ("más tarde", "más temprano")),
)
