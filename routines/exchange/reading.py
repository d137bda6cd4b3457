"""Reading a file of routines: bounded, every part checked, and a bad entry loses none of the good ones."""

from collections.abc import Container
from dataclasses import dataclass
from typing import Any

from django.utils.translation import gettext as _

from accounts.text import read_json
from routines.counting import Claim, CountError
from routines.counting.checking import judge
from routines.counting.claims import PlaceClaim
from routines.errors import say
from routines.exchange.writing import FORMAT, VERSION
from routines.models.plan_document import Plan
from routines.models.plan_reading import PlanError, read_document

BYTES_LIMIT = 12 * 1024 * 1024
ENTRIES_LIMIT = 5000
# More than a plan may have, so that one that nests too deep is refused by itself.
DEEPEST_FILE = 100
REASON_LIMIT = 300
LOOKS_LIMIT = 2_000_000
"""Looks at a cell while a file is checked: 5,000 counts of 50 terms have room for four targets and three next counts each."""
FOR_AN_OPEN_TARGET = 50  # a target that leaves something out is tried in every way there is
FOR_A_NEXT_COUNT = 50  # reading one takes as long as that many looks
SAYS = {
    "neighbour": ("direction",),
    "digit": ("along", "blocks"),
    "digit-run": ("along",),
    "digit-sum": ("along", "blocks"),
    "remainder": ("modulus", "along", "blocks"),
    "landmarks": ("multiple",),
    "how-many": ("multiple", "block"),
    "sums": ("which",),
}
"""What a target of each family says when it leaves nothing to be tried."""


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
        raise FileError(
            _("This file is larger than %(most)s MB. Export fewer counts at a time.")
            % {"most": BYTES_LIMIT // 1024 // 1024}
        )
    try:
        file = read_json(content, deepest=DEEPEST_FILE)
    except ValueError as error:
        raise FileError(
            _("This is not a file of counts: it cannot be read as JSON. Choose a file that was exported here.")
        ) from error
    if not isinstance(file, dict) or file.get("format") != FORMAT:
        raise FileError(_("This is not a file of counts. Choose a file that was exported from a Countfold bank."))
    version = file.get("version")
    if isinstance(version, bool) or not isinstance(version, int) or not 1 <= version <= VERSION:
        raise FileError(
            _("This file has version %(version)s; this Countfold reads up to %(newest)s. Bring it up to date first.")
            % {"version": _short(version), "newest": VERSION}
        )
    entries = file.get("routines")
    if not isinstance(entries, list) or not entries:
        raise FileError(_("There is no count in this file."))
    if len(entries) > ENTRIES_LIMIT:
        raise FileError(
            _("This file holds %(number)s counts; %(most)s at a time are the most.")
            % {"number": len(entries), "most": ENTRIES_LIMIT}
        )
    plans, refused, looks = [], [], 0
    for number, entry in enumerate(entries, start=1):
        looks = _bounded(looks + looks_to_read(entry))
        try:
            plan = read_plan(entry, grades)
            looks = _bounded(looks + looks_at_targets(plan))
            _require_sensible_targets(plan)
        except PlanError as error:
            refused.append(Refused(number, title_of(entry), error.field[:60], str(error)[:REASON_LIMIT]))
        else:
            plans.append(plan)
    return Read(tuple(plans), tuple(refused))


def read_plan(entry: Any, grades: Container[str]) -> Plan:
    """One entry of a file. Raises PlanError for one that is no plan, or of a grade that the school does not have."""
    plan = read_document(entry)
    if plan.grade not in grades:
        raise PlanError("grade", _("This school has no grade “%(grade)s”.") % {"grade": plan.grade[:20]})
    return plan


def _require_sensible_targets(plan: Plan) -> None:
    """Refuse a target that means nothing for its count, such as the ones digit of a clock; a false one is the teacher's own."""
    grid = plan.grid()
    for claim in plan.claims():
        try:
            judge(claim, grid)
        except CountError as error:
            raise PlanError("targets", say(error)) from error


def looks_to_read(entry: Any) -> int:
    """How many looks at a cell it takes to read an entry, well formed or not, counted before it is read."""
    following = entry.get("next_counts") if isinstance(entry, dict) else None
    return FOR_A_NEXT_COUNT * len(following) if isinstance(following, list) else 0


def looks_at_targets(plan: Plan) -> int:
    """How many looks at a cell it takes to judge a plan's targets, counted before they are judged."""
    return plan.count.terms * sum(FOR_AN_OPEN_TARGET if _is_open(claim) else 1 for claim in plan.claims())


def _bounded(looks: int) -> int:
    if looks > LOOKS_LIMIT:
        raise FileError(
            _("There are more targets and next counts than one go can check. Export fewer counts at a time.")
        )
    return looks


def _is_open(claim: Claim) -> bool:
    said = claim.parameters
    anywhere = isinstance(claim, PlaceClaim) and not {"place", "part"} & said.keys()
    return anywhere or any(name not in said for name in SAYS.get(claim.family, ()))


def _short(value: object) -> str:
    """What stands in a file, as far as a sentence has room for it."""
    return value if isinstance(value, str) and len(value) <= 20 else repr(value)[:20]


def title_of(entry: Any) -> str:
    title = entry.get("title") if isinstance(entry, dict) else None
    return title[:80] if isinstance(title, str) else ""
