"""A count that answers a word problem: its groups, its goal, and its landmarks under their larger name."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from math import gcd
from typing import NamedTuple

from .count import Count
from .errors import CountError
from .grid import Grid
from .kinds.names import Kind
from .kinds.unit_names import NAMES, WRITTEN_BY_NAME
from .kinds.units import RENAMED_IN, UNITS

LONGEST_LABEL = 40
# What is passed more often than at every so many counts is nothing to ring.
SELDOM = 3


class Goal(NamedTuple):
    """Where a count meets or passes a goal: at count n, by so much (0 when it is met exactly).

    Units: value and by are in the count's base unit.
    """

    value: Fraction
    n: int
    by: Fraction

    @property
    def met(self) -> bool:
        return self.by == 0


@dataclass(frozen=True, slots=True)
class Story:
    """The groups of a word problem, each a step of the count: "crate 1", "crate 2", ... each 3 lb 8 oz.

    Raises: CountError on `group` for an empty or too long label, on `value` for a goal that cannot be read.
    """

    count: Count
    group: str
    goal: str = ""

    def __post_init__(self) -> None:
        if not isinstance(self.group, str) or not self.group.strip() or len(self.group) > LONGEST_LABEL:
            raise CountError("group", "no-group", most=LONGEST_LABEL)
        self.reached()

    @property
    def each(self) -> str:
        """What one group holds."""
        return self.count.difference_text(self.count.step)

    def label(self, n: int) -> str:
        """The name of the n-th group."""
        return f"{self.group.strip()} {n}"

    def reached(self) -> Goal | None:
        """Where the goal is met or passed; None without a goal."""
        return goal_reached(self.count, self.goal) if self.goal.strip() else None


def goal_reached(count: Count, goal: str | int | Fraction) -> Goal:
    """At which count a goal is met or passed in the direction of counting, past the end too.

    A goal behind the start is passed at the first count. On a clock it is the next time the goal comes round.
    Raises: CountError on `value`.
    Source: proof - the first n with (n-1)*|step| >= distance is ceil(distance / |step|) + 1.

    >>> crates = Count.parse(kind="mass", start="3 lb 8 oz", step="3 lb 8 oz", terms=8)
    >>> crates.reaching("20 lb").n, crates.difference_text(crates.reaching("20 lb").by)
    (6, '1 lb')
    """
    if isinstance(goal, str):
        value = count.read(goal)
    elif isinstance(goal, (int, Fraction)) and not isinstance(goal, bool):
        value = Fraction(goal)
    else:
        raise CountError("value", "goal-not-text", last=count.text(count.terms))
    if value < 0 and not count.form.goes_below_zero:
        raise CountError("value", "goal-below-zero")
    direction = 1 if count.step > 0 else -1
    distance = (value - count.start) * direction
    if count.wrap is not None:
        distance %= count.wrap
        value = count.start + distance * direction
    size = abs(count.step)
    n = max(-(-distance // size), 0) + 1
    return Goal(value, n, (count.value(n) - value) * direction)


class Landmarks(NamedTuple):
    """A multiple worth ringing, and the terms in view that are multiples of it, or the first past each where `crossed`."""

    multiple: Fraction
    terms: tuple[int, ...]
    crossed: bool = False


def landmark_terms(count: Count, multiple: Fraction, terms: int) -> tuple[int, ...]:
    """The terms up to `terms` whose values are multiples of `multiple`. 0 is a multiple.

    Source: proof - start + (n-1)*step is a multiple of m iff n solves a linear congruence; solutions repeat every
    m / gcd(m, step) terms, so the first found settles the rest.
    """
    scale = count.scale * multiple.denominator // gcd(count.scale, multiple.denominator)
    modulus = int(multiple * scale)
    first, step = int(count.start * scale), int(count.step * scale)
    every = modulus // gcd(modulus, step)
    for n in range(1, min(every, terms) + 1):
        if (first + (n - 1) * step) % modulus == 0:
            return tuple(range(n, terms + 1, every))
    return ()


def proposed_landmarks(grid: Grid) -> list[Landmarks]:
    """Which multiples to ring, best first: those with a name of their own that some terms are and others are not.

    A friendly one that stands there once comes before others that stand there often; where no count lands on any of the
    friendliest, the counts first past one, such as the hundred crossed, come before others. Common practice, no source.

    >>> grid = Grid(Count.parse(kind="whole", start="240", step="100", terms=16), 4)
    >>> [grid.count.text(n) for n in proposed_landmarks(grid)[0].terms], proposed_landmarks(grid)[0].crossed
    (['1,040'], True)
    """
    ringed = grid.count.form.ringed_multiples()
    friendliest = _landed_on(grid, ringed.friendliest)
    crossed = [] if friendliest else _crossed(grid, ringed.friendliest[0])
    return [*friendliest, *crossed, *_landed_on(grid, ringed.others)]


def _landed_on(grid: Grid, multiples: Iterable[Fraction]) -> list[Landmarks]:
    """Those of the multiples on which some terms lie and others do not."""
    known = set(grid.count.friendly_multiples())
    found = [Landmarks(m, landmark_terms(grid.count, m, grid.terms)) for m in multiples if m in known]
    return [one for one in found if 0 < len(one.terms) < grid.terms]


def _crossed(grid: Grid, friendliest: Fraction) -> Iterator[Landmarks]:
    """The smallest power of ten of the friendliest multiple that is passed seldom, with the first term past each."""
    count, multiple = grid.count, friendliest
    while multiple <= max(abs(count.value(1)), abs(count.value(grid.terms))):
        over = multiple.numerator * count.scale
        past = [count.scaled(n) * multiple.denominator // over for n in range(1, grid.terms + 1)]
        terms = tuple(n for n in range(2, grid.terms + 1) if past[n - 1] != past[n - 2])
        if 0 < len(terms) <= grid.terms // SELDOM:
            yield Landmarks(multiple, terms, crossed=True)
            return
        multiple *= 10


def larger_name(count: Count, value: Fraction, multiple: Fraction) -> str | None:
    """A landmark under the name of the larger unit that `multiple` makes: 48 oz is 3 lb. None if there is none.

    >>> count = Count.parse(kind="mass", start="12 oz", step="12 oz", terms=8)
    >>> larger_name(count, count.value(4), Fraction(16))
    '3 lb'
    """
    unit = RENAMED_IN.get((count.base_unit, multiple))
    if unit is None or count.kind == Kind.CLOCK or value % multiple != 0:
        return None
    many = count.style.thousands.join(f"{abs(value) // multiple:,}".split(","))
    name = UNITS[unit].symbol
    if unit in WRITTEN_BY_NAME:
        said = NAMES[unit, count.style.language]
        name = said.one if many == "1" else said.several
    return f"{'-' if value < 0 else ''}{many} {name}"
