"""Small drawings beside words: signs of a pattern, what a coverage cell holds and says, a bar a week."""

from collections.abc import Sequence

from .svg import Pen, element, plain, text_of
from .words import WORDS

AMOUNTS = ("none", "few", "good")


def draw_sign(holds: str, *, on_paper: bool = False, language: str = "en") -> str:
    """The sign that stands beside a pattern's words: holds is always, shown or flag."""
    pen, words = Pen(on_paper), WORDS[language].signs[holds]
    if holds == "flag":
        content = element("path", pen.look("g-pole"), d="M3 1V15", stroke_width=2)
        content += element("path", pen.look("g-banner"), d="M3 1.5H15l-3.4 4 3.4 4H3z")
        return _small(pen, words, content, 16, 16)
    look = "g-always" if holds == "always" else "g-while"
    dashes = None if holds == "always" else "3.4 2.4"
    content = element(
        "rect", pen.look(look), x=1.2, y=1.2, width=16.6, height=11.6, rx=3.4, stroke_width=1.8, stroke_dasharray=dashes
    )
    return _small(pen, words, content, 19, 14)


def draw_folded_glyph(amount: str, *, on_paper: bool = False) -> str:
    """A coverage cell's small folded grid: none (corner mounts), few (two counts) or good (full). Words stand beside it."""
    if amount not in AMOUNTS:
        raise ValueError(f"A coverage cell holds {', '.join(AMOUNTS)}, not {amount!r}.")
    pen = Pen(on_paper)
    if amount == "none":
        mounts = "M1 8V1H8M30 1h7V8M37 20v7H30M8 27H1V20"
        return _small(pen, "", element("path", pen.look("g-mount"), d=mounts), 38, 28)
    full = amount == "good"
    filled = 6 if full else 2
    parts = [element("rect", pen.look("g-sheet"), x=1, y=1, width=36, height=26, rx=1.5)]
    cells = [(1 + 12 * (place % 3), 1 + 13 * (place // 3)) for place in range(filled)]
    parts += [element("rect", pen.look("g-glyph-cell"), x=x, y=y, width=12, height=13) for x, y in cells]
    parts.append(element("path", pen.look("g-hairline"), d="M13 1V27M25 1V27M1 14H37"))
    parts += [element("circle", pen.look("g-notch"), cx=x + 6, cy=y + 6.5, r=1.9) for x, y in cells]
    frame = "g-glyph-full" if full else "g-glyph-few"
    parts.append(element("rect", pen.look(frame), x=1, y=1, width=36, height=26, rx=1.5))
    return _small(pen, "", "".join(parts), 38, 28)


def draw_said_mark(said: str, *, title: str = "", on_paper: bool = False) -> str:
    """What was said of a target pattern: seen (a full ring), not-yet (an empty one) or not-recorded (a dash)."""
    pen = Pen(on_paper)
    drawn = {
        "seen": element("circle", pen.look("g-notch"), cx=5, cy=5, r=4.4),
        "not-yet": element("circle", pen.look("g-glyph-few"), cx=5, cy=5, r=3.7),
        "not-recorded": element("path", pen.look("g-glyph-few"), d="M1 5H9"),
    }
    return _small(pen, title, drawn[said], 10, 10)


def draw_week_bars(lessons: Sequence[int], *, title: str = "", on_paper: bool = False, highest: int = 4) -> str:
    """One bar a week on a common line; a week without a lesson is a dot. highest: lessons of the tallest bar at least."""
    pen = Pen(on_paper)
    step, tall = 11.0, 34.0
    unit = tall / max([highest, *lessons])
    bars = "".join(
        f"M{plain(i * step + 1)} {plain(tall + 1)}v{plain(-unit * n)}h8v{plain(unit * n)}z"
        for i, n in enumerate(lessons)
        if n
    )
    empty = "".join(f"M{plain(i * step + 5)} {plain(tall + 1)}v-3" for i, n in enumerate(lessons) if not n)
    wide = max(step * len(lessons), step)
    content = element("path", pen.look("g-hairline"), d=f"M0 {plain(tall + 1.5)}H{plain(wide)}{empty}")
    content += element("path", pen.look("g-notch"), d=bars) if bars else ""
    return _small(pen, title, content, wide, tall + 3)


def _small(pen: Pen, words: str, content: str, width: float, height: float) -> str:
    """A small drawing; without words it only repeats what stands beside it and is hidden from readers aloud."""
    title = element("title", "", text_of(words)) if words else ""
    return element(
        "svg",
        pen.look("g-small"),
        title + content,
        role="img" if words else None,
        aria_hidden=None if words else "true",
        viewBox=f"0 0 {plain(width)} {plain(height)}",
        width=plain(width),
        height=plain(height),
        focusable="false",
        xmlns="http://www.w3.org/2000/svg",
    )
