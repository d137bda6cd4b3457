"""Signing in with a sign-in name or an e-mail."""

from django.contrib.auth.backends import BaseBackend
from django.contrib.auth.hashers import make_password
from django.db.models import QuerySet
from django.http import HttpRequest

from .compiled_once import compiled_once
from .models import User
from .same_text import passphrase_text


class NameOrEmailBackend(BaseBackend):
    def authenticate(
        self, request: HttpRequest | None, username: str | None = None, password: str | None = None, **other: object
    ) -> User | None:
        if username is None or password is None:
            return None
        person = User.objects.for_sign_in(username).first()
        if person is None:
            make_password(
                passphrase_text(password)
            )  # takes as long as a check, so that an answer's delay tells no names
            return None
        return person if person.check_password(password) and person.is_active else None

    def get_user(self, user_id: int) -> User | None:
        return next(iter(_active(user_id)), None)


@compiled_once
def _active(person: int) -> QuerySet[User]:
    """Asked for by every page."""
    return User.objects.active().filter(pk=person)
