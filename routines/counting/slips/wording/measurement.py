"""What is said about slips in counts of measures in two units."""

from .slip_words import InTwo, SlipWords

_NOT_RENAMED = SlipWords(
    InTwo(
        "After {a} the {smalls} fill another {large} and are not renamed: it is the same amount, {b}.",
        "Después de {a} las unidades chicas ({smalls}) completan 1 {large} y no se cambian: es la misma cantidad, {b}.",
    ),
    InTwo(
        "How many {smalls} make one {large}, and do we have that many now?",
        "¿Cuánto hace falta, contado en {smalls}, para 1 {large}, y ya lo tenemos?",
    ),
)
_FULL_AT_TEN = SlipWords(
    InTwo(
        "After {a} one {large} is taken to be full at ten {smalls}.",
        "Después de {a} se cree que diez {smalls} completan 1 {large}.",
    ),
    InTwo(
        "Is one {large} already full at ten {smalls}, and how could we check?",
        "¿Diez {smalls} ya completan 1 {large}, y cómo podríamos comprobarlo?",
    ),
)
_TRADED_AT_TEN = SlipWords(
    InTwo(
        "In the jump from {a} ten {smalls} are traded for one {large}.",
        "En el salto desde {a} se cambian diez {smalls} por 1 {large}.",
    ),
    InTwo(
        "How many {smalls} do we trade for one {large}, and what is then left over?",
        "¿Por cuánto, contado en {smalls}, cambiamos 1 {large}, y qué sobra entonces?",
    ),
)

WORDS = {
    "L01": _NOT_RENAMED,
    "L02": _FULL_AT_TEN,
    "L03": SlipWords(
        InTwo(
            "The {smalls} of {b} are written as if they were tenths of one {large}.",
            "En {b} las {smalls} se escriben como si fueran décimos de 1 {large}.",
        ),
        InTwo(
            "What part of one {large} is one {small}: is it a tenth?",
            "¿Qué parte de 1 {large} es 1 {small}: es un décimo?",
        ),
        of_writing=True,
    ),
    "L04": _FULL_AT_TEN,
    "L05": _NOT_RENAMED,
    "L06": _NOT_RENAMED,
    "L07": _NOT_RENAMED,
    "L08": _NOT_RENAMED,
    "L09": SlipWords(
        InTwo(
            "The empty places between the {larges} and the {smalls} of {b} are left out.",
            "Se dejan fuera los lugares vacíos entre {larges} y {smalls} en {b}.",
        ),
        InTwo(
            "How many {smalls} make one {large}, and how many places do they need?",
            "¿Cuántos {smalls} hacen 1 {large} y cuántos lugares necesitan?",
        ),
        of_writing=True,
    ),
    "L10": _NOT_RENAMED,
    "L11": _TRADED_AT_TEN,
    "L12": _TRADED_AT_TEN,
    "L13": SlipWords(
        InTwo(
            "In the jump back from {a} one {large} is opened into ten {smalls}.",
            "En el salto atrás desde {a} se abre 1 {large} en diez {smalls}.",
        ),
        InTwo(
            "How many {smalls} do we get when we open one {large}?",
            "¿Qué nos da, contado en {smalls}, abrir 1 {large}?",
        ),
    ),
    "L14": _NOT_RENAMED,
    "L15": SlipWords(
        InTwo(
            "{b} has another name in the larger unit: it is the same amount.",
            "{b} tiene otro nombre en la unidad mayor: es la misma cantidad.",
        ),
        InTwo(
            "Are these two names for the same amount, or two different amounts?",
            "¿Son dos nombres de la misma cantidad, o dos cantidades distintas?",
        ),
        of_writing=True,
    ),
    "L16": SlipWords(
        InTwo(
            "In the jump from {a} a hundred is crossed, and the digit of the hundreds is left as it was.",
            "En el salto desde {a} se pasa de una centena y la cifra de las centenas queda igual.",
        ),
        InTwo(
            "When we jump from {a}, do we stay in the same hundred?",
            "Al saltar desde {a}, ¿nos quedamos en la misma centena?",
        ),
    ),
}
