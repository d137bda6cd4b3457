"""How much looking a search is: counted by arithmetic before it is done, and refused where it is too much."""

from __future__ import annotations

from dataclasses import dataclass, field
from math import ceil, floor

from ..errors import CountError
from .limits import Limits

MOST_LOOKS = 2_000_000
"""Looks at a cell that one search takes, at most. Measured: a microsecond each, so a few seconds of a small server."""

CHOICES = ("start", "step", "terms", "line_length")
"""The fields in which a search is given much or little to choose from."""


@dataclass(slots=True)
class Work:
    """How many looks at a cell a search within some limits has said it will take.

    Every loop whose length the limits decide says how long it will be before it begins, so that neither time nor memory
    runs away.
    """

    limits: Limits
    looks: int = field(default=0, init=False)

    def will_take(self, looks: int, *fields: str) -> None:
        """Say that so many more looks will be taken, because of these limits.

        Raises: CountError at the field with the most to choose from.
        """
        self.looks += looks
        if self.looks > MOST_LOOKS:
            raise self._too_much(fields)

    def _too_much(self, fields: tuple[str, ...]) -> CountError:
        choices = {name: self._choices(name) for name in fields}
        widest = max(choices, key=choices.__getitem__)
        many = choices[widest]
        if many < 2:
            return CountError("family", "too-much-to-look-through")
        if widest == "start":
            return CountError(widest, "too-many-starts", many=many)
        if widest == "step":
            return CountError(widest, "too-many-steps", many=many)
        if widest == "terms":
            return CountError(widest, "too-many-terms", many=many)
        return CountError(widest, "too-many-line-lengths", many=many)

    def _choices(self, name: str) -> int:
        """How many values a limit lets one choose from."""
        if name in ("terms", "line_length"):
            low, high = self.limits.terms if name == "terms" else self.limits.line_lengths
            return high - low + 1
        lowest, highest = self.limits.starts if name == "start" else self.limits.steps
        return max(0, floor(highest / self.limits.grain) - ceil(lowest / self.limits.grain) + 1)
