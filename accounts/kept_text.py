"""The fields of a form that was sent after its session had ended: carried through sign-in, then sent again."""

import json
from dataclasses import dataclass
from typing import Self

from django.http import HttpRequest

from .text import read_json

MOST_FIELDS = 2_000
MOST_CHARACTERS = 400_000


# "current": the passphrase until now, where one's own page asks for it.
SECRETS = ("csrfmiddlewaretoken", "current")


def is_secret(name: str) -> bool:
    return name in SECRETS or "pass" in name.lower()


@dataclass(frozen=True, slots=True)
class KeptText:
    """Posted (name, value) pairs in the order they came, without tokens and passphrases."""

    fields: tuple[tuple[str, str], ...]

    @classmethod
    def from_post(cls, request: HttpRequest) -> Self | None:
        pairs = [(name, value) for name, values in request.POST.lists() for value in values if not is_secret(name)]
        return cls(tuple(pairs)) if cls.fits(pairs) else None

    @classmethod
    def from_json(cls, text: str) -> Self | None:
        """Read what `as_json` wrote; None for anything else."""
        try:
            pairs = read_json(text)
            read = [(name, value) for name, value in pairs]
        except (ValueError, TypeError, RecursionError):
            return None
        all_text = all(isinstance(part, str) for pair in read for part in pair)
        return cls(tuple(read)) if all_text and cls.fits(read) else None

    @staticmethod
    def fits(pairs: list[tuple[str, str]]) -> bool:
        return 0 < len(pairs) <= MOST_FIELDS and sum(len(name) + len(value) for name, value in pairs) <= MOST_CHARACTERS

    def as_json(self) -> str:
        return json.dumps(self.fields, ensure_ascii=False)  # escaped, four times as much would be sent back
