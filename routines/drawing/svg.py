"""Writing SVG: elements, numbers, and the pen that knows screen from paper.

On screen an element carries a class, and static/css/drawing.css (g- rules for grids, p- rules for pictures)
colours it. WeasyPrint gives no document CSS to inline SVG, so on paper the same rules are read from there, their tokens
resolved from tokens.css, and written as presentation attributes. The rules thus stand once, in CSS.
"""

import re
from collections.abc import Iterable
from functools import cache, lru_cache
from html import escape
from pathlib import Path

_CSS = Path(__file__).resolve().parents[2] / "static" / "css"
_RULE = re.compile(r"((?:\.[gp]-[\w-]+[,\s]*)+)\{([^}]*)\}")
_COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
_DECLARATION = re.compile(r"([\w-]+)\s*:\s*([^;]+);")
_TOKEN = re.compile(r"var\((--[\w-]+)\)")
LENGTHS = (float, int)


@lru_cache(maxsize=2048)  # a drawing writes the places of its rows and columns again and again
def plain(value: float) -> str:
    """Write a length with one decimal at most: a twentieth of a pixel is not seen, and the drawings stay small."""
    text = f"{value:.1f}".removesuffix(".0")
    return "0" if text == "-0" else text


def text_of(words: str) -> str:
    """Escape words for use inside an element or attribute."""
    return words if words.isalnum() else escape(words, quote=True)


def element(name: str, look: str = "", content: str | None = None, /, **attributes: object) -> str:
    """Write one element. An attribute's underscores become hyphens; None leaves it out; floats are lengths."""
    opening = f"<{name} {look}" if look else f"<{name}"
    for key, value in attributes.items():
        if value is not None:
            shown = plain(value) if isinstance(value, LENGTHS) and value.__class__ is not bool else text_of(str(value))
            opening += f' {_written(key)}="{shown}"'
    return f"{opening}/>" if content is None else f"{opening}>{content}</{name}>"


@cache
def _written(attribute: str) -> str:
    return attribute.rstrip("_").replace("_", "-")


def path_of(points: Iterable[tuple[float, float]], close: bool = False) -> str:
    """The path data of straight lines through the points."""
    return "M" + "L".join(f"{plain(x)} {plain(y)}" for x, y in points) + ("Z" if close else "")


def line_of(points: tuple[tuple[float, float], tuple[float, float]]) -> str:
    """The path data of one straight line, as short as can be: its end is written from its beginning."""
    (x0, y0), (x1, y1) = (tuple(round(value, 1) for value in point) for point in points)
    across, down = plain(x1 - x0), plain(y1 - y0)
    way = f"h{across}" if down == "0" else f"v{down}" if across == "0" else f"l{across} {down}"
    return f"M{plain(x0)} {plain(y0)}{way}"


@cache
def tokens(theme: str = "print") -> dict[str, str]:
    """The custom properties of one theme of tokens.css, with those of no theme (type, lines)."""
    css = _COMMENT.sub("", (_CSS / "tokens.css").read_text(encoding="utf-8"))
    found: dict[str, str] = {}
    for selector, body in re.findall(r"([^{}]+)\{([^{}]*)\}", css):
        if f'data-theme="{theme}"' in selector or selector.strip() == ":root":
            for name, value in _DECLARATION.findall(body):
                found.setdefault(name, value.strip())
    return found


@cache
def rules() -> dict[str, tuple[tuple[str, str], ...]]:
    """The drawing rules of drawing.css by class name, as declared (tokens not yet resolved)."""
    css = _COMMENT.sub("", (_CSS / "drawing.css").read_text(encoding="utf-8"))
    found: dict[str, tuple[tuple[str, str], ...]] = {}
    for selectors, body in _RULE.findall(css):
        declared = tuple((name, value.strip()) for name, value in _DECLARATION.findall(body))
        for name in re.findall(r"\.([gp]-[\w-]+)", selectors):
            found[name] = found.get(name, ()) + declared
    return found


class Pen:
    """Turns class names into the attributes that draw them: a class on screen, the resolved rules on paper.

    flat: what is drawn has no part that a script takes hold of, as on paper.
    """

    def __init__(self, on_paper: bool = False, flat: bool = False) -> None:
        self.on_paper, self.flat = on_paper, flat or on_paper

    def look(self, *classes: str) -> str:
        if not self.on_paper:
            return f'class="{" ".join(classes)}"'
        resolved: dict[str, str] = {}
        for name in classes:
            for key, value in rules().get(name, ()):
                resolved[key] = _TOKEN.sub(lambda match: tokens()[match[1]], value)
        return " ".join(f'{key}="{text_of(value.removesuffix("px"))}"' for key, value in resolved.items())
