"""Number words: cardinals and the names of equal parts, in English (US) and Spanish.

Source: US school practice says no "and" inside a whole number ("one hundred one"; "and" joins whole and part).
Spanish forms: Real Academia Española, Diccionario panhispánico de dudas, "cardinales" and "fraccionarios" (from memory).
"""

from typing import NamedTuple

_EN_SMALL = (
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
)
_EN_TENS = ("_", "_", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_EN_GROUPS = ((10**12, "trillion"), (10**9, "billion"), (10**6, "million"), (1000, "thousand"))
_EN_ORDINALS = {
    "one": "first",
    "two": "second",
    "three": "third",
    "five": "fifth",
    "eight": "eighth",
    "nine": "ninth",
    "twelve": "twelfth",
}

_ES_SMALL = (
    "cero",
    "uno",
    "dos",
    "tres",
    "cuatro",
    "cinco",
    "seis",
    "siete",
    "ocho",
    "nueve",
    "diez",
    "once",
    "doce",
    "trece",
    "catorce",
    "quince",
    "dieciséis",
    "diecisiete",
    "dieciocho",
    "diecinueve",
    "veinte",
    "veintiuno",
    "veintidós",
    "veintitrés",
    "veinticuatro",
    "veinticinco",
    "veintiséis",
    "veintisiete",
    "veintiocho",
    "veintinueve",
)
_ES_TENS = ("_", "_", "_", "treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa")
_ES_HUNDREDS = (
    "_",
    "ciento",
    "doscientos",
    "trescientos",
    "cuatrocientos",
    "quinientos",
    "seiscientos",
    "setecientos",
    "ochocientos",
    "novecientos",
)
_ES_PARTS = ("_", "_", "medio", "tercio", "cuarto", "quinto", "sexto", "séptimo", "octavo", "noveno", "décimo")
_ES_GROUPS = ((10**12, "billón", "billones"), (10**6, "millón", "millones"))

LARGEST_SAID = 10**15 - 1


def cardinal(value: int, language: str, form: str = "alone") -> str:
    """A whole number of 0 or more in words.

    form: "alone" (uno), "masculine" (un libro) or "feminine" (una hora); English has one form.

    >>> cardinal(101, "en"), cardinal(521, "es"), cardinal(521, "es", "masculine"), cardinal(521, "es", "feminine")
    ('one hundred one', 'quinientos veintiuno', 'quinientos veintiún', 'quinientas veintiuna')
    """
    if value > LARGEST_SAID:
        return str(value)
    return _spanish(value, form) if language == "es" else _english(value)


def counted(value: int, name: str, language: str, form: str = "alone") -> str:
    """So many of something: "three feet"; "un millón de pies".

    >>> counted(10**6, "pies", "es", "masculine"), counted(1_000_001, "libras", "es", "feminine")
    ('un millón de pies', 'un millón una libras')
    """
    # Real Academia Española, Diccionario panhispánico de dudas, "millón": "de" stands right before what is counted.
    joint = " de " if language == "es" and value and value % 10**6 == 0 else " "
    return f"{cardinal(value, language, form)}{joint}{name}"


def _english(value: int) -> str:
    if value < 20:
        return _EN_SMALL[value]
    if value < 100:
        tens, ones = divmod(value, 10)
        return _EN_TENS[tens] + (f"-{_EN_SMALL[ones]}" if ones else "")
    if value < 1000:
        hundreds, rest = divmod(value, 100)
        return f"{_EN_SMALL[hundreds]} hundred" + (f" {_english(rest)}" if rest else "")
    size, name = next(group for group in _EN_GROUPS if value >= group[0])
    many, rest = divmod(value, size)
    return f"{_english(many)} {name}" + (f" {_english(rest)}" if rest else "")


def _spanish(value: int, form: str) -> str:
    for size, one, several in _ES_GROUPS:
        if value >= size:
            many, rest = divmod(value, size)
            head = f"un {one}" if many == 1 else f"{_spanish(many, 'masculine')} {several}"
            return head + (f" {_spanish(rest, form)}" if rest else "")
    if value >= 1000:
        many, rest = divmod(value, 1000)
        before = "feminine" if form == "feminine" else "masculine"
        head = "mil" if many == 1 else f"{_spanish(many, before)} mil"
        return head + (f" {_spanish(rest, form)}" if rest else "")
    if value >= 100:
        if value == 100:
            return "cien"
        hundreds, rest = divmod(value, 100)
        head = _ES_HUNDREDS[hundreds]
        if form == "feminine" and hundreds > 1:
            head = head[:-2] + "as"
        return head + (f" {_spanish(rest, form)}" if rest else "")
    if value >= 30:
        tens, ones = divmod(value, 10)
        return _ES_TENS[tens] + (f" y {_spanish(ones, form)}" if ones else "")
    if value in (1, 21) and form != "alone":
        return {
            (1, "masculine"): "un",
            (21, "masculine"): "veintiún",
            (1, "feminine"): "una",
            (21, "feminine"): "veintiuna",
        }[value, form]
    return _ES_SMALL[value]


def equal_parts(top: int, bottom: int, language: str) -> str:
    """So many of the equal parts of one: "two thirds", "dos tercios". top >= 0, bottom >= 2.

    >>> equal_parts(30, 100, "en"), equal_parts(1, 2, "en"), equal_parts(21, 12, "es")
    ('thirty hundredths', 'one half', 'veintiún doceavos')
    """
    if language == "es":
        name = _spanish_part(bottom)
        return counted(top, f"{name}{'' if top == 1 else 's'}", "es", "masculine")
    if bottom == 2:
        return f"{cardinal(top, 'en')} {'half' if top == 1 else 'halves'}"
    return f"{cardinal(top, 'en')} {_english_part(bottom)}{'' if top == 1 else 's'}"


def _english_part(bottom: int) -> str:
    if bottom in (100, 1000):
        return "hundredth" if bottom == 100 else "thousandth"
    head, dash, last = english_ordinal_split(_english(bottom))
    return (head + dash + last).replace(" ", "-")


def english_ordinal_split(words: str) -> tuple[str, str, str]:
    """Cardinal words as the head that stays, the joint, and the last word as an ordinal."""
    cut = max(words.rfind(" "), words.rfind("-"))
    head, joint, last = (words[:cut], words[cut], words[cut + 1 :]) if cut >= 0 else ("", "", words)
    if last in _EN_ORDINALS:
        return head, joint, _EN_ORDINALS[last]
    return head, joint, f"{last[:-1]}ieth" if last.endswith("y") else f"{last}th"


def _spanish_part(bottom: int) -> str:
    if bottom <= 10:
        return _ES_PARTS[bottom]
    if bottom == 100:
        return "centésimo"
    if bottom == 1000:
        return "milésimo"
    fused = _spanish(bottom, "masculine").replace(" y ", "i").replace(" ", "")
    plain = fused.translate(str.maketrans("áéíóú", "aeiou"))
    return plain + ("vo" if plain.endswith("a") else "avo")


_EN_PLACES = ("", "tenth", "hundredth", "thousandth", "ten-thousandth", "hundred-thousandth", "millionth")
_ES_PLACES = ("", "décima", "centésima", "milésima", "diezmilésima", "cienmilésima", "millonésima")


def decimal_parts(top: int, places: int, language: str) -> str:
    """So many tenths, hundredths, ... as a decimal is read: "five tenths", "cinco décimas".

    >>> decimal_parts(21, 2, "es")
    'veintiuna centésimas'
    """
    name = (_ES_PLACES if language == "es" else _EN_PLACES)[places]
    return counted(top, f"{name}{'' if top == 1 else 's'}", language, "feminine")


class Joints(NamedTuple):
    """How what is said is put together. Between braces what goes there."""

    below_zero: str
    and_a_part: str
    or_as_well: str
    units: str
    coins: str
    part_of_one: str


JOINTS = {
    "en": Joints("negative {}", "{} and {}", "{}, or {}", "{} {}", "{} and {}", "{} of one {}"),
    "es": Joints("menos {}", "{} y {}", "{}, o {}", "{} y {}", "{} con {}", "{} de {}"),
}


def negative(words: str, language: str) -> str:
    """The words of a value below zero, from the words of its size."""
    return JOINTS[language].below_zero.format(words)


def joined(whole: str, part: str, language: str) -> str:
    """A whole and a part as one value: "two and one third", "dos y un tercio"."""
    return JOINTS[language].and_a_part.format(whole, part)
