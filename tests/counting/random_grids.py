"""Random grids for the brute force: small enough to list, of every kind, fill, lead, sign and ragged or whole lines."""

from fractions import Fraction
from random import Random

from routines.counting import Count, CountError, Grid, Style

KINDS = ("whole", "decimal", "fraction", "length", "mass", "capacity", "money", "clock", "elapsed")
FILLS = ("across", "down", "across-up")
BELOW_ZERO = ("whole", "decimal", "fraction", "clock")

_PARTS_OF_ONE = {
    "whole": (1,),
    "decimal": (1, 2, 4, 5, 10, 20, 100, 1000),
    "fraction": (1, 2, 3, 4, 5, 6, 8, 12),
    "length": (1, 1, 2, 4, 10),
    "mass": (1, 1, 2, 4),
    "capacity": (1, 1, 2),
    "money": (1,),
    "clock": (1,),
    "elapsed": (1,),
}
_COMMON_STEPS = (1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 12, 15, 16, 20, 25, 30, 45, 50, 60, 90, 99, 100)
_METRIC = {"length": ("cm", "m"), "mass": ("g", "kg"), "capacity": ("mL", "L")}


def grid_of(
    random: Random, kind: str, fill: str, *, lead: bool = False, down: bool = False, ragged: bool = False
) -> Grid:
    """A random grid with these features; the last line is full exactly when it is not `ragged`, where that can be."""
    while True:
        try:
            count = _count(random, kind, down)
        except CountError:
            continue  # a step of whole turns of the clock, or a style that cannot write the values
        length = random.randint(2 if lead or ragged else 1, min(count.terms, 12))
        empty = random.randint(1, length - 1) if lead else 0
        grid = Grid(count, length, fill, empty)
        if ((count.terms + empty) % length != 0) == ragged:
            return grid


def any_grid(random: Random) -> Grid:
    """A random grid, now and then cut short as it stands while it is being written."""
    grid = grid_of(
        random,
        random.choice(KINDS),
        random.choice(FILLS),
        lead=random.random() < 0.4,
        down=random.random() < 0.4,
        ragged=random.random() < 0.5,
    )
    return grid.cut(random.randint(1, grid.terms)) if random.random() < 0.1 else grid


def _count(random: Random, kind: str, down: bool) -> Count:
    part = Fraction(1, random.choice(_PARTS_OF_ONE[kind]))
    terms = random.randint(2, random.choice((8, 16, 24, 40)))
    steps = _COMMON_STEPS if random.random() < 0.6 else range(1, random.choice((12, 100, 400)))
    step = random.choice(steps) * (-1 if down else 1)
    lowest = -random.choice((0, 5, 40, 400)) if kind in BELOW_ZERO else max(0, -step * (terms - 1))
    start = lowest + random.randint(0, random.choice((10, 100, 1000)))
    if random.random() < 0.1 and not down:
        start = step
    return Count(kind, start * part, step * part, terms, _style(random, kind))


def _style(random: Random, kind: str) -> Style:
    if kind == "clock":
        return Style(clock=random.choice((12, 24)))
    if kind == "money":
        return Style(units=random.choice((None, "one")))
    keywords: dict[str, str] = {"fractions": random.choice(("kept", "simplified"))}
    if kind == "fraction":
        keywords["shape"] = random.choice(("mixed", "top-heavy"))
        keywords["wholes"] = random.choice(("number", "fraction", "both"))
    elif kind != "decimal" and random.random() < 0.5:
        keywords["units"] = "two"
        if kind in _METRIC and random.random() < 0.5:
            keywords["small"], keywords["large"] = _METRIC[kind]
    return Style(**keywords)  # type: ignore[arg-type]
