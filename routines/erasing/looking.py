"""Where words stand before they are taken out: by place, with what becomes of each text as far as the reader may see it."""

from dataclasses import dataclass, field
from typing import Any

from django.db.models import F

from accounts.people_words import WordsColumn
from routines.erasing.taking_out import columns_by_model, rows_of
from routines.models import Routine
from routines.models.people_words import COLUMNS
from routines.models.routine import NOT_IN_BANK
from routines.words_erased.matching import Sought

from .places import ELSEWHERE, ELSEWHERE_CALLED, FOLLOWERS, TOGETHER, called

SHOWN_AT_MOST = 12
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
    followers: int = 0  # titles and search texts, which follow the saved plans
    examples: list[Example] = field(default_factory=list)
    forms: list[str] = field(default_factory=list)

    @property
    def more(self) -> int:
        return self.texts - len(self.examples)


@dataclass
class Found:
    places: list[Place]
    elsewhere: list[tuple[str, int]]

    @property
    def texts(self) -> int:
        return sum(place.texts or place.followers for place in self.places)


def look_for(sought: Sought, *, reader: Any, whose: int | None) -> Found:
    """whose: the one person whose texts are looked through, or None for everybody's.

    Of everybody's texts an administrator sees how many there are and the words as they stand in them, no other text.
    """
    places: dict[str, Place] = {}
    for columns in columns_by_model().values():
        for row in rows_of(columns, whose=whose):
            for column in columns:
                name = str(column)
                for _, text in column.texts(row):
                    spans = list(sought.spans(text))
                    if not spans:
                        continue
                    leader = FOLLOWERS.get(name, name)
                    place = places.setdefault(leader, _place(leader))
                    if leader == name:
                        _add(place, column, row, text, spans, reader=reader, own=whose is not None)
                    else:
                        place.followers += 1
    return Found(
        [place for place in places.values() if place.texts or place.followers],
        _elsewhere(sought) if whose is None else [],
    )


def _place(name: str) -> Place:
    (column,) = (column for column in COLUMNS if str(column) == name)
    return Place(name, called(column), (name, *TOGETHER.get(name, ())))


def _add(
    place: Place, column: WordsColumn, row: Any, text: str, spans: list[tuple[int, int]], *, reader: Any, own: bool
) -> None:
    place.texts += 1
    for first, end in spans:
        form = text[first:end]
        if form not in place.forms and len(place.forms) < SHOWN_AT_MOST:
            place.forms.append(form)
    if own and len(place.examples) < SHOWN_AT_MOST:
        first, end = spans[0]
        before, after = text[max(0, first - AROUND) : first], text[end : end + AROUND]
        place.examples.append(
            Example(
                _title(column, row, reader),
                ("…" if first > AROUND else "") + before,
                text[first:end],
                after + ("…" if end + AROUND < len(text) else ""),
            )
        )


def _title(column: WordsColumn, row: Any, reader: Any) -> str:
    way = ROUTINE_OF.get(column.model)
    if way is None:
        return ""
    routine = type(row)._default_manager.filter(pk=row.pk).values_list(F(way), flat=True).first()
    if routine is None:
        return ""
    title = Routine.objects.visible_to(reader).filter(pk=routine).values_list("title", flat=True).first()
    return title or NOT_IN_BANK


def _elsewhere(sought: Sought) -> list[tuple[str, int]]:
    counted: dict[str, int] = {}
    for column in ELSEWHERE:
        for row in column.model_in()._default_manager.only("pk", column.field).iterator():
            if any(sought.stands_in(text) for _, text in column.texts(row)):
                app = column.model.split(".")[0]
                counted[app] = counted.get(app, 0) + 1
    return [(ELSEWHERE_CALLED[app], number) for app, number in counted.items()]
