"""One device's right to one lesson, and how often a person typed a code that no device shows."""

import hashlib
import secrets
from datetime import datetime, timedelta
from typing import Self

from django.conf import settings
from django.db import IntegrityError, models, transaction
from django.db.models import Q
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from accounts.models import User

from .lesson import Lesson

CODE_LASTS = timedelta(minutes=10)
FORGOTTEN_AFTER = timedelta(days=2)
FREE_TRIES = 5
FIRST_WAIT, LONGEST_WAIT = timedelta(seconds=30), timedelta(minutes=10)
MANY_WAITING, MANY_FROM_ONE_ADDRESS = 400, 40


class TooManyWaiting(Exception):
    """More devices wait for a lesson than any school has."""


def hash_secret(secret: str) -> str:
    """What is stored of a secret: it has 256 random bits, so one plain hash is enough."""
    return hashlib.sha256(secret.encode()).hexdigest()


class LessonPassQuerySet(models.QuerySet["LessonPass"]):
    def for_secret(self, secret: str) -> Self:
        return self.filter(secret_hash=hash_secret(secret))

    def waiting(self, now: datetime | None = None) -> Self:
        """Devices that show a code which can be typed now."""
        return self.filter(lesson=None, code_until__gt=now or timezone.now())

    def of(self, lesson: Lesson) -> Self:
        """The devices that take part in this lesson, the newest first."""
        return self.filter(lesson=lesson).order_by("-tied_at", "-pk")

    def wait(self, *, address: str) -> tuple["LessonPass", str]:
        """A device begins to wait: its pass, and the secret for its cookie. Raises: TooManyWaiting."""
        now = timezone.now()
        self.filter(Q(lesson=None, code_until__lt=now - CODE_LASTS) | Q(tied_at__lt=now - FORGOTTEN_AFTER)).delete()
        waiting = self.filter(lesson=None)
        if waiting.count() >= MANY_WAITING or waiting.filter(address=address).count() >= MANY_FROM_ONE_ADDRESS:
            raise TooManyWaiting
        secret = secrets.token_urlsafe(32)
        waiter = LessonPass(secret_hash=hash_secret(secret), address=address)
        waiter.show_new_code()
        return waiter, secret


class LessonPass(models.Model):
    """Waits with a six-digit `code`; tied to a lesson once its teacher has typed it. The secret is in the device's cookie."""

    class Role(models.TextChoices):
        BOARD = "board", _("board")
        SUBSTITUTE = "substitute", _("substitute’s lectern")

    lesson = models.ForeignKey(Lesson, null=True, blank=True, on_delete=models.CASCADE, related_name="passes")
    role = models.CharField(max_length=10, choices=Role.choices, default=Role.BOARD)
    secret_hash = models.CharField(max_length=64, unique=True)
    code = models.CharField(max_length=6, blank=True)
    code_until = models.DateTimeField()
    address = models.CharField(max_length=45, blank=True)
    tied_at = models.DateTimeField(null=True, blank=True)
    tied_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, null=True, blank=True, on_delete=models.CASCADE, related_name="+"
    )

    objects = LessonPassQuerySet.as_manager()

    class Meta:
        verbose_name_plural = "lesson passes"
        constraints = [
            models.UniqueConstraint(fields=["code"], condition=~Q(code=""), name="lessonpass_code_once"),
            models.CheckConstraint(condition=Q(lesson=None) | Q(code=""), name="lessonpass_code_only_while_waiting"),
        ]

    def __str__(self) -> str:
        return f"{self.get_role_display()} of lesson {self.lesson_id}" if self.lesson_id else "waiting for a lesson"

    @property
    def code_is_over(self) -> bool:
        return self.code_until <= timezone.now()

    def show_new_code(self) -> None:
        """Another code, unlike those of the other devices that wait."""
        self.code_until = timezone.now() + CODE_LASTS
        for _attempt in range(50):
            self.code = f"{secrets.randbelow(1_000_000):06}"
            try:
                with transaction.atomic():
                    self.save()
            except IntegrityError:
                continue
            return
        raise TooManyWaiting

    def tie(self, *, lesson: Lesson, role: str, by: User) -> None:
        """From now on the device takes part in this lesson. Its code is used up."""
        self.lesson, self.role, self.code, self.tied_by, self.tied_at = lesson, role, "", by, timezone.now()
        self.save(update_fields=["lesson", "role", "code", "tied_by", "tied_at"])

    def is_good(self, now: datetime | None = None) -> bool:
        """A pass ends with its lesson: four hours after the last event, and when the lesson is deleted."""
        lesson = self.lesson
        return lesson is not None and lesson.deleted_at is None and not lesson.closed and not lesson.is_quiet(now)


class PairingTries(models.Model):
    """Wrong codes one person typed in a row. After a few each further one waits longer than the one before."""

    user = models.OneToOneField(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="+")
    wrong = models.PositiveSmallIntegerField(default=0)
    last_at = models.DateTimeField(default=timezone.now)

    def __str__(self) -> str:
        return f"{self.wrong} wrong codes by {self.user_id}"

    def wait_left(self, now: datetime | None = None) -> timedelta:
        """How long until the next code may be typed; zero or less for now."""
        over = self.wrong - FREE_TRIES
        wait = min(FIRST_WAIT * 2 ** min(over, 10), LONGEST_WAIT) if over >= 0 else timedelta(0)
        return self.last_at + wait - (now or timezone.now())
