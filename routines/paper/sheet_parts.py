"""A sheet as parts within parts, read from the HTML that our templates write."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from html.parser import HTMLParser

IN_LINE = ("span", "b", "s", "br", "svg")


@dataclass(slots=True)
class Part:
    """An element: its tag and classes, and what is in it. Of a drawing nothing but its size is known, if it says one.

    Units: points.
    """

    names: tuple[str, ...]
    inside: "list[Part | str]" = field(default_factory=list)
    width: float = 0.0
    height: float = 0.0

    @property
    def is_drawing(self) -> bool:
        return self.names[0] == "svg"

    @property
    def in_line(self) -> bool:
        """Whether it stands in a line, among words."""
        return self.names[0] in IN_LINE and not self.height

    @property
    def blocks(self) -> "list[Part]":
        return [part for part in self.inside if isinstance(part, Part) and not part.in_line]

    def drawings(self) -> "Iterator[Part]":
        """Those that say their size."""
        if self.height:
            yield self
        for part in self.inside:
            if isinstance(part, Part):
                yield from part.drawings()


def parts_of(sheet: str) -> Part:
    """All of a sheet, in one part."""
    reader = _Reader()
    reader.feed(sheet)
    reader.close()
    return reader.sheet


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.sheet = Part(("sheet",))
        self.open = [self.sheet]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        said = dict(attrs)
        part = Part((tag, *(said.get("class") or "").split()))
        if tag == "svg":
            part.width, part.height = _points(said.get("width")), _points(said.get("height"))
        if not self.open[-1].is_drawing:
            self.open[-1].inside.append(part)
        elif tag != "br":
            part = Part(("svg",))  # what is drawn is passed over
        if tag != "br":
            self.open.append(part)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        self.handle_endtag(tag)

    def handle_endtag(self, tag: str) -> None:
        if tag != "br" and len(self.open) > 1:
            self.open.pop()

    def handle_data(self, data: str) -> None:
        if not self.open[-1].is_drawing and data.strip():
            self.open[-1].inside.append(data)


def _points(size: str | None) -> float:
    found = re.fullmatch(r"([\d.]+)pt", size or "")
    return float(found[1]) if found else 0.0
