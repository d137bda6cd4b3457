"""Spanish sentences about what makes a number a good one to ask about."""

PROBES = {
    "landmark": "Llega más allá del final, es el {nth} número y un punto de referencia: un múltiplo de {multiple}.",
    "zero": "Llega más allá del final, es el {nth} número: ¿cuántos saltos hacen falta para llegar a cero?",
    "lines": "Llega más allá del final, es el {nth} número: {lines} líneas después de {like}.",
    "next": "Llega más allá del final, es el {nth} número: un salto después de {like}.",
    "far": "Llega mucho después, es el {nth} número; queda demasiado lejos para decirlos todos.",
    "ends alike": "Termina en {ending}, igual que {like}, pero lo saltamos.",
    "even": "Es par, como todos los números de este conteo, pero lo saltamos.",
    "odd": "Es impar, como todos los números de este conteo, pero lo saltamos.",
    "every": "Como todos los de este conteo, es un múltiplo de {multiple} y {rest} más, pero lo saltamos.",
    "every multiple": "Como todos los de este conteo, es un múltiplo de {multiple}, pero lo saltamos.",
    "alike": "Igual que {like}, es un múltiplo de {multiple} y {rest} más, pero lo saltamos.",
    "multiple": "Igual que {like}, es un múltiplo de {multiple}, pero lo saltamos.",
    "behind": "Está a un salto de {step} del comienzo, pero hacia el otro lado: el conteo se aleja de él.",
}
