"""What a plan says in the places that show it: what is kept, as it is made of a plan and read back.

None of it holds words that people wrote: titles, stories and answers are read from the plan itself.
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from typing import Any, NamedTuple, Self

from routines.counting import Claim, Pattern
from routines.drawing import draw_grid, draw_timeline
from routines.drawing.pictures import NARROW, WIDE, draw_picture, pictures_for
from routines.models.facts import count_in_words
from routines.models.shown_ideas import ideas_to_show
from routines.models.shown_plan import ShownPlan

LISTED_AT_FIRST = 6  # the rest of the list is folded away, and drawn when it is opened


class Line(NamedTuple):
    """How long a pattern holds, and the line that says it."""

    holds: str
    statement: str


@dataclass(frozen=True, slots=True)
class CardSays:
    """count: the count in words. picture: its grid as SVG, small. patterns: two at most."""

    count: str
    picture: str
    patterns: tuple[Line, ...]

    @staticmethod
    def made_of(shown: ShownPlan) -> dict[str, Any]:
        count, best = count_in_words(shown.grid), [item.pattern for item in shown.lit]
        picture = draw_grid(shown.grid, size="card", lit=best, landmarks=shown.landmarks, beside_words=True)
        return {
            "count": count,
            "picture": str(picture),
            "patterns": [[pattern.holds, pattern.statement] for pattern in best],
        }

    @classmethod
    def read(cls, kept: dict[str, Any]) -> Self:
        return cls(kept["count"], kept["picture"], tuple(Line(*line) for line in kept["patterns"]))


@dataclass(frozen=True)
class KeptPattern(Pattern):
    """A pattern with its line, as drawings ask for it."""

    statement: str


class ListedPattern(NamedTuple):
    """A pattern in the list of a page. `key` is that by which it is lit; `target`: the plan wants it to be seen."""

    key: str
    target: bool
    holds: str
    breaks_at: int | None
    statement: str
    because: str
    claim: dict[str, Any]
    groups: list[list[int]]

    def to_draw(self) -> KeptPattern:
        groups = tuple(tuple(group) for group in self.groups)
        return KeptPattern(Claim.from_dict(self.claim), groups, self.breaks_at, self.holds, self.statement)


class ListedIdea(NamedTuple):
    """An idea under the timeline: from which count it can be seen, and at which it dies, if it does."""

    statement: str
    seen_at: int
    dies_at: int | None


class Grids(NamedTuple):
    """The lit grid as SVG, for a screen and for a phone."""

    plan: str
    phone: str


class Pictures(NamedTuple):
    """A dozen counts in one picture as SVG, for a screen and for a phone."""

    wide: str
    narrow: str


@dataclass(frozen=True, slots=True)
class PageSays:
    """What the page of one count says of it before anybody chose anything.

    count: the count in words. rule: the n-th count as an expression, or "". lit: the keys of the patterns lit.
    timeline: SVG, "" without ideas. picture: the name of the picture shown, of the first dozen.
    """

    count: str
    rule: str
    patterns: tuple[ListedPattern, ...]
    lit: tuple[str, ...]
    grids: Grids
    ideas: tuple[ListedIdea, ...]
    timeline: str
    picture: str
    pictures: Pictures

    @staticmethod
    def made_of(shown: ShownPlan) -> dict[str, Any]:
        plan, grid = shown.plan, shown.grid
        stops = [stop.after for stop in plan.stops]
        ideas = ideas_to_show(grid, shown.audience, shown.target_claims) if stops else []
        picture = pictures_for(grid.count)[0][0]
        listed = [
            ListedPattern(
                item.key,
                item.target,
                item.pattern.holds,
                item.pattern.breaks_at,
                item.pattern.statement,
                item.pattern.because,
                item.pattern.claim.as_dict(),
                [list(group) for group in item.pattern.groups],
            )
            for item in shown.listed
        ]
        lit = [item.key for item in shown.lit]
        return {
            "count": count_in_words(grid),
            "rule": shown.rule,
            "patterns": [item._asdict() for item in listed],
            "lit": lit,
            "grids": drawn_grids(shown, listed, lit),
            "ideas": [(idea.pattern.statement, idea.seen_at, idea.dies_at) for idea in ideas],
            "timeline": str(draw_timeline(ideas, stops, grid.terms, count=grid.count)) if ideas else "",
            "picture": picture,
            "pictures": drawn_pictures(shown, picture),
        }

    @classmethod
    def read(cls, kept: dict[str, Any]) -> Self:
        made = {
            "patterns": tuple(ListedPattern(**item) for item in kept["patterns"]),
            "lit": tuple(kept["lit"]),
            "grids": Grids(*kept["grids"]),
            "ideas": tuple(ListedIdea(*idea) for idea in kept["ideas"]),
            "pictures": Pictures(*kept["pictures"]),
        }
        return cls(**{**kept, **made})


def drawn_grids(
    shown: ShownPlan, patterns: Sequence[ListedPattern], lit: Collection[str], *, every: bool = False
) -> Grids:
    """The grid with these patterns lit, by key. It takes the patterns as they are given and looks for none.

    Those that wait to be lit are the first of the list, or every one; either way each lies where it lies among all.
    """
    left_out = set() if every else {item.key for item in patterns[LISTED_AT_FIRST:]}
    overlays = [(item.key, item.to_draw()) for item in patterns]
    chosen = [pattern for key, pattern in overlays if key in lit]

    def drawn(size: str, title: str = "") -> str:
        return str(
            draw_grid(
                shown.grid,
                size=size,
                lit=chosen,
                overlays=overlays,
                left_out=left_out,
                landmarks=shown.landmarks,
                title=title,
            )
        )

    return Grids(drawn("plan", count_in_words(shown.grid)), drawn("phone"))


def drawn_pictures(shown: ShownPlan, kind: str, first: int = 1) -> Pictures:
    """The dozen counts that begins with the `first`, in this kind of picture."""
    count, language = shown.grid.count, shown.plan.language
    wide, narrow = (
        draw_picture(count, kind=kind, first=first, width=width, language=language) for width in (WIDE, NARROW)
    )
    return Pictures(str(wide), str(narrow))
