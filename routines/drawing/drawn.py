"""A finished drawing: its SVG, which knows its own size."""

from typing import Self


class Drawn(str):
    """SVG as text. Units: `width`, `height` and `numeral`, the font size of its numerals, in px of its natural size."""

    width: int
    height: int
    numeral: float

    def __new__(cls, svg: str, *, width: int, height: int, numeral: float) -> Self:
        drawn = super().__new__(cls, svg)
        drawn.width, drawn.height, drawn.numeral = width, height, numeral
        return drawn

    def placed(self, width: str, height: str) -> str:
        """The same drawing in another size, given with its unit."""
        own = f'width="{self.width}" height="{self.height}"'
        return self.replace(own, f'width="{width}" height="{height}"', 1)
