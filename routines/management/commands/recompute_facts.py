"""Recompute the facts that the bank filters by, for routines saved with another version of the engine."""

from typing import Any

from django.core.management.base import BaseCommand, CommandParser
from django.db import transaction

from routines.counting import ENGINE_VERSION
from routines.models import Routine, UnreadablePlan
from routines.models.facts import facts_of
from routines.plans.actions import write_patterns


class Command(BaseCommand):
    help = "Recompute what the engine says of each saved plan, where another version of the engine computed it."

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--all", action="store_true", help="recompute every routine, whatever its engine version")

    def handle(self, *args: object, **options: Any) -> None:
        found = Routine.objects.select_related("grade", "current_version").exclude(current_version=None)
        if not options["all"]:
            found = found.exclude(engine_version=ENGINE_VERSION)
        total = found.count()
        unreadable = 0
        for done, routine in enumerate(found.iterator(), start=1):
            try:
                facts = facts_of(routine.plan, routine.grade.level)
            except UnreadablePlan as error:
                unreadable += 1
                self.stderr.write(f"Left as it is, for its plan can't be read: {routine.pk} {routine.title}: {error}")
                continue
            with transaction.atomic():
                for name, value in facts.columns.items():
                    setattr(routine, name, value)
                routine.save(update_fields=list(facts.columns))
                write_patterns(routine, facts.patterns)
            if done % 100 == 0:
                self.stdout.write(f"{done} of {total}")
        self.stdout.write(f"Recomputed {total - unreadable} routines.")
