"""The people of the school."""

from collections.abc import Iterable
from typing import Any, Self

from django.contrib.auth.base_user import AbstractBaseUser
from django.core.validators import RegexValidator
from django.db import models, transaction
from django.db.models.functions import Lower
from django.utils import timezone
from django.utils.crypto import salted_hmac
from django.utils.translation import gettext_lazy as _

from ..same_text import passphrase_text, sign_in_text
from .folded_text import FoldedCharField, FoldedEmailField
from .list_marks import has_changed


class UserQuerySet(models.QuerySet["User"]):
    def active(self) -> Self:
        return self.filter(is_active=True)

    def administrators(self) -> Self:
        return self.active().filter(role=User.Role.ADMINISTRATOR)

    def for_sign_in(self, typed: str) -> Self:
        """The person meant by a typed sign-in name or e-mail. A name holds no @, so the two never meet."""
        return self.filter(email=typed) if "@" in sign_in_text(typed) else self.filter(sign_in_name=typed)

    def get_by_natural_key(self, sign_in_name: str) -> "User":
        return self.get(sign_in_name=sign_in_name)

    def in_name_order(self) -> Self:
        return self.order_by(Lower("display_name"), "pk")


class User(AbstractBaseUser):
    """One person. Signs in with `sign_in_name` or, if there is one, `email`."""

    class Role(models.TextChoices):
        TEACHER = "teacher", _("Teacher")
        COACH = "coach", _("Math coach")
        ADMINISTRATOR = "administrator", _("Administrator")

    sign_in_name = FoldedCharField(
        max_length=40,
        unique=True,
        validators=[RegexValidator(r"^[\w.-]+$", _("Use letters, digits, dots and hyphens only."))],
        error_messages={"unique": _("Someone already signs in with this name. Choose another.")},
    )
    email = FoldedEmailField(blank=True, default="")
    display_name = models.CharField(max_length=80)
    role = models.CharField(max_length=20, choices=Role.choices, default=Role.TEACHER)
    is_active = models.BooleanField(default=True)
    # Part of what a session must match: raising it ends every session of this person.
    session_epoch = models.PositiveIntegerField(default=0)
    date_joined = models.DateTimeField(default=timezone.now)

    USERNAME_FIELD = "sign_in_name"
    EMAIL_FIELD = "email"
    REQUIRED_FIELDS = ["display_name"]

    SHAPES_QUERIES = ("role",)  # what queries decide by (compiled_once.py)

    objects = UserQuerySet.as_manager()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["email"],
                condition=~models.Q(email=""),
                name="user_email_unique",
                violation_error_message=_("Someone already has this e-mail. Choose another or leave it empty."),
            ),
            models.CheckConstraint(
                condition=~models.Q(sign_in_name__contains="@") & ~models.Q(sign_in_name=""),
                name="user_sign_in_name_is_no_email",
                violation_error_message=_("Use letters, digits, dots and hyphens only."),
            ),
            models.CheckConstraint(
                condition=models.Q(role__in=["teacher", "coach", "administrator"]),
                name="user_role_known",
            ),
        ]

    def __str__(self) -> str:
        return self.display_name

    @property
    def is_coach(self) -> bool:
        return self.role == self.Role.COACH

    @property
    def is_administrator(self) -> bool:
        return self.role == self.Role.ADMINISTRATOR

    def save(self, *args: Any, update_fields: Iterable[str] | None = None, **kwargs: Any) -> None:
        """With another name the lists in which it stands have changed."""
        is_known = not self._state.adding
        with transaction.atomic():
            super().save(*args, update_fields=update_fields, **kwargs)
            if is_known and (update_fields is None or "display_name" in update_fields):
                has_changed("owners")

    def set_password(self, raw_password: str | None) -> None:
        super().set_password(None if raw_password is None else passphrase_text(raw_password))

    def check_password(self, raw_password: str | None) -> bool:
        """Right in whatever form it is typed. One that was kept as it was typed, before forms were made alike, is kept anew."""
        if raw_password is None:
            return False
        text = passphrase_text(raw_password)
        if super().check_password(text):
            return True
        if text == raw_password or not super().check_password(raw_password):
            return False
        self.set_password(text)
        self.save(update_fields=["password"])
        return True

    def get_session_auth_hash(self) -> str:
        return salted_hmac(
            "accounts.User.session", f"{super().get_session_auth_hash()}:{self.session_epoch}", algorithm="sha256"
        ).hexdigest()

    def sign_out_everywhere(self) -> None:
        self.session_epoch = models.F("session_epoch") + 1
        self.save(update_fields=["session_epoch"])
        self.refresh_from_db(fields=["session_epoch"])

    def leave(self) -> None:
        """Close the account: no more sign-in, every session ended. What the person made stays."""
        self.is_active = False
        self.save(update_fields=["is_active"])
        self.sign_out_everywhere()

    def come_back(self) -> None:
        self.is_active = True
        self.save(update_fields=["is_active"])
