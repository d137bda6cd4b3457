"""What the names of landmarks and places are worth, in base units; written down here once more, from the trade."""

import re
from fractions import Fraction

from tests.words.written_values import Notation

PLACE_WORTH = {
    "thousandths?|milésimas?": Fraction(1, 1000),
    "hundredths?|centésimas?": Fraction(1, 100),
    "tenths?|décimas?": Fraction(1, 10),
    "ones?|unidad(?:es)?": Fraction(1),
    "tens?|decenas?": Fraction(10),
    "hundreds?|centenas?": Fraction(100),
    "thousands?|millar(?:es)?": Fraction(1000),
    "ten-thousands?|decenas? de millar": Fraction(10_000),
    "hundred-thousands?|centenas? de millar": Fraction(100_000),
    "millions?|millón|millones": Fraction(1_000_000),
    "ten-millions?|decenas? de millón": Fraction(10_000_000),
    "hundred-millions?|centenas? de millón": Fraction(100_000_000),
    "billions?|millar(?:es)? de millón": Fraction(1_000_000_000),
}
MEASURE_WORTH = {
    "even numbers?|números? par(?:es)?": Fraction(2),
    "decenas? completas?": Fraction(10),
    "centenas? completas?": Fraction(100),
    "millar completo|millares completos": Fraction(1000),
    "halves|half|medios?": Fraction(1, 2),
    "half or whole|halves and wholes|medio o (?:un )?entero|medios y (?:los )?enteros": Fraction(1, 2),
    "wholes?|enteros?": Fraction(1),
    "whole inch|whole inches|pulgadas? enteras?": Fraction(1),
    "half foot|half feet|medios? pies?": Fraction(6),
    "whole foot|whole feet|pies? enteros?": Fraction(12),
    "whole yards?|yardas? enteras?": Fraction(36),
    "whole centimeters?|centímetros? enteros?": Fraction(1),
    "half meters?|medios? metros?": Fraction(50),
    "whole meters?|metros? enteros?": Fraction(100),
    "half pounds?|medias? libras?": Fraction(8),
    "whole pounds?|libras? enteras?": Fraction(16),
    "half kilograms?|medios? kilogramos?": Fraction(500),
    "whole kilograms?|kilogramos? enteros?": Fraction(1000),
    "full cups?|tazas? enteras?": Fraction(8),
    "full pints?|pintas? enteras?": Fraction(16),
    "full quarts?|cuartos? de galón enteros?": Fraction(32),
    "full gallons?|galones enteros|galón entero": Fraction(128),
    "quarter liters?|cuartos? de litro": Fraction(250),
    "half liters?|medios? litros?": Fraction(500),
    "full liters?|litros? enteros?": Fraction(1000),
    # Half meters among which whole ones stand.
    "half or whole foot|half and whole feet": Fraction(6),
    "medio pie o (?:un )?pie entero|medios pies y (?:los )?pies enteros": Fraction(6),
    "half or whole meter|half and whole meters": Fraction(50),
    "medio metro o (?:un )?metro entero|medios metros y (?:los )?metros enteros": Fraction(50),
    "half or whole pound|half and whole pounds": Fraction(8),
    "media libra o (?:una )?libra entera|medias libras y (?:las )?libras enteras": Fraction(8),
    "half or whole kilogram|half and whole kilograms": Fraction(500),
    "medio kilogramo o (?:un )?kilogramo entero|medios kilogramos y (?:los )?kilogramos enteros": Fraction(500),
    "half or full liter|half and full liters": Fraction(500),
    "medio litro o (?:un )?litro entero|medios litros y (?:los )?litros enteros": Fraction(500),
    "quarter, half or full liter|quarter, half and full liters": Fraction(250),
    "cuarto, medio o litro entero|cuartos, (?:los )?medios y (?:los )?litros enteros": Fraction(250),
    "half or full hour|half and full hours": Fraction(30),
    "media hora u hora entera|media hora o una hora entera|medias horas y (?:las )?horas enteras": Fraction(30),
    "quarter, half or full hour|quarter, half and full hours": Fraction(15),
    "cuarto, media hora u hora entera": Fraction(15),
    "cuartos, (?:las )?medias y (?:las )?horas enteras": Fraction(15),
    "quarter hours?|cuartos? de hora": Fraction(15),
    "half hours?|medias? horas?": Fraction(30),
    "full hours?|horas? enteras?": Fraction(60),
    "o'clock times?|horas? en punto": Fraction(60),
    "half past times?|half past or o'clock time|half past and o'clock times": Fraction(30),
    "media hora u hora en punto|media hora o una hora en punto|medias horas y (?:las )?horas en punto": Fraction(30),
    "cuarto, media hora u hora en punto|cuartos, (?:las )?medias y (?:las )?horas en punto": Fraction(15),
    "noons? and midnights?|noon or midnight|mediodía o medianoche|mediodías y medianoches": Fraction(720),
}
# Whole dollars, euros, ...: the words before or after "whole" are the currency's own.
MONEY = r"whole [^\W\d]+(?: [^\W\d]+){0,2}|[^\W\d]+(?: [^\W\d]+){0,2} enter[oa]s?"

# How those who have not met multiples know them: by their last digits.
ENDING = r"(?:(?:ones|numbers?) ending in|(?:números? )?que terminan? en) 0(?: (?:or|o) 5)?"


def _longest_first(names: dict[str, Fraction]) -> str:
    return "|".join(sorted((name for key in names for name in key.split("|")), key=len, reverse=True))


PLACES = f"(?:{_longest_first(PLACE_WORTH)})"
MULTIPLES = f"(?:{_longest_first(MEASURE_WORTH | PLACE_WORTH)})"


def multiple_named(name: str, notation: Notation) -> Fraction | None:
    """What a name is worth in the base unit; None for "multiple of 7", which says it itself."""
    if notation.kind == "money" and re.fullmatch(MONEY, name):
        return Fraction(10**notation.digits)
    if re.fullmatch(ENDING, name):
        return Fraction(5 if name.endswith("5") else 10)
    names = MEASURE_WORTH | PLACE_WORTH
    return next((worth for key, worth in names.items() if re.fullmatch(key, name)), None)
