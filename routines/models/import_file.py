"""A file of routines on its way into the bank: read and shown first, then added some at a time, with progress."""

import uuid
from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone

from accounts.models import User


class ImportFileQuerySet(models.QuerySet["ImportFile"]):
    def of(self, user: User) -> Self:
        return self.filter(by=user)


class ImportFile(models.Model):
    """`plans` are the documents that can be added, `refused` what cannot and why; `done` says how many are dealt with:
    added, already here, or not added because the school has changed since the file was read (then `refused` says so).

    `left_out`: when words that stood in the file had been removed everywhere here (ISO times), each with in how many of
    the file's texts they stood."""

    key = models.UUIDField(default=uuid.uuid4, unique=True, editable=False)
    by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="+")
    name = models.CharField(max_length=120)
    at = models.DateTimeField(default=timezone.now)
    plans = models.JSONField()
    refused = models.JSONField(default=list)
    left_out = models.JSONField(default=list)
    into_bank = models.BooleanField(default=False)
    done = models.PositiveIntegerField(default=0)
    already_here = models.PositiveIntegerField(default=0)
    not_added = models.PositiveIntegerField(default=0)

    objects = ImportFileQuerySet.as_manager()

    class Meta:
        ordering = ["-at"]

    def __str__(self) -> str:
        return self.name

    @property
    def added(self) -> int:
        return self.done - self.already_here - self.not_added

    @property
    def finished(self) -> bool:
        return self.done >= len(self.plans)
