"""Tries at a code that belongs to nobody: there is no person to count them by, so they are counted by address and in all."""

from datetime import datetime, timedelta

from django.db import models, transaction
from django.utils import timezone
from django.utils.translation import ngettext

WINDOW = timedelta(minutes=15)
BY_ADDRESS = 8
IN_ALL = 60
EVERYBODY = ""
SET_UP, RECOVERY = "set-up", "recovery"  # the doors that such codes open


class CodeTriesQuerySet(models.QuerySet["CodeTries"]):
    def take(self, door: str, address: str, now: datetime | None = None) -> timedelta:
        """Count a try from this address, before it is looked at. Hands back how long to wait, 0 where it may be looked at."""
        now = now or timezone.now()
        return self._take(door, address, BY_ADDRESS, now) or self._take(door, EVERYBODY, IN_ALL, now)

    def forget(self, door: str) -> None:
        self.filter(door=door).delete()

    @transaction.atomic
    def _take(self, door: str, address: str, most: int, now: datetime) -> timedelta:
        tries = self._row(door, address[:60], now)
        if now - tries.since >= WINDOW:
            tries.since, tries.number = now, 0
        if tries.number >= most:
            return tries.since + WINDOW - now
        tries.number += 1
        tries.save(update_fields=["since", "number"])
        return timedelta(0)

    def _row(self, door: str, address: str, now: datetime) -> "CodeTries":
        """The row of this address, locked. Whoever has the right code removes all rows meanwhile, so it may go again."""
        tries = None
        while tries is None:
            self.bulk_create([self.model(door=door, address=address, since=now)], ignore_conflicts=True)
            tries = self.select_for_update().filter(door=door, address=address).first()
        return tries


class CodeTries(models.Model):
    """How many tries at one door came from one address (from all where it is empty) in the window that began at `since`."""

    door = models.CharField(max_length=10, default=SET_UP)
    address = models.CharField(max_length=60)
    number = models.PositiveIntegerField(default=0)
    since = models.DateTimeField()

    objects = CodeTriesQuerySet.as_manager()

    class Meta:
        constraints = [models.UniqueConstraint(fields=["door", "address"], name="code_tries_of_door_and_address")]

    def __str__(self) -> str:
        return f"{self.number} at {self.door} from {self.address or 'everywhere'}"


def sentence_to_wait(wait: timedelta) -> str:
    minutes = -(-wait // timedelta(minutes=1))
    return ngettext(
        "Too many tries. Wait %(minutes)s minute, then type the code again.",
        "Too many tries. Wait %(minutes)s minutes, then type the code again.",
        minutes,
    ) % {"minutes": minutes}
