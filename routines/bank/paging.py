"""Pages of counts that begin after one count, not after so many: the hundredth costs what the first does.

An address says `after=7`: what comes after count 7 in this order, wherever that one stands by now. `page=9`, as addresses
used to say, is still understood while it is near.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import chain
from operator import itemgetter
from typing import Any

from django.db.models import Q
from django.utils.formats import number_format
from django.utils.translation import gettext as _

from accounts.models import User
from accounts.typed_numbers import LARGEST_ID, typed_id, typed_whole
from routines.models import Routine
from routines.models.routine import RoutineQuerySet

MOST_PAGES_BY_NUMBER = 200
COUNTED_UP_TO = 1000


@dataclass(frozen=True, slots=True)
class Stream:
    """Some of the counts. `at`: where the first part of the order is one number for all of them, that number."""

    routines: RoutineQuerySet
    at: int | None = None


@dataclass(frozen=True, slots=True)
class Order:
    """In which order counts are listed.

    by: columns or annotations as `order_by` takes them, the key at the end. streams: the counts, each in one of them; several
    where no index has the whole order. place_of: what `by` comes to for a count, in the list or not; None where it has no
    place in this order.
    """

    by: tuple[str, ...]
    streams: tuple[Stream, ...]
    place_of: Callable[[Routine], tuple[Any, ...] | None]


@dataclass(frozen=True, slots=True)
class Page:
    """`routines` are keys, in order. earlier, later: what the address says of the pages beside it. said: a sentence or ""."""

    routines: list[int]
    earlier: dict[str, int] | None = None
    later: dict[str, int] | None = None
    said: str = ""


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
    start = (number - 1) * size
    found = _keys(order, start + size + 1)[start:]
    shown = found[:size]
    return Page(shown, {"before": shown[0]} if shown else None, {"after": shown[-1]} if len(found) > size else None)


def _keys(order: Order, at_most: int, *, beyond: tuple[Any, ...] | None = None) -> list[int]:
    """The keys of the first so many, of all streams together."""
    rows = list(chain.from_iterable(_rows(stream, order.by, at_most, beyond) for stream in order.streams))
    if len(order.streams) > 1:  # one alone stays in the order that the database gives its texts
        for at, name in reversed(list(enumerate(order.by))):
            rows.sort(key=itemgetter(at), reverse=name.startswith("-"))
    return [row[-1] for row in rows[:at_most]]


def _rows(stream: Stream, by: Sequence[str], at_most: int, beyond: tuple[Any, ...] | None) -> Iterable[tuple[Any, ...]]:
    """What `by` comes to for the first so many of a stream. What is the same for all is nothing to order by."""
    routines, fixed = stream.routines, () if stream.at is None else (stream.at,)
    rest = by[len(fixed) :]
    if beyond and stream.at not in (None, beyond[0]):
        falls = by[0].startswith("-")
        if (stream.at > beyond[0]) is falls:
            return []
    elif beyond:
        routines = routines.filter(_beyond(rest, beyond[len(fixed) :]))
    names = [name.removeprefix("-") for name in rest]
    return [fixed + row for row in routines.order_by(*rest).values_list(*names)[:at_most]]


def _beyond(by: Sequence[str], place: Sequence[Any]) -> Q:
    """What comes after this place in this order. The first part is one that an index can begin with."""
    beyond, same = Q(), Q()
    for name, value in zip(by, place, strict=True):
        column, way = name.removeprefix("-"), "lt" if name.startswith("-") else "gt"
        beyond |= same & Q(**{f"{column}__{way}": value})
        same &= Q(**{column: value})
    first = by[0].removeprefix("-")
    return Q(**{f"{first}__{'lte' if by[0].startswith('-') else 'gte'}": place[0]}) & beyond


def _turned(name: str) -> str:
    return name[1:] if name.startswith("-") else f"-{name}"


def read_rows(page: Page) -> list[Routine]:
    """The counts of a page, with what their cards are made of."""
    found = {routine.pk: routine for routine in Routine.objects.filter(pk__in=page.routines).as_cards()}
    return [found[pk] for pk in page.routines if pk in found]


@dataclass(frozen=True, slots=True)
class HowMany:
    """A number of counts, counted no further than is worth waiting for."""

    number: int

    @classmethod
    def of(cls, routines: RoutineQuerySet) -> "HowMany":
        return cls(routines.order_by().values("pk")[: COUNTED_UP_TO + 1].count())

    @property
    def is_more(self) -> bool:
        return self.number > COUNTED_UP_TO

    def __bool__(self) -> bool:
        return bool(self.number)

    def __str__(self) -> str:
        written = number_format(min(self.number, COUNTED_UP_TO), force_grouping=True)
        return _("more than %(number)s") % {"number": written} if self.is_more else written
