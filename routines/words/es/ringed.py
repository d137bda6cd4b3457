"""Spanish names of the landmarks that are ringed, by kind and base unit."""

from fractions import Fraction

from routines.counting.kinds.names import Kind

_HOURS = {
    Fraction(60): "horas",
    Fraction(30): "medias horas",
    Fraction(15): "cuartos de hora",
}
_WHOLES = {Fraction(1): "enteros", Fraction(1, 2): "mitades"}

RINGED: dict[tuple[str, str], dict[Fraction, str]] = {
    (Kind.WHOLE, ""): {
        Fraction(10): "decenas",
        Fraction(100): "centenas",
        Fraction(1000): "millares",
        Fraction(50): "múltiplos de cincuenta",
        Fraction(25): "múltiplos de veinticinco",
        Fraction(5): "múltiplos de cinco",
    },
    (Kind.DECIMAL, ""): {
        **_WHOLES,
        Fraction(10): "decenas",
        Fraction(1, 10): "décimas",
    },
    (Kind.FRACTION, ""): {**_WHOLES, Fraction(10): "decenas"},
    (Kind.LENGTH, "in"): {
        Fraction(12): "pies",
        Fraction(36): "yardas",
        Fraction(1): "pulgadas",
        Fraction(6): "medios pies",
    },
    (Kind.LENGTH, "cm"): {
        Fraction(100): "metros",
        Fraction(50): "medios metros",
        Fraction(1): "centímetros",
        Fraction(10): "decímetros",
    },
    (Kind.MASS, "oz"): {Fraction(16): "libras", Fraction(8): "medias libras"},
    (Kind.MASS, "g"): {
        Fraction(1000): "kilogramos",
        Fraction(500): "medios kilogramos",
        Fraction(100): "centenas de gramos",
    },
    (Kind.CAPACITY, "fl oz"): {
        Fraction(8): "tazas",
        Fraction(16): "pintas",
        Fraction(32): "cuartos de galón",
        Fraction(128): "galones",
    },
    (Kind.CAPACITY, "mL"): {
        Fraction(1000): "litros",
        Fraction(500): "medios litros",
        Fraction(250): "cuartos de litro",
        Fraction(100): "decilitros",
    },
    (Kind.CLOCK, "min"): _HOURS,
    (Kind.ELAPSED, "min"): _HOURS,
}

COINS: dict[str, dict[Fraction, str]] = {}
