"""What every number kind can do."""

from abc import ABC, abstractmethod
from fractions import Fraction
from math import lcm
from typing import ClassVar, NamedTuple

from ..errors import CountError
from ..style import LARGEST_DENOMINATOR, Style
from .names import Kind
from .piece import Piece


class Parsed(NamedTuple):
    """A value as it was typed: exact, in the base unit, with what its writing tells about style.

    over: the denominator it was written over. decimal: written with a decimal mark.
    units: the symbols of its units, larger first. system: of its units. halves: a clock time with a.m. or p.m.
    """

    value: Fraction
    over: int = 1
    units: tuple[str, ...] = ()
    system: str | None = None
    halves: bool = False
    decimal: bool = False


class Ringed(NamedTuple):
    """What may be rung as landmarks, in base units, the better ones first. Common practice, no source.

    Where no count lands on one of the friendliest, the first counts past one are rung: a hundred crossed says more than
    fives. The others have a name of their own too.
    """

    friendliest: tuple[Fraction, ...]
    others: tuple[Fraction, ...] = ()


class NumberKind(ABC):
    """How the values of one count are read, written and said, in one settled style.

    grain: the largest amount of which all the count's values are multiples, in the base unit.
    """

    name: ClassVar[Kind]
    goes_below_zero: ClassVar[bool] = True
    base_unit: str = ""
    system: str | None = None
    wrap: int | None = None
    part_names: tuple[str, ...] = ()

    def __init__(self, style: Style, grain: Fraction) -> None:
        """Raises: CountError on `style` when the style would lose a value."""
        self.style = style
        self.grain = grain

    @classmethod
    @abstractmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        """Read one typed value. Raises: CountError on `field`."""

    @classmethod
    def check(cls, value: Fraction, field: str) -> None:
        """Refuse a start or step that no count of this kind has. Raises: CountError on `field`."""
        refuse_fine_parts(value, field)

    @classmethod
    def read_step(cls, text: str, style: Style) -> Parsed:
        """Read a typed step; on a clock that is a length of time."""
        return cls.read(text, style, "step")

    @classmethod
    def settle(cls, start: Parsed, step: Parsed, style: Style) -> Style:
        """The style with what start and step, as typed, add where it leaves a choice. Raises: CountError on `step`."""
        return style

    @abstractmethod
    def friendly_multiples(self) -> tuple[Fraction, ...]:
        """The multiples that landmarks and remainders try (EXACT 8 lists the least), smallest first, in base units."""

    @abstractmethod
    def ringed_multiples(self) -> Ringed:
        """The multiples that are rung as landmarks."""

    @abstractmethod
    def read_off(self) -> Fraction:
        """The multiple whose rest children read off what is written: the ones digit, the cents, the minutes, the inches."""

    @abstractmethod
    def round_number(self) -> Fraction:
        """What children go round by: a ten, a whole, a dollar, an hour, a foot, a meter, a cup; in base units."""

    def counted_parts(self) -> int:
        """Into how many parts a unit is counted; 1 where whole units are, and for kinds without units."""
        return 1

    @abstractmethod
    def pieces(self, value: Fraction) -> tuple[Piece, ...]:
        """The value as written."""

    def difference_pieces(self, size: Fraction) -> tuple[Piece, ...]:
        """A jump of this size (0 or more) as written."""
        return self.pieces(size)

    def parts(self, value: Fraction) -> dict[str, int]:
        """The pieces that children read by themselves, without sign."""
        return {}

    def places_written(self, value: Fraction) -> int:
        """How many of the written digits stand right of the base unit's ones."""
        return 0

    @abstractmethod
    def words(self, value: Fraction, language: str) -> str:
        """The value as said."""


def keep_over(*typed: int) -> int:
    """The denominator of all those that were typed; 1 where that would be a denominator nobody writes."""
    over = lcm(*typed)
    return over if over <= LARGEST_DENOMINATOR else 1


def refuse_fine_parts(value: Fraction, field: str) -> None:
    """Raises: CountError when the denominator is over 1000."""
    if value.denominator > LARGEST_DENOMINATOR:
        raise CountError(field, "denominator-too-large", most=LARGEST_DENOMINATOR)
