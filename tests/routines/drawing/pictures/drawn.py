"""Reading a drawn picture back: its shapes by class, its words with the boxes they take. And counts of all kinds to draw."""

from dataclasses import dataclass
from fractions import Fraction
from xml.etree import ElementTree

from hypothesis import strategies as st

from routines.counting import Count, CountError, Style
from routines.drawing.metrics import DIGIT_HEIGHT, text_width

SVG = "{http://www.w3.org/2000/svg}"


def count(kind: str, start: str, step: str, terms: int = 12, **style: object) -> Count:
    return Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(**style))


def parse(drawn: str) -> ElementTree.Element:
    return ElementTree.fromstring(drawn)


def of_class(drawn: str, name: str) -> list[ElementTree.Element]:
    return [shape for shape in parse(drawn).iter() if name in (shape.get("class") or "").split()]


def number(shape: ElementTree.Element, name: str) -> float:
    return float(shape.get(name))


@dataclass(frozen=True)
class Written:
    """One text of a drawing and the box that its figures take."""

    words: str
    size: float
    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: "Written") -> bool:
        slack = 0.15  # positions are written to a tenth
        return (
            self.left < other.right - slack
            and other.left < self.right - slack
            and self.top < other.bottom - slack
            and other.top < self.bottom - slack
        )


def written(drawn: str) -> list[Written]:
    found = []
    for text in parse(drawn).iter(f"{SVG}text"):
        words, size = "".join(text.itertext()), number(text, "font-size")
        x, y = number(text, "x"), number(text, "y")
        found.append(Written(words, size, x, y - size * DIGIT_HEIGHT / 1000, x + text_width(words, size), y))
    return found


@st.composite
def counts(draw: st.DrawFn) -> Count:
    """Counts of every kind, forward and backward, near 0 and far from it, in several styles."""
    kind, step, style = draw(
        st.sampled_from(
            [
                *(("whole", Fraction(n), {}) for n in (1, 2, 5, 6, 7, 10, 25, 99, 250, 1234)),
                *(("decimal", Fraction(n), {}) for n in ("1/10", "1/4", "3/2", "1/1000", "27/100")),
                *(("fraction", Fraction(n), {"shape": shape}) for n in ("1/2", "2/3", "3/4", "5/8", "7/12", "3/16", "5/4")
                  for shape in ("mixed", "top-heavy")),
                ("fraction", Fraction(1, 3), {"wholes": "both"}),
                *(("length", Fraction(n), {"small": "in", "large": "ft", "units": "two"}) for n in ("1/4", "3/2", "9", "31")),
                *(("length", Fraction(n), {"small": "in", "units": "one"}) for n in ("1/8", "3/4", "5", "12", "100")),
                *(("length", Fraction(n), {"small": "cm", "large": "m", "units": "two"}) for n in ("5", "45", "150")),
                *(("length", Fraction(n), {"small": "mm", "units": "one"}) for n in ("1/10", "3/2", "25")),
                *(("mass", Fraction(n), {"small": "oz", "large": "lb", "units": "two"}) for n in ("1", "12", "20")),
                *(("mass", Fraction(n), {"small": "g", "units": "one"}) for n in ("25", "250", "1500")),
                *(("capacity", Fraction(n), {"small": "mL", "large": "L", "units": "two"}) for n in ("50", "330", "1500")),
                *(("capacity", Fraction(n), {"small": "fl oz", "units": "one"}) for n in ("4", "12", "1/2")),
                *(("money", Fraction(n), {"currency": code}) for n in (1, 5, 10, 25, 50, 115, 1990)
                  for code in ("USD", "EUR", "GBP", "CAD", "MXN")),
                *(("clock", Fraction(n), {"clock": hours}) for n in (1, 5, 25, 40, 60, 75, 150, 400) for hours in (12, 24)),
                ("clock", Fraction(35), {"halves": True}),
                *(("elapsed", Fraction(n), {"small": "min", "large": "h", "units": "two"}) for n in (1, 5, 35, 100)),
            ]
        )
    )  # fmt: skip
    terms = draw(st.integers(2, 30))
    times = draw(st.fractions(0, 40, max_denominator=1) | st.just(Fraction(0)))
    language = draw(st.sampled_from(["en", "es"]))
    start = step * times + draw(st.sampled_from([Fraction(0), step, step / 2 if kind == "fraction" else step * 2]))
    if draw(st.booleans()):
        step, start = -step, start + step * terms
    if kind in ("whole", "decimal") and draw(st.booleans()):
        start -= step * (terms // 2)
    try:
        return Count(kind, start, step, terms, Style(language=language, **style))
    except CountError:
        return Count("whole", Fraction(-10), Fraction(4), terms)
