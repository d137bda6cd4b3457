"""Which slips are likely in a grid, most likely and most instructive first."""

from collections import Counter
from collections.abc import Iterable, Iterator
from fractions import Fraction
from functools import lru_cache
from itertools import compress
from operator import itemgetter
from typing import NamedTuple

from ..audience import Audience
from ..grid import Grid
from . import (
    crossings,
    decimals,
    fractions,
    integers,
    larger_units,
    measurement,
    money,
    one_unit,
    parts_of_a_unit,
    spanish_words,
    time,
    whole_numbers,
    wrong_jumps,
    zeros_and_digits,
)
from .answer import Answer
from .checked import reader_of
from .jump import Jump
from .places import places_of_a_count
from .reading import plain
from .rule import Area, Rule, every
from .slip import Slip
from .spanish_words import OF_SAYING

OFTEN_ENOUGH = 2
# One slip under two names: the count goes on by ones, turns round or stays, anywhere or at a ten.
ONE_SLIP = {"W36": "J01", "W34": "J04", "C11": "J09"}
EASY = (False, 0)
BY_PLACE, BY_RANK = itemgetter(0, 1, 2), itemgetter(0)
# So many are read first. To second grade a class learns to count; what it writes comes after.
FIRST, LEARNING_TO_COUNT = 3, 2

AREAS: tuple[Area, ...] = (
    integers.AREA,
    whole_numbers.AREA,
    decimals.AREA,
    fractions.AREA,
    money.AREA,
    time.AREA,
    measurement.AREA,
    one_unit.AREA,
    parts_of_a_unit.AREA,
    spanish_words.AREA,
    larger_units.AREA,
    crossings.AREA,
    zeros_and_digits.AREA,
    wrong_jumps.AREA,
    zeros_and_digits.SWAPPED,
)

OF_EVERY_KIND = {rule.id for area in AREAS if area.of_every_kind for rule in area.rules}


def rules_for(grid: Grid, audience: Audience | None = None) -> list[Rule]:
    """The rules about the numbers of a grid, in the order in which they name what they hear alike.

    The rows of the table and other rules of one kind of number stand before the rules of every kind, heavier ones before
    lighter ones. With an audience, only those of its level and language.
    """
    serving = tuple(area.serves(grid) for area in AREAS)
    return [rule for rule in _rules_of(serving, audience) if rule.counts is every or rule.counts(grid.count)]


@lru_cache(maxsize=512)
def _rules_of(serving: tuple[bool, ...], audience: Audience | None) -> list[Rule]:
    """The rules of the areas that serve, in their order."""
    rules = [
        (rule, area.of_every_kind)
        for area in compress(AREAS, serving)
        for rule in area.rules
        if audience is None or (rule.suits(audience.level) and audience.language in rule.languages)
    ]
    return [rule for rule, _ in sorted(rules, key=lambda entry: (entry[1], -entry[0].weight))]


def likely_slips(grid: Grid, grade: int | None = None, *, audience: Audience | None = None) -> list[Slip]:
    """What a class of this level will probably say wrong, or by another name, at the counts in view.

    grade: the level 0 (K) to 8, in place of the audience's. Each rule comes with one place before any comes with its
    second, the hardest first: zero, a hundred before a ten. What goes on in the direction of the count comes before what
    turns back, heavier rules come first, and first among their like those at the hardest jump in view; of the first three
    see `_choose_the_first`. What is written alike at the same count is listed once.
    Raises: CountError on `grid`, `level` or `audience`.

    >>> from ..count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="374", step="10", terms=8), line_length=4)
    >>> slip = likely_slips(grid, 2)[0]
    >>> slip.n, slip.heard, slip.correct
    (4, '304', '404')
    """
    audience = reader_of(grid, grade, audience)
    rules = rules_for(grid, audience)
    few = [rule for rule in rules if rule.id not in OF_EVERY_KIND]
    met, found = Counter[str](), list[_Found]()
    jumps = jumps_of(grid)
    hard = [jump.how_hard() for jump in jumps]
    harder_first = sorted(set(hard), reverse=True)
    nothing_hard = harder_first in ([], [EASY])
    for jump, how_hard in zip(jumps, hard, strict=True):
        easier = harder_first.index(how_hard)
        for rule, heard in answers_at(jump, rules if _is_news(jump, met) else few, audience.language):
            slip = slip_at(rule, jump, heard)
            # Another name is said wherever it can be: no crossing makes it likelier, but a whole has seldom another one.
            place = (jump.b % 1 == 0) if slip.equal_name else easier
            found.append(_Found(_goes_back(rule, jump, heard), place, jump.n, rule, slip))
    found.sort(key=BY_PLACE)
    times = Counter[str]()
    ranked: list[tuple[tuple[int, bool, bool, int, int, int], _Found]] = []
    for one in found:
        back, easier, n, rule, slip = one
        name = ONE_SLIP.get(rule.id, rule.id)
        # What is miswritten anywhere, or named in another way, is not likelier at a crossing.
        hardest = not easier and not nothing_hard and not rule.anywhere and not slip.equal_name
        ranked.append(((times[name], not rule.weight, back, -rule.weight - hardest, -rule.weight, n), one))
        times[name] += 1
    ranked.sort(key=BY_RANK)
    in_order = [one for _, one in ranked]
    hard_ones = {jump.n for jump, how_hard in zip(jumps, hard, strict=True) if how_hard != EASY}
    _choose_the_first(in_order, len(times), hard_ones, audience.level)
    return [one.slip for one in in_order]


class _Found(NamedTuple):
    """A slip with what it is ranked by: whether it goes the wrong way, and how many sorts of jumps in view are harder."""

    back: bool
    easier: int
    n: int
    rule: Rule
    slip: Slip

    @property
    def name(self) -> str:
        """Its rule; one for slips that are one under two names."""
        return ONE_SLIP.get(self.rule.id, self.rule.id)

    @property
    def is_likely(self) -> bool:
        return self.rule.weight > 0 and not self.back

    @property
    def is_written(self) -> bool:
        """Whether nobody hears it where a class counts aloud."""
        return self.slip.of_writing and not self.slip.equal_name and self.rule.id not in OF_SAYING


def _choose_the_first(found: list[_Found], rules: int, hard: set[int], level: int) -> None:
    """Bring to the front the three slips that a teacher reads first.

    One of them at most is another name of what is due. Where counting is learned, what is heard comes before what is only
    written. They are not all at one count where another hard jump has a slip that is as likely: another one, or the same
    at as hard a jump.
    found: in order, each of so many rules once at first. hard: the counts whose jump crosses, fills or leaves anything.
    """
    for place in range(min(FIRST, rules)):
        ahead = found[:place]
        fitting = (i for i in range(place, rules) if found[i].is_likely and _fits(found[i], ahead, level))
        at = next(fitting, None)
        if at is None:
            return
        if place == FIRST - 1 and {one.n for one in ahead} == {found[at].n}:
            at = _elsewhere(found, rules, hard, [at, *fitting])
        found.insert(place, found.pop(at))


def _fits(one: _Found, ahead: list[_Found], level: int) -> bool:
    if one.slip.equal_name:
        return not any(other.slip.equal_name for other in ahead)
    return level > LEARNING_TO_COUNT or not one.is_written


def _elsewhere(found: list[_Found], rules: int, hard: set[int], fitting: list[int]) -> int:
    """Which of these to take so that it is at another hard jump than the first of them.

    The first itself where none is as likely, or where it can be made nowhere else in view.
    """
    due = found[fitting[0]]
    if all(one.name != due.name for one in found[rules:]):
        return fitting[0]
    said = {one.slip.heard for one in found[: FIRST - 1]}
    for at in fitting:
        one = found[at]
        if one.rule.weight < due.rule.weight:
            continue
        if one.n != due.n:
            if one.n in hard:
                return at
            continue
        for i in range(rules, len(found)):
            other = found[i]
            as_hard = other.n in hard and other.easier == one.easier and other.name == one.name and not other.back
            if as_hard and other.n != due.n and other.slip.heard not in said:
                found[at], found[i] = other, one
                return at
    return fitting[0]


def _goes_back(rule: Rule, jump: Jump, heard: str) -> bool:
    """Whether a slip goes the wrong way, or stays: written so now and then, but hardly said in counting aloud.

    Said aloud all the same: that the direction is lost, and the digits that go round in a place where it alone is counted
    on (89, 80; 394, 304; 20, 29), or below a whole or unit that is left in counting back (4.00, 4.75; $3, $3.50). A clock
    goes round by itself.
    """
    value = jump.written_values.get(heard)
    if value is None or rule.turns or rule.of_writing or jump.count.wrap is not None:
        return False
    return (value - jump.a) * jump.s <= 0 and not _goes_round(jump, value)


def _goes_round(jump: Jump, value: Fraction) -> bool:
    """Whether a place is left as it was: where it alone is counted on, or the whole or unit that is left.

    After 109 there is no ten yet that could be left, and a hundred is hardly said there.
    """
    crossed = jump.crossing.crossed
    if not crossed or value == jump.a:
        return jump.counts_one_place
    size, off = crossed[-1].size, abs(value - jump.b)
    if jump.counts_one_place:
        return off != size or abs(jump.a) // size % 10 != 0
    opened = jump.crossing.left is not None and abs(jump.b) < abs(jump.a)
    return opened and any(off == place.size for place in crossed if place.name in ("whole", "unit"))


def _is_news(jump: Jump, met: Counter[str]) -> bool:
    """Whether a place is crossed, filled or left here for one of the first times, by what was met before; it is counted in.

    The same ten or hundred again tells a teacher nothing new. Where hardly anything is crossed, the first jumps are news.
    """
    touched = jump.crossing.touched
    news = any(met[name] < OFTEN_ENOUGH for name in touched) or (jump.is_hard and not touched)
    met.update(touched)
    return news


def jumps_of(grid: Grid) -> list[Jump]:
    """Every jump in view."""
    places = places_of_a_count(grid.count)
    return [Jump(grid, n, places) for n in range(2, grid.terms + 1)]


def answers_at(jump: Jump, rules: Iterable[Rule], language: str) -> Iterator[tuple[Rule, str]]:
    """What is heard at one jump, each answer once, under the first of the rules that hear it."""
    known: set[str] = set()
    # Most rules do not fire at most jumps: that alone is asked of them here.
    for rule in [rule for rule in rules if rule.happens(jump)]:
        heard = _unless_due(rule.heard(jump, language), jump)
        if heard:
            written = plain(jump.count, heard)
            if written not in known:
                known.add(written)
                yield rule, heard


def heard_at(rule: Rule, jump: Jump, language: str) -> str:
    """What a rule hears at a jump; nothing where it does not fire, or would hear what is due."""
    return _unless_due(rule.heard(jump, language), jump) if rule.happens(jump) else ""


def _unless_due(heard: str, jump: Jump) -> str:
    due = jump.due
    return "" if heard == due or (" = " in due and heard in due.split(" = ")) else heard


def places(rule: Rule, jumps: Iterable[Jump], language: str) -> Iterator[tuple[Jump, str]]:
    """The jumps where a rule fires, with what is heard there."""
    for jump in jumps:
        heard = heard_at(rule, jump, language)
        if heard:
            yield jump, heard


def slip_at(rule: Rule, jump: Jump, heard: str) -> Slip:
    """The slip of a rule at one count."""
    known = jump.written_values.get(heard) if jump.count.wrap is None else None
    is_due = Answer(jump, heard).is_due if known is None else known == jump.b
    return Slip(
        rule=rule.id,
        n=jump.n,
        heard=heard,
        correct=jump.due,
        equal_name=rule.same_number(jump) or is_due,
        of_writing=rule.of_writing,
    )
