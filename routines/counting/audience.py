"""For whom a text is written."""

from dataclasses import dataclass

from .errors import CountError
from .languages import LANGUAGES

# Whom the engine has in mind where nobody says (EXACT 29): between those who learn the tables and those who conjecture.
DEFAULT_LEVEL = 4


@dataclass(frozen=True, slots=True)
class Audience:
    """A grade level, 0 (kindergarten) to 8, and a language.

    Raises: CountError on `level` or `language`.
    """

    level: int = 3
    language: str = "en"

    def __post_init__(self) -> None:
        if isinstance(self.level, bool) or not isinstance(self.level, int) or not 0 <= self.level <= 8:
            raise CountError("level", "no-level")
        if self.language not in LANGUAGES:
            raise CountError("language", "no-language")


def level_of(audience: Audience | None) -> int:
    """The level that an order is made for."""
    return DEFAULT_LEVEL if audience is None else audience.level


def band_of(level: int) -> int:
    """Say which of the four level bands a level belongs to: 0 for K-1, 1 for 2-3, 2 for 4-5, 3 above.

    >>> [band_of(level) for level in range(9)]
    [0, 0, 1, 1, 2, 2, 3, 3, 3]
    """
    return min(level // 2, 3)
