"""A routine as a card: the grid itself, small, with its count in words and its two best patterns."""

from collections.abc import Iterable
from dataclasses import dataclass

from routines.counting import Pattern
from routines.drawing import draw_grid
from routines.facts import count_in_words
from routines.models import Routine
from routines.shown_plan import ShownPlan


@dataclass(frozen=True, slots=True)
class Card:
    """`picture` is an inline SVG, safe to place; `patterns` are at most two."""

    routine: Routine
    picture: str
    count: str
    patterns: tuple[Pattern, ...]


def card_of(routine: Routine) -> Card:
    shown = ShownPlan(routine.plan, routine.grade.level)
    best = tuple(item.pattern for item in shown.best_two)
    count = count_in_words(shown.grid)
    picture = draw_grid(shown.grid, size="card", lit=best, landmarks=shown.landmarks, title=count)
    return Card(routine, picture, count, best)


def cards_of(routines: Iterable[Routine]) -> list[Card]:
    return [card_of(routine) for routine in routines]
