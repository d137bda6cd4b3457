"""Reading the name of a feature back: which place, part, remainder or digit sum its words mean.

Written down here once more, from everyday speech; imports nothing of the engine.
"""

import re
from fractions import Fraction

from tests.words.number_names import PLACE_WORTH, multiple_named
from tests.words.written_values import Notation

Feature = tuple[str, object]

PARTS = {
    "top": "top numbers?|numerators?|números? de arriba|numerador(?:es)?",
    "bottom": "bottom numbers?|denominators?|números? de abajo|denominador(?:es)?",
    "whole": "whole parts?|partes? enteras?",
    "inches": "inches|pulgadas",
    "feet": "feet|pies",
    "yards": "yards|yardas",
    "miles": "miles|millas",
    "mm": "millimeters|milímetros",
    "cm": "centimeters|centímetros",
    "m": "meters|metros",
    "km": "kilometers|kilómetros",
    "ounces": "ounces|onzas",
    "pounds": "pounds|libras",
    "tons": "tons|toneladas",
    "g": "grams|gramos",
    "kg": "kilograms|kilogramos",
    "fluid ounces": "fluid ounces|onzas líquidas",
    "cups": "cups|tazas",
    "pints": "pints|pintas",
    "quarts": "quarts|cuartos de galón",
    "gallons": "gallons|galones",
    "mL": "milliliters|mililitros",
    "L": "liters|litros",
    "seconds": "seconds|segundos",
    "minutes": "minutes|minutos",
    "hours": "hours?|horas?",
    "days": "days|días",
}
SMALL_COINS = "cents|pence|small coins|centavos|céntimos|peniques|monedas pequeñas"
COINS = f"dollars|pesos|euros|pounds|dólares|libras|{SMALL_COINS}"
LAST_OR_FIRST = {"last": 0, "última": 0, "últimas": 0, "first": 1, "primera": 1, "primeras": 1}
MAIN, SMALL = 0, 1
"""Parts of an amount of money, by their place among its parts: currencies name them differently."""


def feature_named(
    words: str, notation: Notation, *, known_coins: bool = False, bare_places: bool = False
) -> Feature | None:
    """What some words name; known_coins: leave out the names of currencies that are not written down here; bare_places: "the
    tens" are the tens digits, of those who do not speak of digits, and not the multiples of ten.

    ("place", 1), ("part", "inches"), ("coin", 0 or 1), ("remainder", modulus or None), ("digit-sum", None)."""
    written = re.sub(r"^(?:the|los|las|el|la) ", "", words.strip(), flags=re.IGNORECASE)
    words = re.sub(r"^numbers? of whole (.+)$|^números? de (.+) enter[oa]s$", r"\1\2", written.lower())
    if re.fullmatch("digit sums?|sumas? de las cifras", words):
        return "digit-sum", None
    if re.fullmatch("leftovers?|partes? que sobran?", words):
        return "remainder", None
    if re.fullmatch("even and odd|odd and even(?: numbers)?|pares e impares", words):
        return "remainder", Fraction(2)
    past = re.fullmatch(
        r"(?:remainders? past a multiple of|parts? past(?: an?)?|residuos? al dividir entre) (.+)", words
    )
    past = past or re.fullmatch(r"partes? que pasan? de (?:una? )?(.+)", words)
    if past:
        return "remainder", multiple_of_name(written[past.start(1) :], notation)
    if bare_places:
        worth = next((worth for names, worth in PLACE_WORTH.items() if re.fullmatch(names, words)), None)
        if worth is not None:
            return "place", exponent(worth)
    place = place_named(words, notation, known_coins=known_coins)
    if place is not None:
        return "place", place
    if notation.kind == "money" and re.fullmatch(f"{COINS}" if known_coins else r"[^\W\d]+(?: [^\W\d]+){0,3}", words):
        return ("coin", SMALL) if re.fullmatch(SMALL_COINS, words) else ("coin", MAIN)
    return next((("part", part) for part, names in PARTS.items() if re.fullmatch(names, words)), None)


def multiple_of_name(name: str, notation: Notation) -> Fraction:
    named = multiple_named(name.lower(), notation)
    return notation.read(name) if named is None else named


def place_named(words: str, notation: Notation, *, known_coins: bool) -> int | None:
    """The place of the base unit: 0 the ones, in money the smallest coins."""
    small = re.fullmatch(rf"(last|first) (?:{SMALL_COINS}) digits?", words)
    small = small or re.fullmatch(rf"(última|últimas|primera|primeras) cifras?(?: de los (?:{SMALL_COINS}))?", words)
    if small:
        return LAST_OR_FIRST[small[1]]
    digit = re.fullmatch(r"(.+) digits?", words) or re.fullmatch(r"cifras? de (?:los|las|el|la) (.+)", words)
    if digit is None:
        return None
    shift = notation.digits if notation.kind == "money" and not notation.in_small_coins else 0
    for of_coins in ("", r" (?:of|de) [^\W\d].*"):
        for names, worth in PLACE_WORTH.items():
            if re.fullmatch(f"(?:{names}){of_coins}", digit[1]):
                return exponent(worth) + shift
    coin = re.fullmatch(COINS, digit[1]) is not None if known_coins else True
    return shift if notation.kind == "money" and coin else None


def exponent(worth: Fraction) -> int:
    """Of 100 it is 2, of 1/10 it is -1."""
    return len(str(worth.numerator)) - 1 if worth >= 1 else 1 - len(str(worth.denominator))
