"""What children may say, and questions that send them back to the grid, in Spanish. They never say whether something is so.

Wording: common practice, no source.
"""

from collections.abc import Mapping

ANSWERS: Mapping[str, str] = {
    "write on": "Sigamos hasta el número {nth} de la cuenta. ¿Qué ves allí?",
    "table": "Estamos contando la tabla del {step}.",
    "table reply": "¿Dónde estaría {multiple}? Mira entre sus vecinos.",
    "lands": "Vamos a llegar a {value}.",
    "lands reply": "¿Qué números quedan cerca? ¿Cómo puedes saberlo sin seguir contando?",
    "all even": "Todos son pares.",
    "all odd": "Todos son impares.",
    "even reply": "Mira los tres primeros. ¿Cuáles cumplen y cuáles siguen?",
    "will we": "Si siguiéramos, ¿diríamos {value}? ¿Cómo lo sabes sin contar?",
    "yes": "Sí. {reason}",
    "no": "No. {reason}",
}

# By the family of the pattern that was named; of a part where that is read off a part, not off a digit.
ASKED_BACK: Mapping[str, str] = {
    "step": "Muéstrame un salto. ¿Es igual del final de una línea a la siguiente?",
    "neighbour": "Señala dos casillas donde se ve. ¿Qué saltos hay entre ellas?",
    "digit": "¿Qué cifra dices? Señálala con el dedo, línea por línea.",
    "digit-run": "¿Qué cifra sigues? ¿Cuál sería en la próxima casilla?",
    "digit of a part": "¿Qué parte de cada uno dices? Señálala con el dedo, línea por línea.",
    "digit-run of a part": "¿Qué parte de cada uno sigues? ¿Cuál sería en la próxima casilla?",
    "digit-sum": "Suma las cifras de un número más. ¿Cuánto da allí?",
    "remainder": "¿Cómo lo sabes de un número que todavía no está escrito?",
    "landmarks": "¿Cuántos saltos hay de uno al siguiente? ¿Por qué allí?",
    "how-many": "Enciérralos en un tramo. ¿Cuántos habrá en el siguiente?",
    "sums": "Prueba en otro lugar. ¿Qué se queda igual y qué cambia?",
    "table": "¿Qué número de la cuenta es y cuántos saltos lo forman?",
    "opposites": "¿Dónde estaría la próxima pareja?",
}
