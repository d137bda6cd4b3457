"""What a class will probably say at one count instead of what is due there."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Slip:
    """A predictable answer at the `n`-th count.

    rule: the id of its rule. heard, correct: what is said or written, and what is due. why: for the teacher.
    reply: what she may ask, without giving the answer away. equal_name: `heard` is the same number in another form,
    so it is no error.
    """

    rule: str
    n: int
    heard: str
    correct: str
    why: str
    reply: str
    equal_name: bool = False
