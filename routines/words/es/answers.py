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
