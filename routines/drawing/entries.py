"""What stands in the cells where a grid is not simply the whole count: as it happened, or with places left free."""

from collections.abc import Mapping
from dataclasses import dataclass

STATES = ("written", "corrected", "prediction", "covered", "next", "free", "left-out")


@dataclass(frozen=True, slots=True)
class Entry:
    """One cell's state.

    state: written (as the count has it, or `text` as it was said), corrected (`said` is struck, `text` or the count
    stands full size), prediction (`text` is what a child expects), covered, next (where the class writes next), left-out
    (the class went on without saying it) or free.
    """

    state: str = "written"
    text: str = ""
    said: str = ""

    def __post_init__(self) -> None:
        if self.state not in STATES:
            raise ValueError(f"A cell is one of {', '.join(STATES)}, not {self.state!r}.")


Entries = Mapping[int, Entry]
EVERY_COUNT = Entry()
FREE = Entry("free")


def entry_for(n: int, entries: Entries | None, upto: int | None) -> Entry:
    """The state of term n: without entries every count up to `upto` is written; with them, only what they name."""
    if entries is not None:
        return entries.get(n, FREE)
    return FREE if upto is not None and n > upto else EVERY_COUNT
