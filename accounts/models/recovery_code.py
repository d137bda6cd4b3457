"""The code on paper that lets an administrator back in where nobody is left to hand her a link."""

import hashlib
import secrets
from datetime import datetime
from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone

from ..set_up_code import ALPHABET
from .user import User

# 24 of 31 letters are 118 random bits. From 112 on NIST SP 800-63B-4, 3.1.2.2, asks for no slow hash.
LENGTH = 24
GROUP = 4


def new_code() -> str:
    letters = "".join(secrets.choice(ALPHABET) for _ in range(LENGTH))
    return "-".join(letters[at : at + GROUP] for at in range(0, LENGTH, GROUP))


def hash_code(typed: str) -> str:
    """Of what is left of it without hyphens, spaces and capitals."""
    plain = "".join(character for character in typed.lower() if character.isalnum())
    return hashlib.sha256(plain.encode()).hexdigest()


class RecoveryCodeQuerySet(models.QuerySet["RecoveryCode"]):
    def usable(self) -> Self:
        return self.filter(used_at__isnull=True)

    def for_typed(self, typed: str) -> Self:
        return self.filter(code_hash=hash_code(typed))

    def last_used(self) -> "RecoveryCode | None":
        return self.filter(used_at__isnull=False).select_related("used_by").order_by("-used_at").first()

    def spend(self, typed: str, *, by: User, now: datetime | None = None) -> bool:
        """Use it up, in one statement, so that of two at once one gets through."""
        return bool(self.usable().for_typed(typed).update(used_at=now or timezone.now(), used_by=by))


class RecoveryCode(models.Model):
    """Good for one new passphrase of any administrator. Only its hash is kept; the row stays to say that it was used."""

    code_hash = models.CharField(max_length=64, unique=True)
    made_at = models.DateTimeField(default=timezone.now)
    made_by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.SET_NULL, null=True, related_name="+")
    used_at = models.DateTimeField(null=True)
    used_by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.SET_NULL, null=True, related_name="+")

    objects = RecoveryCodeQuerySet.as_manager()

    def __str__(self) -> str:
        return f"recovery code of {self.made_at:%Y-%m-%d}"
