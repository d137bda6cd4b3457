"""Taking words out of a database: row by row, each row held while it is changed, and again as often as one likes."""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from django.contrib.sessions.backends.db import SessionStore
from django.contrib.sessions.models import Session
from django.db import transaction
from django.db.models import F, QuerySet

from accounts.models import School
from accounts.people_words import WordsColumn
from routines import worked_out
from routines.lessons.recording import plan_mark
from routines.models import LessonEvent, Routine, RoutineVersion
from routines.models.people_words import COLUMNS
from routines.models.search_word import write_words
from routines.words_erased.list_of_erasures import Erasure, plan_key
from routines.words_erased.matching import Sought
from routines.words_erased.stubs import put_stubs

from .places import FOLLOWERS, author_of

READ_AT_A_TIME = 200
CHANGED_AT_A_TIME = 20  # few, because on SQLite everyone else who saves waits for these


@dataclass
class TakenOut:
    """How many texts were changed (titles and search texts follow these), and what has to be remembered of each erasure."""

    texts: int = 0
    texts_of: dict[str, int] = field(default_factory=dict)
    events: dict[str, list[str]] = field(default_factory=dict)
    plans: dict[str, list[str]] = field(default_factory=dict)

    def __bool__(self) -> bool:
        return bool(self.texts or self.events or self.plans)

    def add(self, more: "TakenOut") -> None:
        self.texts += more.texts
        for erasure, number in more.texts_of.items():
            self.texts_of[erasure] = self.texts_of.get(erasure, 0) + number
        for mine, theirs in ((self.events, more.events), (self.plans, more.plans)):
            for erasure, names in theirs.items():
                mine.setdefault(erasure, []).extend(names)


def columns_by_model(columns: Iterable[WordsColumn] = COLUMNS) -> dict[str, list[WordsColumn]]:
    found: dict[str, list[WordsColumn]] = {}
    for column in columns:
        found.setdefault(column.model, []).append(column)
    return found


def rows_of(columns: Sequence[WordsColumn], *, whose: int | None = None) -> QuerySet[Any]:
    """Every row with these columns of one model and `words_by`, its author; of one author where `whose` is given."""
    author = author_of(columns[0])
    # `pk` of a person is her own author; no model here has it.
    rows = columns[0].model_in()._default_manager.annotate(words_by=F(author))
    return rows if whose is None else rows.filter(**{author: whose})


def parts_of(columns: Sequence[WordsColumn], *, whose: int | None = None) -> Iterator[list[Any]]:
    """These rows, some at a time and by their keys, so that rows that come and go meanwhile shift none."""
    rows = rows_of(columns, whose=whose).order_by("pk").only("pk", *(column.field for column in columns))
    last: Any = None
    while True:
        part = list((rows if last is None else rows.filter(pk__gt=last))[:READ_AT_A_TIME])
        if part:
            yield part
        if len(part) < READ_AT_A_TIME:
            return
        last = part[-1].pk


def rows_to_read(*, whose: int | None) -> int:
    """How many rows there are to go through, for telling how far one is."""
    return sum(rows_of(columns, whose=whose).count() for columns in columns_by_model().values())


def whose_texts(erasures: Iterable[Erasure]) -> int | None:
    """The one person whose texts all of these are about; None for more than one, or everybody's."""
    whose = {erasure.whose for erasure in erasures}
    return whose.pop() if len(whose) == 1 else None


Found = list[tuple[WordsColumn, list[Erasure]]]


def take_out(
    erasures: Sequence[Erasure],
    *,
    on_rows: Callable[[int], None] = lambda rows: None,
    remember: Callable[[TakenOut], None] = lambda taken: None,
) -> TakenOut:
    """Take them out of the whole database, and make stubs of the events that became stubs before.

    on_rows: told after each part how many rows it had; what it raises stops the work between two parts.
    remember: given what has to be remembered, in the transaction that changes those rows and before its end: whenever
    the work stops, nothing was changed that is not remembered.
    """
    taken = TakenOut()
    if not erasures:
        return taken
    sought = {erasure.id: erasure.sought() for erasure in erasures}
    for columns in columns_by_model().values():
        for part in parts_of(columns, whose=whose_texts(erasures)):
            standing = [(row, found) for row in part if (found := _found_in(row, columns, erasures, sought))]
            for first in range(0, len(standing), CHANGED_AT_A_TIME):
                taken.add(_take_out_of(standing[first : first + CHANGED_AT_A_TIME], sought, remember))
            on_rows(len(part))
    stubs = list(dict.fromkeys(event for erasure in erasures for event in erasure.events))
    for first in range(0, len(stubs), READ_AT_A_TIME):
        part = stubs[first : first + READ_AT_A_TIME]
        LessonEvent.objects.filter(pk__in=part, erased=False).update(data={}, erased=True)
    _take_out_of_sessions(erasures)
    return taken


def _meant(erasures: Iterable[Erasure], column: WordsColumn, author: int | None) -> list[Erasure]:
    return [one for one in erasures if str(column) in one.places and one.whose in (None, author)]


def _found_in(
    row: Any, columns: Iterable[WordsColumn], erasures: Iterable[Erasure], sought: Mapping[str, Sought]
) -> Found:
    """The columns of this row in which words stand that are to go from there, and by which erasures."""
    found: Found = []
    for column in columns:
        meant = _meant(erasures, column, row.words_by)
        texts = [text for _, text in column.texts(row)] if meant else []
        standing = [one for one in meant if any(sought[one.id].stands_in(text) for text in texts)]
        if standing:
            found.append((column, standing))
    return found


def _take_out_of(
    rows: Iterable[tuple[Any, Found]], sought: Mapping[str, Sought], remember: Callable[[TakenOut], None]
) -> TakenOut:
    taken = TakenOut()
    with transaction.atomic():
        # The turn of whoever writes the list comes first, so that nobody waits for us while we wait for them.
        School.objects.select_for_update().first()
        for row, found in rows:
            held = type(row)._default_manager.select_for_update().filter(pk=row.pk).first()
            if held is not None:
                taken.add(_change(held, found, sought))
        if taken:
            remember(taken)
    return taken


def _change(held: Any, found: Found, sought: Mapping[str, Sought]) -> TakenOut:
    """Change a row that is held, which may be newer than the one in which the words were found."""
    taken = TakenOut()
    for column, standing in found:
        if str(column) not in FOLLOWERS:
            texts = [text for _, text in column.texts(held)]
            taken.texts += sum(_joined(standing).stands_in(text) for text in texts)
            for one in standing:
                number = sum(sought[one.id].stands_in(text) for text in texts)
                taken.texts_of[one.id] = taken.texts_of.get(one.id, 0) + number
    if isinstance(held, LessonEvent):
        held.data, held.erased = {}, True
        held.save(update_fields=["data", "erased"])
        taken.events = {one.id: [str(held.pk)] for one in found[0][1]}
        return taken
    before = plan_mark(held) if isinstance(held, RoutineVersion) else ""
    if isinstance(held, RoutineVersion):  # the mark of a document with these words in it goes too
        worked_out.forget(held)
    changed = put_stubs(held, [(column, _joined(standing)) for column, standing in found])
    if not changed:
        return TakenOut()
    held.save(update_fields=changed)
    if isinstance(held, Routine):
        write_words(held)
    if before:
        taken.plans = {one.id: [plan_key(held.pk, before)] for one in found[0][1]}
    return taken


def _joined(erasures: Iterable[Erasure]) -> Sought:
    return Sought((one.length, one.mark) for one in erasures)


def _take_out_of_sessions(erasures: Sequence[Erasure]) -> None:
    """A sentence that waits to be shown may hold a title: it is not shown any more."""
    sought = _joined(erasures)
    for session in Session.objects.iterator():
        held = session.get_decoded()
        kept = {name: value for name, value in held.items() if not any(map(sought.stands_in, _texts(value)))}
        if kept != held:
            # One that was changed or ended since it was read is left to whoever did that.
            Session.objects.filter(pk=session.pk, session_data=session.session_data).update(
                session_data=SessionStore().encode(kept)
            )


def _texts(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict | list | tuple):
        for part in value.values() if isinstance(value, dict) else value:
            yield from _texts(part)
