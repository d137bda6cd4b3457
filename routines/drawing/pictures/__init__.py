"""Pictures of a count by its kind: the same numbers on a line, as clocks, along a ruler, in coins, in parts of a whole.

    pictures_for(count, language="en") -> (("bars", "Fraction bars"), ("line", "Number line"))    best first
    draw_picture(count, kind="line", first=1, last=None, on_paper=False, language="en", width=720) -> str (SVG)

A picture shows a dozen terms at most, from `first` on; the jump into `first` is shown too. In templates:
{% load countfold %} {% picture count "line" first=13 width=288 %}.
On screen the drawings carry the p- classes of static/css/drawing.css; on paper the same rules as attributes.
"""

from routines.counting import Count, Kind

from ..words import WORDS
from . import clock_faces, coins, fraction_bars, jugs, number_line, ruler, scale
from .sheet import Sheet
from .wording import description, title

DOZEN = 12
WIDE, NARROW = 720, 288  # for a page and paper; for a phone

_PICTURES = {
    "bars": fraction_bars,
    "clock": clock_faces,
    "coins": coins,
    "jugs": jugs,
    "line": number_line,
    "ruler": ruler,
    "scale": scale,
}
_EVERY_COUNT = ("line",)
_BEST_FIRST = {
    Kind.DECIMAL: ("line", "bars"),
    Kind.FRACTION: ("bars", "line"),
    Kind.LENGTH: ("ruler", "line"),
    Kind.MASS: ("scale", "line"),
    Kind.CAPACITY: ("jugs", "line"),
    Kind.MONEY: ("coins", "line"),
    Kind.CLOCK: ("clock", "line"),
}
_OVER_TIME = (Kind.CLOCK, Kind.ELAPSED)


def pictures_for(count: Count, language: str = "en") -> tuple[tuple[str, str], ...]:
    """The pictures that fit a count with their names for people, best first; the number line fits every count."""
    fitting = (
        kind for kind in _BEST_FIRST.get(count.kind, _EVERY_COUNT) if kind in _PICTURES and _PICTURES[kind].fits(count)
    )
    return tuple((kind, WORDS[language].pictures[_named(count, kind)]) for kind in fitting)


def draw_picture(
    count: Count,
    *,
    kind: str = "",
    first: int = 1,
    last: int | None = None,
    on_paper: bool = False,
    language: str = "en",
    width: float = WIDE,
) -> str:
    """Draw terms first..last, a dozen at most. kind: of pictures_for(count); "" is the best.

    Raises: ValueError for a picture that does not fit the count, or terms that it does not have.
    """
    fitting = [name for name, _ in pictures_for(count)]
    chosen = kind or fitting[0]
    if chosen not in fitting:
        raise ValueError(f"This count is drawn as {', '.join(fitting)}, not as {chosen!r}.")
    end = min(count.terms if last is None else last, count.terms, first + DOZEN - 1)
    if not 1 <= first <= end:
        raise ValueError(f"Choose terms from 1 to {count.terms}, the first one first.")
    sheet = Sheet(width, on_paper=on_paper, language=language)
    height = _PICTURES[chosen].draw(sheet, count, first, end)
    return sheet.close(
        height,
        title(_named(count, chosen), count, first, end, language),
        description(count, first, end, language),
        chosen,
    )


def _named(count: Count, kind: str) -> str:
    return "time-line" if kind == "line" and count.kind in _OVER_TIME else kind
