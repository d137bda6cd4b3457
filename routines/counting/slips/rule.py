"""What a rule is: where a slip is likely, and what will be heard there."""

from collections.abc import Callable
from dataclasses import dataclass

from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..languages import LANGUAGES
from .jump import Jump

NO_SOURCE = "common practice, no source"
TOP_LEVEL = 8


def every(count: Count) -> bool:
    """Any count at all."""
    return True


def of_kind(kind: Kind) -> Callable[[Count], bool]:
    """Counts of this kind alone."""
    return lambda count: count.kind == kind


@dataclass(frozen=True, slots=True)
class Rule:
    """One slip of one area.

    grades: the levels it is foreseen at; the last slips of elementary school (5 and 6) stay open upwards.
    happens: the jumps it is likely at. heard: what is said or written there, by language ("" where it would be what
    is due anyway). weight: 4 for what is heard at zero, 3 for the slips every
    teacher of these grades meets, 2 for the usual, 1 for the rarer, 0 for the odd ones.
    of_writing: whether it is about how one number is written or named, not about the jump to it. only_as_written: it is
    heard in this form alone, for another form of the same number is no sign of it. turns: the class loses its direction,
    or starts again, so it is said aloud though it goes the wrong way.
    counts: which counts of its area it is about; asked once of a count, where `happens` is asked of each jump.
    anywhere: it is as likely at one number as at another, so no crossing brings it to the front.
    same_number: words that cannot be read back name the right number all the same. languages: where number words bring it about.
    """

    id: str
    grades: tuple[int, int]
    happens: Callable[[Jump], bool]
    heard: Callable[[Jump, str], str]
    weight: int = 2
    same_number: Callable[[Jump], bool] = lambda jump: False
    languages: tuple[str, ...] = LANGUAGES
    source: str = NO_SOURCE
    of_writing: bool = False
    only_as_written: bool = False
    turns: bool = False
    anywhere: bool = False
    counts: Callable[[Count], bool] = every

    def suits(self, level: int) -> bool:
        low, high = self.grades
        return low <= level <= (TOP_LEVEL if high >= 5 else high)


@dataclass(frozen=True, slots=True)
class Area:
    """The rules of one area, and the grids whose numbers they are about. of_every_kind: whether they speak of any numbers."""

    name: str
    serves: Callable[[Grid], bool]
    rules: tuple[Rule, ...]
    of_every_kind: bool = False
