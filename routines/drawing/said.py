"""What is drawn of patterns and ideas: the engine's facts, and for each pattern one line in words, which is given."""

from dataclasses import Field
from typing import Any, ClassVar, Protocol

from routines.counting import Claim


class SaidPattern(Protocol):
    """A pattern with the line that says it."""

    __dataclass_fields__: ClassVar[dict[str, Field[Any]]]

    @property
    def claim(self) -> Claim: ...

    @property
    def groups(self) -> tuple[tuple[int, ...], ...]: ...

    @property
    def cells(self) -> tuple[int, ...]: ...

    @property
    def holds(self) -> str: ...

    @property
    def breaks_at(self) -> int | None: ...

    @property
    def statement(self) -> str: ...


class SaidIdea(Protocol):
    """An idea with the pattern that shows it."""

    @property
    def seen_at(self) -> int: ...

    @property
    def dies_at(self) -> int | None: ...

    @property
    def pattern(self) -> SaidPattern: ...
