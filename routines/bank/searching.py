"""Counts that have all the words looked for, the one made last first, read no further than they are shown or counted.

The rarest of the words leads: the counts that have it stand in an index in this order, one spelling after the other, and each
is asked for the other words and the filters until there are enough. So how many are looked at follows from how many of
these have the others, not from how many counts there are.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property, reduce
from operator import and_
from typing import Any

from django.core.exceptions import EmptyResultSet
from django.db import connection
from django.db.models import OuterRef, Q, QuerySet

from routines.models import Routine, SearchWord
from routines.models.routine import RoutineQuerySet, looked_up
from routines.models.search_word import SearchWordQuerySet
from routines.models.searched_words import Asked
from routines.models.spellings import LOOKED_AHEAD, Spelling, spellings_of

FOUND_UP_TO = 100
"""How many are counted: who reads that there are more looks for a further word."""

KEYS_READ = 2000
"""Of what too many words begin with: where so many counts have it or fewer, these are looked at alone."""

COMMON = 5
"""A word that one in so many counts have finds little out: filters, which an index has, then find more."""


@dataclass(frozen=True, slots=True)
class Lead:
    """Rows that name counts in `key`, in one or several runs that an index has in the order of that.

    runs: of each the spelling it has and whether in titles; None where the rows are one run by themselves. reach: how
    often they are met, as of a Spelling. word: what all of them have.
    """

    rows: QuerySet[Any]
    key: str = "pk"
    runs: tuple[tuple[str, bool], ...] | None = None
    reach: int = 0
    word: Asked | None = None


class Search:
    """A search among some counts. The words are looked up once for all that is asked of them.

    few: whether these counts are few enough to be looked through themselves, so that no word leads. filtered: whether
    an index finds them by what stands in them, so that no word leads that most counts have.
    """

    def __init__(
        self, routines: RoutineQuerySet, words: Sequence[Asked], *, few: bool = False, filtered: bool = False
    ) -> None:
        self.routines, self.words, self.few, self.filtered = routines, list(words), few, filtered

    def how_many(self, at_most: int) -> int:
        titled = len(self.titled.keys(at_most))
        return titled + len(self.others.keys(at_most - titled)) if titled < at_most else titled

    @cached_property
    def titled(self) -> "Found":
        return Found(self, in_title=True)

    @cached_property
    def others(self) -> "Found":
        return Found(self, in_title=False)

    def all_met(self, key: str, *, in_title: bool, but: Asked | None = None) -> Q:
        """Where the count that this column names has each of the words, but for one that it is known to have."""
        rows = [self._rows_of(word) for word in self.words if word != but]
        if in_title:
            rows = [one.filter(in_title__in=[True]) for one in rows]  # as a value, which an index has
        return reduce(and_, (looked_up(one.filter(routine=OuterRef(key))) for one in rows), Q())

    def _rows_of(self, word: Asked) -> SearchWordQuerySet:
        """As they are looked up for one count after the other: by the words themselves, for where PostgreSQL is told only
        what they begin with, it may go through all that do so for each count."""
        spelled = self._spelled[word]
        if spelled is None:
            return SearchWord.objects.meeting(word)
        return SearchWord.objects.filter(word__in=sorted({one.word for one in spelled}))

    def lead(self, *, in_title: bool) -> Lead:
        """What to begin with: the rarest word, or the counts themselves."""
        if self.few:
            return Lead(self.routines)
        found = (self._led_by(word, in_title) for word in self.words)
        rarest = min((lead for lead in found if lead), key=lambda lead: lead.reach, default=None)
        if self.filtered and (rarest is None or rarest.reach > self._newest - COMMON * LOOKED_AHEAD):
            return Lead(self.routines)
        return rarest or Lead(Routine.objects.all())

    def _led_by(self, word: Asked, in_title: bool) -> Lead | None:
        """None of a word that is met so often, and in so many spellings, that a walk through all counts soon meets it."""
        places = [True] if in_title else [False] if len(self.words) == 1 else [True, False]
        spelled = self._spelled[word]
        if spelled is not None:
            runs = [one for one in spelled if one.in_title in places]
            # One word and one place, whose counts the index has in their order; which ones is filled in for each run.
            rows = SearchWord.objects.filter(word=word.word).filter(in_title__in=[in_title])
            reach = max((one.reach for one in runs), default=0)
            return Lead(rows, "routine", tuple((one.word, one.in_title) for one in runs), reach, word)
        read = self._read[word]
        if len(read) > KEYS_READ:
            return None
        keys = sorted({routine for routine, is_titled in read if is_titled in places}, reverse=True)
        reach = keys[LOOKED_AHEAD] if len(keys) > LOOKED_AHEAD else 0
        return Lead(Routine.objects.filter(pk__among=keys), reach=reach, word=word)

    @cached_property
    def _spelled(self) -> dict[Asked, list[Spelling] | None]:
        return {word: spellings_of(word) for word in self.words}

    @cached_property
    def _read(self) -> dict[Asked, list[tuple[int, bool]]]:
        """Of words in too many spellings the counts that have them, and where."""
        wanted = [word for word, spelled in self._spelled.items() if spelled is None]
        rows = {word: SearchWord.objects.meeting(word).values_list("routine", "in_title") for word in wanted}
        return {word: list(found[: KEYS_READ + 1]) for word, found in rows.items()}

    @cached_property
    def _newest(self) -> int:
        return Routine.objects.order_by("-pk").values_list("pk", flat=True).first() or 0


class Found:
    """What a search finds: the counts that have all the words in their titles, or all the others."""

    def __init__(self, search: Search, *, in_title: bool) -> None:
        self.search, self.in_title = search, in_title

    def keys(self, at_most: int, *, falling: bool = True, beyond: int | None = None) -> list[int]:
        """The first so many, from the count made last or the one made first, and only those after the one named beyond."""
        if falling and beyond is None and at_most <= FOUND_UP_TO + 1:
            return self._first[:at_most]
        return self._read(at_most, falling, beyond)

    @cached_property
    def _first(self) -> list[int]:
        """As many as are counted, of which the first page shows some."""
        titled = [] if self.in_title else self.search.titled.keys(FOUND_UP_TO + 1)
        if len(titled) > FOUND_UP_TO:
            return self._read(FOUND_UP_TO + 1)
        # All that have the words in their titles are known here: so nothing need be asked of each.
        found = self._read(FOUND_UP_TO + 1 + len(titled), but_titled=False)
        return [key for key in found if key not in titled][: FOUND_UP_TO + 1]

    def _read(
        self, at_most: int, falling: bool = True, beyond: int | None = None, *, but_titled: bool = True
    ) -> list[int]:
        search, lead = self.search, self.search.lead(in_title=self.in_title)
        where = search.all_met(lead.key, in_title=self.in_title, but=lead.word)
        if not self.in_title and but_titled:
            where &= ~search.all_met(lead.key, in_title=True)
        if lead.rows is not search.routines:
            where &= looked_up(search.routines.filter(pk=OuterRef(lead.key)), "pk")
        if beyond is not None:
            where &= Q(**{f"{lead.key}__{'lt' if falling else 'gt'}": beyond})
        ordered = lead.rows.filter(where).order_by(f"-{lead.key}" if falling else lead.key)
        found = _of_all_runs(ordered.values_list(lead.key, flat=True)[:at_most], lead.runs)
        return sorted(found, reverse=falling)[:at_most]


def _of_all_runs(rows: QuerySet[Any, int], runs: Sequence[tuple[str, bool]] | None) -> set[int]:
    """What each run gives, in one query. A count stands in several where it has several spellings."""
    if runs is None:
        return set(rows)
    try:
        sql, (_word, _in_title, *others) = rows.query.sql_with_params()
    except EmptyResultSet:
        return set()
    if not runs:
        return set()
    each = (f"SELECT routine FROM ({sql}) run_{number}" for number in range(len(runs)))  # noqa: S608
    with connection.cursor() as cursor:
        cursor.execute(" UNION ALL ".join(each), [value for run in runs for value in (*run, *others)])
        return {routine for (routine,) in cursor.fetchall()}
