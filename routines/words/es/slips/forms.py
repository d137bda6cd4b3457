"""What is said in Spanish about forms that nobody may write."""

from ...language import SlipWords

FORMS = {
    "A01": SlipWords(
        "Se escriben minutos más allá del final de la hora: ningún reloj muestra sesenta o más.",
        "¿Hasta dónde llegan los minutos de un reloj antes de que empiece otra hora?",
        "¿Hasta dónde llegan los minutos?",
    ),
    "A02": SlipWords(
        "Se escriben más de dos cifras de {smalls} después de la marca.",
        "¿Cuántas cifras escribimos para los {smalls} y qué hacemos cuando hay más?",
        "¿Cuántas cifras muestran los {smalls}?",
    ),
    "A03": SlipWords(
        "Las cifras después de la marca se leen como un número entero aparte.",
        "¿Qué nos dice cada cifra después de la marca, lugar por lugar?",
        "¿Qué nos dice cada cifra?",
    ),
}
