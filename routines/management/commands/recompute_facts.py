"""Recompute what the program says of each saved plan: the facts that the bank filters by, its card and its page."""

from collections.abc import Iterator
from typing import Any

from django.core.management.base import BaseCommand, CommandParser
from django.db import transaction

from routines import worked_out
from routines.counting import ENGINE_VERSION
from routines.models import Routine, UnreadablePlan
from routines.models.facts import facts_of
from routines.models.search_word import write_words
from routines.plans.actions import write_patterns

AT_A_TIME = 20


class Command(BaseCommand):
    help = (
        "Recompute what the program says of each saved plan, where another version of it did so last. It may be stopped "
        "and run again, and people may work meanwhile: a page that is asked for before its turn is made then."
    )

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument(
            "--all", action="store_true", help="recompute the facts of every routine, whoever made them"
        )

    def handle(self, *args: object, **options: Any) -> None:
        total = Routine.objects.count()
        done = recomputed = drawn = 0
        current: set[str] = set()
        for part in _parts():
            saves = []
            for routine in part:
                try:
                    if options["all"] or routine.engine_version != ENGINE_VERSION:
                        recomputed += recompute(routine)
                    saves.append(worked_out.shown_now(routine))
                except UnreadablePlan as error:
                    self._told_unreadable(routine, error)
            routines = {routine.pk: routine for routine in part}
            for save in worked_out.missing(saves):
                try:
                    worked_out.work_out(save)
                    drawn += 1
                except UnreadablePlan as error:
                    self._told_unreadable(routines[save.routine], error)
            current |= {key for save in saves for key in worked_out.keys_of(save)}
            done += len(part)
            self.stdout.write(f"{done} of {total}")
        dropped = worked_out.drop_all_but(current)
        self.stdout.write(
            f"Recomputed the facts of {recomputed} routines, and what the pages of {drawn} say. Dropped {dropped} old rows."
        )

    def _told_unreadable(self, routine: Routine, error: UnreadablePlan) -> None:
        self.stderr.write(f"Left as it is, for its plan can't be read: {routine.pk} {routine.title}: {error}")


def _parts() -> Iterator[list[Routine]]:
    """Every routine, some at a time and by their keys, so that those that come and go meanwhile shift none."""
    last = 0
    while part := list(
        Routine.objects.select_related("grade", "current_version")
        .with_document()
        .filter(pk__gt=last)
        .order_by("pk")[:AT_A_TIME]
    ):
        yield part
        last = part[-1].pk


def recompute(routine: Routine) -> bool:
    """Write the facts of its current version; False where somebody saved meanwhile. Raises UnreadablePlan."""
    facts = facts_of(routine.plan, routine.grade.level)
    with transaction.atomic():
        held = Routine.objects.select_for_update().filter(pk=routine.pk).first()
        if held is None or held.current_version_id != routine.current_version_id:
            return False
        for name, value in facts.columns.items():
            setattr(held, name, value)
        held.save(update_fields=list(facts.columns))
        write_patterns(held, facts.patterns)
        write_words(held)
    return True
