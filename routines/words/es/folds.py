"""Spanish clauses about what a fold does."""

from routines.counting.grid import Fill

from ..language import Folds

PARITY = "los pares e impares"

LINES = {Fill.ACROSS: "filas", Fill.ACROSS_UP: "filas", Fill.DOWN: "columnas"}
LINE = {Fill.ACROSS: "fila", Fill.ACROSS_UP: "fila", Fill.DOWN: "columna"}

CLAUSES = {
    "here": "en {lines} de {length}",
    "against": "{lines} de {length} en lugar de {before}:",
    "nothing": "nada se alinea",
    "still nothing": "todavía nada se alinea",
    "line up": "se alinean {names}",
    "slide": "se deslizan {names}",
    "now line up": "ahora se alinean {names}",
    "now slide": "se deslizan {names}",
    "no longer": "ya no se alinean ni se deslizan {names}",
    "within": "{names} no cambian dentro de cada {line}",
    "in one line": "{names} están en una misma {line}",
    "shared": "solo se alinea lo que comparten todos los números",
    "stay": "se siguen alineando {names}",
    "slide on": "se siguen deslizando {names}",
}

FOLDS = Folds(CLAUSES, LINES, LINE, PARITY)
