"""Which target patterns a class saw, in lessons whose log the reader may open: never by class or teacher."""

from collections import Counter
from dataclasses import dataclass

from django.db.models import Count
from django.db.models.fields.json import KeyTransform
from django.utils.functional import Promise
from django.utils.translation import gettext_lazy as _

from routines.lessons.targets_seen import families_of_targets
from routines.models import RoutineVersion, TargetOutcome
from routines.models.lesson import LessonQuerySet

NAMES: dict[str, Promise | str] = {
    "step": _("the step itself"),
    "neighbour": _("equal jumps"),
    "digit": _("digits repeat"),
    "digit-run": _("digits run on"),
    "digit-sum": _("sums of digits"),
    "remainder": _("same remainder"),
    "landmarks": _("landmarks line up"),
    "how-many": _("how many in each"),
    "sums": _("equal sums"),
    "table": _("a times table"),
    "opposites": _("opposites"),
}
"""What each family of patterns is called, in the order in which they are looked for."""


@dataclass(frozen=True, slots=True)
class PatternsSeen:
    """How often a family was a target, by what was said of it: seen, not yet, or nothing (`not_recorded`)."""

    name: Promise | str
    seen: int
    not_yet: int
    not_recorded: int


def patterns_seen(lessons: LessonQuerySet) -> tuple[list[PatternsSeen], int]:
    """One row for each family that was a target, and how many lessons that was read from.

    `lessons` are those whose log the reader may open: with one day chosen, a total is one lesson's.
    """
    lessons = lessons.order_by()
    taught = dict(lessons.values_list("version").annotate(lessons=Count("pk")))
    versions = RoutineVersion.objects.filter(pk__in=lessons.values("version")).order_by()
    meant: Counter[str] = Counter()
    for version, targets in versions.annotate(targets=KeyTransform("targets", "plan")).values_list("pk", "targets"):
        for family in families_of_targets({"targets": targets}):
            meant[family] += taught.get(version, 0)
    outcomes = TargetOutcome.objects.filter(lesson__in=lessons.values("pk")).order_by()
    said: dict[tuple[str, str], int] = {
        (row["family"], row["seen"]): row["times"]
        for row in outcomes.values("family", "seen").annotate(times=Count("pk"))
    }
    rows = []
    for family, name in NAMES.items():
        seen = said.get((family, TargetOutcome.Seen.SEEN), 0)
        not_yet = said.get((family, TargetOutcome.Seen.NOT_YET), 0)
        if meant[family] or seen or not_yet:
            rows.append(PatternsSeen(name, seen, not_yet, max(0, meant[family] - seen - not_yet)))
    return rows, sum(taught.values())
