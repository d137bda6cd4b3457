"""What a passphrase must be: long, and not one that everybody tries first. No rules about kinds of characters."""

from functools import cache
from pathlib import Path

from django.core.exceptions import ValidationError

from .models import School, User

SHORTEST = 15
BLOCKED = Path(__file__).parent / "data" / "blocked_passphrases.txt"
LONGEST_REPEATED = 5


class LengthValidator:
    def validate(self, passphrase: str, user: User | None = None) -> None:
        if len(passphrase) < SHORTEST:
            raise ValidationError(f"Use {SHORTEST} characters or more. Four or five words do it.")

    def get_help_text(self) -> str:
        return f"{SHORTEST} characters or more."


class BlocklistValidator:
    """Refuses well-known phrases, repetition, runs along the keyboard or the alphabet, and the person's own names."""

    def validate(self, passphrase: str, user: User | None = None) -> None:
        plain = plain_letters(passphrase)
        if plain in blocked_phrases() or is_repetition(plain) or is_run(plain):
            raise ValidationError("Many people would try this one. Choose words that don't belong together.")
        if left_after_names(plain, user) < SHORTEST // 2:
            raise ValidationError("This is mostly your own name or the school's. Choose other words.")

    def get_help_text(self) -> str:
        return "Nothing that others would try first."


def plain_letters(text: str) -> str:
    """Letters and digits in one case, so that spaces, dots and capitals don't hide a well-known phrase."""
    return "".join(character for character in text.casefold() if character.isalnum())


@cache
def blocked_phrases() -> frozenset[str]:
    lines = BLOCKED.read_text(encoding="utf-8").splitlines()
    return frozenset(plain_letters(line) for line in lines if line and not line.startswith("#"))


def is_repetition(plain: str) -> bool:
    return any(
        plain == (plain[:size] * (len(plain) // size + 1))[: len(plain)] for size in range(1, LONGEST_REPEATED + 1)
    )


RUNS = ("abcdefghijklmnopqrstuvwxyz", "01234567890123456789", "qwertyuiopasdfghjklzxcvbnm")


def is_run(plain: str) -> bool:
    return any(plain in run * 2 or plain[::-1] in run * 2 for run in RUNS)


def left_after_names(plain: str, user: User | None) -> int:
    """How many characters are left once the person's names and the school's are taken out."""
    names = [user.sign_in_name, user.email.partition("@")[0], *user.display_name.split()] if user else []
    school = School.objects.first()
    if school:
        names += school.name.split()
    for name in sorted((plain_letters(name) for name in names), key=len, reverse=True):
        if len(name) >= 3:
            plain = plain.replace(name, "")
    return len(plain)
