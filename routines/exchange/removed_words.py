"""Words that were removed everywhere are left out of a file that is brought in, for it may be older than their removal.

A file says nothing of when or where it was written, so every removal from saved plans counts, whoever's texts it was about.
Whoever means such a word writes it into the plan afterwards.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from routines.exchange.reading import Read
from routines.models import RoutineVersion
from routines.models.people_words import COLUMNS
from routines.words_erased import list_of_erasures
from routines.words_erased.list_of_erasures import Erasure
from routines.words_erased.matching import Sought
from routines.words_erased.stubs import put_stubs

(PLAN,) = (column for column in COLUMNS if str(column) == "routines.RoutineVersion.plan")


@dataclass(frozen=True, slots=True)
class Cleaned:
    """What is kept of a file. left_out: when words in it were removed here (ISO times), each with how many of its texts
    held them."""

    name: str
    plans: list[dict[str, Any]]
    refused: list[list[Any]]
    left_out: list[tuple[str, int]]


def without_removed_words(read: Read, *, name: str) -> Cleaned:
    """Raises: ListDamaged."""
    removals = {(one.length, one.mark): one for one in list_of_erasures.read() if str(PLAN) in one.places}
    counted = dict.fromkeys(removals, 0)
    sought = Sought(removals)
    cleaned = Cleaned(
        sought.taken_out(name),
        [_cleaned(plan.as_dict(), sought, counted) for plan in read.plans],
        [
            [entry.number, *_texts_of([entry.title, entry.field, entry.reason], sought, counted)]
            for entry in read.refused
        ],
        [],
    )
    cleaned.left_out.extend(_said(removals.values(), counted))
    return cleaned


def _cleaned(document: dict[str, Any], sought: Sought, counted: dict[tuple[int, str], int]) -> dict[str, Any]:
    row = RoutineVersion(plan=document)
    if _count([text for _, text in PLAN.texts(row)], sought, counted):
        put_stubs(row, [(PLAN, sought)])
    cleaned: dict[str, Any] = row.plan
    return cleaned


def _texts_of(texts: list[str], sought: Sought, counted: dict[tuple[int, str], int]) -> list[str]:
    _count(texts, sought, counted)
    return [sought.taken_out(text) for text in texts]


def _count(texts: Iterable[str], sought: Sought, counted: dict[tuple[int, str], int]) -> bool:
    """Add each text to the removals whose words stand in it; False where there is none."""
    standing = [text for text in texts if sought.stands_in(text)]
    for removal in counted if standing else ():
        counted[removal] += sum(Sought([removal]).stands_in(text) for text in standing)
    return bool(standing)


def _said(removals: Iterable[Erasure], counted: dict[tuple[int, str], int]) -> list[tuple[str, int]]:
    numbers = ((one.begun_at, counted[one.length, one.mark]) for one in removals)
    return sorted((begun_at, number) for begun_at, number in numbers if number)
