"""What a class will probably say at one count instead of what is due there."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Slip:
    """A predictable answer at the `n`-th count.

    rule: the id of its rule. heard, correct: what is said or written, and what is due. equal_name: `heard` is the same
    number in another form, so it is no error. of_writing: whether it is about how one number is written or named, not
    about the jump to it.
    """

    rule: str
    n: int
    heard: str
    correct: str
    equal_name: bool = False
    of_writing: bool = False
