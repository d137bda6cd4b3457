"""What was worked out of saved plans: read where it is kept, made where it is not, and dropped."""

import json
import logging
import zlib
from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass
from functools import partial
from hashlib import sha256
from typing import Any, Generic, NamedTuple, TypeVar

from django.db import DatabaseError, transaction
from django.db.models import QuerySet
from django.utils.translation import get_language

from accounts.compiled_once import compiled_once
from accounts.written_once import Later
from routines.models import Routine, RoutineVersion, UnreadablePlan, WorkedOut
from routines.models.routine import names_no_save
from routines.models.shown_plan import ShownPlan

from .made_by import made_by
from .says import CardSays, PageSays

logger = logging.getLogger(__name__)

Says = TypeVar("Says")
DROPPED_AT_A_TIME = 500


class Save(NamedTuple):
    """A saved plan, its document as the text that is stored, and the level of the grade for which it is shown.

    version, routine: their keys.
    """

    version: int
    routine: int
    document: str
    level: int


def save_of(version: RoutineVersion, level: int) -> Save:
    """As it is stored now. Raises RoutineVersion.DoesNotExist."""
    for document in RoutineVersion.objects.filter(pk=version.pk).documents():
        return Save(version.pk, version.routine_id, document, level)
    raise RoutineVersion.DoesNotExist


def shown_now(routine: Routine) -> Save:
    """The newest save of a routine that was read with its document and its grade. Raises UnreadablePlan where it has none."""
    if routine.current_version_id is None or routine.document is None:
        raise names_no_save(routine.pk)
    return Save(routine.current_version_id, routine.pk, routine.document, routine.grade.level)


@dataclass(frozen=True, slots=True)
class Place(Generic[Says]):
    """A place that shows plans: what it says of one, made as plain data and read from that."""

    name: str
    made_of: Callable[[ShownPlan], dict[str, Any]]
    read: Callable[[dict[str, Any]], Says]


CARD = Place("card", CardSays.made_of, CardSays.read)
PAGE = Place("page", PageSays.made_of, PageSays.read)
PLACES: tuple[Place[Any], ...] = (CARD, PAGE)


def cards(saves: Sequence[Save]) -> list[Later[CardSays]]:
    """What the card of each says, in the order given. When one is asked for, all are read.

    Asked, one that cannot be read raises UnreadablePlan.
    """
    return _later(CARD, saves)


def page(save: Save) -> Later[PageSays]:
    """What the page of a saved plan says. Asked, it raises UnreadablePlan where that cannot be read."""
    return _later(PAGE, [save])[0]


def work_out(save: Save) -> None:
    """Make what every place says, and keep it, unless it is kept: a copy says what its original says. Raises UnreadablePlan."""
    if missing([save]):
        plan = shown(save)
        _keep([_Made.of(place, save, place.made_of(plan)) for place in PLACES])


def missing(saves: Iterable[Save]) -> list[Save]:
    """Those of which something is not kept, or was made by another program."""
    keys = {save: keys_of(save) for save in saves}
    wanted = [key for names in keys.values() for key in names]
    kept = set(WorkedOut.objects.filter(pk__in=wanted, made_by=made_by()).values_list("pk", flat=True))
    return [save for save, names in keys.items() if not names <= kept]


def drop_all_but(keys: Collection[str]) -> int:
    """Drop what was worked out of plans that nobody shows any more, or by another program. How many rows that were."""
    dropped, last = 0, ""
    while part := list(
        WorkedOut.objects.filter(pk__gt=last).order_by("pk").values_list("pk", "made_by")[:DROPPED_AT_A_TIME]
    ):
        old = [key for key, maker in part if key not in keys or maker != made_by()]
        dropped += WorkedOut.objects.filter(pk__in=old).delete()[0]
        last = part[-1][0]
    return dropped


def forget(version: RoutineVersion) -> None:
    """Drop what was worked out of the document of a save, as it is stored now."""
    stored = RoutineVersion.objects.filter(pk=version.pk).documents()
    WorkedOut.objects.of_documents([mark_of(document) for document in stored]).delete()


def mark_of(document: str) -> str:
    """The mark of a document, given as the text that is stored."""
    return sha256(document.encode()).hexdigest()


def keys_of(save: Save) -> set[str]:
    """The keys of all that is kept of a save."""
    return {key_of(place, save) for place in PLACES}


def key_of(place: Place[Any], save: Save) -> str:
    """A mark of all that what a place says follows from, but for the program.

    The marks and the currency with which a count is written stand in its document, and were the school's when it was
    planned. The language is that of the pages, in which a count is named; the language of its sentences is the plan's.
    """
    follows_from = [place.name, mark_of(save.document), save.level, get_language()]
    return sha256(json.dumps(follows_from).encode()).hexdigest()


def _later(place: Place[Says], saves: Sequence[Save]) -> list[Later[Says]]:
    """What is said of each, known by all that it follows from."""
    language, program = get_language(), made_by()
    said: list[Says | UnreadablePlan] = []

    def read(number: int) -> Says:
        if not said:
            made = _said(place, saves)
            said.extend(made)
        if isinstance(one := said[number], UnreadablePlan):
            raise one
        return one

    return [
        Later((program, place.name, language, save.level, mark_of(save.document)), partial(read, number))
        for number, save in enumerate(saves)
    ]


def _said(place: Place[Says], saves: Sequence[Save]) -> list[Says | UnreadablePlan]:
    keys = [key_of(place, save) for save in saves]
    kept = _kept(keys)
    said: list[Says | UnreadablePlan] = []
    made = []
    for save, key in zip(saves, keys, strict=True):
        known = kept.get(key)
        if known is None:
            try:
                new = _Made.of(place, save, place.made_of(shown(save)))
            except UnreadablePlan as error:
                said.append(error)
                continue
            made.append(new)
            known = kept[key] = json.loads(new.text)  # as it will be read the next time
        said.append(place.read(known))
    if made:
        _keep(made)
    return said


def shown(save: Save) -> ShownPlan:
    """A saved plan itself, for what is not kept of it. Raises UnreadablePlan."""
    stored = RoutineVersion(pk=save.version, routine_id=save.routine, plan=json.loads(save.document))
    return ShownPlan(stored.read_plan(), save.level)


def _kept(keys: Sequence[str]) -> dict[str, dict[str, Any]]:
    """What is kept under these keys and was made by this program."""
    found = {}
    for key, said in _kept_rows(sorted(set(keys)), maker=made_by()):
        try:
            found[key] = json.loads(zlib.decompress(said))
        except (zlib.error, ValueError):
            logger.warning("What was worked out of a plan is damaged, and is made again: %s", key)
    return found


@compiled_once
def _kept_rows(keys: Sequence[str], *, maker: str) -> QuerySet[WorkedOut, tuple[str, bytes | memoryview]]:
    return WorkedOut.objects.filter(pk__in=keys, made_by=maker).values_list("pk", "said")


@dataclass(frozen=True, slots=True)
class _Made:
    """Something made of a save and not yet kept. text: JSON."""

    save: Save
    document: str
    key: str
    text: str

    @classmethod
    def of(cls, place: Place[Any], save: Save, said: dict[str, Any]) -> "_Made":
        text = json.dumps(said, separators=(",", ":"))
        return cls(save, mark_of(save.document), key_of(place, save), text)

    def row(self) -> WorkedOut:
        said = zlib.compress(self.text.encode())
        return WorkedOut(key=self.key, document=self.document, made_by=made_by(), said=said)


def _keep(made: Sequence[_Made]) -> None:
    """Keep what was made, as far as the saves still say what it was made of: words may have been taken out meanwhile.

    A page does not fail where nothing can be written: it is made again the next time.
    """
    rows = {one.key: one.row() for one in made}
    try:
        with transaction.atomic():
            held = RoutineVersion.objects.filter(pk__in={one.save.version for one in made}).order_by("pk")
            standing = {mark_of(document) for document in held.select_for_update(no_key=True).documents()}
            WorkedOut.objects.bulk_create(
                [rows[key] for key in sorted(rows) if rows[key].document in standing],
                update_conflicts=True,
                unique_fields=["key"],
                update_fields=["document", "made_by", "said"],
            )
    except DatabaseError:
        logger.warning("What was worked out of plans could not be kept", exc_info=True)
