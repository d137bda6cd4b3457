"""Taking words out of a database: row by row, each row held while it is changed, and again as often as one likes."""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import partial
from typing import Any

from django.contrib.sessions.backends.db import SessionStore
from django.contrib.sessions.models import Session
from django.db import models, transaction
from django.db.models import F, Model

from accounts.people_words import WordsColumn
from routines.lessons.recording import plan_mark
from routines.models import ImportFile, LessonEvent, RoutineVersion
from routines.models.people_words import COLUMNS
from routines.models.plan_reading import PlanError, read_document
from routines.words_erased.list_of_erasures import Erasure, plan_key
from routines.words_erased.matching import STUBS, Sought

from .places import FOLLOWERS, author_of

AT_A_TIME = 200


@dataclass
class TakenOut:
    """How many texts were changed (titles and search texts follow these), and what has to be remembered of each erasure."""

    texts: int = 0
    events: dict[str, list[str]] = field(default_factory=dict)
    plans: dict[str, list[str]] = field(default_factory=dict)


def columns_by_model(columns: Iterable[WordsColumn] = COLUMNS) -> dict[str, list[WordsColumn]]:
    found: dict[str, list[WordsColumn]] = {}
    for column in columns:
        found.setdefault(column.model, []).append(column)
    return found


def rows_of(columns: Sequence[WordsColumn], *, whose: int | None = None) -> Iterator[Model]:
    """Every row with these columns of one model and `words_by`, its author; of one author where `whose` is given."""
    model = columns[0].model_in()
    author = author_of(columns[0])
    fields = [column.field for column in columns]
    # `pk` of a person is her own author; no model here has it.
    found = model._default_manager.order_by("pk").only("pk", *fields).annotate(words_by=F(author))
    if whose is not None:
        found = found.filter(**{author: whose})
    last: Any = None
    while True:
        part = list((found if last is None else found.filter(pk__gt=last))[:AT_A_TIME])
        yield from part
        if len(part) < AT_A_TIME:
            return
        last = part[-1].pk


def take_out(erasures: Sequence[Erasure], *, on_rows: Callable[[], None] = lambda: None) -> TakenOut:
    """Take them out of the whole database, and make stubs of the events that became stubs before."""
    taken = TakenOut()
    if not erasures:
        return taken
    whose = {erasure.whose for erasure in erasures}
    only = next(iter(whose)) if len(whose) == 1 else None
    sought = {erasure.id: erasure.sought() for erasure in erasures}
    for columns in columns_by_model().values():
        for number, row in enumerate(rows_of(columns, whose=only)):
            _take_out_of(row, columns, erasures, sought, taken)
            if number % AT_A_TIME == 0:
                on_rows()
    stubs = list(dict.fromkeys(event for erasure in erasures for event in erasure.events))
    for first in range(0, len(stubs), AT_A_TIME):
        part = stubs[first : first + AT_A_TIME]
        LessonEvent.objects.filter(pk__in=part, erased=False).update(data={}, erased=True)
    _take_out_of_sessions(erasures)
    return taken


def _meant(erasures: Iterable[Erasure], column: WordsColumn, author: int | None) -> list[Erasure]:
    return [one for one in erasures if str(column) in one.places and one.whose in (None, author)]


def _take_out_of(
    row: Any,
    columns: Sequence[WordsColumn],
    erasures: Sequence[Erasure],
    sought: Mapping[str, Sought],
    taken: TakenOut,
) -> None:
    found: list[tuple[WordsColumn, list[Erasure]]] = []
    number = 0
    for column in columns:
        meant = _meant(erasures, column, row.words_by)
        texts = [text for _, text in column.texts(row)] if meant else []
        standing = [one for one in meant if any(sought[one.id].stands_in(text) for text in texts)]
        if standing:
            found.append((column, standing))
            if str(column) not in FOLLOWERS:
                number += sum(_joined(standing).stands_in(text) for text in texts)
    if not found:
        return
    with transaction.atomic():
        held = type(row)._default_manager.select_for_update().filter(pk=row.pk).first()
        if held is None:
            return
        if isinstance(held, LessonEvent):
            held.data, held.erased = {}, True
            held.save(update_fields=["data", "erased"])
            for one in found[0][1]:
                taken.events.setdefault(one.id, []).append(str(held.pk))
            taken.texts += number
            return
        before = plan_mark(held) if isinstance(held, RoutineVersion) else ""
        changed = _change(held, [(column, _joined(standing)) for column, standing in found])
        if changed:
            held.save(update_fields=changed)
            taken.texts += number
        if before:
            for one in found[0][1]:
                taken.plans.setdefault(one.id, []).append(plan_key(held.pk, before))


def _joined(erasures: Iterable[Erasure]) -> Sought:
    return Sought((one.length, one.mark) for one in erasures)


def _change(row: Any, found: Sequence[tuple[WordsColumn, Sought]]) -> list[str]:
    """Put a stub in the place of the words, the longest with which everything still fits. Names the changed columns."""
    before = {column.field: getattr(row, column.field) for column, _ in found}
    fitted = _fits(row)
    changed: list[str] = []
    for stub in STUBS:
        for name, value in before.items():
            setattr(row, name, value)
        changed = [
            column.field
            for column, sought in found
            if column.change(row, partial(sought.taken_out, stub=stub.casefold() if column.derived else stub))
        ]
        if not fitted or _fits(row):
            break
    return changed


def _fits(row: Any) -> bool:
    """Whether every text is as short as its column asks, and every plan one that can be read."""
    for column in row._meta.concrete_fields:
        text = row.__dict__.get(column.attname)
        if (
            isinstance(column, models.CharField)
            and isinstance(text, str)
            and len(text) > (column.max_length or len(text))
        ):
            return False
    try:
        if isinstance(row, RoutineVersion):
            read_document(row.plan)
        if isinstance(row, ImportFile):
            for plan in row.plans:
                read_document(plan)
    except (PlanError, TypeError):
        return False
    return True


def _take_out_of_sessions(erasures: Sequence[Erasure]) -> None:
    """A sentence that waits to be shown may hold a title: it is not shown any more."""
    sought = _joined(erasures)
    for session in Session.objects.iterator():
        held = session.get_decoded()
        kept = {name: value for name, value in held.items() if not any(map(sought.stands_in, _texts(value)))}
        if kept != held:
            session.session_data = SessionStore().encode(kept)
            session.save(update_fields=["session_data"])


def _texts(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict | list | tuple):
        for part in value.values() if isinstance(value, dict) else value:
            yield from _texts(part)
