"""Spanish."""

from .needed import Words

SPANISH = Words(
    until="hasta",
    rows="filas",
    columns="columnas",
    empty="vacía",
    lit={"always": "siempre", "while": "por un rato"},
    signs={"always": "siempre se cumple", "shown": "se cumple por un rato", "flag": "termina aquí"},
    unfolded="El conteo sin doblar",
    timeline="Cuándo se ve cada idea",
    counts_on_the_board="números en la pizarra",
    stop="parada",
    at="en",
    pictures={
        "line": "Recta numérica",
        "time-line": "Línea de tiempo",
        "clock": "Relojes",
        "ruler": "Regla",
        "scale": "Básculas",
        "jugs": "Jarras medidoras",
        "coins": "Monedas y billetes",
        "bars": "Barras de fracciones",
    },
    picture="{name}: de {first} a {last}",
    jump=("Cada salto es de {step} más.", "Cada salto es de {step} menos."),
    since=("{step} después", "{step} antes"),
    wholes="{n} enteros",
    dark_parts=("antes del salto", "lo que queda"),
    bracketed_parts=("el salto", "quitado"),
)
