"""Spanish sentences about what makes a number a good one to ask about."""

COMES = "Llega más allá del final, es el {nth} número, en la fila {row}, columna {column}"
JUMPED = "pero lo saltamos, de {before} a {after}."

PROBES = {
    "landmark": COMES + ": un punto de referencia, {a_mark}.",
    "zero": COMES + ": ¿cuántos saltos hacen falta para llegar a cero?",
    "lines": COMES + ": {lines} líneas después de {like}.",
    "line": COMES + ": una línea después de {like}.",
    "next": COMES + ": un salto después de {like}.",
    "jumps": COMES + ": {jumps} saltos después de {like}.",
    "step": "Es un múltiplo de {step}, y cada salto es de {step}, pero el conteo empieza con {start}: lo saltamos, de "
    "{before} a {after}.",
    "ends alike": "Termina en {ending}, igual que {like}, " + JUMPED,
    "even": "Es par, como todos los números de este conteo, " + JUMPED,
    "odd": "Es impar, como todos los números de este conteo, " + JUMPED,
    "every": "Como todos los de este conteo, es {rest} más que un múltiplo de {multiple}, " + JUMPED,
    "every multiple": "Como todos los de este conteo, es un múltiplo de {multiple}, " + JUMPED,
    "alike": "Igual que {like}, es {rest} más que un múltiplo de {multiple}, " + JUMPED,
    "multiple": "Igual que {like}, es {a_mark}, " + JUMPED,
    "behind": "Queda al otro lado de {start}: cada salto de {step} se aleja de ahí.",
}
