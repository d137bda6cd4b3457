"""A count: an exact arithmetic sequence that a class says aloud."""

from dataclasses import dataclass, field
from fractions import Fraction
from math import gcd, lcm
from typing import TYPE_CHECKING, Self

from .errors import CountError
from .kinds.kept_texts import difference_of, pieces_of, text_of
from .kinds.kind import NumberKind, Parsed, refuse_fine_parts
from .kinds.names import Kind
from .kinds.piece import Piece
from .kinds.registry import kind_named, number_kind
from .languages import LANGUAGES
from .style import Style

if TYPE_CHECKING:
    from .algebra import Rule
    from .stories import Goal

FEWEST_TERMS, MOST_TERMS = 2, 200
LARGEST_VALUE = 10**9
PLAIN_STYLE = Style()


@dataclass(frozen=True, slots=True)
class Count:
    """A start, a step and a number of terms, in one number kind and style. Terms are numbered from 1.

    Units: start, step and all values are in the kind's base unit.
    Raises: CountError on kind, start, step, terms or style: such a count cannot exist.
    """

    kind: Kind
    start: Fraction
    step: Fraction
    terms: int
    style: Style = PLAIN_STYLE
    scale: int = field(init=False, repr=False, compare=False)
    scaled_start: int = field(init=False, repr=False, compare=False)
    scaled_step: int = field(init=False, repr=False, compare=False)
    form: NumberKind = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        kind = kind_named(self.kind)
        object.__setattr__(self, "kind", kind.name)
        if not isinstance(self.style, Style):
            raise CountError("style", "no-style")
        for name in ("start", "step"):
            object.__setattr__(self, name, _exact(getattr(self, name), name))
        if isinstance(self.terms, bool) or not isinstance(self.terms, int):
            raise CountError("terms", "terms-not-whole", least=FEWEST_TERMS, most=MOST_TERMS)
        if not FEWEST_TERMS <= self.terms <= MOST_TERMS:
            raise CountError("terms", "terms-out-of-range", least=FEWEST_TERMS, most=MOST_TERMS)
        if self.step == 0:
            raise CountError("step", "zero-step")
        scale = lcm(self.start.denominator, self.step.denominator)
        object.__setattr__(self, "scale", scale)
        object.__setattr__(self, "scaled_start", self.start.numerator * (scale // self.start.denominator))
        object.__setattr__(self, "scaled_step", self.step.numerator * (scale // self.step.denominator))
        self._refuse_sizes(kind)
        grain = Fraction(gcd(self.scaled_start, self.scaled_step), scale)
        object.__setattr__(self, "form", number_kind(self.kind, self.style, grain))
        if self.wrap and self.step % self.wrap == 0:
            raise CountError("step", "round-the-clock")

    def __hash__(self) -> int:
        """Of whole numbers, which equal counts have alike: most of what is remembered is remembered by its count."""
        return hash((self.scaled_start, self.scaled_step, self.scale, self.terms))

    @classmethod
    def parse(
        cls,
        *,
        kind: str,
        start: str | int | Fraction,
        step: str | int | Fraction,
        terms: int,
        style: Style | None = None,
    ) -> Self:
        """A count as a teacher types it; whole and exact numbers are taken in the base unit.

        Raises: CountError on the field at fault.

        >>> Count.parse(kind="fraction", start="2/3", step="1/3", terms=12).text(5)
        '2'
        """
        number = kind_named(kind)
        chosen = PLAIN_STYLE if style is None else style
        if not isinstance(chosen, Style):
            raise CountError("style", "no-style")
        first = number.read(start, chosen, "start") if isinstance(start, str) else Parsed(_exact(start, "start"))
        by = number.read_step(step, chosen) if isinstance(step, str) else Parsed(_exact(step, "step"))
        return cls(number.name, first.value, by.value, terms, number.settle(first, by, chosen))

    def _refuse_sizes(self, kind: type[NumberKind]) -> None:
        for name, value in (("start", self.start), ("step", self.step)):
            if abs(value) > LARGEST_VALUE:
                raise CountError(name, "too-large", name=name)
            kind.check(value, name)
        # Some value, if perhaps past the end, has the common denominator: no prime of it cancels in every term.
        refuse_fine_parts(Fraction(1, self.scale), "step")
        if abs(self.value(self.terms)) > LARGEST_VALUE:
            raise CountError("terms", "too-far")
        if not kind.goes_below_zero:
            self._refuse_below_zero()

    def _refuse_below_zero(self) -> None:
        if self.start < 0:
            raise CountError("start", "starts-below-zero")
        if self.scaled(self.terms) < 0:
            n = self.scaled_start // -self.scaled_step + 2
            if n == 2:
                raise CountError("step", "second-below-zero")
            raise CountError("terms", "goes-below-zero", most=n - 1, n=n)

    @property
    def wrap(self) -> int | None:
        """After how many minutes a clock shows the same time again; None for every other kind."""
        return self.form.wrap

    @property
    def base_unit(self) -> str:
        return self.form.base_unit

    @property
    def system(self) -> str | None:
        return self.form.system

    def friendly_multiples(self) -> tuple[Fraction, ...]:
        """The multiples that landmarks and remainders try, in the base unit."""
        return self.form.friendly_multiples()

    def part_names(self) -> tuple[str, ...]:
        """The parts that this count's writing may show, larger first."""
        return self.form.part_names

    def scaled(self, n: int) -> int:
        """value(n) * scale, a whole number."""
        return self.scaled_start + (n - 1) * self.scaled_step

    def value(self, n: int) -> Fraction:
        """The n-th value, for any n from 1 on, past the end too.

        Units: the base unit; a clock's minutes never wrap.
        Raises: CountError on `n` for what is no whole number from 1 on, as do the other methods that take one.
        """
        refuse_no_position(n)
        return Fraction(self.scaled_start + (n - 1) * self.scaled_step, self.scale)

    def text(self, n: int) -> str:
        """The n-th count as written."""
        refuse_no_position(n)
        return text_of(self.form, self.scaled(n), self.scale)

    def words(self, n: int, language: str | None = None) -> str:
        """The n-th count as said; without a language, in the style's."""
        return self.words_of(self.value(n), language)

    def parts(self, n: int) -> dict[str, int]:
        """The n-th count's parts as written, without sign.

        >>> Count.parse(kind="fraction", start="2/3", step="1/3", terms=12).parts(1)
        {'top': 2, 'bottom': 3}
        """
        return self.form.parts(self.value(n))

    def pieces(self, n: int) -> tuple[Piece, ...]:
        """The n-th count as pieces for a drawing."""
        refuse_no_position(n)
        return pieces_of(self.form, self.scaled(n), self.scale)

    def text_of(self, value: Fraction) -> str:
        """Any value as this count would write it."""
        return text_of(self.form, value.numerator, value.denominator)

    def pieces_of(self, value: Fraction) -> tuple[Piece, ...]:
        """Any value as this count would write it, in pieces."""
        return pieces_of(self.form, value.numerator, value.denominator)

    def words_of(self, value: Fraction, language: str | None = None) -> str:
        """Any value as this count would say it."""
        spoken = self.style.language if language is None else language
        if spoken not in LANGUAGES:
            raise CountError("language", "no-language")
        return self.form.words(value, spoken)

    def difference_text(self, value: Fraction) -> str:
        """A jump of this size as written, without sign: "28", "9 in", "20 min"."""
        return difference_of(self.form, value.numerator, value.denominator)

    def span(self, n: int, *, place: int | None = None, part: str | None = None) -> tuple[int, int, int] | None:
        """Where a digit (place 0: ones of the base unit) or a part stands: piece, from, to; None if it is not written.

        >>> count = Count.parse(kind="whole", start="1,325", step="-50", terms=16)
        >>> count.span(1, place=2), count.span(1, place=3), count.span(1, place=4)
        ((0, 2, 3), (0, 0, 1), None)
        """
        pieces = self.pieces(n)
        if part is not None:
            for index, piece in enumerate(pieces):
                if piece.part == part:
                    return index, 0, len(piece.text)
            return None
        digits = [
            (index, at)
            for index, piece in enumerate(pieces)
            if piece.kind == "number"
            for at, sign in enumerate(piece.text)
            if sign.isdigit()
        ]
        from_right = (place or 0) + self.form.places_written(self.value(n))
        if not 0 <= from_right < len(digits):
            return None
        index, at = digits[-1 - from_right]
        return index, at, at + 1

    def position_of(self, value: Fraction) -> int | None:
        """At which count `value` is spoken, or None if it is skipped.

        Units: value is in the base unit; positions count from 1, past the end too.
        Source: proof - value = start + (n-1)*step has one solution n, spoken iff n is whole and at least 1.

        >>> Count.parse(kind="whole", start="1", step="3", terms=5).position_of(Fraction(7))
        3
        """
        steps = (value - self.start) / self.step
        return steps.numerator + 1 if steps.denominator == 1 and steps >= 0 else None

    def read(self, text: str) -> Fraction:
        """A typed value in this count's kind and style, in the base unit. Raises: CountError on `value`."""
        return self.typed(text).value

    def typed(self, text: str) -> Parsed:
        """A typed value with what its writing tells. Raises: CountError on `value`, for units of another system too."""
        typed = kind_named(self.kind).read(text, self.style, "value")
        if typed.system != self.system:
            raise CountError("value", "other-system", system=self.system or "", first=self.text(1))
        return typed

    def rule(self) -> "Rule":
        """The n-th count, as text and as a sympy expression in n."""
        from .algebra import Rule

        return Rule(self)

    def reaching(self, goal: str | int | Fraction) -> "Goal":
        """At which count a goal is met or passed, and by how much. Raises: CountError on `value`."""
        from .stories import goal_reached

        return goal_reached(self, goal)


def refuse_no_position(n: object, field: str = "n") -> None:
    """Refuse what is no number of a count. Raises: CountError on the field."""
    if isinstance(n, bool) or not isinstance(n, int) or n < 1:
        raise CountError(field, "no-position")


def _exact(value: object, name: str) -> Fraction:
    if isinstance(value, bool) or not isinstance(value, (int, Fraction)):
        if isinstance(value, float):
            raise CountError(name, "floating-point", name=name)
        raise CountError(name, "not-as-text", name=name)
    return value if isinstance(value, Fraction) else Fraction(value)
