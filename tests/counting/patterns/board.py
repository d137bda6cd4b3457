"""Short ways to fold a count and to ask one family's finder what it sees."""

from typing import Any

from routines.counting import Claim, Count, Grid, Style
from routines.counting.claims import FAMILIES
from routines.counting.patterns import MODULES
from routines.counting.results import Pattern


def grid(start: str, step: str, terms: int, length: int, kind: str = "whole", **fold: Any) -> Grid:
    style = Style(**fold.pop("style", {}))
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms, style=style), length, **fold)


def seen(family: str, view: Grid) -> list[Pattern]:
    return list(MODULES[FAMILIES[family]].find(view))


def claims(family: str, view: Grid) -> list[Claim]:
    return [found.claim for found in seen(family, view)]


def the_one(family: str, view: Grid, **parameters: Any) -> Pattern:
    """The one find of a family with these parameters."""
    (found,) = (
        f
        for f in seen(family, view)
        if all(f.claim.parameters.get(name) == value for name, value in parameters.items())
    )
    return found
