"""Which landmarks to ring, by kind and base unit, the better ones first (common practice, no source).

Where no count lands on one of the friendliest, the first counts past one are ringed: a hundred crossed says more than fives.
"""

from fractions import Fraction

from .names import Kind

_WHOLES = (Fraction(1), Fraction(1, 2))
_HOURS = (Fraction(60), Fraction(30))

# The friendliest of each kind.
FRIENDLIEST: dict[tuple[str, str], tuple[Fraction, ...]] = {
    (Kind.WHOLE, ""): (Fraction(10), Fraction(100), Fraction(1000)),
    (Kind.DECIMAL, ""): _WHOLES,
    (Kind.FRACTION, ""): _WHOLES,
    (Kind.LENGTH, "in"): (Fraction(12), Fraction(6)),
    (Kind.LENGTH, "cm"): (Fraction(100), Fraction(50)),
    (Kind.MASS, "oz"): (Fraction(16), Fraction(8)),
    (Kind.MASS, "g"): (Fraction(1000), Fraction(500)),
    (Kind.CAPACITY, "fl oz"): (Fraction(8), Fraction(16), Fraction(32), Fraction(128)),
    (Kind.CAPACITY, "mL"): (Fraction(1000), Fraction(500)),
    (Kind.CLOCK, "min"): _HOURS,
    (Kind.ELAPSED, "min"): _HOURS,
    # In smallest units.
    (Kind.MONEY, ""): (Fraction(100), Fraction(50)),
}
# The others that have a name of their own.
LESS_FRIENDLY: dict[tuple[str, str], tuple[Fraction, ...]] = {
    (Kind.WHOLE, ""): (Fraction(50), Fraction(25), Fraction(5)),
    (Kind.DECIMAL, ""): (Fraction(10), Fraction(1, 10)),
    (Kind.FRACTION, ""): (Fraction(10),),
    (Kind.LENGTH, "in"): (Fraction(36), Fraction(1)),
    (Kind.LENGTH, "cm"): (Fraction(10), Fraction(1)),
    (Kind.MASS, "oz"): (),
    (Kind.MASS, "g"): (Fraction(100),),
    (Kind.CAPACITY, "fl oz"): (),
    (Kind.CAPACITY, "mL"): (Fraction(250), Fraction(100)),
    (Kind.CLOCK, "min"): (Fraction(15),),
    (Kind.ELAPSED, "min"): (Fraction(15),),
    (Kind.MONEY, ""): (Fraction(1000), Fraction(25), Fraction(10), Fraction(500)),
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
