"""The names of units as they are said, in English and Spanish."""

from fractions import Fraction
from typing import NamedTuple

from .number_words import cardinal, counted, decimal_parts, equal_parts, joined


class UnitName(NamedTuple):
    """One, several; "an" or "a" in English, the gender in Spanish."""

    one: str
    several: str
    form: str


NAMES: dict[tuple[str, str], UnitName] = {
    ("in", "en"): UnitName("inch", "inches", "an"),
    ("ft", "en"): UnitName("foot", "feet", "a"),
    ("yd", "en"): UnitName("yard", "yards", "a"),
    ("mi", "en"): UnitName("mile", "miles", "a"),
    ("mm", "en"): UnitName("millimeter", "millimeters", "a"),
    ("cm", "en"): UnitName("centimeter", "centimeters", "a"),
    ("m", "en"): UnitName("meter", "meters", "a"),
    ("km", "en"): UnitName("kilometer", "kilometers", "a"),
    ("oz", "en"): UnitName("ounce", "ounces", "an"),
    ("lb", "en"): UnitName("pound", "pounds", "a"),
    ("ton", "en"): UnitName("ton", "tons", "a"),
    ("g", "en"): UnitName("gram", "grams", "a"),
    ("kg", "en"): UnitName("kilogram", "kilograms", "a"),
    ("fl oz", "en"): UnitName("fluid ounce", "fluid ounces", "a"),
    ("cup", "en"): UnitName("cup", "cups", "a"),
    ("pt", "en"): UnitName("pint", "pints", "a"),
    ("qt", "en"): UnitName("quart", "quarts", "a"),
    ("gal", "en"): UnitName("gallon", "gallons", "a"),
    ("mL", "en"): UnitName("milliliter", "milliliters", "a"),
    ("L", "en"): UnitName("liter", "liters", "a"),
    ("s", "en"): UnitName("second", "seconds", "a"),
    ("min", "en"): UnitName("minute", "minutes", "a"),
    ("h", "en"): UnitName("hour", "hours", "an"),
    ("d", "en"): UnitName("day", "days", "a"),
    ("in", "es"): UnitName("pulgada", "pulgadas", "feminine"),
    ("ft", "es"): UnitName("pie", "pies", "masculine"),
    ("yd", "es"): UnitName("yarda", "yardas", "feminine"),
    ("mi", "es"): UnitName("milla", "millas", "feminine"),
    ("mm", "es"): UnitName("milímetro", "milímetros", "masculine"),
    ("cm", "es"): UnitName("centímetro", "centímetros", "masculine"),
    ("m", "es"): UnitName("metro", "metros", "masculine"),
    ("km", "es"): UnitName("kilómetro", "kilómetros", "masculine"),
    ("oz", "es"): UnitName("onza", "onzas", "feminine"),
    ("lb", "es"): UnitName("libra", "libras", "feminine"),
    ("ton", "es"): UnitName("tonelada", "toneladas", "feminine"),
    ("g", "es"): UnitName("gramo", "gramos", "masculine"),
    ("kg", "es"): UnitName("kilogramo", "kilogramos", "masculine"),
    ("fl oz", "es"): UnitName("onza líquida", "onzas líquidas", "feminine"),
    ("cup", "es"): UnitName("taza", "tazas", "feminine"),
    ("pt", "es"): UnitName("pinta", "pintas", "feminine"),
    ("qt", "es"): UnitName("cuarto de galón", "cuartos de galón", "masculine"),
    ("gal", "es"): UnitName("galón", "galones", "masculine"),
    ("mL", "es"): UnitName("mililitro", "mililitros", "masculine"),
    ("L", "es"): UnitName("litro", "litros", "masculine"),
    ("s", "es"): UnitName("segundo", "segundos", "masculine"),
    ("min", "es"): UnitName("minuto", "minutos", "masculine"),
    ("h", "es"): UnitName("hora", "horas", "feminine"),
    ("d", "es"): UnitName("día", "días", "masculine"),
}

# Units without a sign of their own are written by their name.
WRITTEN_BY_NAME = ("cup", "ton")


def say_units(amount: Fraction, unit: str, language: str, *, over: int, places: int | None, mixed: bool) -> str:
    """So many of a unit: "nine inches", "two and one half inches", "three fourths of a cup", "dos pulgadas y media".

    over: the denominator a part is said in; places: decimal places in place of it; mixed: wholes are said apart.
    """
    name = NAMES[unit, language]
    parts = 10**places if places is not None else over
    top = amount.numerator * (parts // amount.denominator)
    whole, rest = divmod(top, parts) if mixed or places is not None or parts == 1 else (0, top)
    if rest == 0:
        return counted(whole, name.one if whole == 1 else name.several, language, name.form)
    part = decimal_parts(rest, places, language) if places else equal_parts(rest, parts, language)
    half = places is None and (rest, parts) == (1, 2)
    if language == "es":
        if half:
            part = "media" if name.form == "feminine" else "medio"
        if whole:
            return f"{counted(whole, name.one if whole == 1 else name.several, 'es', name.form)} y {part}"
        return f"{part} {name.one}" if half else f"{part} de {name.one}"
    if whole:
        return f"{joined(cardinal(whole, 'en'), part, 'en')} {name.several}"
    return f"half {name.form} {name.one}" if half else f"{part} of {name.form} {name.one}"
