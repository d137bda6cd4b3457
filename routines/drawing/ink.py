"""The class's marks on a grid: loose and hand-made, told apart by shape alone; and how the
class sounded, as lines along the foot of the cells.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from .jumps import JumpArc, arcs_of
from .layout import Layout
from .numerals import Box, with_minus
from .outlines import hatch
from .phrase_letters import Phrase, draw_letters
from .svg import Pen, element, plain

RING_TILT = -4


@dataclass(frozen=True, slots=True)
class Mark:
    """One mark on the cell of term n. kind: tint, ring, underline or hatch; place: the character that is underlined."""

    n: int
    kind: str
    place: int | None = None


@dataclass(frozen=True, slots=True)
class VoiceLine:
    """The voice of a stretch. how: strong, mixed, faded or alone."""

    first: int
    last: int
    how: str


@dataclass(frozen=True, slots=True)
class Ink:
    """recounts: stretches, first and last term, that the class counted again. Where voices overlap the later one holds."""

    marks: Sequence[Mark] = ()
    jumps: Sequence[JumpArc] = ()
    phrases: Sequence[Phrase] = ()
    recounts: Sequence[tuple[int, int]] = ()
    voices: Sequence[VoiceLine] = ()


def draw_ink_under(pen: Pen, layout: Layout, ink: Ink) -> str:
    """Tints and hatches: they lie under the numerals. A hatch lies on the tint of its cell, whichever was drawn first."""
    tints, hatches = ([m for m in ink.marks if m.kind == kind and layout.cell(m.n)] for kind in ("tint", "hatch"))
    tinted = {mark.n for mark in tints}
    drawn = [_of_cell(pen, mark, _inside(layout, mark).draw(pen, "g-ink-tint", rx=8)) for mark in tints]
    drawn += [_of_cell(pen, mark, _hatched(pen, layout, mark, mark.n in tinted)) for mark in hatches]
    return "".join(drawn)


def draw_ink_over(pen: Pen, layout: Layout, ink: Ink) -> str:
    lines = [mark for mark in ink.marks if layout.cell(mark.n) and mark.kind in ("ring", "underline")]
    drawn = [_of_cell(pen, mark, _line(pen, layout, mark)) for mark in lines]
    drawn += [_voice(pen, layout, n, ink.voices) for n in layout.shown()] if ink.voices else []
    drawn += [_recount(pen, layout, *stretch) for stretch in ink.recounts]
    drawn += [arc.draw(pen, layout.numeral) for arc in arcs_of(layout, ink.jumps)]
    drawn.append(draw_letters(pen, layout, ink.phrases))
    return "".join(drawn)


def reach_of(layout: Layout, ink: Ink) -> list[Box]:
    """What the ink needs around the grid."""
    return [arc.reach for arc in arcs_of(layout, ink.jumps)]


def _of_cell(pen: Pen, mark: Mark, drawn: str) -> str:
    return drawn if pen.on_paper else element("g", pen.look("g-mark"), drawn, data_marked=mark.n, data_mark=mark.kind)


def _inside(layout: Layout, mark: Mark) -> Box:
    return layout.rectangle(mark.n).grown(-0.08 * layout.height)


def _hatched(pen: Pen, layout: Layout, mark: Mark, tinted: bool) -> str:
    """Fine lines with a clear patch around the numeral, in the ground that lies under them."""
    ground = "g-ink-tint" if tinted else "g-pleat" if layout.is_pleat(mark.n) else "g-sheet"
    inside, patch, spacing = _inside(layout, mark), layout.halo(mark.n), 0.16 * layout.height
    if patch.left - inside.left < spacing:  # no crumbs of lines beside a wide numeral
        patch = Box(inside.left, patch.top, inside.right, patch.bottom)
    if layout.entry(mark.n).state == "corrected":  # what is struck is read too
        patch = Box(patch.left, inside.top, patch.right, patch.bottom)
    lines = element("path", pen.look("g-ink-hatch"), d=hatch(inside, spacing, 0))
    return lines + patch.draw(pen, ground, rx=0.1 * layout.height)


def _line(pen: Pen, layout: Layout, mark: Mark) -> str:
    box, (x, y) = layout.ink(mark.n), layout.middle(mark.n)
    thick = max(0.055 * layout.numeral, 1.4)
    if mark.kind == "underline":
        under = _character(layout, mark) or box
        foot = under.bottom + 0.14 * layout.numeral
        return element(
            "path",
            pen.look("g-ink-underline"),
            d=f"M{plain(under.left)} {plain(foot)}H{plain(under.right)}",
            stroke_width=thick,
        )
    cell = layout.rectangle(mark.n)
    rx, ry = (box.right - box.left) / 2 + 0.32 * layout.numeral, (box.bottom - box.top) / 2 + 0.22 * layout.numeral
    return element(
        "ellipse",
        pen.look("g-ink-ring"),
        cx=x,
        cy=y,
        rx=min(rx, max(0.49 * layout.width, rx - 0.18 * layout.numeral)),  # a wide numeral is not crossed
        ry=min(ry, 0.98 * min(cell.bottom - y, y - cell.top)),
        stroke_width=thick,
        transform=f"rotate({RING_TILT} {plain(x)} {plain(y)})",
    )


def _character(layout: Layout, mark: Mark) -> Box | None:
    """The place of the character meant; None where the whole numeral is, or where no figure stands for it."""
    numeral = layout.numerals.get(mark.n)
    if mark.place is None or numeral is None:
        return None
    text, found = with_minus(layout.entry(mark.n).text or layout.grid.count.text(mark.n)), 0
    for index, figure in enumerate(numeral.figures):
        starts = text.find(figure.text, found)
        if starts < 0:
            return None
        found = starts + len(figure.text)
        if starts <= mark.place < found:
            place = mark.place - starts
            return numeral.digits(index, place, place + 1).moved(*layout.middle(mark.n))
    return None


def _voice(pen: Pen, layout: Layout, n: int, voices: Sequence[VoiceLine]) -> str:
    """One line along the foot of the cell, two where the teacher counted alone."""
    heard = [voice.how for voice in voices if voice.first <= n <= voice.last]
    if not heard:
        return ""
    box = layout.rectangle(n)
    feet = (4, 9) if heard[-1] == "alone" else (6,)
    lines = "".join(f"M{plain(box.left)} {plain(box.bottom - foot)}H{plain(box.right)}" for foot in feet)
    return element("path", pen.look("g-voice", f"g-voice-{heard[-1]}"), d=lines)


def _recount(pen: Pen, layout: Layout, first: int, last: int) -> str:
    """Counted again: a loose line under each row of the stretch, turning back at its end."""
    rows: dict[float, tuple[float, float]] = {}
    for n in range(first, last + 1):
        if layout.cell(n):
            box = layout.rectangle(n)
            left, right = rows.get(box.bottom, (box.left, box.right))
            rows[box.bottom] = (min(left, box.left), max(right, box.right))
    font, high = layout.numeral, 0.11 * layout.numeral
    back = (
        f"c{plain(1.6 * high)} 0 {plain(1.6 * high)} {plain(-2 * high)} 0 {plain(-2 * high)}h{plain(-1.6 * high)}"
        f"m{plain(high)} {plain(-0.9 * high)}l{plain(-high)} {plain(0.9 * high)}l{plain(high)} {plain(0.9 * high)}"
    )
    d = "".join(
        f"M{plain(left + 0.3 * font)} {plain(bottom - 0.07 * font)}H{plain(right - 0.34 * font)}" + back
        for bottom, (left, right) in rows.items()
    )
    return element("path", pen.look("g-ink-recount"), d=d, stroke_width=max(0.04 * font, 1.2)) if d else ""
