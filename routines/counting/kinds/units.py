"""The units a count may be written in, with their exact sizes.

Source: NIST Handbook 44, Appendix C (customary and metric units); BIPM SI Brochure, non-SI units accepted for use
with the SI (minute, hour, day).
"""

from dataclasses import dataclass
from fractions import Fraction

from .names import Kind


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit of one measure and system. `size` is in the base unit; `part` is the name of its number as a part."""

    symbol: str
    measure: Kind
    system: str | None
    size: Fraction
    part: str
    spellings: tuple[str, ...]


BASE_UNITS: dict[tuple[str, str | None], str] = {
    (Kind.LENGTH, "customary"): "in",
    (Kind.LENGTH, "metric"): "cm",
    (Kind.MASS, "customary"): "oz",
    (Kind.MASS, "metric"): "g",
    (Kind.CAPACITY, "customary"): "fl oz",
    (Kind.CAPACITY, "metric"): "mL",
    (Kind.ELAPSED, None): "min",
}

_ALL = (
    Unit("in", Kind.LENGTH, "customary", Fraction(1), "inches", ("inch", "inches", "ins", '"', "pulgada", "pulgadas")),
    Unit("ft", Kind.LENGTH, "customary", Fraction(12), "feet", ("foot", "feet", "'", "pie", "pies")),
    Unit("yd", Kind.LENGTH, "customary", Fraction(36), "yards", ("yard", "yards", "yds", "yarda", "yardas")),
    Unit("mi", Kind.LENGTH, "customary", Fraction(63360), "miles", ("mile", "miles", "milla", "millas")),
    Unit(
        "mm",
        Kind.LENGTH,
        "metric",
        Fraction(1, 10),
        "mm",
        ("millimeter", "millimeters", "millimetre", "millimetres", "milímetro", "milímetros"),
    ),
    Unit(
        "cm",
        Kind.LENGTH,
        "metric",
        Fraction(1),
        "cm",
        ("centimeter", "centimeters", "centimetre", "centimetres", "centímetro", "centímetros"),
    ),
    Unit("m", Kind.LENGTH, "metric", Fraction(100), "m", ("meter", "meters", "metre", "metres", "metro", "metros")),
    Unit(
        "km",
        Kind.LENGTH,
        "metric",
        Fraction(100_000),
        "km",
        ("kilometer", "kilometers", "kilometre", "kilometres", "kilómetro", "kilómetros"),
    ),
    Unit("oz", Kind.MASS, "customary", Fraction(1), "ounces", ("ounce", "ounces", "onza", "onzas")),
    Unit("lb", Kind.MASS, "customary", Fraction(16), "pounds", ("lbs", "pound", "pounds", "libra", "libras")),
    Unit("ton", Kind.MASS, "customary", Fraction(32_000), "tons", ("tons", "tonelada", "toneladas")),
    Unit("g", Kind.MASS, "metric", Fraction(1), "g", ("gr", "gram", "grams", "gramme", "grammes", "gramo", "gramos")),
    Unit(
        "kg",
        Kind.MASS,
        "metric",
        Fraction(1000),
        "kg",
        ("kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes", "kilogramo", "kilogramos"),
    ),
    Unit(
        "fl oz",
        Kind.CAPACITY,
        "customary",
        Fraction(1),
        "fluid ounces",
        ("floz", "fluid ounce", "fluid ounces", "onza líquida", "onzas líquidas"),
    ),
    Unit("cup", Kind.CAPACITY, "customary", Fraction(8), "cups", ("cups", "c", "taza", "tazas")),
    Unit("pt", Kind.CAPACITY, "customary", Fraction(16), "pints", ("pts", "pint", "pints", "pinta", "pintas")),
    Unit("qt", Kind.CAPACITY, "customary", Fraction(32), "quarts", ("qts", "quart", "quarts", "cuarto", "cuartos")),
    Unit(
        "gal", Kind.CAPACITY, "customary", Fraction(128), "gallons", ("gals", "gallon", "gallons", "galón", "galones")
    ),
    Unit(
        "mL",
        Kind.CAPACITY,
        "metric",
        Fraction(1),
        "mL",
        ("ml", "milliliter", "milliliters", "millilitre", "millilitres", "mililitro", "mililitros"),
    ),
    Unit(
        "L",
        Kind.CAPACITY,
        "metric",
        Fraction(1000),
        "L",
        ("l", "liter", "liters", "litre", "litres", "litro", "litros"),
    ),
    Unit(
        "s", Kind.ELAPSED, None, Fraction(1, 60), "seconds", ("sec", "secs", "second", "seconds", "segundo", "segundos")
    ),
    Unit("min", Kind.ELAPSED, None, Fraction(1), "minutes", ("mins", "m", "minute", "minutes", "minuto", "minutos")),
    Unit("h", Kind.ELAPSED, None, Fraction(60), "hours", ("hr", "hrs", "hour", "hours", "hora", "horas")),
    Unit("d", Kind.ELAPSED, None, Fraction(1440), "days", ("day", "days", "día", "días")),
)

UNITS: dict[str, Unit] = {unit.symbol: unit for unit in _ALL}


def units_of(measure: Kind) -> tuple[Unit, ...]:
    """The units of one measure, both systems, in the order of their table."""
    return tuple(unit for unit in _ALL if unit.measure == measure)


# The unit that stands beside another when a value is written in two (common practice, no source).
LARGER_BESIDE = {
    "in": "ft",
    "mm": "cm",
    "cm": "m",
    "oz": "lb",
    "g": "kg",
    "fl oz": "cup",
    "pt": "qt",
    "qt": "gal",
    "mL": "L",
    "s": "min",
    "min": "h",
}
SMALLER_BESIDE = {
    "ft": "in",
    "yd": "ft",
    "mi": "yd",
    "cm": "mm",
    "m": "cm",
    "km": "m",
    "lb": "oz",
    "ton": "lb",
    "kg": "g",
    "cup": "fl oz",
    "pt": "cup",
    "qt": "pt",
    "gal": "qt",
    "L": "mL",
    "min": "s",
    "h": "min",
    "d": "h",
}
# After these a last number may stand without its unit: 2'9, 1 L 50, 1 h 35.
UNIT_LEFT_OUT = {"ft": "in", "lb": "oz", "m": "cm", "kg": "g", "L": "mL", "h": "min"}
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
