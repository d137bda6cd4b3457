"""The few words that drawings say themselves, in each language: a language that lacks one cannot be written down here."""

from collections.abc import Mapping
from typing import NamedTuple

Pair = tuple[str, str]
"""Of a count that goes on, and of one that goes back."""


class Words(NamedTuple):
    """unfolded: the title of the strip. Between braces: {step} the size of a jump, {n} how many."""

    until: str
    rows: str
    columns: str
    empty: str
    lit: Mapping[str, str]
    signs: Mapping[str, str]
    unfolded: str
    timeline: str
    counts_on_the_board: str
    stop: str
    at: str
    pictures: Mapping[str, str]
    picture: str
    jump: Pair
    since: Pair
    wholes: str
    dark_parts: Pair
    bracketed_parts: Pair


WORDS: dict[str, Words] = {
    "en": Words(
        until="until",
        rows="rows",
        columns="columns",
        empty="empty",
        lit={"always": "always holds", "while": "holds for a while"},
        signs={"always": "always holds", "shown": "holds for a while", "flag": "stops here"},
        unfolded="The count unfolded",
        timeline="When each idea can be seen",
        counts_on_the_board="counts on the board",
        stop="stop",
        at="at",
        pictures={
            "line": "Number line",
            "time-line": "Time line",
            "clock": "Clocks",
            "ruler": "Ruler",
            "scale": "Scales",
            "jugs": "Measuring jugs",
            "coins": "Coins and notes",
            "bars": "Fraction bars",
        },
        picture="{name}: from {first} to {last}",
        jump=("Each jump is {step} more.", "Each jump is {step} less."),
        since=("{step} later", "{step} earlier"),
        wholes="{n} wholes",
        dark_parts=("before the jump", "what is left"),
        bracketed_parts=("the jump", "taken away"),
    ),
    "es": Words(
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
    ),
}
