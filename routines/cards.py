"""A routine as a card: the grid itself, small, with its count in words and its two best patterns."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from routines.counting import Pattern
from routines.facts import count_in_words
from routines.models import Routine
from routines.shown_plan import ShownPlan


@dataclass(frozen=True, slots=True)
class Card:
    """`patterns` are at most two; `lit` are the same patterns as the small picture shows them."""

    routine: Routine
    shown: ShownPlan
    count: str
    patterns: tuple[Pattern, ...]
    lit: tuple[Pattern, ...]


def card_of(routine: Routine) -> Card:
    shown = ShownPlan(routine.plan, routine.grade.level)
    best = tuple(item.pattern for item in shown.best_two)
    return Card(routine, shown, count_in_words(shown.grid), best, _examples(best, shown.grid.terms))


def cards_of(routines: Iterable[Routine]) -> list[Card]:
    return [card_of(routine) for routine in routines]


def _examples(patterns: tuple[Pattern, ...], terms: int) -> tuple[Pattern, ...]:
    """A pattern that fills most of the grid is shown by one of its lines, so that a small picture says something.

    The second such pattern shows the next line, so that the two can be told apart; one that is a single line stays whole.
    """
    shown, taken = [], 0
    for pattern in patterns:
        lines = [group for group in pattern.groups if len(group) > 1]
        if len(pattern.cells) * 2 > terms and len(lines) > 1:
            line = lines[taken % len(lines)]
            taken += 1
            pattern = replace(pattern, cells=tuple(sorted(line)), groups=(line,))
        shown.append(pattern)
    whole = [pattern for pattern in shown if len(pattern.cells) * 2 > terms]
    return tuple(pattern for pattern in shown if pattern not in whole) or tuple(whole[:1])
