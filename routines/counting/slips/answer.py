"""One answer at one count, heard or foreseen, and whether it is another in a different form."""

from fractions import Fraction
from functools import cached_property

from ..kinds.names import Kind
from ..languages import LANGUAGES
from .jump import Jump
from .reading import offset, plain, value_of
from .rule import Rule


class Answer:
    """A text at a jump, with what it says as a number."""

    def __init__(self, jump: Jump, text: str) -> None:
        self.jump = jump
        self.text = text

    @cached_property
    def plain(self) -> str:
        return plain(self.jump.count, self.text)

    @cached_property
    def value(self) -> Fraction | None:
        """The number it says; None where nobody may write it so."""
        known = self.jump.written_values.get(self.text)
        if known is None and self.text == self.jump.said and self.jump.count.wrap is None:
            return self.jump.a
        return value_of(self.jump.count, self.text) if known is None else known

    @cached_property
    def is_due(self) -> bool:
        """Whether it names what is due, in whatever form."""
        if self.value is None:
            return False
        if self.jump.count.wrap is None:
            return self.value == self.jump.b
        return offset(self.jump.count, self.value, self.text, self.jump.n) == 0

    @cached_property
    def words(self) -> set[str]:
        """How its number is said."""
        if self.value is None:
            return set()
        return {plain(self.jump.count, self.jump.count.words_of(self.value, language)) for language in LANGUAGES}


def is_of_one_value(rule: Rule, foreseen: Answer, said: Answer) -> bool:
    """Whether what was said is what the rule foresees in another form (decimals differ in how they are read)."""
    if rule.only_as_written or foreseen.value is None or foreseen.is_due:
        return False
    if said.value is None:
        return any(sign.isalpha() for sign in said.text[:1]) and said.plain in foreseen.words
    return foreseen.jump.count.kind != Kind.DECIMAL and said.value == foreseen.value
