"""Which targets the class saw, as rows and numbers that coverage counts: brought up to date with the events, so that they
are there whether or not the log is ever opened.
"""

from typing import Any

from django.db.models import Count

from routines.lessons.state import reduce_events
from routines.models import Lesson, TargetOutcome


def keep_targets(lesson: Lesson) -> bool:
    """One row for each target of the plan that the lesson's events say was seen or not yet; whether its numbers changed.

    Rows of targets that no event is about, kept before targets were events, stay as they are.
    """
    about = [event.as_dict() for event in lesson.events.filter(kind__in=("target", "undo"), erased=False)]
    meant = {event["data"]["position"] for event in about if event["kind"] == "target"}
    if not meant:
        return False
    families = families_of_targets(lesson.version.plan)
    seen = reduce_events(about).targets
    TargetOutcome.objects.filter(lesson=lesson, position__in=meant).delete()
    TargetOutcome.objects.bulk_create(
        TargetOutcome(lesson=lesson, position=position, family=families[position], seen=said)
        for position, said in sorted(seen.items())
        if position < len(families)
    )
    return _count_targets(lesson, len(families))


def _count_targets(lesson: Lesson, targets: int) -> bool:
    """How many of the plan's targets were seen, not yet, and neither, into the lesson's row; whether that changed."""
    before = (lesson.targets_seen, lesson.targets_not_yet, lesson.targets_not_recorded)
    said = dict(lesson.target_outcomes.order_by().values_list("seen").annotate(times=Count("pk")))
    seen, not_yet = said.get(TargetOutcome.Seen.SEEN, 0), said.get(TargetOutcome.Seen.NOT_YET, 0)
    now = (seen, not_yet, max(0, targets - seen - not_yet))
    lesson.targets_seen, lesson.targets_not_yet, lesson.targets_not_recorded = now
    lesson.save(update_fields=["targets_seen", "targets_not_yet", "targets_not_recorded"])
    return now != before


def families_of_targets(plan: dict[str, Any]) -> list[str]:
    """Of each target of a plan document, which is not read as a plan: an event must be kept even where that cannot be."""
    try:
        return [str(target["claim"]["family"]) for target in plan.get("targets") or []]
    except (KeyError, TypeError):
        return []
