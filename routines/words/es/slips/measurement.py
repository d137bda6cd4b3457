"""What is said in Spanish about slips in counts of measures in two units."""

from ...language import SlipWords

_NOT_RENAMED = SlipWords(
    "Después {a:del} l{as} {smalls} completan 1 {large} y no se cambian: es la misma cantidad, {b}.",
    "¿Cuánt{as} {smalls} hacen 1 {large}? ¿Ya l{as} tenemos?",
)
_FULL_AT_TEN = SlipWords(
    "Después {a:del} se cree que diez {smalls} completan 1 {large}.",
    "¿Diez {smalls} ya completan 1 {large}, y cómo podríamos comprobarlo?",
)
_TRADED_AT_TEN = SlipWords(
    "En el salto desde {a:el} se cambian diez {smalls} por 1 {large}.",
    "¿Cuánt{as} {smalls} cambiamos por 1 {large} y cuánt{as} sobran?",
)

WORDS = {
    "L01": _NOT_RENAMED,
    "L02": _FULL_AT_TEN,
    "L03": SlipWords(
        "En {b} las {smalls} se escriben como si fueran décimos de 1 {large}.",
        "¿Qué parte de 1 {large} es 1 {small}: es un décimo?",
    ),
    "L04": _FULL_AT_TEN,
    "L05": _NOT_RENAMED,
    "L06": _NOT_RENAMED,
    "L07": _NOT_RENAMED,
    "L08": _NOT_RENAMED,
    "L09": SlipWords(
        "Se dejan fuera los lugares vacíos entre {larges} y {smalls} en {b}.",
        "¿Cuántos {smalls} hacen 1 {large} y cuántos lugares necesitan?",
    ),
    "L10": _NOT_RENAMED,
    "L11": _TRADED_AT_TEN,
    "L12": _TRADED_AT_TEN,
    "L13": SlipWords(
        "En el salto hacia atrás desde {a:el} se descompone 1 {large} en diez {smalls}.",
        "¿Cuánt{as} {smalls} salen al descomponer 1 {large}?",
    ),
    "L14": _NOT_RENAMED,
    "L15": SlipWords(
        "{b} tiene otro nombre en la unidad mayor: es la misma cantidad.",
        "¿Cuánt{as} {smalls} hay en {heard}?",
    ),
    "L17": SlipWords(
        "Se toman cien minutos por una hora, como cien centímetros son un metro.",
        "¿Cuántos minutos llenan una hora? ¿Dónde quedaría esa hora entre nuestros números?",
    ),
    "L16": SlipWords(
        "En el salto desde {a:el} se cruza una centena y la cifra de las centenas queda igual.",
        "Al saltar desde {a:el}, ¿nos quedamos en la misma centena?",
    ),
}
