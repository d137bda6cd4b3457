"""The number kinds by name, and one settled instance for each count's style."""

from fractions import Fraction
from functools import lru_cache

from ..errors import CountError
from ..style import Style
from .clock import Clock
from .decimal import DecimalNumber
from .fraction import FractionNumber
from .kind import NumberKind
from .measure import Capacity, Elapsed, Length, Mass
from .money import Money
from .whole import Whole

KINDS: dict[str, type[NumberKind]] = {
    kind.name: kind for kind in (Whole, DecimalNumber, FractionNumber, Length, Mass, Capacity, Money, Clock, Elapsed)
}


def kind_named(name: object) -> type[NumberKind]:
    """The number kind of this name. Raises: CountError on `kind`."""
    if not isinstance(name, str) or name not in KINDS:
        raise CountError("kind", "unknown-kind", choices=tuple(KINDS))
    return KINDS[name]


@lru_cache(maxsize=512)
def number_kind(name: str, style: Style, grain: Fraction) -> NumberKind:
    """The kind settled for multiples of `grain` in this style. Raises: CountError on `kind`, `style` or `step`."""
    return kind_named(name)(style, grain)
