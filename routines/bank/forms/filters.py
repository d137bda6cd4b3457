"""The bank's filters: the query string is the state, so Back, reload and a bookmark restore it."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Self

from django.http import QueryDict
from django.utils.http import urlencode
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from accounts.translated import Translated
from accounts.typed_numbers import typed_id
from grade_bands.models import Area, Grade, SchoolYear
from routines.bank.orders import best_found_first, by_title, most_taught_first, newest_first, own_grades_first
from routines.bank.paging import Order, Recipe
from routines.counting import Kind
from routines.models import Routine
from routines.models.routine import MOST_WORDS_LOOKED_FOR, RoutineQuerySet
from routines.models.searched_words import Asked, asked_for

SHOWS = {
    "landmarks": (_("landmarks line up"), ("landmarks",)),
    "digits": (_("digits repeat"), ("digit", "digit-run", "digit-sum")),
    "jumps": (_("equal jumps"), ("neighbour",)),
    "remainders": (_("same remainder"), ("remainder",)),
    "how-many": (_("how many in each"), ("how-many",)),
    "sums": (_("equal sums"), ("sums",)),
    "table": (_("a times table"), ("table",)),
    "opposites": (_("opposites"), ("opposites",)),
}
STEPS = {"small": _("less than 1"), "ones": _("1 to 9"), "tens": _("10 and more")}
TAUGHT = {"not-yet": _("not yet"), "this-year": _("this year"), "ever": _("ever")}
WHOSE = {"mine": _("mine"), "team": _("my team")}
KINDS = {
    Kind.WHOLE: _("whole"),
    Kind.DECIMAL: _("decimal"),
    Kind.FRACTION: _("fraction"),
    Kind.LENGTH: _("length"),
    Kind.MASS: _("mass"),
    Kind.CAPACITY: _("capacity"),
    Kind.MONEY: _("money"),
    Kind.CLOCK: _("clock"),
    Kind.ELAPSED: _("elapsed"),
}
SORTS = {
    "own": _("My grades first"),
    "newest": _("Newest first"),
    "taught": _("Most taught this year first"),
    "title": _("By title"),
}
LONGEST_LOOKED_FOR = 100


@dataclass(frozen=True, slots=True)
class Choice:
    """One chip of a filter."""

    value: str
    label: Translated
    on: bool


@dataclass(frozen=True, slots=True)
class BankFilter:
    """What the reader asked for. Values nobody offers are left out, so that an old bookmark still opens."""

    text: str = ""
    grades: tuple[str, ...] = ()
    areas: tuple[str, ...] = ()
    directions: tuple[str, ...] = ()
    steps: tuple[str, ...] = ()
    kinds: tuple[str, ...] = ()
    shows: tuple[str, ...] = ()
    for_a_while: bool = False
    taught: str = ""
    whose: str = ""
    owner: int | None = None
    standard: str = ""
    sort: str = "newest"
    left_out: str = ""
    own_grades: tuple[int, ...] = ()  # keys

    @classmethod
    def read(cls, query: QueryDict, grades: list[Grade], own_grades: tuple[int, ...] = ()) -> Self:
        """own_grades: the keys of those of the reader; their counts come first where neither grade nor order was chosen."""

        def chosen(name: str, offered: Iterable[str]) -> tuple[str, ...]:
            return tuple(value for value in offered if value in query.getlist(name))

        asked = query.get("q", "").strip()
        return cls(
            text=asked[:LONGEST_LOOKED_FOR],
            left_out=left_out(asked),
            grades=chosen("grade", [grade.name for grade in grades]),
            areas=chosen("area", Area.values),
            directions=chosen("direction", Routine.Direction.values),
            steps=chosen("step", STEPS),
            kinds=chosen("kind", tuple(Kind)),
            shows=chosen("shows", SHOWS),
            for_a_while=query.get("while") == "1",
            taught=next(iter(chosen("taught", TAUGHT)), ""),
            whose=next(iter(chosen("whose", WHOSE)), ""),
            owner=typed_id(query.get("owner", "")) or None,
            standard=query.get("standard", "").strip()[:60],
            sort=next(iter(chosen("sort", sorts_for(own_grades))), "own" if own_grades else "newest"),
            own_grades=own_grades,
        )

    def how_many_on(self) -> int:
        lists = (self.grades, self.areas, self.directions, self.steps, self.kinds, self.shows)
        single = (self.text, self.for_a_while, self.taught, self.whose, self.owner, self.standard)
        return sum(map(len, lists)) + sum(map(bool, single))

    def chosen(self, routines: RoutineQuerySet, user: User, year: SchoolYear | None) -> RoutineQuerySet:
        """The routines asked for by everything but words."""
        routines = self.showing_what(routines)
        if self.taught:
            routines = routines.taught_when(self.taught, user, year)
        if self.whose == "mine":
            routines = routines.of(user)
        if self.whose == "team":
            routines = routines.by_team_of(user, year)
        return routines

    def showing_what(self, routines: RoutineQuerySet) -> RoutineQuerySet:
        """The routines asked for by what stands in them, whoever reads."""
        if self.grades:
            routines = routines.for_grades(self.grades)
        if self.areas:
            routines = routines.for_areas(self.areas)
        if self.directions:
            routines = routines.filter(direction__in=self.directions)
        if self.steps:
            routines = routines.with_step(self.steps)
        if self.kinds:
            routines = routines.filter(kind__in=self.kinds)
        if self.shows:
            routines = routines.showing([family for name in self.shows for family in SHOWS[name][1]])
        if self.for_a_while:
            routines = routines.staying_for_a_while()
        if self.owner:
            routines = routines.filter(owner_id=self.owner)
        if self.standard:
            routines = routines.for_standard(self.standard)
        return routines

    def order(self, user: User, year: SchoolYear | None) -> Order:
        """The routines of the bank asked for, in the order asked for: where words were looked for, the best found first."""
        if not (self.words or self.taught or self.whose or self.owner or self.standard or self.sort == "taught"):
            shown = replace(self, text="", left_out="", sort="newest", own_grades=())
            routines = Recipe(in_bank_showing, decided_by=(shown,))
            if self.own_come_first:
                return own_grades_first(routines, self.own_grades)
            return by_title(routines) if self.sort == "title" else newest_first(routines)
        chosen = self.chosen(Routine.objects.in_bank(), user, year)
        if self.sort in ("own", "newest") and self.words:
            few = self.whose == "mine" or bool(self.owner or self.standard)
            return best_found_first(chosen, self.words, few=few, filtered=self.shows_what)
        found = chosen.meeting(self.words)
        if self.own_come_first:
            order = own_grades_first(chosen, self.own_grades)
        elif self.sort == "taught":
            order = most_taught_first(found, user, year)
        else:
            order = by_title(found) if self.sort == "title" else newest_first(found)
        if self.whose == "team" and not (self.words or self.taught or self.standard or self.shows_what):
            order = replace(order, every=chosen.order_by())  # the index of owners has all that these are counted by
        return replace(order, of_words=bool(self.words))

    @property
    def shows_what(self) -> bool:
        """Whether it says what stands in the counts, whoever reads."""
        lists = (self.grades, self.areas, self.directions, self.steps, self.kinds, self.shows)
        return any(lists) or self.for_a_while

    @property
    def words(self) -> list[Asked]:
        return words_looked_for(self.text)

    @property
    def own_come_first(self) -> bool:
        """Whether the reader's grades stand before others: not where she chose grades, or looks for words."""
        return self.sort == "own" and bool(self.own_grades) and not self.grades and not self.words

    @property
    def without_grades(self) -> Self:
        return replace(self, grades=())

    def query(self, **changes: str | int) -> str:
        """The query string of this filter with some parts changed; empty parts are left out."""
        parts: dict[str, str | int | tuple[str, ...]] = {
            "q": self.text,
            "grade": self.grades,
            "area": self.areas,
            "direction": self.directions,
            "step": self.steps,
            "kind": self.kinds,
            "shows": self.shows,
            "while": "1" if self.for_a_while else "",
            "taught": self.taught,
            "whose": self.whose,
            "owner": self.owner or "",
            "standard": self.standard,
            "sort": self.sort if self.sort != ("own" if self.own_grades else "newest") else "",
            **changes,
        }
        return urlencode({name: value for name, value in parts.items() if value}, doseq=True)

    # What the filter column offers.
    def grade_choices(self, grades: Iterable[str]) -> list[Choice]:
        return [Choice(name, name, name in self.grades) for name in grades]

    def area_choices(self) -> list[Choice]:
        return [Choice(area.value, area.label, area.value in self.areas) for area in Area]

    def direction_choices(self) -> list[Choice]:
        return [Choice(way.value, way.label, way.value in self.directions) for way in Routine.Direction]

    def step_choices(self) -> list[Choice]:
        return [Choice(value, label, value in self.steps) for value, label in STEPS.items()]

    def kind_choices(self) -> list[Choice]:
        return [Choice(kind, KINDS[kind], kind in self.kinds) for kind in Kind]

    def shows_choices(self) -> list[Choice]:
        return [Choice(value, label, value in self.shows) for value, (label, _families) in SHOWS.items()]

    def taught_choices(self) -> list[Choice]:
        return [Choice(value, label, value == self.taught) for value, label in TAUGHT.items()]

    def whose_choices(self) -> list[Choice]:
        return [Choice(value, label, value == self.whose) for value, label in WHOSE.items()]

    def sort_choices(self) -> list[Choice]:
        return [Choice(value, label, value == self.sort) for value, label in sorts_for(self.own_grades).items()]


def in_bank_showing(wanted: BankFilter) -> RoutineQuerySet:
    return wanted.showing_what(Routine.objects.in_bank())


def sorts_for(own_grades: tuple[int, ...]) -> dict[str, Translated]:
    """The orders to choose from: grades of one's own come first only for who has some."""
    return {name: words for name, words in SORTS.items() if name != "own" or own_grades}


def words_looked_for(asked: str) -> list[Asked]:
    """Of what was typed, what is looked for."""
    return asked_for(asked[:LONGEST_LOOKED_FOR])[:MOST_WORDS_LOOKED_FOR]


def left_out(asked: str) -> str:
    """A sentence where not all of what was typed is looked for."""
    if len(asked) > LONGEST_LOOKED_FOR:
        return gettext("Only the first %(most)s characters were looked for.") % {"most": LONGEST_LOOKED_FOR}
    if len(asked.split()) > MOST_WORDS_LOOKED_FOR:
        return gettext("Only the first %(most)s words were looked for.") % {"most": MOST_WORDS_LOOKED_FOR}
    if asked and not asked_for(asked):
        return gettext("“%(asked)s” holds no letter and no number to look for.") % {"asked": asked}
    return ""
