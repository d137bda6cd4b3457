"""Claims: what can be said of a grid, one type for each family, and the plain form that is stored and exported.

A parameter that is left out (None) means "any value": `check` and `design_grids` understand that; what `find_patterns`
lists leaves out nothing. What comes from outside is read, and checked, by `Claim.from_dict`; the engine makes its claims
directly from exact values. Adding a family: its type here, in `FAMILIES`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from fractions import Fraction
from typing import Any, ClassVar, Literal, TypeVar, get_args

from . import claim_parameters as read
from .errors import CountError
from .grid import ALONG, Along

Direction = Literal["right", "down", "down-right", "down-left"]
DIRECTIONS: tuple[Direction, ...] = get_args(Direction)
LieName = Literal["row", "column", "rows", "columns", "down-right", "down-left", "scattered"]
LIES: tuple[LieName, ...] = get_args(LieName)
LineAlong = Literal["row", "column"]
LINES_ALONG: tuple[LineAlong, ...] = get_args(LineAlong)
SumName = Literal["block-corners", "ends", "centre-mean", "line-totals"]
SUMS: tuple[SumName, ...] = get_args(SumName)

Numbers = tuple[int, ...]
T = TypeVar("T")


def stated(value: T | None) -> T:
    """Give a parameter of a complete claim, which leaves out nothing."""
    assert value is not None, "a complete claim leaves out nothing"
    return value


@dataclass(frozen=True, slots=True)
class Claim:
    """One claim about a grid: each family is a type of its own, with its parameters as fields.

    Exact values are `Fraction`s, in the plain form strings in lowest terms ("3/4", "-7").

    >>> claim = Claim.from_dict({"family": "digit", "place": 0, "along": "column", "blocks": [[1, 6], [2, 7]]})
    >>> claim == DigitClaim(place=0, along="column", blocks=((1, 6), (2, 7)))
    True
    >>> Claim.from_dict(claim.as_dict()) == claim
    True
    """

    family: ClassVar[str]
    noticed: ClassVar[int]
    """How late a class notices it (EXACT 28), where every claim of the family stands alike; else `patterns.ranking` knows."""

    @staticmethod
    def from_dict(data: Mapping[str, Any]) -> Claim:
        """Read a claim that was stored, sent or chosen in a form; what is None is left out.

        Raises: CountError on `family` or on the name of the parameter that is wrong.
        """
        if not isinstance(data, Mapping) or not isinstance(data.get("family"), str):
            raise CountError("family", "no-family", choices=tuple(FAMILIES))
        kind = FAMILIES.get(data["family"])
        if kind is None:
            raise CountError("family", "unknown-family", choices=tuple(FAMILIES))
        given = {str(name): value for name, value in data.items() if name != "family"}
        readers: dict[str, read.Reader[Any]] = {one.name: one.metadata["read"] for one in fields(kind)}
        for name in given:
            if name not in readers:
                raise CountError(
                    "family", "unknown-parameter", family=kind.family, parameter=name, choices=tuple(readers)
                )
        said = {name: reader(name, given[name]) for name, reader in readers.items() if given.get(name) is not None}
        claim = kind(**said)
        claim._check_together()
        return claim

    def as_dict(self) -> dict[str, Any]:
        """Give the claim as plain data for JSON: exact values as strings, tuples as lists."""
        return {"family": self.family, **{name: _plain(value) for name, value in self.parameters.items()}}

    @property
    def parameters(self) -> dict[str, Any]:
        """What the claim says, by name: all that is not left out."""
        return self._said(_NAMES[type(self)])

    @property
    def subject(self) -> dict[str, Any]:
        """What the claim is about, by name: the same in every fold, whatever is so of it there."""
        return self._said(_NAMES_ABOUT[type(self)])

    def _said(self, names: tuple[str, ...]) -> dict[str, Any]:
        return {name: value for name in names if (value := getattr(self, name)) is not None}

    def _check_together(self) -> None:
        """Check what each parameter by itself does not show. Raises: CountError on the one that does not go with others."""


class PlaceClaim(Claim):
    """What is said is of the digit at a place, a power of ten with 0 for the ones, or of a part of the written number."""

    __slots__ = ()

    place: int | None
    part: str | None

    def _check_together(self) -> None:
        if self.place is not None and self.part is not None:
            raise CountError("part", "place-and-part")


class BlockClaim(Claim):
    """What is read off the counts repeats in blocks of so many cells along lines: blocks, or only their length, are said.

    lines: the numbers of the rows or columns that it is said of, where not of all.
    """

    __slots__ = ()

    along: Along | None
    blocks: tuple[tuple[int | Fraction, ...], ...] | None
    length: int | None
    lines: Numbers | None

    @property
    def block_length(self) -> int | None:
        """The length k of the repeating blocks, as far as the claim says it."""
        if self.length is not None:
            return self.length
        return max(map(len, self.blocks)) if self.blocks else None

    def _check_together(self) -> None:
        if self.blocks is not None and self.length is not None:
            raise CountError("length", "blocks-and-length")
        if self.lines is not None and not self.lines:
            raise CountError("lines", "no-lines")
        if self.lines is not None and self.along == "count":
            raise only_one_line()


@dataclass(frozen=True, slots=True)
class StepClaim(Claim):
    """Each count is so much more than the one before."""

    family = "step"
    noticed = 0

    difference: Fraction | None = read.says(read.exact)


@dataclass(frozen=True, slots=True)
class NeighbourClaim(Claim):
    """The next cell in a direction of the page is so much more."""

    family = "neighbour"

    direction: Direction | None = read.about(read.one_of(DIRECTIONS))
    difference: Fraction | None = read.says(read.exact)


@dataclass(frozen=True, slots=True)
class DigitClaim(PlaceClaim, BlockClaim):
    """The digit at a place, or a part, repeats in blocks."""

    family = "digit"

    place: int | None = read.about(read.place)
    part: str | None = read.about(read.part)
    along: Along | None = read.about(read.one_of(ALONG))
    blocks: tuple[Numbers, ...] | None = read.says(read.blocks_of(read.not_negative))
    length: int | None = read.says(read.block_length)
    lines: Numbers | None = read.says(read.line_numbers)

    def _check_together(self) -> None:
        PlaceClaim._check_together(self)
        BlockClaim._check_together(self)


@dataclass(frozen=True, slots=True)
class DigitRunClaim(PlaceClaim):
    """The digit at a place, or a part, goes up by `change` from each cell of a line to the next."""

    family = "digit-run"
    noticed = 7

    place: int | None = read.about(read.place)
    part: str | None = read.about(read.part)
    along: Along | None = read.about(read.one_of(ALONG))
    change: int | None = read.says(read.whole)


@dataclass(frozen=True, slots=True)
class DigitSumClaim(BlockClaim):
    """The digits of each count add to numbers that repeat in blocks."""

    family = "digit-sum"
    noticed = 9

    along: Along | None = read.about(read.one_of(ALONG))
    blocks: tuple[Numbers, ...] | None = read.says(read.blocks_of(read.not_negative))
    length: int | None = read.says(read.block_length)
    lines: Numbers | None = read.says(read.line_numbers)


@dataclass(frozen=True, slots=True)
class RemainderClaim(BlockClaim):
    """What each count is past a multiple of the modulus repeats in blocks."""

    family = "remainder"

    modulus: Fraction | None = read.about(read.above_zero)
    along: Along | None = read.about(read.one_of(ALONG))
    blocks: tuple[tuple[Fraction, ...], ...] | None = read.says(read.blocks_of(read.remainder))
    length: int | None = read.says(read.block_length)
    lines: Numbers | None = read.says(read.line_numbers)

    def _check_together(self) -> None:
        BlockClaim._check_together(self)
        modulus = self.modulus
        if modulus is not None and any(rest >= modulus for block in self.blocks or () for rest in block):
            raise CountError("blocks", "remainder-too-large")


@dataclass(frozen=True, slots=True)
class LandmarksClaim(Claim):
    """The multiples of a number come every so many counts from the `first` on, and lie so on the page.

    lines: the numbers of the rows or columns in which they lie; () for a lie that has none.
    """

    family = "landmarks"

    multiple: Fraction | None = read.about(read.above_zero)
    every: int | None = read.says(read.from_one)
    first: int | None = read.says(read.from_one)
    lie: LieName | None = read.says(read.one_of(LIES))
    lines: Numbers | None = read.says(read.line_numbers)

    def _check_together(self) -> None:
        lie, lines = self.lie, self.lines
        if lie is None or lines is None:
            return
        if lie in ("row", "column") and len(lines) != 1:
            raise CountError("lines", "not-one-line", lie=lie)
        if lie in ("rows", "columns") and len(lines) < 2:
            raise CountError("lines", "not-several-lines", lie=lie)
        if lie not in ("row", "column", "rows", "columns") and lines:
            raise CountError("lines", "lie-without-lines", lie=lie)


@dataclass(frozen=True, slots=True)
class HowManyClaim(Claim):
    """The numbers of counts from each multiple to just before the next repeat in a block."""

    family = "how-many"
    noticed = 8

    multiple: Fraction | None = read.about(read.above_zero)
    block: Numbers | None = read.says(read.block_of(read.not_negative))


@dataclass(frozen=True, slots=True)
class SumsClaim(Claim):
    """Sums that agree, or totals of lines side by side that are so far apart; only the totals have a way and a difference."""

    family = "sums"
    noticed = 12

    which: SumName | None = read.about(read.one_of(SUMS))
    along: LineAlong | None = read.about(read.one_of(LINES_ALONG))
    difference: Fraction | None = read.says(read.exact)

    def _check_together(self) -> None:
        if self.which in (None, "line-totals"):
            return
        for name in ("along", "difference"):
            if name in self.parameters:
                raise CountError(name, "only-of-line-totals", name=name)


@dataclass(frozen=True, slots=True)
class TableClaim(Claim):
    """Each value is its position times the step."""

    family = "table"
    noticed = 10

    step: Fraction | None = read.says(read.exact)


@dataclass(frozen=True, slots=True)
class OppositesClaim(Claim):
    """The pairs of terms whose values are each other's opposites, as term numbers."""

    family = "opposites"
    noticed = 13

    pairs: tuple[tuple[int, int], ...] | None = read.says(read.term_pairs)


FAMILIES: dict[str, type[Claim]] = {
    claim.family: claim
    for claim in (
        StepClaim,
        NeighbourClaim,
        DigitClaim,
        DigitRunClaim,
        DigitSumClaim,
        RemainderClaim,
        LandmarksClaim,
        HowManyClaim,
        SumsClaim,
        TableClaim,
        OppositesClaim,
    )
}
"""Every family by its name, in the order in which they are looked for."""

_NAMES = {claim: tuple(one.name for one in fields(claim)) for claim in FAMILIES.values()}
_NAMES_ABOUT = {claim: tuple(one.name for one in fields(claim) if one.metadata["about"]) for claim in FAMILIES.values()}


def only_one_line() -> CountError:
    """What is said where lines are numbered along the count."""
    return CountError("lines", "lines-along-the-count")


def no_such_part(names: tuple[str, ...]) -> CountError:
    """What is refused where a part is meant that the numbers are not written with; `names` are those they have."""
    return CountError("part", "unknown-part", choices=names) if names else CountError("part", "no-parts")


def _plain(value: Any) -> Any:
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    return str(value) if isinstance(value, Fraction) else value
