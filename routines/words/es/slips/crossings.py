"""What is said in Spanish about slips where a ten, a hundred, a whole or a larger unit is crossed, filled or left."""

from ...language import SlipWords

# To the youngest no place has a name yet: what was said lies behind, or not far enough ahead.
_TURNED_BACK = "¿Es eso {onward} que {a:el}?"
_TOO_SHORT = "¿Dimos el salto completo desde {a:el}?"


def _not_counted(
    rule: str, place: str, several: str, digit: str, smaller: str, *, feminine: bool
) -> dict[str, SlipWords]:
    """Un lugar que se deja como estaba: se entra en él y su cifra no cambia, lo forman los menores, o se descompone."""
    one, other, that, how_many, whole = (
        ("una", "otra", "esa", "cuántas", "completa") if feminine else ("un", "otro", "ese", "cuántos", "completo")
    )
    opened = SlipWords(
        f"En el salto desde {{a:el}} se descompone {one} {place}, y se sigue contando {whole}.",
        f"¿Qué se descompone en el salto desde {{a:el}} y {how_many} {several} quedan?",
        _TURNED_BACK,
    )
    return {
        rule: SlipWords(
            f"Con el salto desde {{a:el}} se entra en {other} {place}, y {that} {place} no se cuenta.",
            f"¿Cómo cambia {digit} en el salto desde {{a:el}}?",
            _TURNED_BACK,
        ),
        f"{rule} made": SlipWords(
            f"En el salto de {{size}} desde {{a:el}} {smaller} forman {one} {place} más, y no se cuenta.",
            f"¿Qué forman {smaller} al juntarse en el salto desde {{a:el}}?",
            _TOO_SHORT,
        ),
        f"{rule} opened": opened,
        f"{rule} opened far": opened._replace(show=_TOO_SHORT),
        f"{rule} neared": SlipWords(
            f"Por debajo del cero, el salto desde {{a:el}} se acerca al cero, y se sigue contando {one} {place} de más.",
            f"Al subir desde {{a:el}}, ¿nos acercamos al cero y cómo cambia {digit}?",
            "¿Nos acercamos al cero?",
        ),
    }


WORDS = {
    **_not_counted("C01", "decena", "decenas", "la cifra de las decenas", "las unidades", feminine=True),
    **_not_counted("C02", "centena", "centenas", "la cifra de las centenas", "las decenas", feminine=True),
    **_not_counted("C03", "millar", "millares", "la cifra de los millares", "las centenas", feminine=False),
    **_not_counted("C04", "entero", "enteros", "el número de enteros", "las partes", feminine=False),
    "C05": SlipWords(
        "Con el salto desde {a:el} se completa 1 {large} más, y no se cuenta.",
        "¿Cómo cambia el número de {larges} en el salto desde {a:el}?",
        _TURNED_BACK,
    ),
    "C05 made": SlipWords(
        "En el salto de {size} desde {a:el} se juntan {smalls} para formar 1 {large} más, y no se cuenta.",
        "¿Qué se forma al juntar {smalls} en el salto desde {a:el}?",
        _TOO_SHORT,
    ),
    "C05 opened": SlipWords(
        "En el salto desde {a:el} se descompone 1 {large}, y se sigue contando como antes.",
        "¿Qué se descompone en el salto desde {a:el}, y qué cantidad de {larges} queda?",
        _TURNED_BACK,
    ),
    "C05 neared": SlipWords(
        "Por debajo del cero, el salto desde {a:el} se acerca al cero, y se sigue contando 1 {large} de más.",
        "Al subir desde {a:el}, ¿nos acercamos al cero y cómo cambia el número de {larges}?",
        "¿Nos acercamos al cero?",
    ),
    "C06 neared": SlipWords(
        "Por debajo del cero, el salto desde {a:el} se acerca al cero, y a su izquierda se sigue contando uno de más.",
        "Al subir desde {a:el}, ¿nos acercamos al cero y qué cifras cambian?",
        "¿Nos acercamos al cero?",
    ),
    "C06": SlipWords(
        "En el salto desde {a:el} un lugar se completa, y eso no se cuenta en el de su izquierda.",
        "En el salto desde {a:el}, ¿qué lugar se completa y cómo cambia el de su izquierda?",
        "¿Qué cifras de {a} cambian ahora?",
    ),
    "C06 made": SlipWords(
        "En el salto de {size} desde {a:el} los lugares menores completan uno más en el siguiente, y no se cuenta ahí.",
        "¿Qué forman los lugares menores al juntarse en el salto desde {a:el}?",
        "¿Qué cifras de {a} cambian ahora?",
    ),
    "C06 opened": SlipWords(
        "En el salto desde {a:el} se descompone uno en el lugar de la izquierda, y ahí se sigue contando.",
        "¿En qué lugar se descompone uno en el salto desde {a:el} y cuánto queda ahí?",
        "¿Qué cifras de {a} cambian ahora?",
    ),
    "C07": SlipWords(
        "El ritmo va más rápido que los números: se olvida decir {b:el} y se dice lo que sigue.",
        "¿Hay {one_of_ours} entre {a:el} y {that_one}?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "C08": SlipWords(
        "El salto desde {a:el} se detiene en el número redondo por el que pasa.",
        "¿Cuánto hay desde {a:el} hasta {that_one} y cuánto queda de nuestro salto?",
        "¿Es ese nuestro salto completo desde {a:el}?",
    ),
    "C09": SlipWords(
        "Después {a:del} se dice el siguiente número redondo, sin dar nuestro salto de {size}: los redondos se conocen mejor.",
        "¿Cuánto hay desde {a:el} hasta {that_one} y de cuánto es nuestro salto?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "C10": SlipWords(
        "Después {a:del} se pasa de un número redondo y se dice el redondo que sigue.",
        "¿Cuánto pasa del número redondo nuestro salto desde {a:el}?",
        "¿Es eso un salto desde {a:el}, o más?",
    ),
    "C11": SlipWords(
        "Se repite {a:el} mientras se busca {the_next_one}.",
        "Acabamos de decir {a:el}: ¿qué cambia con un salto más?",
        "Ya dijimos {a:el}: ¿qué cambia con un salto?",
    ),
    "C12": SlipWords(
        "Después {a:del} se dice antes de tiempo el número redondo que sigue {b:al}.",
        "¿Cuánto hay desde {a:el} hasta {that_one} y de cuánto es nuestro salto?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
}
WORDS["C05 opened far"] = WORDS["C05 opened"]._replace(show=_TOO_SHORT)
WORDS["C06 opened far"] = WORDS["C06 opened"]
WORDS["C13"] = WORDS["C10"]
WORDS["C13 landed"] = WORDS["C12"]
