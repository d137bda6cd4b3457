"""Claims as data: what can be said of a grid, in a form that is stored, exported and judged.

A `Claim` has a family and the parameters of that family, no more. Exact values are `Fraction`s inside and strings in
lowest terms ("3/4", "-7") in `as_dict`. A parameter that is left out means "any value" (`check` and `design_grids`
understand that; what `find_patterns` lists is always complete).
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from .claim_parameters import ALONG, DIRECTIONS, FAMILIES, LIES, PARAMETERS, SUMS, checked
from .errors import CountError

__all__ = ["ALONG", "DIRECTIONS", "FAMILIES", "LIES", "PARAMETERS", "SUMS", "Claim"]


class Claim:
    """One claim about a grid: a family and its parameters, checked when made, never changed after.

    Raises: CountError on `family` or on the name of the parameter that is wrong.

    >>> claim = Claim("digit", place=0, along="column", blocks=[[1, 6], [2, 7]])
    >>> claim.get("blocks")
    ((1, 6), (2, 7))
    >>> Claim.from_dict(claim.as_dict()) == claim
    True
    """

    __slots__ = ("_key", "family", "parameters")

    family: str
    parameters: Mapping[str, Any]
    _key: tuple[Any, ...] | None

    def __init__(self, family: str, /, **parameters: Any) -> None:
        _fill(self, family, checked(family, parameters))

    @classmethod
    def trusted(cls, family: str, parameters: dict[str, Any]) -> Claim:
        """Make a claim from parameters already in their checked form and order (for the finders: no second check)."""
        claim = cls.__new__(cls)
        _fill(claim, family, parameters)
        return claim

    @classmethod
    def from_dict(cls, data: Mapping[str, Any]) -> Claim:
        """Read a claim that was stored or sent.

        Raises: CountError as for the constructor.
        """
        if not isinstance(data, Mapping) or not isinstance(data.get("family"), str):
            raise CountError("family", f"Say which family the claim is of: {', '.join(PARAMETERS)}.")
        return cls(data["family"], **{str(name): value for name, value in data.items() if name != "family"})

    def as_dict(self) -> dict[str, Any]:
        """Give the claim as plain data for JSON: exact values as strings, tuples as lists."""
        return {"family": self.family, **{name: _plain(value) for name, value in self.parameters.items()}}

    def get(self, name: str, default: Any = None) -> Any:
        """Give a parameter's value, or `default` where it is left out."""
        return self.parameters.get(name, default)

    @property
    def length(self) -> int | None:
        """The length k of the repeating blocks, as far as the claim says it."""
        if self.get("length") is not None:
            return int(self.parameters["length"])
        blocks = self.get("blocks")
        return max(map(len, blocks)) if blocks else None

    def with_(self, **changes: Any) -> Claim:
        """Give the same claim with some parameters changed; None leaves a parameter out."""
        merged = {**self.parameters, **changes}
        return Claim(self.family, **{name: value for name, value in merged.items() if value is not None})

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError("A claim never changes; make another one.")

    def __delattr__(self, name: str) -> None:
        raise AttributeError("A claim never changes; make another one.")

    def _identity(self) -> tuple[Any, ...]:
        if self._key is None:
            object.__setattr__(self, "_key", (self.family, *sorted(self.parameters.items())))
        assert self._key is not None
        return self._key

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Claim):
            return NotImplemented
        return self.family == other.family and self.parameters == other.parameters

    def __hash__(self) -> int:
        return hash(self._identity())

    def __repr__(self) -> str:
        return f"Claim({self.family!r}, {', '.join(f'{k}={_plain(v)!r}' for k, v in self.parameters.items())})"

    def __reduce__(self) -> tuple[Any, ...]:
        return (Claim.trusted, (self.family, dict(self.parameters)))


def _fill(claim: Claim, family: str, parameters: dict[str, Any]) -> None:
    object.__setattr__(claim, "family", family)
    object.__setattr__(claim, "parameters", parameters)
    object.__setattr__(claim, "_key", None)


def _plain(value: Any) -> Any:
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    return str(value) if isinstance(value, Fraction) else value
