"""Links an administrator hands over by herself: an invitation, or a new passphrase. No mail server is needed."""

import hashlib
import secrets
from datetime import datetime, timedelta
from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from .user import User

LIFETIME = timedelta(days=7)


def hash_token(token: str) -> str:
    """What is stored of a token: it has 256 random bits, so one plain hash is enough."""
    return hashlib.sha256(token.encode()).hexdigest()


class OneTimeLinkQuerySet(models.QuerySet["OneTimeLink"]):
    def usable(self, now: datetime | None = None) -> Self:
        return self.filter(used_at__isnull=True, expires_at__gt=now or timezone.now())

    def for_token(self, token: str) -> Self:
        return self.filter(token_hash=hash_token(token))

    def open_invitations(self) -> Self:
        return self.usable().filter(purpose=OneTimeLink.Purpose.INVITATION).order_by("-pk")

    def last_reset_of(self, person: User) -> "OneTimeLink | None":
        """The newest link for a new passphrase that was made for her, whether it was used, waits or ran out."""
        made = self.filter(purpose=OneTimeLink.Purpose.RESET, person=person).select_related("created_by")
        return made.order_by("-created_at", "-pk").first()

    def issue(
        self,
        *,
        purpose: str,
        created_by: User,
        person: User | None = None,
        display_name: str = "",
        role: str = "",
        token: str = "",
    ) -> tuple["OneTimeLink", str]:
        """Make a link; the token itself, drawn at random unless it is given, is handed back once and kept nowhere."""
        token = token or secrets.token_urlsafe(32)
        link = self.create(
            purpose=purpose,
            created_by=created_by,
            person=person,
            display_name=display_name,
            role=role,
            token_hash=hash_token(token),
            expires_at=timezone.now() + LIFETIME,
        )
        return link, token


class OneTimeLink(models.Model):
    class Purpose(models.TextChoices):
        INVITATION = "invitation", _("Invitation")
        RESET = "reset", _("New passphrase")

    purpose = models.CharField(max_length=12, choices=Purpose.choices)
    token_hash = models.CharField(max_length=64, unique=True)
    display_name = models.CharField(max_length=80, blank=True, default="")
    role = models.CharField(max_length=20, choices=User.Role.choices, blank=True, default="")
    # Whom a reset is for; for an invitation, whoever took it.
    person = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.CASCADE, null=True, blank=True, related_name="one_time_links"
    )
    created_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.SET_NULL, null=True, related_name="links_handed_out"
    )
    created_at = models.DateTimeField(default=timezone.now)
    expires_at = models.DateTimeField()
    used_at = models.DateTimeField(null=True, blank=True)

    objects = OneTimeLinkQuerySet.as_manager()

    class Meta:
        constraints = [
            models.CheckConstraint(
                condition=(models.Q(purpose="reset", person__isnull=False) | models.Q(purpose="invitation"))
                & ~models.Q(purpose="invitation", role=""),
                name="one_time_link_says_for_whom",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.get_purpose_display()} for {self.person or self.display_name}"

    @property
    def reset_for(self) -> User:
        """Whose passphrase a reset link changes. Raises ValueError for an invitation that nobody took."""
        if self.person is None:
            raise ValueError("This link is for nobody's passphrase.")
        return self.person

    @property
    def is_usable(self) -> bool:
        return self.used_at is None and self.expires_at > timezone.now()

    def withdraw(self) -> None:
        self.expires_at = timezone.now()
        self.save(update_fields=["expires_at"])
