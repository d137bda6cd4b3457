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

# What a clause says: here it lines up or slides, and the fold before is as named. Within: along the fill instead.
LINES_UP, SLIDES, NEITHER, WITHIN = "lines up", "slides", "neither", "within"
# The lines along the fill.
LINES_ALONG = {"across": ("row", "fila"), "across-up": ("row", "fila"), "down": ("column", "columna")}
LINE_EN, LINE_ES = "(?P<line>row|column)", "(?P<line>fila|columna)"
CLAUSES = (
    ("(?P<names>.+) now line up", "ahora se alinean (?P<names>.+)", LINES_UP),
    ("(?P<names>.+) no longer line up or slide", "ya no se alinean ni se deslizan (?P<names>.+)", NEITHER),
    ("(?P<names>.+) still line up", "se siguen alineando (?P<names>.+)", LINES_UP),
    ("(?P<names>.+) still slide", "se siguen deslizando (?P<names>.+)", SLIDES),
    (
        f"(?P<names>.+) stay the same within each {LINE_EN}",
        f"(?P<names>.+) no cambian dentro de cada {LINE_ES}",
        WITHIN,
    ),
    (f"(?P<names>.+) all lie in one {LINE_EN}", f"(?P<names>.+) están en una misma {LINE_ES}", WITHIN),
    ("(?P<names>.+) line up", "se alinean (?P<names>.+)", LINES_UP),
    ("(?P<names>.+) slide", "se deslizan (?P<names>.+)", SLIDES),
)
CLAUSE_EN = (
    r"(.+? (?:now line up|no longer line up or slide|still line up|still slide|line up|slide"
    r"|stay the same within each (?:row|column)|all lie in one (?:row|column)))(?:; |$)"
)
NEW_CLAUSE_ES = "; (?=se |ya no |ahora )"
NOTHING = r"(?P<still>still |todavía )?(?:nothing lines up|nada se alinea)"
SHARED = "only what all counts share lines up|solo se alinea lo que comparten todos los números"


def fold_does(c: Context, h: dict[str, Any]) -> bool:
    """Every clause is so of the fold, and of the one before where it speaks of that."""
    lines = "columns" if c.grid.fill == "down" else "rows"
    said = {"filas": "rows", "columnas": "columns"}.get(str(h["lines"]).lower(), str(h["lines"]).lower())
    before = c.extra.get("before")
    if said != lines or h["n"] != c.grid.line_length or h.get("b", before) != before:
        return False
    rest = str(h["rest"])
    nothing = re.fullmatch(NOTHING, rest, re.IGNORECASE)
    if nothing or re.fullmatch(SHARED, rest, re.IGNORECASE):
        found = list(everything(c))
        if nothing and nothing["still"] and any(state(against(c), feature) != NEITHER for feature in found):
            return False
        stands_still = any(state(c.grid, feature) != NEITHER or is_within(c.grid, feature) for feature in found)
        return not stands_still and any(never_changes(c.grid, feature) for feature in found) == (nothing is None)
    english = re.findall(CLAUSE_EN, rest, re.IGNORECASE)
    return all(clause_is_so(c, clause) for clause in english or re.split(NEW_CLAUSE_ES, rest))


def clause_is_so(c: Context, clause: str) -> bool:
    for english, spanish, here in CLAUSES:
        match = re.fullmatch(english, clause, re.IGNORECASE) or re.fullmatch(spanish, clause, re.IGNORECASE)
        if match is None:
            continue
        named = [feature_or_mark(c, name) for name in names_in(match["names"])]
        found = [feature for feature in named if feature is not None]
        if len(found) < len(named) or len(set(found)) < len(found):
            return False
        if here == WITHIN:
            return match["line"] in LINES_ALONG[c.grid.fill] and all(is_within(c.grid, feature) for feature in found)
        if any(state(c.grid, feature) != here for feature in found):
            return False
        if here == NEITHER and not all(is_gone(c.grid, feature) for feature in found):
            return False
        return changed_as_said(c, clause, found, here)
    return False


def changed_as_said(c: Context, clause: str, found: list[Feature], here: str) -> bool:
    """What "now" lines up did not before; what "no longer" does, did."""
    if c.extra.get("before") is None:
        return True
    was = [state(against(c), feature) for feature in found]
    if re.search("now line up|ahora se alinean", clause, re.IGNORECASE):
        return LINES_UP not in was
    if here == NEITHER:
        return NEITHER not in was
    return True


def against(c: Context) -> Grid:
    """The fold this one is compared with: a given one, or one like it of another line length."""
    given = c.extra.get("against")
    return given if isinstance(given, Grid) else replace(c.grid, line_length=c.extra["before"])  # type: ignore[arg-type]


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
        # Of decimals as many places as the start and the step have.
        finest = next(k for k in range(9) if (count.start * 10**k).denominator == (count.step * 10**k).denominator == 1)
        for place in range(-finest if count.kind == "decimal" else 0, 9):
            yield "place", place
    for multiple in count.friendly_multiples():
        yield "remainder", multiple
        if sum(count.value(n) % multiple == 0 for n in range(1, c.grid.terms + 1)) >= 2:
            yield "landmarks", multiple


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
    board, there = landmarks_on(grid, multiple)
    if len(there) == grid.terms:
        return NEITHER
    lie, _ = lie_of(board, there)
    across = "row" if grid.fill == "down" else "column"
    if lie in (across, f"{across}s"):
        return LINES_UP
    if lie in ("down-right", "down-left"):
        return SLIDES
    if lie != "scattered":
        return NEITHER
    # Side by side on diagonals: wherever one has a cell down and right (or left) of it, that is one too, and three are on one.
    places = {board.page_place(n) for n in there}
    cells = {board.page_place(n) for n in range(1, grid.terms + 1)}
    for right in (1, -1):
        pairs = [((row, column), (row + 1, column + right)) for row, column in cells]
        kept = all((a in places) == (b in places) for a, b in pairs if b in cells)
        if kept and any(a in places and b in places and (b[0] + 1, b[1] + right) in places for a, b in pairs):
            return SLIDES
    return NEITHER


def landmarks_on(grid: Grid, multiple: Fraction) -> tuple[Board, list[int]]:
    count = grid.count
    start, step = Fraction(count.start), Fraction(count.step)
    board = Board(count.kind, start, step, grid.terms, grid.line_length, grid.fill, grid.lead)
    return board, [n for n in range(1, grid.terms + 1) if board.value(n) % multiple == 0]


def is_within(grid: Grid, feature: Feature) -> bool:
    """Whether it stays the same along the fill in each line, or all its landmarks lie in one such line."""
    along = LINES_ALONG[grid.fill][0]
    if feature[0] == "landmarks":
        board, there = landmarks_on(grid, Fraction(feature[1]))  # type: ignore[arg-type]
        return len(there) < grid.terms and lie_of(board, there)[0] in (along, f"{along}s")
    read = [reading(grid, feature, n) for n in range(1, grid.terms + 1)]
    if None in read or same(read, 1):
        return False
    lines = [[read[n - 1] for n in line] for line in grid.lines(along)]
    return any(len(line) > 1 for line in lines) and all(len(set(line)) == 1 for line in lines)


def is_gone(grid: Grid, feature: Feature) -> bool:
    """Whether no two cells side by side on a diagonal, and no line of two cells or more, keep it everywhere."""
    if is_within(grid, feature):
        return False
    cells = {place: cell.n for place, cell in placed(grid)}
    if feature[0] == "landmarks":
        _, there = landmarks_on(grid, Fraction(feature[1]))  # type: ignore[arg-type]
        read: list[Any] = [n in there for n in range(1, grid.terms + 1)]
    else:
        read = [reading(grid, feature, n) for n in range(1, grid.terms + 1)]
    across = (0, 1) if grid.fill == "down" else (1, 0)
    for down, right in (across, (1, 1), (1, -1)):
        pairs = [(n, cells[r + down, c + right]) for (r, c), n in cells.items() if (r + down, c + right) in cells]
        if pairs and all(read[n - 1] == read[m - 1] for n, m in pairs):
            return False
    return True


def placed(grid: Grid) -> Iterator[tuple[tuple[int, int], Any]]:
    for row, cells in enumerate(grid.cells()):
        for column, cell in enumerate(cells):
            if cell is not None:
                yield (row, column), cell


def never_changes(grid: Grid, feature: Feature) -> bool:
    """Whether every count shares it; a digit or part that none writes is nothing to share."""
    if feature[0] == "landmarks":
        return False
    terms = range(1, grid.terms + 1)
    if feature[0] == "part" and all(grid.count.span(n, part=str(feature[1])) is None for n in terms):
        return False
    read = [reading(grid, feature, n) for n in terms]
    if feature[0] == "place" and not any(read):
        largest = max(abs(grid.count.value(n)) for n in (1, grid.terms))
        return feature[1] == 0 or Fraction(10) ** int(feature[1]) <= largest  # type: ignore[arg-type]
    return None not in read and same(read, 1)


def reading(grid: Grid, feature: Feature, n: int) -> Any:
    sort, name = feature
    readings = Readings(grid, None, grid.place)
    if sort == "coin":
        return readings.part(n, grid.count.part_names()[int(name)])  # type: ignore[call-overload]
    if sort == "part":
        return readings.part(n, str(name))
    if sort == "place":
        return Readings(grid, a_claim("digit", place=name), grid.place).number(n)
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
