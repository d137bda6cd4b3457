"""All that one person wrote, row by row of the register of people's words."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from itertools import islice
from typing import Any

from django.db.models import F, Q, QuerySet
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from accounts.people_words import WordsColumn
from routines.erasing.places import CALLED, FOLLOWERS
from routines.erasing.showing import titles_of
from routines.erasing.taking_out import columns_by_model
from routines.models.people_words import ALL

from .said_places import for_a_reader

READ_AT_A_TIME = 200

# A title and a story are those of the newest save, which is given out itself.
GIVEN_OUT = tuple(column for column in ALL if column.author and not column.derived and str(column) not in FOLLOWERS)
OF_THE_SCHOOL = tuple(column for column in ALL if not column.author)

OF_ACCOUNTS = {
    "accounts.User.display_name": _("your name"),
    "accounts.User.sign_in_name": _("the name you sign in with"),
    "accounts.User.email": _("your e-mail"),
    "accounts.OneTimeLink.display_name": _("names of people you invited"),
}
WHEN = {
    "routines.RoutineVersion": "at",
    "routines.PlanDraft": "kept_at",
    "routines.ImportFile": "at",
    "routines.Job": "asked_at",
    "routines.RoutineNote": "at",
    "routines.Suggestion": "made_at",
    "routines.LessonEvent": "at",
    "routines.Reflection": "lesson__taught_on",
    "accounts.OneTimeLink": "created_at",
}
IN_ORDER = {"routines.LessonEvent": ("lesson_id", "seq")}


@dataclass(frozen=True, slots=True)
class Written:
    """One column of one row. about: the count it is about, "" where there is none. texts: for a reader, each with its place
    as it is said (said_places.py). value: the whole of what is kept there: a text, or a document."""

    column: str
    about: str
    at: datetime | date | None
    texts: tuple[tuple[str, str], ...]
    value: Any


def called(column: str) -> str:
    return str(CALLED.get(column) or OF_ACCOUNTS[column])


def rows_by(person: User, columns: list[WordsColumn]) -> QuerySet[Any]:
    """Her rows of one model, each with `written_at`. What a board wrote in her lesson, where nobody is signed in, is hers."""
    model = columns[0].model
    by = Q(**{columns[0].author: person.pk})
    if model == "routines.LessonEvent":
        by = (by | Q(user=None, lesson__teacher=person)) & Q(erased=False)
    rows = columns[0].model_in()._default_manager.filter(by).order_by(*IN_ORDER.get(model, ("pk",)))
    return rows.annotate(written_at=F(WHEN[model])) if model in WHEN else rows


def rows_written(person: User) -> int:
    return sum(rows_by(person, columns).count() for columns in columns_by_model(GIVEN_OUT).values())


def words_of(person: User) -> Iterator[tuple[int, list[Written]]]:
    """All of them, with how many rows they were read from, a few rows at a time. What holds no text is left out."""
    for columns in columns_by_model(GIVEN_OUT).values():
        rows = rows_by(person, columns).iterator(READ_AT_A_TIME)
        while part := list(islice(rows, READ_AT_A_TIME)):
            titles = titles_of(columns[0], part, person)
            yield len(part), [one for row in part for column in columns if (one := _written(column, row, titles))]


def _written(column: WordsColumn, row: Any, titles: dict[str, str]) -> Written | None:
    texts = [(place, text) for place, text in column.texts(row) if text.strip()]
    if not texts:
        return None
    at, said = getattr(row, "written_at", None), tuple(for_a_reader(str(column), row, texts))
    return Written(str(column), titles.get(str(row.pk), ""), at, said, getattr(row, column.field))
