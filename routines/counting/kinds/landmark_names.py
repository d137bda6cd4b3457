"""What landmarks are called, by kind and base unit, the better ones to ring first (common practice, no source)."""

from fractions import Fraction

from .names import Kind

_HOURS = {
    Fraction(60): ("hours", "horas"),
    Fraction(30): ("half hours", "medias horas"),
    Fraction(15): ("quarter hours", "cuartos de hora"),
}
_WHOLES = {Fraction(1): ("wholes", "enteros"), Fraction(1, 2): ("halves", "mitades")}

LANDMARK_NAMES: dict[tuple[str, str], dict[Fraction, tuple[str, str]]] = {
    (Kind.WHOLE, ""): {
        Fraction(10): ("tens", "decenas"),
        Fraction(100): ("hundreds", "centenas"),
        Fraction(1000): ("thousands", "millares"),
        Fraction(50): ("fifties", "múltiplos de cincuenta"),
        Fraction(25): ("twenty-fives", "múltiplos de veinticinco"),
        Fraction(5): ("fives", "múltiplos de cinco"),
        Fraction(12): ("dozens", "docenas"),
    },
    (Kind.DECIMAL, ""): {
        **_WHOLES,
        Fraction(10): ("tens", "decenas"),
        Fraction(1, 10): ("tenths", "décimas"),
    },
    (Kind.FRACTION, ""): {**_WHOLES, Fraction(10): ("tens", "decenas")},
    (Kind.LENGTH, "in"): {
        Fraction(12): ("feet", "pies"),
        Fraction(36): ("yards", "yardas"),
        Fraction(1): ("inches", "pulgadas"),
        Fraction(6): ("half feet", "medios pies"),
    },
    (Kind.LENGTH, "cm"): {
        Fraction(100): ("meters", "metros"),
        Fraction(50): ("half meters", "medios metros"),
        Fraction(1): ("centimeters", "centímetros"),
        Fraction(10): ("decimeters", "decímetros"),
    },
    (Kind.MASS, "oz"): {Fraction(16): ("pounds", "libras"), Fraction(8): ("half pounds", "medias libras")},
    (Kind.MASS, "g"): {
        Fraction(1000): ("kilograms", "kilogramos"),
        Fraction(500): ("half kilograms", "medios kilogramos"),
        Fraction(100): ("hundreds of grams", "centenas de gramos"),
    },
    (Kind.CAPACITY, "fl oz"): {
        Fraction(8): ("cups", "tazas"),
        Fraction(16): ("pints", "pintas"),
        Fraction(32): ("quarts", "cuartos de galón"),
        Fraction(128): ("gallons", "galones"),
    },
    (Kind.CAPACITY, "mL"): {
        Fraction(1000): ("liters", "litros"),
        Fraction(500): ("half liters", "medios litros"),
        Fraction(250): ("quarter liters", "cuartos de litro"),
        Fraction(100): ("deciliters", "decilitros"),
    },
    (Kind.CLOCK, "min"): _HOURS,
    (Kind.ELAPSED, "min"): _HOURS,
}

# Money is ringed at these, in smallest units, under the names of its own coins where it has them.
MONEY_MULTIPLES = tuple(map(Fraction, (100, 1000, 50, 25, 10, 500)))
# Source: 31 U.S.C. 5112(a): half dollar, quarter dollar, dime.
COIN_NAMES: dict[tuple[str, str], dict[Fraction, str]] = {
    ("USD", "en"): {Fraction(50): "half dollars", Fraction(25): "quarters", Fraction(10): "dimes"},
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
