"""English names of the landmarks that are ringed, by kind and base unit."""

from fractions import Fraction

from routines.counting.kinds.names import Kind

_HOURS = {
    Fraction(60): "hours",
    Fraction(30): "half hours",
    Fraction(15): "quarter hours",
}
_WHOLES = {Fraction(1): "wholes", Fraction(1, 2): "halves"}

RINGED: dict[tuple[str, str], dict[Fraction, str]] = {
    (Kind.WHOLE, ""): {
        Fraction(10): "tens",
        Fraction(100): "hundreds",
        Fraction(1000): "thousands",
        Fraction(50): "fifties",
        Fraction(25): "twenty-fives",
        Fraction(5): "fives",
    },
    (Kind.DECIMAL, ""): {
        **_WHOLES,
        Fraction(10): "tens",
        Fraction(1, 10): "tenths",
    },
    (Kind.FRACTION, ""): {**_WHOLES, Fraction(10): "tens"},
    (Kind.LENGTH, "in"): {
        Fraction(12): "feet",
        Fraction(36): "yards",
        Fraction(1): "inches",
        Fraction(6): "half feet",
    },
    (Kind.LENGTH, "cm"): {
        Fraction(100): "meters",
        Fraction(50): "half meters",
        Fraction(1): "centimeters",
        Fraction(10): "decimeters",
    },
    (Kind.MASS, "oz"): {Fraction(16): "pounds", Fraction(8): "half pounds"},
    (Kind.MASS, "g"): {
        Fraction(1000): "kilograms",
        Fraction(500): "half kilograms",
        Fraction(100): "hundreds of grams",
    },
    (Kind.CAPACITY, "fl oz"): {
        Fraction(8): "cups",
        Fraction(16): "pints",
        Fraction(32): "quarts",
        Fraction(128): "gallons",
    },
    (Kind.CAPACITY, "mL"): {
        Fraction(1000): "liters",
        Fraction(500): "half liters",
        Fraction(250): "quarter liters",
        Fraction(100): "deciliters",
    },
    (Kind.CLOCK, "min"): _HOURS,
    (Kind.ELAPSED, "min"): _HOURS,
}

# Source of the names of coins: 31 U.S.C. 5112(a): half dollar, quarter dollar, dime.
COINS: dict[str, dict[Fraction, str]] = {
    "USD": {Fraction(50): "half dollars", Fraction(25): "quarters", Fraction(10): "dimes"}
}
