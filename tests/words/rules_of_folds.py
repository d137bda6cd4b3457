"""Phrases that compare a fold with its neighbour: what lines up, slides, or no longer does."""

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from typing import Any

from routines.counting import Grid
from tests.brute_force.board import Board
from tests.brute_force.seeing import lie_of
from tests.counting.claims import a_claim
from tests.words.feature_names import Feature, feature_named
from tests.words.number_names import multiple_named
from tests.words.readings_back import Readings
from tests.words.sentence_checker import Context, Rule

# What a clause says: here it lines up or slides, and the fold before is as named.
LINES_UP, SLIDES, NEITHER = "lines up", "slides", "neither"
CLAUSES = {
    "(?P<names>.+) now line up|ahora se alinean (?P<nombres>.+)": (LINES_UP, False),
    "(?P<names>.+) no longer line up or slide|ya no se alinean ni se deslizan (?P<nombres>.+)": (NEITHER, True),
    "(?P<names>.+) still line up|se siguen alineando (?P<nombres>.+)": (LINES_UP, None),
    "(?P<names>.+) still slide|se siguen deslizando (?P<nombres>.+)": (SLIDES, None),
    "(?P<names>.+) line up|se alinean (?P<nombres>.+)": (LINES_UP, None),
    "(?P<names>.+) slide|se deslizan (?P<nombres>.+)": (SLIDES, None),
}
CLAUSE_EN = r"(.+? (?:now line up|no longer line up or slide|still line up|still slide|line up|slide))(?:; |$)"
NEW_CLAUSE_ES = "; (?=se |ya no |ahora )"
NOTHING = r"(?:still )?nothing lines up|(?:todavía )?nada se alinea"


def fold_does(c: Context, h: dict[str, Any]) -> bool:
    """Every clause is so of the fold, and of the one before where it speaks of that."""
    lines = "columns" if c.grid.fill == "down" else "rows"
    said = {"filas": "rows", "columnas": "columns"}.get(str(h["lines"]).lower(), str(h["lines"]).lower())
    before = c.extra.get("before")
    if said != lines or h["n"] != c.grid.line_length or h.get("b", before) != before:
        return False
    rest = str(h["rest"])
    if re.fullmatch(NOTHING, rest, re.IGNORECASE):
        return not any(state(c.grid, feature) != NEITHER for feature in everything(c))
    english = re.findall(CLAUSE_EN, rest, re.IGNORECASE)
    return all(clause_is_so(c, clause) for clause in english or re.split(NEW_CLAUSE_ES, rest))


def clause_is_so(c: Context, clause: str) -> bool:
    for pattern, (here, _) in CLAUSES.items():
        names = [f"{name}" for name in ("names", "nombres")]
        first, second = pattern.split("|")
        match = re.fullmatch(first, clause, re.IGNORECASE) or re.fullmatch(second, clause, re.IGNORECASE)
        if match is None:
            continue
        named = next(match[name] for name in names if name in match.groupdict())
        found = [feature_or_mark(c, name) for name in names_in(named)]
        if None in found or len(set(found)) < len(found):
            return False
        now = [state(c.grid, feature) for feature in found if feature]
        if any(one != here for one in now):
            return False
        return changed_as_said(c, clause, [feature for feature in found if feature], here)
    return False


def changed_as_said(c: Context, clause: str, found: list[Feature], here: str) -> bool:
    """What "now" lines up did not before; what "no longer" does, did."""
    if c.extra.get("before") is None:
        return True
    was = [state(replace(c.grid, line_length=c.extra["before"]), feature) for feature in found]  # type: ignore[arg-type]
    if re.search("now line up|ahora se alinean", clause, re.IGNORECASE):
        return LINES_UP not in was
    if here == NEITHER:
        return NEITHER not in was
    return True


def names_in(text: str) -> Iterator[str]:
    yield from re.split(r"(?:, |; | and | y )(?=the |los |las )", text)


def feature_or_mark(c: Context, name: str) -> Feature | None:
    """What a name in the sentence means: a digit, a part, a remainder, even and odd, or the multiples of a number."""
    bare = re.sub("^(?:the|los|las) ", "", name, flags=re.IGNORECASE)
    multiple = re.fullmatch(r"(?:multiples of|múltiplos de) (.+)", bare)
    if multiple:
        return "landmarks", c.notation.read(multiple[1])
    named = feature_named(name, c.notation)
    if named is not None and named[0] != "coin":
        return named
    worth = multiple_named(bare.lower(), c.notation)
    if worth is not None and (c.notation.kind != "money" or re.search("whole|enter", bare)):
        return "landmarks", worth
    return named


def everything(c: Context) -> Iterator[Feature]:
    """All that might line up: every part, every digit, every remainder by a friendly number."""
    count = c.grid.count
    for part in count.part_names():
        yield "part", part
    if count.kind in ("whole", "decimal", "money"):
        for place in range(9):
            yield "place", place
    for multiple in count.friendly_multiples():
        yield "remainder", multiple


def state(grid: Grid, feature: Feature) -> str:
    """What a feature does in a fold, cell by cell in the terms in view; what never changes does nothing."""
    if feature[0] == "landmarks":
        return landmark_state(grid, Fraction(feature[1]))  # type: ignore[arg-type]
    read = [reading(grid, feature, n) for n in range(1, grid.terms + 1)]
    length = grid.line_length
    if None in read or same(read, 1):
        return NEITHER
    if length < grid.terms and same(read, length):
        return LINES_UP
    apart = (length + 1, length - 1)
    slides = length >= 3 and any(grid.terms > 2 * distance and same(read, distance) for distance in apart)
    return SLIDES if slides else NEITHER


def same(read: list[Any], distance: int) -> bool:
    return all(a == b for a, b in zip(read, read[distance:], strict=False))


def landmark_state(grid: Grid, multiple: Fraction) -> str:
    count = grid.count
    start, step = Fraction(count.start), Fraction(count.step)
    board = Board(count.kind, start, step, grid.terms, grid.line_length, grid.fill, grid.lead)
    lie, _ = lie_of(board, [n for n in range(1, grid.terms + 1) if board.value(n) % multiple == 0])
    across = "row" if grid.fill == "down" else "column"
    if lie in (across, f"{across}s"):
        return LINES_UP
    return SLIDES if lie in ("down-right", "down-left") else NEITHER


def reading(grid: Grid, feature: Feature, n: int) -> Any:
    sort, name = feature
    readings = Readings(grid, None)
    if sort == "coin":
        return readings.part(n, grid.count.part_names()[int(name)])  # type: ignore[call-overload]
    if sort == "part":
        return readings.part(n, str(name))
    if sort == "place":
        return Readings(grid, a_claim("digit", place=name)).number(n)
    return readings.value(n) % Fraction(name)  # type: ignore[arg-type]


RULES: tuple[Rule, ...] = (
    Rule(
        (
            "in (?P<lines_W>rows|columns) of <n:N>, (?P<rest_W>.+)(?=[.]$)",
            "(?P<lines_W>rows|columns) of <n:N> instead of <b:N>: (?P<rest_W>.+)(?=[.]$)",
        ),
        (
            "en (?P<lines_W>filas|columnas) de <n:N>, (?P<rest_W>.+)(?=[.]$)",
            "(?P<lines_W>filas|columnas) de <n:N> en lugar de <b:N>: (?P<rest_W>.+)(?=[.]$)",
        ),
        fold_does,
    ),
)
