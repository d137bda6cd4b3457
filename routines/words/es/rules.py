"""Spanish sentences about a rule for the n-th count, as it was typed."""

RULES = {
    "holds": "Sí, para todo n: {gives} y así sigue, como contamos.",
    "differs": "No: en el lugar {n} da {said}, y contamos {counted}.",
    "differs later": "No: acierta hasta el lugar {before}, pero en el lugar {n} da {said}, y contamos {counted}.",
    "from zero": "Es la regla de este conteo si el primer lugar es el 0.",
    "too much": "Cada salto está bien, pero todos los números salen {off} de más.",
    "too little": "Cada salto está bien, pero todos los números salen {off} de menos.",
}
