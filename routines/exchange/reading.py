"""Reading a file of routines: bounded, every part checked, and a bad entry loses none of the good ones."""

from collections.abc import Container
from dataclasses import dataclass
from typing import Any

from accounts.text import read_json
from routines.counting import CountError, check
from routines.exchange.written import FORMAT, VERSION
from routines.plan_document import Plan, PlanError

BYTES_LIMIT = 12 * 1024 * 1024
ENTRIES_LIMIT = 5000
# More than a plan may have, so that one that nests too deep is refused by itself.
DEEPEST_FILE = 100
REASON_LIMIT = 300


class FileError(ValueError):
    """The file as a whole cannot be read; `str()` says what to do."""


@dataclass(frozen=True, slots=True)
class Refused:
    """An entry that cannot be added: its number in the file from 1, its title as far as it has one, and why."""

    number: int
    title: str
    field: str
    reason: str


@dataclass(frozen=True, slots=True)
class Read:
    """What a file holds: the plans that can be added, in the file's order, and the entries that cannot."""

    plans: tuple[Plan, ...]
    refused: tuple[Refused, ...]


def read(content: bytes, grades: Container[str]) -> Read:
    """Read a file. `grades` are the names of the school's grades.

    Raises FileError when it is no file of routines, is too large, or was written by a newer Countfold.
    """
    if len(content) > BYTES_LIMIT:
        raise FileError(f"This file is larger than {BYTES_LIMIT // 1024 // 1024} MB. Export fewer counts at a time.")
    try:
        file = read_json(content, deepest=DEEPEST_FILE)
    except ValueError as error:
        raise FileError(
            "This is not a file of counts: it cannot be read as JSON. Choose a file that was exported here."
        ) from error
    if not isinstance(file, dict) or file.get("format") != FORMAT:
        raise FileError("This is not a file of counts. Choose a file that was exported from a Countfold bank.")
    version = file.get("version")
    if isinstance(version, bool) or not isinstance(version, int) or not 1 <= version <= VERSION:
        raise FileError(
            f"This file has version {str(version)[:20]!r}; this Countfold reads up to {VERSION}. Bring it up to date first."
        )
    entries = file.get("routines")
    if not isinstance(entries, list) or not entries:
        raise FileError("There is no count in this file.")
    if len(entries) > ENTRIES_LIMIT:
        raise FileError(f"This file holds {len(entries)} counts; {ENTRIES_LIMIT} at a time are the most.")
    plans, refused = [], []
    for number, entry in enumerate(entries, start=1):
        try:
            plan = read_plan(entry, grades)
            _require_sensible_targets(plan)
        except PlanError as error:
            refused.append(Refused(number, title_of(entry), error.field[:60], str(error)[:REASON_LIMIT]))
        else:
            plans.append(plan)
    return Read(tuple(plans), tuple(refused))


def read_plan(entry: Any, grades: Container[str]) -> Plan:
    """One entry of a file. Raises PlanError for one that is no plan, or of a grade that the school does not have."""
    plan = Plan.from_dict(entry)
    if plan.grade not in grades:
        raise PlanError("grade", f"This school has no grade “{plan.grade[:20]}”.")
    return plan


def _require_sensible_targets(plan: Plan) -> None:
    """Refuse a target that means nothing for its count, such as the ones digit of a clock; a false one is the teacher's own."""
    grid = plan.grid()
    for claim in plan.claims():
        try:
            check(claim, grid)
        except CountError as error:
            raise PlanError("targets", str(error)) from error


def title_of(entry: Any) -> str:
    title = entry.get("title") if isinstance(entry, dict) else None
    return title[:80] if isinstance(title, str) else ""
