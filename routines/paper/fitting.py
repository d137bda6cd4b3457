"""Finding the roomiest look with which all fits one page, in as few layouts as may be: each takes most of a print's time.

A page that was laid out says how tall its content is, and that bounds how tall it is with the other looks. Only those for
which the bounds leave it open are tried.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import prod
from typing import Self

STEPS = 3  # from the roomiest look to the tightest (`styles.py`)


@dataclass(frozen=True, slots=True)
class Fit:
    """What is known of a document before it is laid out.

    `first` is the look to begin with, counted from 0, the roomiest. By look, all but the tightest: what is no picture is at
    least `least` and at most `most` times as tall as with the next tighter one. Where that should not hold, what is found
    still fits.
    """

    first: int
    least: Sequence[float]
    most: Sequence[float]

    @classmethod
    def alike(cls, *, first: int, least: float, most: float) -> Self:
        """The same from each of the looks to the next."""
        return cls(first, STEPS * [least], STEPS * [most])


# Measured on the plans of the demo school, and a little wider; where a fit does not hold, a page is not as roomy as it might be.
ALONE_FIT = Fit.alike(first=0, least=1.0, most=1.22)  # the grid is the page, and is as large as there is room


@dataclass(frozen=True, slots=True)
class LaidOut:
    """Heights in pages: of the content, and of the picture in it, which every look leaves as it is."""

    fits: bool
    height: float
    picture: float


def find_look(looks: int, fit: Fit, lay_out: Callable[[int], LaidOut]) -> int:
    """The roomiest look that fits. Where none does it is the middle one, which may not have been laid out."""
    known: dict[int, LaidOut] = {}
    look: int | None = fit.first
    while look is not None:
        known[look] = lay_out(look)
        look = _next(looks, fit, known)
    return min((look for look, page in known.items() if page.fits), default=(looks - 1) // 2)


def _next(looks: int, fit: Fit, known: dict[int, LaidOut]) -> int | None:
    """The one that is most likely the roomiest that fits, of those that may be; None where there is no other."""
    may_be = [look for look in range(looks) if look not in known and _may_be(look, fit, known)]
    likely = [(least * most) ** 0.5 for least, most in zip(fit.least, fit.most, strict=True)]
    near = {look: min(known, key=lambda tried: abs(tried - look)) for look in may_be}
    fitting = [look for look in may_be if _height(known, near[look], look, likely) <= 1]
    return min(fitting, default=max(may_be, default=None))


def _may_be(look: int, fit: Fit, known: dict[int, LaidOut]) -> bool:
    """Whether it may fit, and be roomier than those that do."""
    for tried, page in known.items():
        if page.fits and (look > tried or _height(known, tried, look, fit.least) > 1):
            return False
        if not page.fits and (look < tried or _height(known, tried, look, fit.most) > 1):
            return False
    return True


def _height(known: dict[int, LaidOut], tried: int, look: int, growth: Sequence[float]) -> float:
    """How tall the page is with a look, by how tall it was with one that was tried."""
    page = known[tried]
    grown = prod(growth[look:tried]) / prod(growth[tried:look])
    return page.picture + (page.height - page.picture) * grown
