"""Prove what is kept beside counts and lessons: teaching numbers, and what the bank filters and searches by."""

from collections.abc import Iterator, Sequence
from typing import Any

from django.core.management.base import BaseCommand, CommandParser
from django.db import transaction
from django.db.models import prefetch_related_objects

from grade_bands.models import SchoolYear
from routines.lessons.totals import (
    count_days_again,
    count_weeks_again,
    count_years_again,
    wrong_days,
    wrong_weeks,
    wrong_years,
)
from routines.models import Routine
from routines.models.bank_total import (
    count_bank_again,
    look_for_owners_again,
    wrong_bank_owners,
    wrong_bank_totals,
)
from routines.models.search_word import words_of, write_words
from routines.models.shown_families import shown_bits

AT_A_TIME = 200


class Command(BaseCommand):
    help = (
        "Compare the teaching numbers with the lessons, and what the bank filters, searches and is counted by with its "
        "counts. People may work meanwhile. Ends with an error where something differs and --mend was not given."
    )

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--mend", action="store_true", help="make what differs anew")

    def handle(self, *args: object, **options: Any) -> None:
        differing = 0
        for part in _parts():
            differing += self._counts(part, mend=options["mend"])
            differing += self._lessons(part, mend=options["mend"])
        for year in SchoolYear.objects.all():
            # Looked at twice: between two queries a lesson may have begun.
            wrong = wrong_days(year)
            wrong = wrong and wrong & wrong_days(year)
            differing += len(wrong)
            if wrong and options["mend"]:
                count_days_again(wrong)
            weeks = wrong_weeks(year)
            weeks = weeks and weeks & wrong_weeks(year)
            differing += len(weeks)
            if weeks and options["mend"]:
                count_weeks_again(weeks)
        cells = wrong_bank_totals()
        cells = cells and cells & wrong_bank_totals()
        differing += len(cells)
        if options["mend"]:
            for cell in sorted(cells):
                count_bank_again([cell])
        owners = wrong_bank_owners()
        owners = owners and owners & wrong_bank_owners()
        differing += len(owners)
        if owners and options["mend"]:
            look_for_owners_again(owners)
        if differing and not options["mend"]:
            raise SystemExit(f"{differing} differ from what they follow from. With --mend they are made anew.")
        self.stdout.write(f"{differing} made anew." if differing else "Everything is as the counts and lessons say.")

    def _counts(self, part: Sequence[Routine], *, mend: bool) -> int:
        prefetch_related_objects(part, "patterns", "search_words")
        wrong = [routine for routine in part if not _is_as_it_says(routine)]
        if mend:
            for routine in wrong:
                _make_anew(routine.pk)
        return len(wrong)

    def _lessons(self, part: Sequence[Routine], *, mend: bool) -> int:
        keys = [routine.pk for routine in part]
        wrong = wrong_years(keys)
        wrong = wrong and wrong & wrong_years(keys)
        if mend:
            for of in sorted(wrong):  # each in a transaction of its own: a lesson is not to wait for all of them
                count_years_again([of])
        return len(wrong)


def _parts() -> Iterator[list[Routine]]:
    last = 0
    while part := list(Routine.objects.filter(pk__gt=last).order_by("pk")[:AT_A_TIME]):
        last = part[-1].pk
        yield part


def _bits(routine: Routine) -> int:
    return shown_bits((row.family, row.holds, row.lie) for row in routine.patterns.all())


def _is_as_it_says(routine: Routine) -> bool:
    kept = {row.word: row.in_title for row in routine.search_words.all()}
    return routine.shows == _bits(routine) and kept == words_of(routine.title, routine.search_text)


@transaction.atomic
def _make_anew(pk: int) -> None:
    held = Routine.objects.select_for_update().filter(pk=pk).first()
    if held is not None:
        held.shows = _bits(held)
        held.save(update_fields=["shows"])
        write_words(held)
