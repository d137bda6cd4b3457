"""Tries at a code that belongs to nobody: there is no person to count them by, so they are counted by address and in all."""

from datetime import datetime, timedelta

from django.db import models, transaction
from django.utils import timezone

WINDOW = timedelta(minutes=15)
BY_ADDRESS = 8
IN_ALL = 60
EVERYBODY = ""


class CodeTriesQuerySet(models.QuerySet["CodeTries"]):
    def take(self, address: str, now: datetime | None = None) -> timedelta:
        """Count a try from this address, before it is looked at. Hands back how long to wait, 0 where it may be looked at."""
        now = now or timezone.now()
        return self._take(address, BY_ADDRESS, now) or self._take(EVERYBODY, IN_ALL, now)

    @transaction.atomic
    def _take(self, address: str, most: int, now: datetime) -> timedelta:
        tries = self._row(address[:60], now)
        if now - tries.since >= WINDOW:
            tries.since, tries.number = now, 0
        if tries.number >= most:
            return tries.since + WINDOW - now
        tries.number += 1
        tries.save(update_fields=["since", "number"])
        return timedelta(0)

    def _row(self, address: str, now: datetime) -> "CodeTries":
        """The row of this address, locked. Whoever sets the school up removes all rows meanwhile, so it may go again."""
        tries = None
        while tries is None:
            self.bulk_create([self.model(address=address, since=now)], ignore_conflicts=True)
            tries = self.select_for_update().filter(address=address).first()
        return tries


class CodeTries(models.Model):
    """How many tries came from one address (from all of them where it is empty) in the window that began at `since`."""

    address = models.CharField(max_length=60, unique=True)
    number = models.PositiveIntegerField(default=0)
    since = models.DateTimeField()

    objects = CodeTriesQuerySet.as_manager()

    def __str__(self) -> str:
        return f"{self.number} from {self.address or 'everywhere'}"
