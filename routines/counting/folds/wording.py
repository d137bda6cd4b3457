"""One line on what a fold does to a count, next to the fold with one cell less in a line."""

from __future__ import annotations

from collections.abc import Sequence

from ..audience import Audience
from ..grid import Fill, Grid
from ..texts.numbers import listing
from ..texts.words import band_of, sentence

LINES = {
    "en": {Fill.ACROSS: "rows", Fill.ACROSS_UP: "rows", Fill.DOWN: "columns"},
    "es": {Fill.ACROSS: "filas", Fill.ACROSS_UP: "filas", Fill.DOWN: "columnas"},
}

CLAUSES = {
    "en": {
        "here": "in {lines} of {length}",
        "against": "{lines} of {length} instead of {before}:",
        "nothing": "nothing lines up",
        "still nothing": "still nothing lines up",
        "line up": "{names} line up",
        "slide": "{names} slide",
        "now line up": "{names} now line up",
        "now slide": "{names} slide",
        "no longer": "{names} no longer line up or slide",
        "stay": "{names} still line up",
        "slide on": "{names} still slide",
    },
    "es": {
        "here": "en {lines} de {length}",
        "against": "{lines} de {length} en lugar de {before}:",
        "nothing": "nada se alinea",
        "still nothing": "todavía nada se alinea",
        "line up": "se alinean {names}",
        "slide": "se deslizan {names}",
        "now line up": "ahora se alinean {names}",
        "now slide": "se deslizan {names}",
        "no longer": "ya no se alinean ni se deslizan {names}",
        "stay": "se siguen alineando {names}",
        "slide on": "se siguen deslizando {names}",
    },
}

# How many things a clause names, and how many clauses there are, by level band: K-1, 2-3, 4-5, 6 and up.
MOST_NAMES = (1, 2, 2, 3)
MOST_CLAUSES = (1, 2, 3, 3)


def alone(grid: Grid, here: Sequence[Sequence[str]], audience: Audience) -> str:
    """Say what lines up and what slides in one fold."""
    clauses = CLAUSES[audience.language]
    said = _clauses(list(zip(("line up", "slide"), here, strict=True)), audience) or [clauses["nothing"]]
    place = clauses["here"].format(lines=LINES[audience.language][grid.fill], length=grid.line_length)
    return sentence(f"{place}, {'; '.join(said)}")


def against(
    grid: Grid, before: int, news: Sequence[Sequence[str]], still: Sequence[Sequence[str]], audience: Audience
) -> str:
    """Say what one fold does that its neighbour, with lines of `before` cells, does not.

    news: what now lines up, what now slides, what does neither any more. still: what lines up and slides here at all.
    """
    clauses = CLAUSES[audience.language]
    said = _clauses(list(zip(("now line up", "now slide", "no longer"), news, strict=True)), audience)
    said = said or _clauses(list(zip(("stay", "slide on"), still, strict=True)), audience)
    head = clauses["against"].format(lines=LINES[audience.language][grid.fill], length=grid.line_length, before=before)
    return sentence(f"{head} {'; '.join(said or [clauses['still nothing']])}")


def _clauses(parts: Sequence[tuple[str, Sequence[str]]], audience: Audience) -> list[str]:
    band, language = band_of(audience.level), audience.language
    said = [
        CLAUSES[language][key].format(names=listing(list(names[: MOST_NAMES[band]]), language))
        for key, names in parts
        if names
    ]
    return said[: MOST_CLAUSES[band]]
