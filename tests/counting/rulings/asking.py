"""Short ways to fold a count, and to ask the public face what it lists or says of a claim as plain data."""

from typing import Any

from routines.counting import Count, Grid, Pattern, Style, Verdict, check, find_patterns
from tests.counting.claims import a_claim


def grid(start: str, step: str, terms: int, length: int, kind: str = "whole", **fold: Any) -> Grid:
    style = Style(**fold.pop("style", {}))
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms, style=style), length, **fold)


def listed(view: Grid, family: str, *, implied: bool = False, **parameters: Any) -> list[dict[str, Any]]:
    """The claims of a family that are listed, as data, with these parameters."""
    claims = [pattern.claim.as_dict() for pattern in find_patterns(view, implied=implied)]
    return [c for c in claims if c["family"] == family and all(c.get(k) == v for k, v in parameters.items())]


def pattern(view: Grid, family: str, *, implied: bool = False, **parameters: Any) -> Pattern:
    """The one pattern of a family that is listed with these parameters (as data)."""
    (found,) = (
        p
        for p in find_patterns(view, implied=implied)
        if p.claim.family == family and all(p.claim.as_dict().get(k) == v for k, v in parameters.items())
    )
    return found


def verdict(view: Grid, family: str, **parameters: Any) -> Verdict:
    return check(a_claim(family, **parameters), view)


def life(view: Grid, family: str, **parameters: Any) -> tuple[bool, str | None, int | None]:
    """Whether a claim is true, how it holds, and the term it breaks at."""
    said = verdict(view, family, **parameters)
    return said.true, said.holds, said.breaks_at
