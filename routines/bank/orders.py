"""The orders of the bank, each so that a page is found by indexes alone."""

from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from typing import Any

from django.db.models import Count, Exists, F, IntegerField, OuterRef, Subquery, Sum, Value
from django.db.models.functions import Coalesce

from accounts.models import User
from grade_bands.models import SchoolYear
from routines.bank.paging import Order, Recipe, Some, Stream
from routines.bank.searching import Search
from routines.models import Routine, TimesTaught
from routines.models.routine import RoutineQuerySet, tell_times_taught, told_as_taught
from routines.models.searched_words import Asked
from routines.models.taught import TimesTaughtQuerySet

# Counts that were taught are in no order by when they came into the bank: the index of the numbers has their keys.
LONG_AGO = datetime(2000, 1, 1, tzinfo=UTC)


def newest_first(routines: Some, since: str = "shared_at") -> Order:
    """By when they came into the bank; with `created_at` also those that never did."""
    return Order((f"-{since}", "-pk"), (Stream(routines),), lambda routine: _moment(routine, since), routines)


def own_grades_first(routines: Some, own: Sequence[int]) -> Order:
    """Counts of these grades (keys) before all others; in each part the newest first."""
    streams = (Stream(_of_grades(routines, own, True), {0: 0}), Stream(_of_grades(routines, own, False), {0: 1}))

    def place_of(routine: Routine) -> tuple[Any, ...] | None:
        moment = _moment(routine, "shared_at")
        return (0 if routine.grade_id in own else 1, *moment) if moment else None

    return Order(("part", "-shared_at", "-pk"), streams, place_of, routines)


def _of_grades(routines: Some, own: Sequence[int], is_own: bool) -> Some:
    if isinstance(routines, Recipe):
        return Recipe(_made_of_grades, (list(own), *routines.values), (is_own, routines.make, *routines.decided_by))
    return routines.filter(grade__in=own) if is_own else routines.exclude(grade__in=own)


def _made_of_grades(own: list[int], is_own: bool, make: Callable[..., RoutineQuerySet], *rest: Any) -> RoutineQuerySet:
    made = make(*rest)
    return made.filter(grade__in=own) if is_own else made.exclude(grade__in=own)


def by_title(routines: Some) -> Order:
    return Order(("title", "-pk"), (Stream(routines),), lambda routine: (routine.title, routine.pk), routines)


def best_found_first(routines: RoutineQuerySet, words: Sequence[Asked], **known: bool) -> Order:
    """Counts with all the words in the title before those with some of them elsewhere; in each part the one made last first.

    known: of the counts among which they are looked for, as a `Search` takes it.
    """
    search = Search(routines, words, **known)
    streams = (Stream(search.titled, {0: 0}), Stream(search.others, {0: 1}))

    def place_of(routine: Routine) -> tuple[Any, ...]:
        titled = Routine.objects.filter(search.all_met("pk", in_title=True), pk=routine.pk)
        return (0 if titled.exists() else 1, routine.pk)

    return Order(("part", "-pk"), streams, place_of, search, of_words=True)


def most_taught_first(routines: RoutineQuerySet, user: User, year: SchoolYear | None) -> Order:
    """By what the reader is told of this year; of those that were taught as often, and of the others, the newer one first.

    She is told the whole number, but where of those unknown to her just one class had it. So there are those of which
    she is told all, as the index has them; those of which she is told a part; and those of which she is told nothing.
    """
    streams = []
    if year:
        in_year = routines.filter(years_taught__year=year).annotate(
            taught=F("years_taught__lessons"), key=F("years_taught__routine")
        )
        all_told = in_year.filter(taught__gt=0).annotate(told=F("taught"))
        if user.is_coach:
            streams.append(Stream(all_told, {1: LONG_AGO}))
        else:
            rows = TimesTaught.objects.in_year(year)
            classes = _of_each(rows.not_known_to(user), Count("class_group", distinct=True))
            known = rows.known_to(user)
            partly = (
                in_year.filter(Exists(known.filter(routine=OuterRef("pk")))).alias(unknown=classes).filter(unknown=1)
            )
            partly = partly.annotate(told=_of_each(known, Sum("lessons")))
            streams += [
                Stream(all_told.alias(unknown=classes).exclude(unknown=1), {1: LONG_AGO}),
                Stream(partly, {1: LONG_AGO}, below="taught"),
            ]
        nothing = routines.exclude(told_as_taught(user, year))
    else:
        nothing = routines
    streams.append(Stream(nothing.annotate(key=F("pk")), {0: 0}))

    def place_of(routine: Routine) -> tuple[Any, ...] | None:
        tell_times_taught([routine], user, year)
        moment = LONG_AGO if routine.times_taught else routine.shared_at
        return (routine.times_taught, moment, routine.pk) if moment else None

    return Order(("-told", "-shared_at", "-key"), tuple(streams), place_of, routines)


def _of_each(rows: TimesTaughtQuerySet, number: Count | Sum) -> Coalesce:
    """A number of these rows for each routine of an outer query; 0 where there are none."""
    of_one = rows.filter(routine=OuterRef("pk")).order_by().values("routine").annotate(number=number).values("number")
    return Coalesce(Subquery(of_one, output_field=IntegerField()), Value(0))


def _moment(routine: Routine, since: str) -> tuple[datetime, int] | None:
    moment = getattr(routine, since)
    return (moment, routine.pk) if moment else None
