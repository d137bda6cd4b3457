"""The idea timeline: when each idea can first be seen, when it dies, and where the stops fall."""

from collections.abc import Callable, Sequence

from routines.counting import Count

from .metrics import text_width
from .numerals import MINUS
from .said import SaidIdea
from .svg import Pen, element, path_of, plain, text_of
from .words import WORDS

LABELS, GAP, TAIL = 286, 16, 90  # the room for labels, between them and the axis, and for flags at the end
ROW, BAR, TEXT, SMALL = 30.0, 14.0, 15.0, 14.0
TAB_WIDTH, TAB_HEIGHT, TAB_STEP = 66.0, 26.0, 30.0


def draw_timeline(
    ideas: Sequence[SaidIdea],
    stops: Sequence[int],
    terms: int,
    *,
    count: Count,
    width: float = 1216,
    on_paper: bool = False,
    language: str = "en",
) -> str:
    """Draw ideas as bars over the counts 1..terms. stops: after which count each stop comes, in order."""
    pen, said = Pen(on_paper), WORDS[language]
    start, end = LABELS + GAP, width - TAIL
    step = (end - start) / max(terms - 1, 1)

    def at(n: float) -> float:
        return start + (n - 1) * step

    levels = _levels([at(n) for n in stops])
    axis = TAB_HEIGHT + TAB_STEP * max(levels, default=0) + 14
    foot = axis + 10 + ROW * len(ideas)
    drawn = [_raster(pen, at, terms, axis, foot), _stop_lines(pen, [at(n) for n in stops], levels, axis, foot)]
    label = element("text", pen.look("g-quiet"), said.counts_on_the_board, x=0, y=axis - 4, font_size=SMALL)
    drawn.append(label)
    for row, idea in enumerate(ideas):
        middle = axis + 10 + ROW * (row + 0.5)
        words = _shortened(idea.pattern.statement.replace(" -", f" {MINUS}"), LABELS)
        drawn.append(
            element("text", pen.look("g-numeral"), text_of(words), x=0, y=middle + 0.34 * TEXT, font_size=TEXT)
        )
        drawn.append(_bar(pen, idea, at, terms, middle, count, said.at))
    drawn.append(_tabs(pen, [at(n) for n in stops], levels, axis, said.stop))
    told = "; ".join(
        f"{idea.pattern.statement}: {idea.seen_at}–{idea.dies_at - 1 if idea.dies_at else '…'}" for idea in ideas
    )
    return element(
        "svg",
        pen.look("g-root"),
        element("title", "", said.timeline) + element("desc", "", text_of(told)) + "".join(drawn),
        role="img",
        viewBox=f"0 0 {plain(width)} {plain(foot + 26)}",
        width=round(width),
        height=round(foot + 26),
        focusable="false",
        xmlns="http://www.w3.org/2000/svg",
    )


def _levels(places: Sequence[float]) -> list[int]:
    """In which row above the axis each stop's tab stands, so that close stops do not cover each other."""
    ends: list[float] = []
    levels = []
    for x in places:
        level = next((row for row, end in enumerate(ends) if x - TAB_WIDTH / 2 >= end + 4), len(ends))
        ends[level : level + 1] = [x + TAB_WIDTH / 2]
        levels.append(level)
    return levels


def _raster(pen: Pen, at: Callable[[float], float], terms: int, axis: float, foot: float) -> str:
    """The axis with a tick a count and a named raster line every few counts."""
    every = next(size for size in (1, 2, 5, 10, 20, 50) if terms / size <= 12 or size == 50)
    named = [1, *(n for n in range(every, terms + 1, every) if n > 1)]
    ticks = "".join(f"M{plain(at(n))} {plain(axis)}v{8 if n in named else 5}" for n in range(1, terms + 1))
    drawn = [
        element("path", pen.look("g-rule"), d="".join(f"M{plain(at(n))} {plain(axis)}V{plain(foot)}" for n in named)),
        element("path", pen.look("g-hairline"), d=ticks),
        element("path", pen.look("g-edge"), d=f"M{plain(at(1))} {plain(axis)}H{plain(at(terms))}"),
    ]
    for n in named:
        wide = text_width(str(n), SMALL)
        drawn.append(element("text", pen.look("g-quiet"), str(n), x=at(n) - wide / 2, y=foot + 19, font_size=SMALL))
    return "".join(drawn)


def _stop_lines(pen: Pen, places: Sequence[float], levels: Sequence[int], axis: float, foot: float) -> str:
    lines = "".join(
        f"M{plain(x)} {plain(axis - 12 - TAB_STEP * level)}V{plain(foot)}"
        for x, level in zip(places, levels, strict=True)
    )
    return element("path", pen.look("g-stop-line"), d=lines) if lines else ""


def _tabs(pen: Pen, places: Sequence[float], levels: Sequence[int], axis: float, word: str) -> str:
    drawn = []
    for number, (x, level) in enumerate(zip(places, levels, strict=True), start=1):
        top = axis - 12 - TAB_HEIGHT - TAB_STEP * level
        words = f"{word} {number}"
        wide = max(TAB_WIDTH, text_width(words, SMALL, "bold") + 16)
        left = x - wide / 2
        drawn.append(element("rect", pen.look("g-tab"), x=left, y=top, width=wide, height=TAB_HEIGHT, rx=4))
        drawn.append(
            element(
                "text",
                pen.look("g-tab-words", "g-bold"),
                text_of(words),
                x=x - text_width(words, SMALL, "bold") / 2,
                y=top + TAB_HEIGHT / 2 + 5,
                font_size=SMALL,
            )
        )
    return "".join(drawn)


def _bar(
    pen: Pen, idea: SaidIdea, at: Callable[[float], float], terms: int, middle: float, count: Count, word: str
) -> str:
    """Solid with a point where the idea goes on for ever; dashed, and ended by a flag, where it dies."""
    left, top, bottom = at(idea.seen_at), middle - BAR / 2, middle + BAR / 2
    if idea.dies_at is None:
        right = at(terms) + 14
        shape = ((left, top), (right, top), (right + 9, middle), (right, bottom), (left, bottom))
        return element("path", pen.look("g-always"), d=path_of(shape, close=True), stroke_width=1.8)
    ends_here = idea.dies_at <= terms
    right = at(idea.dies_at) if ends_here else at(terms) + 14
    drawn = element(
        "rect",
        pen.look("g-while"),
        x=left,
        y=top,
        width=max(right - left, 4),
        height=BAR,
        stroke_width=1.8,
        stroke_dasharray="5 3.5",
    )
    if not ends_here:
        return drawn
    words = f"{word} {count.text(idea.dies_at).replace('-', MINUS)}"
    long = text_width(words, 12.5, "bold") + 18
    cloth = (
        (right, top - 5),
        (right + long, top - 5),
        (right + long - 5, top + 3.5),
        (right + long, top + 12),
        (right, top + 12),
    )
    drawn += element("path", pen.look("g-pole"), d=path_of(((right, top - 5), (right, bottom + 2))), stroke_width=2)
    drawn += element("path", pen.look("g-banner"), d=path_of(cloth, close=True))
    return drawn + element(
        "text", pen.look("g-banner-words", "g-bold"), text_of(words), x=right + 6, y=top + 8, font_size=12.5
    )


def _shortened(words: str, room: float) -> str:
    """Words cut at a space so that they fit the room; the whole text stands in the description."""
    if text_width(words, TEXT) <= room:
        return words
    kept = words
    while kept and text_width(kept + "…", TEXT) > room:
        kept = kept.rsplit(" ", 1)[0] if " " in kept else kept[:-1]
    return kept.rstrip(" ,;:") + "…"
