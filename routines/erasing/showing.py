"""What was found, as its reader may see it: read again from the rows, so that nothing of their texts is kept beside them."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any, ClassVar

from django.db.models import F

from accounts.models import User
from accounts.people_words import WordsColumn
from routines.erasing.looking import SHOWN_AT_MOST, Findings, Standing
from routines.erasing.taking_out import rows_of
from routines.models import Routine
from routines.models.people_words import COLUMNS
from routines.models.routine import NOT_IN_BANK
from routines.words_erased.matching import STUBS, Sought

from .places import ELSEWHERE_CALLED, TOGETHER, called

AROUND = 60

# The way from a row to the routine that it is about.
ROUTINE_OF = {
    "routines.Routine": "pk",
    "routines.RoutineVersion": "routine_id",
    "routines.PlanDraft": "routine_id",
    "routines.RoutineNote": "routine_id",
    "routines.Suggestion": "routine_id",
    "routines.LessonEvent": "lesson__routine_id",
    "routines.Reflection": "lesson__routine_id",
}


@dataclass(frozen=True, slots=True)
class Example:
    """A piece of text around the words: before them, the words as they stand there, after them."""

    stub: ClassVar[str] = STUBS[0]  # what is written in their place, whatever the reader's language

    title: str
    before: str
    words: str
    after: str


@dataclass
class Place:
    name: str
    called: str
    columns: tuple[str, ...]
    texts: int = 0
    followers: int = 0
    examples: list[Example] = field(default_factory=list)
    spelt: list[str] = field(default_factory=list)

    @property
    def emptied(self) -> bool:
        """An event becomes a stub; of other texts the rest stays."""
        return self.name == "routines.LessonEvent.data"

    @property
    def more(self) -> int:
        return max(0, self.texts - len(self.examples))


@dataclass
class Shown:
    places: list[Place]
    elsewhere: list[tuple[str, int]]

    @property
    def texts(self) -> int:
        return sum(place.texts or place.followers for place in self.places)

    @property
    def spelt(self) -> list[str]:
        """The words in each way in which they stand in the texts shown."""
        return list(dict.fromkeys(way for place in self.places for way in place.spelt))[:SHOWN_AT_MOST]


def shown(findings: Findings, sought: Sought, *, reader: User, whose: int | None) -> Shown:
    """Of everybody's texts (whose: None) the reader sees how many and the words as they stand there, no other text."""
    columns = {str(column): column for column in COLUMNS}
    places = [
        _place(columns[name], standing, sought, reader=reader, whose=whose)
        for name, standing in findings.places.items()
        if name in columns
    ]
    return Shown(places, [(str(ELSEWHERE_CALLED[app]), number) for app, number in findings.elsewhere.items()])


def _place(column: WordsColumn, standing: Standing, sought: Sought, *, reader: User, whose: int | None) -> Place:
    name = str(column)
    place = Place(name, called(column), (name, *TOGETHER.get(name, ())), standing.texts, standing.followers)
    keys = {key for key, _ in standing.at}
    rows = {str(row.pk): row for row in rows_of([column], whose=whose).filter(pk__in=keys)} if keys else {}
    titles = titles_of(column, rows.values(), reader) if whose is not None else {}
    for key, where in standing.at:
        text = dict(column.texts(rows[key])).get(where, "") if key in rows else ""
        spans = list(sought.spans(text))
        if not spans:  # it was changed since
            continue
        place.spelt += [way for way in dict.fromkeys(text[first:end] for first, end in spans) if way not in place.spelt]
        if whose is not None:
            place.examples.append(_example(titles.get(key, ""), text, *spans[0]))
    return place


def _example(title: str, text: str, first: int, end: int) -> Example:
    before, after = text[max(0, first - AROUND) : first], text[end : end + AROUND]
    return Example(
        title,
        ("…" if first > AROUND else "") + before,
        text[first:end],
        after + ("…" if end + AROUND < len(text) else ""),
    )


def titles_of(column: WordsColumn, rows: Iterable[Any], reader: User) -> dict[str, str]:
    """The title of the count that each row is about, as far as the reader may see it."""
    way = ROUTINE_OF.get(column.model)
    if way is None:
        return {}
    found = column.model_in()._default_manager.filter(pk__in=[row.pk for row in rows])
    routines = {str(row): routine for row, routine in found.values_list("pk", F(way)) if routine is not None}
    seen = Routine.objects.visible_to(reader).filter(pk__in=routines.values())
    titles = dict(seen.values_list("pk", "title"))
    return {row: titles.get(routine, NOT_IN_BANK) for row, routine in routines.items()}
