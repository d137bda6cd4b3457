"""Which landmarks to ring, by kind and base unit, the better ones first (common practice, no source)."""

from fractions import Fraction

from .names import Kind

_HOURS = (
    Fraction(60),
    Fraction(30),
    Fraction(15),
)
_WHOLES = (Fraction(1), Fraction(1, 2))

RINGED: dict[tuple[str, str], tuple[Fraction, ...]] = {
    (Kind.WHOLE, ""): (
        Fraction(10),
        Fraction(100),
        Fraction(1000),
        Fraction(50),
        Fraction(25),
        Fraction(5),
        Fraction(12),
    ),
    (Kind.DECIMAL, ""): (
        *_WHOLES,
        Fraction(10),
        Fraction(1, 10),
    ),
    (Kind.FRACTION, ""): (*_WHOLES, Fraction(10)),
    (Kind.LENGTH, "in"): (
        Fraction(12),
        Fraction(36),
        Fraction(1),
        Fraction(6),
    ),
    (Kind.LENGTH, "cm"): (
        Fraction(100),
        Fraction(50),
        Fraction(1),
        Fraction(10),
    ),
    (Kind.MASS, "oz"): (Fraction(16), Fraction(8)),
    (Kind.MASS, "g"): (
        Fraction(1000),
        Fraction(500),
        Fraction(100),
    ),
    (Kind.CAPACITY, "fl oz"): (
        Fraction(8),
        Fraction(16),
        Fraction(32),
        Fraction(128),
    ),
    (Kind.CAPACITY, "mL"): (
        Fraction(1000),
        Fraction(500),
        Fraction(250),
        Fraction(100),
    ),
    (Kind.CLOCK, "min"): _HOURS,
    (Kind.ELAPSED, "min"): _HOURS,
    # In smallest units.
    (Kind.MONEY, ""): tuple(map(Fraction, (100, 1000, 50, 25, 10, 500))),
}

# In which unit a multiple of the base unit is one: 16 oz are 1 lb.
RENAMED_IN: dict[tuple[str, Fraction], str] = {
    ("in", Fraction(12)): "ft",
    ("in", Fraction(36)): "yd",
    ("cm", Fraction(100)): "m",
    ("oz", Fraction(16)): "lb",
    ("g", Fraction(1000)): "kg",
    ("fl oz", Fraction(8)): "cup",
    ("fl oz", Fraction(16)): "pt",
    ("fl oz", Fraction(32)): "qt",
    ("fl oz", Fraction(128)): "gal",
    ("mL", Fraction(1000)): "L",
    ("min", Fraction(60)): "h",
}
