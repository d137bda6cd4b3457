"""The shape of the sentences about one slip, and what may stand between their braces."""

from typing import NamedTuple


class InTwo(NamedTuple):
    """One sentence in both languages."""

    en: str
    es: str

    def in_language(self, language: str) -> str:
        return self.es if language == "es" else self.en


class SlipWords(NamedTuple):
    """Sentences about one slip.

    why: what happens, for the teacher. ask: a question that does not give the answer away; what sends children back
    to the grid is added to it. show: a shorter question for K-1, where the slip is met there.
    of_writing: whether it is about how one number is written or named, not about the jump to it.
    Between braces: {a} the count before, {b} the count that is due (in why only), {size} the size of a jump,
    {joined} whether it is added or taken away, {start} the first count; {small}, {smalls} and {large} the units or
    coins of the count by name.
    """

    why: InTwo
    ask: InTwo
    show: InTwo | None = None
    of_writing: bool = False
