"""Where words stand in a text: whole words, whatever their capitals, whatever stands between them.

Words are looked for by a keyed hash of each run of words as long as theirs, so that a list without words is enough to
find them again. The cost is one hash for each word of a text and each length looked for, a microsecond or two each.
"""

import hmac
import re
import unicodedata
from collections.abc import Iterable, Iterator
from functools import lru_cache

from django.conf import settings
from django.utils.crypto import salted_hmac

# The first that fits in its place is put there.
STUBS = ("[words removed]", "[…]", "…")
MOST_WORDS = 12
ANSWERS_HELD = 20_000
_ASCII_WORD = re.compile("[0-9A-Za-z]+")


def words_of(text: str) -> list[tuple[str, int, int]]:
    """Each word of the text in the form in which words are compared, with its first place and the one after its last.

    A word is a run of letters and digits; accents and signs that nobody sees belong to the letter before.

    >>> words_of("Maya’s idea")
    [('maya', 0, 4), ('s', 5, 6), ('idea', 7, 11)]
    """
    if text.isascii():  # most are, and this is many times as fast
        return [(word[0].lower(), *word.span()) for word in _ASCII_WORD.finditer(text)]
    found, begun = [], None
    for at, sign in enumerate(text):
        joins = sign.isalnum() or (begun is not None and unicodedata.category(sign) in ("Mn", "Mc", "Me", "Cf"))
        if joins and begun is None:
            begun = at
        elif not joins and begun is not None:
            found.append((compared(text[begun:at]), begun, at))
            begun = None
    if begun is not None:
        found.append((compared(text[begun:]), begun, len(text)))
    return found


def compared(word: str) -> str:
    """Without capitals and unseen signs, in one form; accents stay. Source: Unicode Standard 3.13, D145."""
    seen = "".join(sign for sign in word if unicodedata.category(sign) != "Cf")
    folded = unicodedata.normalize("NFD", seen).casefold()
    return unicodedata.normalize("NFC", folded)


@lru_cache(maxsize=4)
def _key(secret: str) -> bytes:
    return salted_hmac("routines.words_erased", "words", secret=secret, algorithm="sha256").digest()


def keyed(said: str) -> str:
    """A hash that only this server can make."""
    return hmac.digest(_key(settings.SECRET_KEY), said.encode(), "sha256").hex()


class Sought:
    """Some words to look for, each given by how many they are and their hash."""

    def __init__(self, marks: Iterable[tuple[int, str]]) -> None:
        self.by_length: dict[int, set[str]] = {}
        self._answers: dict[str, bool] = {}  # a school's texts say the same words over and over
        for length, mark in marks:
            self.by_length.setdefault(length, set()).add(mark)

    @classmethod
    def in_words(cls, text: str) -> "Sought":
        return cls([mark_of(text)])

    def spans(self, text: str) -> Iterator[tuple[int, int]]:
        """Where they stand, from left to right; where some overlap, from the first to the last of them."""
        words = words_of(text)
        from_to: tuple[int, int] | None = None
        for at in range(len(words)):
            end = max(
                (at + length for length in self.by_length if self._stands(words[at : at + length], length)), default=0
            )
            if not end:
                continue
            span = words[at][1], words[end - 1][2]
            if from_to is not None and span[0] < from_to[1]:
                from_to = from_to[0], max(span[1], from_to[1])
            else:
                if from_to is not None:
                    yield from_to
                from_to = span
        if from_to is not None:
            yield from_to

    def _stands(self, run: list[tuple[str, int, int]], length: int) -> bool:
        if len(run) != length:
            return False
        said = run[0][0] if length == 1 else " ".join(word for word, _, _ in run)
        if said not in self._answers:
            if len(self._answers) >= ANSWERS_HELD:
                self._answers.clear()
            self._answers[said] = keyed(said) in self.by_length[length]
        return self._answers[said]

    def stands_in(self, text: str) -> bool:
        return next(self.spans(text), None) is not None

    def taken_out(self, text: str, stub: str = STUBS[0]) -> str:
        kept, before = [], 0
        for first, end in self.spans(text):
            kept += [text[before:first], stub]
            before = end
        return "".join([*kept, text[before:]])


def mark_of(text: str) -> tuple[int, str]:
    """How many words these are, and their hash."""
    words = [word for word, _, _ in words_of(text)]
    return len(words), keyed(" ".join(words))
