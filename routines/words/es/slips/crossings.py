"""What is said in Spanish about slips where a ten, a hundred, a whole or a larger unit is crossed, filled or left."""

from ...language import SlipWords


def _not_counted(
    rule: str, place: str, several: str, digit: str, smaller: str, *, feminine: bool
) -> dict[str, SlipWords]:
    """Un lugar que se deja como estaba: se entra en él y su cifra no cambia, lo forman los menores, o se abre."""
    one, other, that, how_many, same = (
        ("una", "otra", "esa", "cuántas", "la misma") if feminine else ("un", "otro", "ese", "cuántos", "el mismo")
    )
    return {
        rule: SlipWords(
            f"Con el salto desde {{a:el}} se entra en {other} {place}, y {that} {place} no se cuenta.",
            f"¿Cómo cambia {digit} en el salto desde {{a:el}}?",
            f"¿A qué {place} llegamos ahora?",
        ),
        f"{rule} made": SlipWords(
            f"En el salto de {{size}} desde {{a:el}} {smaller} forman {one} {place} más, y no se cuenta.",
            f"¿Qué forman {smaller} al juntarse en el salto desde {{a:el}}?",
            f"¿Forman {smaller} {other} {place}?",
        ),
        f"{rule} opened": SlipWords(
            f"En el salto desde {{a:el}} se abre {one} {place}, y se sigue contando como si no se hubiera abierto.",
            f"¿Qué se abre en el salto desde {{a:el}} y {how_many} {several} quedan?",
            f"¿Seguimos en {same} {place}?",
        ),
    }


WORDS = {
    **_not_counted("C01", "decena", "decenas", "la cifra de las decenas", "las unidades", feminine=True),
    **_not_counted("C02", "centena", "centenas", "la cifra de las centenas", "las decenas", feminine=True),
    **_not_counted("C03", "millar", "millares", "la cifra de los millares", "las centenas", feminine=False),
    **_not_counted("C04", "entero", "enteros", "el número de enteros", "las partes", feminine=False),
    "C05": SlipWords(
        "Con el salto desde {a:el} tiene que cambiar también la unidad grande ({larges}), y queda como estaba.",
        "Al saltar desde {a:el}, ¿cambia la unidad grande o solo la chica?",
        "¿Cambia la unidad grande o solo la chica?",
    ),
    "C05 made": SlipWords(
        "En el salto de {size} desde {a:el} las unidades chicas ({smalls}) forman una grande más, y no se cuenta.",
        "¿Qué forman las unidades chicas ({smalls}) al juntarse en el salto desde {a:el}?",
        "¿Forman las unidades chicas otra grande?",
    ),
    "C05 opened": SlipWords(
        "En el salto desde {a:el} se abre una unidad grande ({larges}), y se sigue contando como si no se hubiera abierto.",
        "¿Qué unidad grande se abre en el salto desde {a:el} y cuántas quedan?",
        "¿Cambia la unidad grande o solo la chica?",
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
        "En el salto desde {a:el} se abre uno en el lugar de la izquierda, y ahí se sigue contando.",
        "¿En qué lugar se abre uno en el salto desde {a:el} y cuánto queda ahí?",
        "¿Qué cifras de {a} cambian ahora?",
    ),
    "C07": SlipWords(
        "Se olvida decir {b:el} y se dice el número que sigue.",
        "¿Hay uno de nuestros números entre {a:el} y ese?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "C08": SlipWords(
        "El salto desde {a:el} se detiene en el número redondo por el que pasa.",
        "¿Cuánto hay desde {a:el} hasta ese número: es nuestro salto completo?",
        "¿Es ese nuestro salto completo desde {a:el}?",
    ),
    "C09": SlipWords(
        "Desde {a:el} se da un salto redondo y no el nuestro, un salto de {size}.",
        "¿Cuánto avanza cada uno de nuestros saltos y cuánto avanzó este desde {a:el}?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "C10": SlipWords(
        "Después {a:del} se pasa de un número redondo y se dice el redondo que sigue.",
        "¿Cuánto pasa del número redondo nuestro salto desde {a:el}?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
    "C11": SlipWords(
        "Se repite {a:el} mientras se busca el número que sigue.",
        "Acabamos de decir {a:el}: ¿qué cambia con un salto más?",
        "Ya dijimos {a:el}: ¿qué cambia con un salto?",
    ),
    "C12": SlipWords(
        "Después {a:del} se dice antes de tiempo el número redondo que está por debajo {b:del}.",
        "¿Cuánto hay desde {a:el} hasta ese número y de cuánto es nuestro salto?",
        "¿De cuánto es el salto desde {a:el}?",
    ),
}
