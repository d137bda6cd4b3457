"""Which slips are likely in a grid, most likely and most instructive first."""

from collections.abc import Iterable, Iterator

from ..audience import Audience
from ..grid import Grid
from . import decimals, fractions, integers, measurement, money, one_unit, spanish_words, time, whole_numbers
from .checked import reader_of
from .jump import Jump
from .reading import names_the_same
from .rule import Area, Rule
from .slip import Slip

AREAS: tuple[Area, ...] = (
    integers.AREA,
    whole_numbers.AREA,
    decimals.AREA,
    fractions.AREA,
    money.AREA,
    time.AREA,
    measurement.AREA,
    one_unit.AREA,
    spanish_words.AREA,
)


def rules_for(grid: Grid, audience: Audience | None = None) -> list[Rule]:
    """The rules about the numbers of a grid; with an audience, only those of its level and language."""
    return [
        rule
        for area in AREAS
        if area.serves(grid)
        for rule in area.rules
        if audience is None or (rule.suits(audience.level) and audience.language in rule.languages)
    ]


def likely_slips(grid: Grid, grade: int | None = None, *, audience: Audience | None = None) -> list[Slip]:
    """What a class of this level will probably say wrong, or by another name, at the counts in view.

    grade: the level 0 (K) to 8, in place of the audience's. Each rule comes with its first place before any comes
    with its second; heavier rules come first; the same answer at the same count is listed once.
    Raises: CountError on `grid`, `level` or `audience`.

    >>> from ..count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="374", step="10", terms=8), line_length=4)
    >>> slip = likely_slips(grid, 2)[0]
    >>> slip.n, slip.heard, slip.correct
    (4, '304', '404')
    """
    audience = reader_of(grid, grade, audience)
    jumps = jumps_of(grid)
    ranked: list[tuple[tuple[int, int, int], Rule, Jump, str]] = []
    for rule in rules_for(grid, audience):
        for times, (jump, heard) in enumerate(places(rule, jumps, audience.language)):
            ranked.append(((times, -rule.weight, jump.n), rule, jump, heard))
    ranked.sort(key=lambda entry: entry[0])
    found: dict[tuple[int, str], Slip] = {}
    for _, rule, jump, heard in ranked:
        if (jump.n, heard) not in found:
            found[jump.n, heard] = slip_at(rule, jump, heard)
    return list(found.values())


def jumps_of(grid: Grid) -> list[Jump]:
    """Every jump in view."""
    return [Jump(grid, n) for n in range(2, grid.terms + 1)]


def places(rule: Rule, jumps: Iterable[Jump], language: str) -> Iterator[tuple[Jump, str]]:
    """The jumps where a rule fires, with what is heard there."""
    for jump in jumps:
        if rule.happens(jump):
            heard = rule.heard(jump, language)
            if heard and heard not in (jump.due, *jump.due.split(" = ")):
                yield jump, heard


def slip_at(rule: Rule, jump: Jump, heard: str) -> Slip:
    """The slip of a rule at one count."""
    return Slip(
        rule=rule.id,
        n=jump.n,
        heard=heard,
        correct=jump.due,
        equal_name=rule.same_number(jump) or names_the_same(jump.count, heard, jump.n),
        of_writing=rule.of_writing,
    )
