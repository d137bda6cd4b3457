"""What a family's finder and judge hand on: facts without words."""

from __future__ import annotations

from typing import NamedTuple

from ..claims import Claim


class Found(NamedTuple):
    """A claim that is true of the view and can be seen in it, with the cells that show it and the term it breaks at."""

    claim: Claim
    groups: tuple[tuple[int, ...], ...]
    breaks_at: int | None
    holds: str

    @classmethod
    def of(cls, claim: Claim, groups: tuple[tuple[int, ...], ...], breaks_at: int | None = None) -> Found:
        """A find that always holds unless it breaks."""
        return cls(claim, groups, breaks_at, "always" if breaks_at is None else "shown")

    @property
    def cells(self) -> tuple[int, ...]:
        if len(self.groups) == 1:  # each group is in counting order already
            return self.groups[0]
        return tuple(sorted({n for group in self.groups for n in group}))


class Judged(NamedTuple):
    """A claim judged on one grid; the fields are those of a `Verdict` without its words."""

    true: bool
    seen: bool
    holds: str | None
    true_from: int | None
    breaks_at: int | None
    counterexample: tuple[int, ...] = ()

    @classmethod
    def so(cls, seen: bool, breaks_at: int | None = None, true_from: int | None = None) -> Judged:
        """True of the view; always, unless it breaks."""
        if breaks_at is None:
            return cls(True, seen, "always", 1, None)
        return cls(True, seen, "shown", true_from, breaks_at)

    @classmethod
    def not_so(cls, counterexample: tuple[int, ...] = (), true_from: int | None = None) -> Judged:
        """False of the view, contradicted by the last of these terms."""
        return cls(False, False, None, true_from, counterexample[-1] if counterexample else None, counterexample)
