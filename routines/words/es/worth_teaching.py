"""Spanish clauses about what a grid is good for."""

WORTH_TEACHING = {
    "on": "llega a {mark} en el {nth} número",
    "over": "pasa de {mark} en el {nth} número",
    "below": "baja de {mark} en el {nth} número",
    "back": "retrocede a antes de {mark} en el {nth} número",
    "later on": "llega a {mark} más adelante, en el {nth} número",
    "later over": "pasa de {mark} más adelante, en el {nth} número",
    "later below": "baja de {mark} más adelante, en el {nth} número",
    "later back": "retrocede a antes de {mark} más adelante, en el {nth} número",
    "never": "pregunta por {value}: no se dice nunca",
    "comes": "pregunta por el lugar de {value}: {line}",
}
