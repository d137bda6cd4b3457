"""The one error of the counting engine: what is wrong and where, as a code with its values and no sentence."""

from collections.abc import Mapping
from functools import partial
from types import MappingProxyType
from typing import Final

Value = str | int | tuple[str, ...]
"""A number, what was typed, a name that has words of its own (of a parameter, a measure, a currency), or what is offered."""


class CountError(ValueError):
    """Something typed or asked for cannot be a count: `field` names where, `code` what is wrong, `values` what belongs to it.

    `routines.errors` says it in the language of the page; `str()` is for programmers.

    >>> error = CountError("terms", "terms-out-of-range", least=2, most=200)
    >>> error.field, error.code, error.values["most"], str(error)
    ('terms', 'terms-out-of-range', 200, 'terms: terms-out-of-range (least=2, most=200)')
    """

    def __init__(self, field: str, code: str, /, **values: Value) -> None:
        super().__init__(field, code)
        self.field: Final = field
        self.code: Final = code
        self.values: Final[Mapping[str, Value]] = MappingProxyType(values)

    def on(self, field: str) -> "CountError":
        """The same, where what was read belongs to a field by another name."""
        return CountError(field, self.code, **self.values)

    def __str__(self) -> str:
        values = ", ".join(f"{name}={value!r}" for name, value in self.values.items())
        return f"{self.field}: {self.code}" + (f" ({values})" if values else "")

    def __reduce__(self) -> tuple[partial["CountError"], tuple[str, str]]:
        return partial(type(self), **self.values), (self.field, self.code)
