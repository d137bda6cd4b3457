"""Writes that touch people, links and the school together."""

from uuid import UUID

from django.db import transaction
from django.utils import timezone
from django.utils.crypto import salted_hmac

from .models import OneTimeLink, School, SentForm, User


class LinkUsed(Exception):
    """A one-time link that was used, or ran out, between opening the page and sending it."""


class LastAdministrator(Exception):
    """What was asked would leave the school without an administrator."""


class InvitedBefore(Exception):
    """The same form was sent before, for somebody else, or its link was used or withdrawn since."""


def invite(*, by: User, display_name: str, role: str, key: UUID | None = None) -> str:
    """Invite someone; hands back the token of the link, which is kept nowhere.

    With the key of the form that asked, the same form again gets the same link: its token is drawn from the key, so it
    need not be stored to be shown a second time. Raises InvitedBefore where that link is not the one asked for.
    """
    if key is None:
        return _invite(by, display_name, role)
    fields = {"display_name": display_name, "role": role}
    content = salted_hmac("accounts.invite", repr(fields), algorithm="sha256").hexdigest()
    token = salted_hmac("accounts.invite.token", f"{by.pk}:{key}", algorithm="sha256").hexdigest()
    with transaction.atomic():
        sent, first = SentForm.objects.claim(person=by, key=key, content=content)
        if first:
            return _invite(by, display_name, role, token)
    if sent.content != content or not OneTimeLink.objects.usable().for_token(token).exists():
        raise InvitedBefore
    return token


def _invite(by: User, display_name: str, role: str, token: str = "") -> str:
    _link, token = OneTimeLink.objects.issue(
        purpose=OneTimeLink.Purpose.INVITATION, created_by=by, token=token, display_name=display_name, role=role
    )
    return token


def offer_new_passphrase(*, by: User, person: User) -> str:
    """A link for choosing a new passphrase; earlier ones for this person stop working."""
    with transaction.atomic():
        User.objects.select_for_update().get(pk=person.pk)  # of two at once one waits, so that one link works
        OneTimeLink.objects.usable().filter(purpose=OneTimeLink.Purpose.RESET, person=person).update(
            expires_at=timezone.now()
        )
        _link, token = OneTimeLink.objects.issue(purpose=OneTimeLink.Purpose.RESET, person=person, created_by=by)
    return token


def accept_invitation(*, link: OneTimeLink, sign_in_name: str, display_name: str, email: str, passphrase: str) -> User:
    with transaction.atomic():
        spend(link)
        person = User(sign_in_name=sign_in_name, display_name=display_name, email=email, role=link.role)
        person.set_password(passphrase)
        person.save()
        link.person = person
        link.save(update_fields=["person"])
    return person


def take_new_passphrase(*, link: OneTimeLink, passphrase: str) -> User:
    """Set the passphrase a reset link is for. Sessions from before end with it."""
    with transaction.atomic():
        spend(link)
        person = link.reset_for
        person.set_password(passphrase)
        person.save(update_fields=["password"])
    return person


def spend(link: OneTimeLink) -> None:
    """Use a link up, in one statement, so that of two people sending it at once only one gets through."""
    now = timezone.now()
    if not OneTimeLink.objects.usable(now).filter(pk=link.pk).update(used_at=now):
        raise LinkUsed


def change_role(*, person: User, role: str) -> None:
    with transaction.atomic():
        if role != User.Role.ADMINISTRATOR:
            require_another_administrator(person)
        person.role = role
        person.save(update_fields=["role"])


def close_account(*, person: User) -> None:
    with transaction.atomic():
        require_another_administrator(person)
        person.leave()


def require_another_administrator(person: User) -> None:
    """Of two who would go at the same moment one waits, with all of them locked in one order, and finds herself the last."""
    administrators = list(User.objects.select_for_update().administrators().order_by("pk"))
    if administrators == [person]:
        raise LastAdministrator


def found_school(*, school: School, administrator: User, passphrase: str | None) -> School:
    """Save the one school and its first administrator. Without a passphrase (demo), sign-in is by one click only."""
    with transaction.atomic():
        school.pk = 1
        school.save(force_insert=True)
        administrator.role = User.Role.ADMINISTRATOR
        if passphrase is None:
            administrator.set_unusable_password()
        else:
            administrator.set_password(passphrase)
        administrator.save()
    return school
