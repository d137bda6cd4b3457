"""The folded grid, drawn once for card, phone, plan, paper and board."""

from collections.abc import Collection, Iterable, Mapping, Sequence

from routines.counting import Fill, Grid, Piece

from .cells import draw_cell, draw_numerals, read_aloud
from .drawn import Drawn
from .entries import Entries
from .ink import Ink, draw_ink_over, draw_ink_under, reach_of
from .labels import LABEL, draw_corner_label, draw_label
from .layout import Layout, lay_out
from .lighting import Light
from .numerals import MINUS, Box, Numeral, set_numeral
from .said import SaidPattern
from .sizes import SIZES
from .sketching import sketch
from .svg import Pen, element, plain, text_of
from .words import WORDS

LIT_AT_MOST = 2


def draw_grid(
    grid: Grid,
    *,
    size: str = "card",
    lit: Sequence[SaidPattern] = (),
    overlays: Sequence[tuple[str, SaidPattern]] = (),
    left_out: Collection[str] = (),
    landmarks: Collection[int] = (),
    title: str = "",
    upto: int | None = None,
    entries: Entries | None = None,
    interactive: bool = False,
    chosen: Collection[int] = (),
    language: str = "en",
    labels: Mapping[int, str] | None = None,
    ink: Ink | None = None,
    beside_words: bool = False,
) -> Drawn:
    """Draw a grid as inline SVG, which knows its size.

    size: card, fold, tile, phone, plan, print or board. lit: at most two patterns, lit. overlays: (key, pattern) to be lit by
    js/light_patterns.js without a round trip; a pattern in `lit` that is also an overlay starts lit. left_out: keys of
    overlays that are not written, though all keep their places: they can be put in later. landmarks: term
    numbers in bold with a notch. upto: only the first counts are written. entries: cell states by term number instead of
    the whole count. interactive: every cell can be tapped and focused (`chosen` are pressed). language: of the few words
    in the drawing. labels: small words under the numerals, by term ("crate 3"). ink: the class's marks and jumps.
    beside_words: for a page that says the same in words and hides the drawing from those who hear it: without a description,
    and without parts that a script takes hold of. A page of the bank has two dozen.
    """
    pen = Pen(on_paper=size == "print", flat=beside_words)
    layout = lay_out(grid, SIZES[size], landmarks, entries, upto, labels)
    if layout.size.sketched:
        lit = sketch(grid, lit, frozenset(layout.shown()))
    lights = _lights(layout, list(lit)[:LIT_AT_MOST], overlays, language)
    covered = frozenset(n for _, light, on in lights if on and light.always for group in light.groups for n in group)
    animate = size in ("plan", "phone") and not pen.on_paper
    written = [(key, light, on) for key, light, on in lights if on or key not in left_out]
    ordered = sorted(written, key=lambda item: item[1].always)  # what always holds lies on top

    heard = {} if beside_words else {n: read_aloud(layout, n) or WORDS[language].empty for n in layout.shown()}
    ink = ink or Ink()
    body = [_ground(pen, layout), draw_ink_under(pen, layout, ink)]
    body += [_layer(pen, key, on, light, light.shapes(pen), names_cells=True) for key, light, on in ordered]
    body.append(_notches(pen, layout))
    body += [
        _layer(pen, key, on, light, light.marks(pen, frozenset() if light.always else covered, animate))
        for key, light, on in ordered
    ]
    if beside_words:
        body.append(draw_numerals(pen, layout))
    else:
        body += [
            draw_cell(pen, layout, n, label, interactive=interactive, chosen=n in chosen) for n, label in heard.items()
        ]
    body += [_label(pen, layout, n, words) for n, words in layout.labels.items() if layout.cell(n) is not None]
    body.append(draw_ink_over(pen, layout, ink))
    words = _how_far(layout)
    if words:
        body.append(words[0].draw(pen, *words[1], look="g-quiet"))
    view = _view(layout, [light for _, light, _ in lights], words, reach_of(layout, ink))
    width, height = round(view.right - view.left), round(view.bottom - view.top)
    told = "" if beside_words else _told(layout, title, heard, [light for _, light, on in lights if on], language)
    svg = element(
        "svg",
        pen.look("g-root") + ("" if pen.on_paper else f' data-size="{size}"'),
        told + "".join(body),
        role=None if beside_words else "group" if interactive else "img",
        viewBox=f"{plain(view.left)} {plain(view.top)} {plain(view.right - view.left)} {plain(view.bottom - view.top)}",
        width=width,
        height=height,
        focusable=None if beside_words else "false",
        xmlns=None if beside_words else "http://www.w3.org/2000/svg",
    )
    return Drawn(svg, width=width, height=height, numeral=layout.numeral)


def _lights(
    layout: Layout, lit: Sequence[SaidPattern], overlays: Sequence[tuple[str, SaidPattern]], language: str
) -> list[tuple[str, Light, bool]]:
    """Every pattern that is or may be lit, with its key and whether it is. Flags lit together keep clear of each other."""
    listed = [(key, pattern, pattern in lit) for key, pattern in overlays]
    known = [pattern for _, pattern in overlays]
    listed += [("", pattern, True) for pattern in lit if pattern not in known]
    taken: list[Box] = []
    lights = []
    for key, pattern, on in listed:
        until = ""
        if pattern.breaks_at is not None:
            until = f"{WORDS[language].until} {layout.grid.count.text(pattern.breaks_at).replace('-', MINUS)}"
        light = Light(layout, pattern, until, tuple(taken))
        if light.flag:
            taken.append(light.flag.box)
        lights.append((key, light, on))
    return lights


def _layer(pen: Pen, key: str, on: bool, light: Light, content: str, names_cells: bool = False) -> str:
    """One light's shapes or marks as a group that a script can show and hide."""
    if not content:
        return ""
    if pen.flat:
        return content if on else ""
    cells = " ".join(str(n) for group in light.groups for n in group) if names_cells and light.always else None
    classes = ("g-layer",) if on else ("g-layer", "g-off")
    return element("g", pen.look(*classes), content, data_pattern=key or None, data_holds=light.kind, data_cells=cells)


def _ground(pen: Pen, layout: Layout) -> str:
    """Sheet, pleats, hairlines inside the lines, stronger edges along them."""
    frame, w, h = layout.frame, layout.width, layout.height
    down = layout.grid.fill is Fill.DOWN
    drawn = [element("rect", pen.look("g-sheet"), x=0, y=0, width=frame.right, height=frame.bottom)]
    lines = layout.columns if down else layout.rows
    for line in range(1, lines, 2):
        place = line if layout.grid.fill is not Fill.ACROSS_UP else lines - 1 - line
        x, y, width, height = (place * w, 0, w, frame.bottom) if down else (0, place * h, frame.right, h)
        drawn.append(element("rect", pen.look("g-pleat"), x=x, y=y, width=width, height=height))
    upright = "".join(f"M{plain(column * w)} 0V{plain(frame.bottom)}" for column in range(1, layout.columns))
    level = "".join(f"M0 {plain(row * h)}H{plain(frame.right)}" for row in range(1, layout.rows))
    inner, edges = (level, upright) if down else (upright, level)
    if inner:
        drawn.append(element("path", pen.look("g-hairline"), d=inner))
    drawn.append(element("path", pen.look("g-edge"), d=edges + _border(layout)))
    return "".join(drawn)


def _border(layout: Layout) -> str:
    """The frame; where the drawing is cut the lines run on a little and the frame stays open."""
    frame = layout.frame
    more_right = layout.columns < layout.grid.columns
    more_rows = layout.rows < layout.grid.rows
    up = layout.grid.fill is Fill.ACROSS_UP
    tail = 0.35 * layout.numeral
    right = frame.right + (tail if more_right else 0)
    top = -tail if more_rows and up else 0.0
    bottom = frame.bottom + (tail if more_rows and not up else 0)
    sides = [f"M0 {plain(top)}V{plain(bottom)}", f"M0 0H{plain(right)}", f"M0 {plain(frame.bottom)}H{plain(right)}"]
    if not more_right:
        sides.append(f"M{plain(frame.right)} {plain(top)}V{plain(bottom)}")
    return "".join(sides)


def _notches(pen: Pen, layout: Layout) -> str:
    """The filled corner of each landmark."""
    corner = max(0.17 * layout.height, 5)
    data = []
    for n in sorted(layout.landmarks):
        if layout.cell(n) is not None and n in layout.numerals:
            box = layout.rectangle(n)
            data.append(f"M{plain(box.left)} {plain(box.top)}h{plain(corner)}l{plain(-corner)} {plain(corner)}z")
    return element("path", pen.look("g-notch"), d="".join(data)) if data else ""


def _label(pen: Pen, layout: Layout, n: int, words: str) -> str:
    box = layout.rectangle(n)
    if layout.entry(n).state == "next":
        return draw_corner_label(pen, words, box.left, box.top, layout.numeral, layout.height)
    return draw_label(pen, words, layout.middle(n)[0], box.bottom, LABEL * layout.numeral)


def _how_far(layout: Layout) -> tuple[Numeral, tuple[float, float]] | None:
    """Where lines are left away: how far the count goes, as a numeral and the place of its middle."""
    if not layout.is_cut:
        return None
    grid = layout.grid
    numeral = set_numeral((Piece("number", "… "), *grid.count.pieces(grid.terms)), max(layout.numeral - 1, 14))
    gap = 0.45 * layout.numeral - numeral.box.top
    x = layout.frame.right - numeral.width / 2
    return numeral, (x, -gap if grid.fill is Fill.ACROSS_UP else layout.frame.bottom + gap)


def _view(
    layout: Layout, lights: Iterable[Light], words: tuple[Numeral, tuple[float, float]] | None, ink: Iterable[Box]
) -> Box:
    """What the drawing needs: the grid, room for its strokes, and what flies or runs out of it."""
    frame = layout.frame
    boxes = [frame.grown(2), *ink] + [box for light in lights for box in light.reach]
    if words:
        numeral, (x, y) = words
        boxes.append(numeral.box.moved(x, y).grown(2))
        boxes.append(Box(0, 0, frame.right + (0.4 * layout.numeral if layout.columns < layout.grid.columns else 0), 0))
    return Box(
        min(box.left for box in boxes),
        min(box.top for box in boxes),
        max(box.right for box in boxes),
        max(box.bottom for box in boxes),
    )


def _told(layout: Layout, title: str, heard: Mapping[int, str], lights: Iterable[Light], language: str) -> str:
    """Title and description: the numbers row by row, then what is lit."""
    said, grid = WORDS[language], layout.grid
    rows = []
    for row in range(layout.rows):
        texts = []
        for column in range(layout.columns):
            n = layout.at(row, column)
            texts.append(heard[n] if n else said.empty)
        rows.append(", ".join(texts))
    shape = f"{grid.rows} {said.rows}, {grid.columns} {said.columns}: "
    lit = "".join(f" {light.pattern.statement} ({said.lit[light.kind]})." for light in lights)
    return element("title", "", text_of(title or shape.rstrip(": "))) + element(
        "desc", "", text_of(shape + "; ".join(rows) + "." + lit)
    )
