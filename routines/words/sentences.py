"""How many words suit a level, and the small marks of a sentence."""

import re
from collections.abc import Callable, Iterable, Mapping

# The most words in which a child says what it sees, by level (EXACT 30; common practice, no source).
MOST_WORDS_OF_A_CHILD = (12, 12, 12, 16, 16, 16, 20, 20, 20)
# Words that a class of that level takes in, and the most a reason may take: K-1, 2-3, 4-5, 6 and up.
STUDENT_BANDS = ((6, 14), (12, 25), (15, 35), (15, 45))
REASON_LIMITS = (14, 25, 35, 45)


def sentence(text: str) -> str:
    """Begin with a capital and end with a full stop, unless it ends in dots already."""
    return capital(text) if text.endswith(".") else capital(text) + "."


def capital(text: str) -> str:
    """Begin with a capital letter; a number at the front stays as it is."""
    return text[:1].upper() + text[1:]


def opening(text: str) -> str:
    """The first two words, by which two answers sound alike."""
    return " ".join(text.casefold().split()[:2])


def first_that_fits(candidates: Iterable[Callable[[], str]], least: int, most: int) -> str:
    """Take the first candidate of `least` to `most` words; where amounts are too long for that, the shortest above."""
    above, short = "", ""
    for make in candidates:
        text = make()
        length = text.count(" ") + 1
        if least <= length <= most:
            return text
        if length < least:
            short = max(short, text, key=len)
        elif not above or len(text) < len(above):
            above = text
    return above or short


def filled(sentence: str, facts: Mapping[str, str]) -> str:
    """Put the facts into a sentence; a time that ends in "a.m." brings the full stop with it.

    >>> filled("We say {before}, then {after}.", {"before": "11:50 a.m.", "after": "12:10 p.m."})
    'We say 11:50 a.m., then 12:10 p.m.'
    """
    return re.sub(r"\b([ap]\. ?m\.)\.", r"\1", sentence.format_map(facts))
