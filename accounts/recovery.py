"""Making the recovery code, and getting back in with it."""

from django.db import transaction

from .models import RecoveryCode, School, User
from .models.recovery_code import hash_code, new_code


class CodeRefused(Exception):
    """No such code that is still good, or no administrator of that name: which of the two is not said."""


def make_recovery_code(*, by: User) -> str:
    """Hands back the code, once; the one until now stops working."""
    code = new_code()
    with transaction.atomic():
        School.objects.select_for_update().first()  # of two at once one waits, so that one code works
        RecoveryCode.objects.usable().delete()
        RecoveryCode.objects.create(made_by=by, code_hash=hash_code(code))
    return code


def meant_by(name: str, code: str) -> User:
    """The administrator who may choose a new passphrase. Raises CodeRefused."""
    person = User.objects.administrators().for_sign_in(name).first()
    if not RecoveryCode.objects.usable().for_typed(code).exists() or person is None:
        raise CodeRefused
    return person


def recover(*, person: User, code: str, passphrase: str) -> None:
    """Use the code up and set the passphrase, with which the sessions from before end. Raises CodeRefused."""
    with transaction.atomic():
        if not RecoveryCode.objects.spend(code, by=person):
            raise CodeRefused
        person.set_password(passphrase)
        person.save(update_fields=["password"])
