"""What was heard at one count: the answers of `classify`."""

from dataclasses import dataclass
from fractions import Fraction

from .slip import Slip


@dataclass(frozen=True, slots=True)
class Heard:
    """Something said at the n-th count. correct: what was due."""

    n: int
    said: str
    correct: str


@dataclass(frozen=True, slots=True)
class Right(Heard):
    """What was due."""


@dataclass(frozen=True, slots=True)
class EqualName(Heard):
    """The same number in another form; not an error. renamed: False where a full set of parts is left as it is."""

    renamed: bool = True


@dataclass(frozen=True, slots=True)
class Repeated(Heard):
    """The count said just before, again. slip: the rule that foresees it here, if one does."""

    slip: Slip | None = None


@dataclass(frozen=True, slots=True)
class Carried(Heard):
    """The jump is right; it is off by as much as the `since`-th count was, where the slip lies."""

    since: int = 0


@dataclass(frozen=True, slots=True)
class SkippedAhead(Heard):
    """The count due `by` jumps later. slip: the rule that foresees it here, if one does."""

    by: int = 1
    slip: Slip | None = None


@dataclass(frozen=True, slots=True)
class Other(Heard):
    """On no list.

    difference: what was said minus what was due, in the base unit; None where the text is no number of this kind.
    takes: what would lead there: "wrong-way", "jumps", "swapped", "place", "half-day", "difference"; None with no
    difference. place: for "place", "digits moved" (all of them), "place off" (a digit or the jump), "one in a place" (too many
    or too few).
    """

    difference: Fraction | None = None
    takes: str | None = None
    place: str | None = None


Hearing = Right | EqualName | Slip | Carried | SkippedAhead | Repeated | Other
