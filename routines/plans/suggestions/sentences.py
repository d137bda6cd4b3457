"""The words of suggestions: questions that send children back to the grid. They never say whether something is so.

Wording: common practice, no source.
"""

from routines.counting import Claim

REPLIES = {
    "en": {
        "step": "Show me one jump. Is it the same from the end of a line to the next?",
        "neighbour": "Point to two cells where you see it. Which jumps lie between them?",
        "digit": "Which digit do you mean? Put your finger on it, line by line.",
        "digit-run": "Which digit do you follow? What would it be in the next cell?",
        "digit of a part": "Which part of each one do you mean? Put your finger on it, line by line.",
        "digit-run of a part": "Which part of each one do you follow? What would it be in the next cell?",
        "digit-sum": "Add the digits of one more count. What do you get there?",
        "remainder": "How can you tell for a count that is not on the board yet?",
        "landmarks": "How many jumps from one of them to the next? Why there?",
        "how-many": "Circle them in one stretch. How many will stand in the next one?",
        "sums": "Try another place on the grid. What stays the same, and what moves?",
        "table": "Which count is it, and how many jumps make it?",
        "opposites": "Where would the next pair stand?",
    },
    "es": {
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
    },
}

SAID = {
    "en": {
        "write on": "Let us write on to the {nth} count. What do you see there?",
        "table": "We are counting the {step} times table.",
        "table reply": "Where would {multiple} be? Look between its neighbors.",
        "lands": "We will land on {value}.",
        "lands reply": "Which counts come near it? How can you find out without counting on?",
        "all even": "They are all even.",
        "all odd": "They are all odd.",
        "even reply": "Look at the first three counts. Which of them fit, and which come next?",
        "will we": "If we went on, would we say {value}? How can you know without counting?",
        "yes": "Yes. {reason}",
        "no": "No. {reason}",
    },
    "es": {
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
    },
}


def reply_to(claim: Claim, language: str) -> str:
    return REPLIES[language][f"{claim.family} of a part" if "part" in claim.subject else claim.family]


def said(name: str, language: str, **values: object) -> str:
    return SAID[language][name].format(**values)
