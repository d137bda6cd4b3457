"""Within which limits a grid is looked for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from ..count import FEWEST_TERMS, LARGEST_VALUE, MOST_TERMS
from ..errors import CountError
from ..grid import Fill, read_fill
from ..kinds.kind import Parsed
from ..kinds.names import Kind
from ..kinds.registry import kind_named
from ..style import Style

Number = Fraction | int

PLAIN_STYLE = Style()


@dataclass(frozen=True, slots=True)
class Limits:
    """From where to where to look: every pair is a lowest and a highest, both allowed.

    grain: starts and steps are multiples of it. largest: bounds |value| in view.
    off_multiple: True for starts that are no multiple of the step, False for multiples, None for both.
    at_most: give only so many grids, the best ones (None: all of them). The grids have no lead.

    Units: numbers are in the base unit; `Limits.parse` reads them as typed.
    Raises: CountError on kind, start, step, line_length, fill, terms or value.
    """

    kind: Kind = Kind.WHOLE
    grain: Number = 1
    starts: tuple[Number, Number] = (0, 100)
    steps: tuple[Number, Number] = (1, 20)
    line_lengths: tuple[int, int] = (2, 12)
    fills: tuple[Fill, ...] = (Fill.ACROSS, Fill.DOWN)
    terms: tuple[int, int] = (12, 40)
    largest: Number = LARGEST_VALUE
    off_multiple: bool | None = None
    at_most: int | None = None
    style: Style = PLAIN_STYLE

    @classmethod
    def parse(
        cls,
        *,
        kind: str = Kind.WHOLE,
        grain: str | Number = 1,
        starts: Sequence[str | Number] = (0, 100),
        steps: Sequence[str | Number] = (1, 20),
        largest: str | Number = LARGEST_VALUE,
        style: Style = PLAIN_STYLE,
        **others: Any,
    ) -> Limits:
        """Read limits as a teacher types them, with their units; the highest ones settle the units of the grids.

        >>> Limits.parse(kind="length", grain="1 in", starts=("0 in", "2 ft"), steps=("1 in", "1 ft")).starts
        (Fraction(0, 1), Fraction(24, 1))
        """
        number = kind_named(kind)

        def exact(given: object, field: str) -> Parsed:
            if isinstance(given, bool) or not isinstance(given, (int, Fraction)):
                raise CountError(field, "limit-not-exact", name=field)
            return Parsed(Fraction(given))

        def value(given: str | Number, field: str) -> Parsed:
            return number.read(given, style, field) if isinstance(given, str) else exact(given, field)

        def length(given: str | Number) -> Parsed:
            return number.read_step(given, style) if isinstance(given, str) else exact(given, "step")

        _check_pair("start", starts)
        _check_pair("step", steps)
        low, high = (value(start, "start") for start in starts)
        least, most = (length(step) for step in steps)
        return cls(
            kind=number.name,
            grain=length(grain).value,
            starts=(low.value, high.value),
            steps=(least.value, most.value),
            largest=value(largest, "value").value,
            style=number.settle(high, length(grain), style),
            **others,
        )

    @property
    def reach(self) -> Fraction:
        """A bound of |value| in every grid within the limits."""
        start, step = (max(abs(Fraction(number)) for number in pair) for pair in (self.starts, self.steps))
        return min(Fraction(self.largest), Fraction(LARGEST_VALUE), start + (self.terms[1] - 1) * step)

    def __post_init__(self) -> None:
        object.__setattr__(self, "kind", kind_named(self.kind).name)
        if not isinstance(self.style, Style):
            raise CountError("style", "no-style")
        if self.off_multiple not in (None, True, False):
            raise CountError("start", "no-off-multiple")
        for field, numbers in (("start", self.starts), ("step", self.steps)):
            _check_pair(field, numbers)
            if not all(_is_exact(number) for number in numbers):
                raise CountError(field, "limits-not-exact", name=field)
        if not _is_exact(self.grain) or self.grain <= 0:
            raise CountError("step", "no-grain")
        if not _is_exact(self.largest) or self.largest < 0:
            raise CountError("value", "no-largest-number")
        for field, whole, least in (("line_length", self.line_lengths, 1), ("terms", self.terms, FEWEST_TERMS)):
            _check_pair(field, whole)
            if not all(_is_whole(number) for number in whole) or whole[0] < least or whole[1] > MOST_TERMS:
                raise CountError(field, "limits-out-of-range", least=least, most=MOST_TERMS)
        given = self.fills if isinstance(self.fills, (tuple, list)) and self.fills else (None,)
        object.__setattr__(self, "fills", tuple(map(read_fill, given)))
        if self.at_most is not None and (not _is_whole(self.at_most) or self.at_most < 1):
            raise CountError("value", "no-grids-asked")


def _check_pair(field: str, pair: Sequence[str | Number]) -> None:
    if not isinstance(pair, (tuple, list)) or len(pair) != 2:
        raise CountError(field, "no-pair-of-limits")


def _is_exact(number: object) -> bool:
    return isinstance(number, (int, Fraction)) and not isinstance(number, bool)


def _is_whole(number: object) -> bool:
    return isinstance(number, int) and not isinstance(number, bool)
