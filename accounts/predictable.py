"""How much of a passphrase is left to guess once its patterns are seen: whatever they are joined to, they are tried first.

Patterns are well-known words, repetition, runs of the alphabet, of digits and along the keyboard, and years. A
passphrase is never refused for holding one, only where hardly anything else is in it (NIST SP 800-63B-4 3.1.1.2 compares
whole passphrases, not the words in them), and no kind of character is asked for.
"""

import gzip
import unicodedata
from functools import cache
from itertools import pairwise
from pathlib import Path

from django.contrib.auth import password_validation

OUR_LIST = Path(__file__).parent / "data" / "blocked_passphrases.txt"
# The 20,000 passwords most often found in published breaches, as Django ships them.
COMMON_LIST = Path(password_validation.__file__).parent / "common-passwords.txt.gz"

# In characters that nothing predicts. Three letters make 17,576 texts, about as many as there are well-known words.
WORD, RUN, YEAR, COPY = 3, 1, 1, 1
SHORTEST_WORD, LONGEST_WORD = 4, 40
SHORTEST_RUN = 3
LONGEST_REPEATED = 12
# Whoever gets nowhere in this many characters is tried first, whatever follows.
LOOKED_AT = 100

KEYBOARD = (
    "1234567890",
    "qwertyuiopasdfghjklzxcvbnm",
    "qwertzuiopasdfghjklyxcvbnm",
    "azertyuiopqsdfghjklmwxcvbn",
    "1qaz2wsx3edc4rfv5tgb6yhn7ujm8ik9ol0p",
    "zaq12wsxcde34rfvbgt56yhnmju78ik",
    "qazwsxedcrfvtgbyhnujmikolp",
    "1q2w3e4r5t6y7u8i9o0p",
    "q1w2e3r4t5y6u7i8o9p0",
)
WALKS = tuple(walk * 2 for path in KEYBOARD for walk in (path, path[::-1]))
STANDS_FOR = str.maketrans("@4301$57", "aaeoisst")


def plain_letters(text: str) -> str:
    """Letters, marks and digits in one case, so that spaces, dots and capitals don't hide a well-known phrase."""
    return "".join(sign for sign in text.casefold() if is_letter(sign))


def is_letter(sign: str) -> bool:
    """Letters and digits of any script, with the marks that some scripts write their vowels as."""
    return sign.isalnum() or unicodedata.category(sign).startswith("M")


@cache
def blocked_phrases() -> frozenset[str]:
    lines = OUR_LIST.read_text(encoding="utf-8").splitlines()
    return frozenset(plain_letters(line) for line in lines if line and not line.startswith("#"))


@cache
def common_words() -> frozenset[str]:
    with gzip.open(COMMON_LIST, "rt", encoding="utf-8") as file:
        words = {plain_letters(line) for line in file}
    return frozenset(word for word in words | blocked_phrases() if SHORTEST_WORD <= len(word) <= LONGEST_WORD)


def left_to_guess(passphrase: str) -> int:
    """How many characters it is worth. Units: characters that nothing predicts.

    >>> [left_to_guess(typed) for typed in ("Password123456!", "monkey monkey monkey", "kolibri under a tin roof")]
    [4, 5, 18]
    """
    lowered = passphrase.casefold()
    text = "".join(sign for sign in lowered if is_letter(sign) or sign in "@$")[:LOOKED_AT]
    others = {sign for sign in lowered if not (is_letter(sign) or sign.isspace() or sign in "@$")}
    return len(others) + _cheapest(text)


def _cheapest(text: str) -> int:
    """The least that the text is worth, over all ways to cut it into patterns and single characters."""
    letters = text.translate(STANDS_FOR)
    worth = [0] * (len(text) + 1)
    for end in range(1, len(text) + 1):
        worth[end] = worth[end - 1] + 1
        for start in range(end - SHORTEST_RUN, -1, -1):
            price = _price(text, letters, start, end)
            if price is not None:
                worth[end] = min(worth[end], worth[start] + price)
    return worth[-1]


def _price(text: str, letters: str, start: int, end: int) -> int | None:
    """What the piece from start to end is worth as a pattern; None where it is none."""
    piece = text[start:end]
    if piece in text[:start]:
        return COPY
    if is_run(piece):
        return RUN
    if len(piece) == 4 and piece.isdecimal() and piece[:2] in ("19", "20"):
        return YEAR
    known = SHORTEST_WORD <= len(piece) <= LONGEST_WORD and not common_words().isdisjoint((piece, letters[start:end]))
    comes_again = len(piece) <= LONGEST_REPEATED and piece in text[end:]
    return WORD if known or comes_again else None


def is_run(piece: str) -> bool:
    """One character again and again, equal steps through the alphabet or the digits, or a walk along the keyboard."""
    steps = {ord(after) - ord(before) for before, after in pairwise(piece)}
    return (len(steps) == 1 and -2 <= min(steps) <= 2) or any(piece in walk for walk in WALKS)
