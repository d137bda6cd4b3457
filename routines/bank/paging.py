"""Pages of counts that begin after one count, not after so many: the hundredth costs what the first does.

An address says `after=7`: what comes after count 7 in this order, wherever that one stands by now. `page=9`, as addresses
used to say, is still understood while it is near.
"""

from collections.abc import Callable, Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import reduce
from operator import itemgetter, or_
from typing import Any

from django.db.models import Q, QuerySet
from django.utils.formats import number_format
from django.utils.translation import gettext as _

from accounts.compiled_once import compiled_once
from accounts.models import User
from accounts.typed_numbers import LARGEST_ID, typed_id, typed_whole
from routines.bank import searching
from routines.models import Routine
from routines.models.routine import RoutineQuerySet

MOST_PAGES_BY_NUMBER = 200
COUNTED_UP_TO = 1000


@dataclass(frozen=True, slots=True)
class Recipe:
    """How some of the counts are asked for, so that their SQL is written once: `make` of the values and what decides it.

    See accounts/compiled_once.py for what either may be.
    """

    make: Callable[..., RoutineQuerySet]
    values: tuple[Any, ...] = ()
    decided_by: tuple[Hashable, ...] = ()

    @property
    def routines(self) -> RoutineQuerySet:
        return self.make(*self.values, *self.decided_by)

    def rows(self, by: Sequence[str], start: int, stop: int) -> list[tuple[Any, ...]]:
        """What `by` comes to for the rows from one place of this order to another."""
        return _made(*self.values, make=self.make, decided_by=self.decided_by, by=tuple(by), part=(start, stop))

    def how_many(self, by: Sequence[str], at_most: int) -> int:
        return _made.how_many(*self.values, make=self.make, decided_by=self.decided_by, by=tuple(by), part=(0, at_most))


@compiled_once
def _made(
    *values: Any,
    make: Callable[..., RoutineQuerySet],
    decided_by: tuple[Hashable, ...],
    by: tuple[str, ...],
    part: tuple[int, int],
) -> QuerySet[Routine, tuple[Any, ...]]:
    return make(*values, *decided_by).order_by(*by).values_list(*map(_column, by))[slice(*part)]


Some = RoutineQuerySet | Recipe


def routines_of(some: Some) -> RoutineQuerySet:
    return some.routines if isinstance(some, Recipe) else some


@dataclass(frozen=True, slots=True)
class Stream:
    """Some of the counts.

    fixed: those places of the order that come to the same for all of them, and to what. below: a column or annotation that
    the first place of the order is always less than: where that must be worked out, an index may have this.
    """

    some: Some | searching.Found
    fixed: Mapping[int, Any] = field(default_factory=dict)
    below: str = ""

    def reaching(self, least: Any) -> "Stream":
        """Without those of which it is plain that the first place of their order comes to less."""
        if not self.below or isinstance(self.some, searching.Found):
            return self
        return replace(self, some=routines_of(self.some).filter(**{f"{self.below}__gt": least}))


@dataclass(frozen=True, slots=True)
class Order:
    """In which order counts are listed.

    by: columns or annotations as `order_by` takes them, the key at the end. streams: the counts, each in one of them; several
    where no index has the whole order, and those that come late at the end. place_of: what `by` comes to for a count, in
    the list or not; None where it has no place in this order. every: all of them, for being counted. of_words: whether
    they are what was found by words, of which fewer are counted.
    """

    by: tuple[str, ...]
    streams: tuple[Stream, ...]
    place_of: Callable[[Routine], tuple[Any, ...] | None]
    every: Some | searching.Search
    of_words: bool = False

    @property
    def up_to(self) -> int:
        return searching.FOUND_UP_TO if self.of_words else COUNTED_UP_TO

    def how_many(self) -> "HowMany":
        return HowMany.of(self.every, self.up_to)


@dataclass(frozen=True, slots=True)
class Page:
    """`routines` are keys, in order. earlier, later: what the address says of the pages beside it. said: a sentence or ""."""

    routines: list[int]
    earlier: dict[str, int] | None = None
    later: dict[str, int] | None = None
    said: str = ""

    def how_many(self, order: Order) -> "HowMany":
        """How many counts the list has: nothing is counted where all of them are on this page."""
        is_all = self.earlier is None and self.later is None
        return HowMany(len(self.routines), max(order.up_to, len(self.routines))) if is_all else order.how_many()


def read_page(order: Order, query: Mapping[str, str], *, reader: User, size: int) -> Page:
    """The page that an address asks for; the first, and a sentence, where there is no such page."""
    after, before = typed_id(query.get("after", "")), typed_id(query.get("before", ""))
    if after or before:
        anchor = Routine.objects.visible_to(reader).filter(pk=after or before).first()
        place = order.place_of(anchor) if anchor else None
        if place is None:
            said = _("The count at which this page began has left the bank. This is the first page.")
            return _first(order, size, said)
        page = _beside(order, place, size, back=not after)
        if page.routines and (after or page.earlier):
            return page
        return _first(order, size, "" if before else _("There is no page after that. This is the first one."))
    number = typed_whole(query.get("page", ""), 1, LARGEST_ID) or 1
    if number == 1:
        return _first(order, size)
    if number <= MOST_PAGES_BY_NUMBER and (page := _numbered(order, number, size)).routines:
        return page
    return _first(order, size, _("There is no page %(number)s. This is the first one.") % {"number": number})


def _first(order: Order, size: int, said: str = "") -> Page:
    found = _keys(order, size + 1)
    return Page(found[:size], None, {"after": found[size - 1]} if len(found) > size else None, said)


def _beside(order: Order, place: tuple[Any, ...], size: int, *, back: bool) -> Page:
    found = _keys(replace(order, by=tuple(map(_turned, order.by))) if back else order, size + 1, beyond=place)
    shown, more = found[:size], len(found) > size
    if back:
        shown.reverse()
    return Page(
        shown,
        {"before": shown[0]} if shown and (more or not back) else None,
        {"after": shown[-1]} if shown and (more or back) else None,
    )


def _numbered(order: Order, number: int, size: int) -> Page:
    found = _keys(order, size + 1, left_out=(number - 1) * size)
    shown = found[:size]
    return Page(shown, {"before": shown[0]} if shown else None, {"after": shown[-1]} if len(found) > size else None)


def _keys(order: Order, at_most: int, *, beyond: tuple[Any, ...] | None = None, left_out: int = 0) -> list[int]:
    """The keys of the first so many, of all streams together, after those that are left out."""
    if len(order.streams) == 1:  # which stays in the order that the database gives its texts
        rows = _rows(order.streams[0], order.by, slice(left_out, left_out + at_most), beyond)
        return [row[-1] for row in rows]
    rows = []
    enough = left_out + at_most
    falls = _falls(order.by[0])
    for stream in order.streams:
        if _come_before(rows, order.by, stream, enough):
            continue
        if falls and len(rows) >= enough:  # no other comes in between but with as much as the last of these
            stream = stream.reaching(rows[enough - 1][0])
        elif beyond is not None and not falls:
            stream = stream.reaching(beyond[0])
        rows += _rows(stream, order.by, slice(enough), beyond)
        for at, name in reversed(list(enumerate(order.by))):
            rows.sort(key=itemgetter(at), reverse=_falls(name))
    return [row[-1] for row in rows[left_out:enough]]


def _come_before(rows: Sequence[tuple[Any, ...]], by: Sequence[str], stream: Stream, enough: int) -> bool:
    """Whether enough rows are found that come before all of this stream."""
    if 0 not in stream.fixed:
        return False
    first = stream.fixed[0]
    before = [row for row in rows if ((row[0] > first) if _falls(by[0]) else (row[0] < first))]
    return len(before) >= enough


def _rows(stream: Stream, by: Sequence[str], wanted: slice, beyond: tuple[Any, ...] | None) -> list[tuple[Any, ...]]:
    """What `by` comes to for these of a stream. What is the same for all is nothing to order by."""
    own = [name for at, name in enumerate(by) if at not in stream.fixed]
    if isinstance(stream.some, searching.Found):
        return _with_fixed(_found(stream.some, by, wanted, beyond, stream.fixed), by, stream)
    if isinstance(stream.some, Recipe) and beyond is None:
        return _with_fixed(stream.some.rows(own, wanted.start or 0, wanted.stop), by, stream)
    routines = routines_of(stream.some)
    if beyond is not None:
        after = _beyond(by, beyond, stream.fixed)
        if after is None:
            return []
        routines = routines.filter(after)
    return _with_fixed(routines.order_by(*own).values_list(*map(_column, own))[wanted], by, stream)


def _found(
    found: searching.Found, by: Sequence[str], wanted: slice, beyond: tuple[Any, ...] | None, fixed: Mapping[int, Any]
) -> list[tuple[int]]:
    """The keys, which are the last place of this order."""
    after = Q() if beyond is None else _beyond(by, beyond, fixed)
    if after is None:
        return []
    key = beyond[-1] if beyond and after else None  # where all of them come after, none of them is named
    return [(one,) for one in found.keys(wanted.stop, falling=_falls(by[-1]), beyond=key)[wanted.start :]]


def _with_fixed(rows: Iterable[tuple[Any, ...]], by: Sequence[str], stream: Stream) -> list[tuple[Any, ...]]:
    if not stream.fixed:
        return list(rows)
    return [tuple(stream.fixed[at] if at in stream.fixed else next(values) for at in range(len(by)))
            for values in map(iter, rows)]  # fmt: skip


def _beyond(by: Sequence[str], place: Sequence[Any], fixed: Mapping[int, Any]) -> Q | None:
    """What of a stream comes after this place in this order; None for nothing. An index can begin with its first part."""
    ways: list[Q] = []
    same = start = Q()
    for at, (name, value) in enumerate(zip(by, place, strict=True)):
        if at not in fixed:
            column, falls = _column(name), _falls(name)
            start = start or Q(**{f"{column}__{'lte' if falls else 'gte'}": value})
            ways.append(same & Q(**{f"{column}__{'lt' if falls else 'gt'}": value}))
            same &= Q(**{column: value})
        elif fixed[at] != value:
            if (fixed[at] < value) is _falls(name):  # all that is the same up to here comes after
                ways.append(same)
            break
    if not ways:
        return None
    return Q() if not all(ways) else start & reduce(or_, ways)


def _falls(name: str) -> bool:
    return name.startswith("-")


def _column(name: str) -> str:
    return name.removeprefix("-")


def _turned(name: str) -> str:
    return name[1:] if name.startswith("-") else f"-{name}"


def read_rows(page: Page) -> list[Routine]:
    """The counts of a page, with what their cards are made of."""
    found = {routine.pk: routine for routine in _cards_of(page.routines)}
    return [found[pk] for pk in page.routines if pk in found]


@compiled_once
def _cards_of(routines: list[int]) -> QuerySet[Routine]:
    return Routine.objects.filter(pk__in=routines).as_cards().order_by()


@dataclass(frozen=True, slots=True)
class HowMany:
    """A number of counts, counted no further than is worth waiting for: one more than `up_to` means more."""

    number: int
    up_to: int

    @classmethod
    def of(cls, some: Some | searching.Search, up_to: int) -> "HowMany":
        # In the bank's own order, for its index has all that is filtered by; any other would be read row by row. Not so
        # those that come in no order: another index has them.
        if isinstance(some, searching.Search):
            return cls(some.how_many(up_to + 1), up_to)
        if isinstance(some, Recipe):
            return cls(some.how_many(("-shared_at", "-pk"), up_to + 1), up_to)
        ordered = some.order_by("-shared_at", "-pk") if some.ordered else some
        return cls(ordered.values("pk")[: up_to + 1].count(), up_to)

    @property
    def is_more(self) -> bool:
        return self.number > self.up_to

    def __bool__(self) -> bool:
        return bool(self.number)

    def __str__(self) -> str:
        written = number_format(min(self.number, self.up_to), force_grouping=True)
        return _("more than %(number)s") % {"number": written} if self.is_more else written
