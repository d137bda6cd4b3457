"""The class's marks on a grid: loose and hand-made, told apart by shape alone. Jumps run over the numerals. And how the
class sounded, as lines along the foot of the cells.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from .layout import Layout
from .numerals import Box, pieces_of_words, set_numeral
from .svg import Pen, element, plain

RING_TILT = -4


@dataclass(frozen=True, slots=True)
class Mark:
    """One mark on the cell of term n. kind: tint, ring, underline or hatch; place: the character that is underlined."""

    n: int
    kind: str
    place: int | None = None


@dataclass(frozen=True, slots=True)
class JumpArc:
    first: int
    last: int
    label: str


@dataclass(frozen=True, slots=True)
class VoiceLine:
    """The voice of a stretch. how: strong, mixed, faded or alone."""

    first: int
    last: int
    how: str


@dataclass(frozen=True, slots=True)
class Ink:
    """Where voices overlap the later one holds."""

    marks: Sequence[Mark] = ()
    jumps: Sequence[JumpArc] = ()
    voices: Sequence[VoiceLine] = ()


def draw_ink_under(pen: Pen, layout: Layout, ink: Ink) -> str:
    """Tints and hatches: they lie under the numerals."""
    return "".join(
        _area(pen, layout, mark) for mark in ink.marks if layout.cell(mark.n) and mark.kind in ("tint", "hatch")
    )


def draw_ink_over(pen: Pen, layout: Layout, ink: Ink) -> str:
    drawn = [
        _line(pen, layout, mark) for mark in ink.marks if layout.cell(mark.n) and mark.kind in ("ring", "underline")
    ]
    drawn += [_voice(pen, layout, n, ink.voices) for n in layout.shown()] if ink.voices else []
    drawn += [_jump(pen, layout, jump) for jump in ink.jumps if layout.cell(jump.first) and layout.cell(jump.last)]
    return "".join(drawn)


def reach_of(layout: Layout, ink: Ink) -> list[Box]:
    """What the ink needs around the grid: jumps along the first row rise over it."""
    rises = any(layout.middle(n)[1] < layout.height for jump in ink.jumps for n in (jump.first, jump.last))
    high, frame = 1.1 * layout.numeral, layout.frame
    return [Box(frame.left, -high, frame.right, frame.bottom)] if rises else []


def _area(pen: Pen, layout: Layout, mark: Mark) -> str:
    box, by = layout.rectangle(mark.n), 0.08 * layout.height
    inner = Box(box.left + by, box.top + by, box.right - by, box.bottom - by)
    if mark.kind == "tint":
        shape = {"x": inner.left, "y": inner.top, "width": inner.right - inner.left, "height": inner.bottom - inner.top}
        return element("rect", pen.look("g-ink-tint"), rx=8, **shape)
    step, high, lines, x = 0.16 * layout.height, inner.bottom - inner.top, [], inner.left
    while x < inner.right:
        run = min(high, inner.right - x)
        lines.append(f"M{plain(x)} {plain(inner.bottom)}l{plain(run)} {plain(-run)}")
        x += step
    halo = layout.halo(mark.n)
    patch = element(
        "rect",
        pen.look("g-sheet"),
        x=halo.left,
        y=halo.top,
        width=halo.right - halo.left,
        height=halo.bottom - halo.top,
        rx=0.1 * layout.height,
    )
    return element("path", pen.look("g-ink-hatch"), d="".join(lines)) + patch


def _line(pen: Pen, layout: Layout, mark: Mark) -> str:
    box, (x, y) = layout.halo(mark.n), layout.middle(mark.n)
    thick = max(0.055 * layout.numeral, 1.4)
    if mark.kind == "ring":
        rx, ry = (box.right - box.left) / 2 + 0.22 * layout.numeral, (box.bottom - box.top) / 2 + 0.1 * layout.numeral
        return element(
            "ellipse",
            pen.look("g-ink-ring"),
            cx=x,
            cy=y,
            rx=min(rx, 0.49 * layout.width),
            ry=min(ry, 0.47 * layout.height),
            stroke_width=thick,
            transform=f"rotate({RING_TILT} {plain(x)} {plain(y)})",
        )
    left, right = box.left, box.right
    text = layout.entry(mark.n).text or layout.grid.count.text(mark.n)
    if mark.place is not None and mark.place < len(text):
        wide = (right - left) / len(text)
        left, right = left + mark.place * wide, left + (mark.place + 1) * wide
    foot = box.bottom + 0.02 * layout.numeral
    return element(
        "path", pen.look("g-ink-underline"), d=f"M{plain(left)} {plain(foot)}H{plain(right)}", stroke_width=thick
    )


def _voice(pen: Pen, layout: Layout, n: int, voices: Sequence[VoiceLine]) -> str:
    """One line along the foot of the cell, two where the teacher counted alone."""
    heard = [voice.how for voice in voices if voice.first <= n <= voice.last]
    if not heard:
        return ""
    box = layout.rectangle(n)
    feet = (4, 9) if heard[-1] == "alone" else (6,)
    lines = "".join(f"M{plain(box.left)} {plain(box.bottom - foot)}H{plain(box.right)}" for foot in feet)
    return element("path", pen.look("g-voice", f"g-voice-{heard[-1]}"), d=lines)


def _jump(pen: Pen, layout: Layout, jump: JumpArc) -> str:
    """An arc from numeral to numeral with its arrowhead; the label stands beside its middle."""
    (x0, y0), (x1, y1) = layout.middle(jump.first), layout.middle(jump.last)
    size, thick = layout.numeral, max(0.05 * layout.numeral, 1.3)
    label = set_numeral(pieces_of_words(jump.label), 0.42 * size)
    if abs(x0 - x1) < 1:  # in one column: bowed along the right edge of the cells
        x = max(layout.halo(jump.first).right, layout.halo(jump.last).right)
        turn = x + 0.4 * size
        d, tip = f"M{plain(x)} {plain(y0)}Q{plain(turn)} {plain((y0 + y1) / 2)} {plain(x)} {plain(y1)}", (x, y1)
        head = f"M{plain(x + 0.2 * size)} {plain(y1 - 0.14 * size * (1 if y1 > y0 else -1))}L{plain(tip[0])} {plain(tip[1])}"
        at = ((x + turn) / 2, (y0 + y1) / 2)
    else:
        rise = 0.36 * layout.height
        a, b, peak = y0 - rise, y1 - rise, min(y0, y1) - rise - 0.55 * size
        d = f"M{plain(x0)} {plain(a)}Q{plain((x0 + x1) / 2)} {plain(peak)} {plain(x1)} {plain(b)}"
        toward = 1 if x1 > x0 else -1
        head = f"M{plain(x1 - toward * 0.22 * size)} {plain(b - 0.06 * size)}L{plain(x1)} {plain(b)}"
        at = ((x0 + x1) / 2, (min(a, b) + peak) / 2 - 0.05 * size)
    back = label.box.moved(*at).grown(0.06 * size)
    ground = element(
        "rect",
        pen.look("g-sheet"),
        x=back.left,
        y=back.top,
        width=back.right - back.left,
        height=back.bottom - back.top,
        rx=3,
    )
    return (
        element("path", pen.look("g-ink-jump"), d=d + head, stroke_width=thick)
        + ground
        + label.draw(pen, *at, look="g-quiet")
    )
