"""Every digit, part, remainder, line and direction that a sentence names must be the one its claim is about."""

import re
from collections.abc import Iterator

from routines.counting.claims import Claim
from routines.counting.grid import Grid
from tests.words.feature_names import COINS, LAST_OR_FIRST, PARTS, SMALL_COINS, Feature, feature_named
from tests.words.number_names import MULTIPLES, PLACES
from tests.words.written_values import Notation

READ_OFF = ("digit", "digit-run", "digit-sum", "remainder")
NAMED = "|".join(
    [
        f"(?:last|first) (?:{SMALL_COINS}) digits?",
        rf"{PLACES}(?: of [^\W\d]+)? digits?",
        rf"(?:{COINS}) digits?",
        rf"(?:{'|'.join(sorted(LAST_OR_FIRST, reverse=True))}) cifras?(?: de los (?:{SMALL_COINS}))?",
        rf"cifras? de (?:los|las|el|la) {PLACES}(?: de [^\W\d]+)?",
        rf"cifras? de (?:los|las) (?:{COINS})",
        "digit sums?|sumas? de las cifras",
        "leftovers?|partes? que sobran?",
        "|".join(sorted((name for names in PARTS.values() for name in names.split("|")), key=len, reverse=True)),
    ]
)
# What is past a whole dollar is read with its phrase, whatever the coin is called.
PAST = f"parts? past an? {MULTIPLES}|partes? que pasan? de (?:una? )?{MULTIPLES}"
LINES = {"row": "rows?|filas?", "column": "columns?|columnas?"}
DIRECTIONS = {
    "right": "across a row|al pasar un lugar a la derecha|si paso un lugar a la derecha",
    "down": "down a column|al bajar un lugar|si bajo un lugar",
    "down-right": "down and right|en diagonal hacia abajo y a la derecha|bajo en diagonal hacia la derecha",
    "down-left": "down and left|en diagonal hacia abajo y a la izquierda|bajo en diagonal hacia la izquierda",
    "up": "up a column|al subir un lugar|si subo un lugar",
    "up-right": "up and right|en diagonal hacia arriba y a la derecha|subo en diagonal hacia la derecha",
    "up-left": "up and left|en diagonal hacia arriba y a la izquierda|subo en diagonal hacia la izquierda",
}
CLIMBS, GOES_DOWN = r"\b(?:go up|climb|one up|suben|subiendo)\b", r"\b(?:go down|walk down|one down|bajan|bajando)\b"
MOVES = {"right": (0, 1), "down": (1, 0), "down-right": (1, 1), "down-left": (1, -1)}
DIAGONALS = {
    "right": "to the right|one right|and right|a la derecha|hacia la derecha",
    "left": "to the left|one left|and left|a la izquierda|hacia la izquierda",
}
LINE_AS_IT_FILLS = r"\d+ in a (?:row|column)|\d+ por (?:fila|columna)"
A_CELL = r"(?:row|fila) \d+,? (?:and )?(?:y la )?(?:column|columna) \d+"
# Where two cells of one line stand in it: read by their rules.
PLACES_IN_A_LINE = (
    r", (?:in|en las) (?:rows|columns|filas|columnas) \d+ (?:and|y) \d+,"
    r"|(?:in|en la) (?:row|column|fila|columna) \d+ (?=is |es )"
)


def wrong_mentions(text: str, grid: Grid, claim: Claim, notation: Notation) -> Iterator[str]:
    """Names in a text that are not those of the claim."""
    text = re.sub(f"{LINE_AS_IT_FILLS}|{A_CELL}|{PLACES_IN_A_LINE}", "~", text, flags=re.IGNORECASE)
    named = re.sub(f"{notation.value}|{notation.difference}", "~", text)
    if claim.family in READ_OFF:
        yield from (
            f"another feature: {name}"
            for name in features_in(named, notation)
            if not is_of(claim, name, grid, notation)
        )
    yield from wrong_directions(text, grid, claim)
    yield from wrong_lines(text, claim)


def features_in(text: str, notation: Notation) -> Iterator[str]:
    names = f"{NAMED}|{COINS}" if notation.kind == "money" else f"{PAST}|{NAMED}"
    marks = (
        r"(?:whole|half|full|quarter) (?:fluid )?[^\W\d]+"
        r"|[^\W\d]+ enter[oa]s?|horas? (?:enteras?|en punto)|(?:medi[oa]s?|cuartos? de) [^\W\d]+"
    )
    for found in re.finditer(rf"(?<![\w-])(?:{marks}|(?P<name>{names}))(?!\w)", text, re.IGNORECASE):
        if found["name"]:
            yield found["name"]


def is_of(claim: Claim, name: str, grid: Grid, notation: Notation) -> bool:
    """Whether the name means what the claim is about."""
    feature = named_at_the_end(name, notation)
    return feature is not None and is_feature_of(claim, feature, grid)


def named_at_the_end(words: str, notation: Notation) -> Feature | None:
    """The feature that the last of some words name, as many of them as make a name."""
    if "parte" not in words:  # "tazas enteras" are read as the cups
        words = re.sub(r" enter[oa]s?$", "", words)
    pieces = re.sub(
        r"^.*[“«]|^.*(?:every|each|cada) (?:row|column|fila|columna),? ", "", words, flags=re.IGNORECASE
    ).split()
    names = [" ".join(pieces[at:]) for at in range(len(pieces))]
    tries = (
        feature_named(name, notation, known_coins=known, bare_places=bare)
        for known, bare in ((True, False), (False, False), (False, True))
        for name in names
    )
    return next((feature for feature in tries if feature is not None), None)


def is_feature_of(claim: Claim, feature: Feature, grid: Grid) -> bool:
    sort, what = feature
    if claim.family == "digit-sum":
        return sort == "digit-sum"
    if claim.family == "remainder":
        return sort == "remainder" and what in (None, claim.parameters.get("modulus", what))
    if claim.parameters.get("part") is None:
        return sort == "place" and what == (claim.parameters.get("place") or 0)
    if sort == "coin":
        return bool(grid.count.part_names()[int(what)] == claim.parameters.get("part"))  # type: ignore[call-overload]
    return sort == "part" and what == claim.parameters.get("part")


def wrong_directions(text: str, grid: Grid, claim: Claim) -> Iterator[str]:
    lie = str(claim.parameters.get("lie") or "")
    if claim.family == "neighbour":
        way = direction_as_counted(grid, claim.parameters.get("direction") or "right")
        for direction, words in DIRECTIONS.items():
            if re.search(words, text, re.IGNORECASE) and direction != way:
                yield f"another direction: {direction}"
    elif claim.family == "landmarks" and lie.startswith("down"):
        climbs = grid.fill == "across-up"
        for side, words in DIAGONALS.items():
            if re.search(words, text, re.IGNORECASE) and lie.endswith(side) == climbs:
                yield f"another diagonal: {side}"
        for up, words in ((True, CLIMBS), (False, GOES_DOWN)):
            if re.search(words, text, re.IGNORECASE) and up != climbs:
                yield f"a diagonal the other way: {words}"
    through = re.search(r"(up|down) each column|al (subir|bajar) cada columna", text, re.IGNORECASE)
    if through and claim.family in READ_OFF:
        upwards = (through[1] or through[2]).lower() in ("up", "subir")
        if upwards != (grid.fill == "across-up"):
            yield f"the other way through a column: {through[0]}"


def terms_onward(grid: Grid, direction: str) -> int:
    """How many counts on the next cell that way on the page is, in view or not; below 0 where it was counted before."""
    down, right = MOVES[direction]
    length = grid.line_length
    by_row, by_column = {"across": (length, 1), "down": (1, length), "across-up": (-length, 1)}[grid.fill]
    return down * by_row + right * by_column


def is_against_the_count(grid: Grid, direction: str) -> bool:
    """Whether the next cell that way on the page was counted before: down a page that fills from below."""
    return terms_onward(grid, direction) < 0


def direction_as_counted(grid: Grid, direction: str) -> str:
    """A direction of the page, or the opposite one where its way is against the count."""
    if not is_against_the_count(grid, direction):
        return direction
    return {"down": "up", "down-right": "up-left", "down-left": "up-right"}[direction]


def wrong_lines(text: str, claim: Claim) -> Iterator[str]:
    """Rows where columns are meant, or lines where none are; the lines of landmarks and stretches are read by their rules."""
    open_along = claim.parameters.get("along") is None and (
        claim.family in READ_OFF or claim.parameters.get("which") == "line-totals"
    )
    if claim.family in ("landmarks", "how-many") or open_along:
        return
    if claim.family == "neighbour":
        text = re.sub("|".join(DIRECTIONS.values()), "~", text, flags=re.IGNORECASE)
    for along, words in LINES.items():
        if re.search(rf"\b(?:{words})\b", text, re.IGNORECASE) and along != claim.parameters.get("along"):
            yield f"another line: {along}"
