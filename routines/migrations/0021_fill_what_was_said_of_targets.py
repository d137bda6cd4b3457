"""What lessons kept so far say of target patterns: on each lesson, and added up by day for those that are shared."""

from collections import Counter, defaultdict
from typing import Any

from django.db import migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps
from django.db.models import Count, Q, Sum
from django.db.models.fields.json import KeyTransform

LESSONS_AT_A_TIME = 500
SAID = ("seen", "not_yet", "not_recorded")


def fill(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    Lesson = apps.get_model("routines", "Lesson")
    last = 0
    while part := list(
        Lesson.objects.filter(pk__gt=last, deleted_at=None).order_by("pk").values_list("pk", "version")[:LESSONS_AT_A_TIME]
    ):
        last = part[-1][0]
        fill_lessons(apps, part)
    fill_days(apps)


def fill_lessons(apps: StateApps, part: list[tuple[int, int]]) -> None:
    """Lessons that say the same are written together."""
    RoutineVersion, TargetOutcome = (apps.get_model("routines", name) for name in ("RoutineVersion", "TargetOutcome"))
    versions = RoutineVersion.objects.filter(pk__in={version for _, version in part})
    targets = {
        pk: how_many(found)
        for pk, found in versions.annotate(found=KeyTransform("targets", "plan")).values_list("pk", "found")
    }
    outcomes = TargetOutcome.objects.filter(lesson__in=[pk for pk, _ in part]).order_by()
    said = Counter(
        {(lesson, seen): times for lesson, seen, times in outcomes.values_list("lesson", "seen").annotate(Count("pk"))}
    )
    alike = defaultdict(list)
    for pk, version in part:
        seen, not_yet = said[pk, "seen"], said[pk, "not-yet"]
        alike[seen, not_yet, max(0, targets[version] - seen - not_yet)].append(pk)
    for numbers, lessons in alike.items():
        columns = {f"targets_{name}": number for name, number in zip(SAID, numbers, strict=True)}
        apps.get_model("routines", "Lesson").objects.filter(pk__in=lessons).update(**columns)


def how_many(targets: Any) -> int:
    """As the lesson counts them: a plan that is damaged names none."""
    try:
        return len([target["claim"]["family"] for target in targets or []])
    except (KeyError, TypeError):
        return 0


def fill_days(apps: StateApps) -> None:
    Lesson, TaughtOn = apps.get_model("routines", "Lesson"), apps.get_model("routines", "TaughtOn")
    shared = Lesson.objects.filter(practice=False, written_at__isnull=False, deleted_at__isnull=True)
    shared = shared.filter(sharing__in=("team", "team-coach")).order_by()
    with_coach = Q(sharing="team-coach")
    sums = {f"team_{name}": Sum(f"targets_{name}") for name in SAID}
    sums |= {f"coach_{name}": Sum(f"targets_{name}", filter=with_coach, default=0) for name in SAID}
    for row in shared.values("year", "grade", "area", "taught_on").annotate(**sums):
        of = {"year": row.pop("year"), "grade": row.pop("grade"), "area": row.pop("area"), "day": row.pop("taught_on")}
        TaughtOn.objects.filter(**of).update(**row)


class Migration(migrations.Migration):
    dependencies = [("routines", "0020_what_was_said_of_targets")]

    operations = [migrations.RunPython(fill, migrations.RunPython.noop)]
