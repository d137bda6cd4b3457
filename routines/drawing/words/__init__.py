"""The few words that drawings say themselves, a language a file."""

from .en import ENGLISH
from .es import SPANISH
from .needed import Words

WORDS: dict[str, Words] = {"en": ENGLISH, "es": SPANISH}

__all__ = ["WORDS", "Words"]
