"""Numbers as they are said in English.

Source: US school practice says no "and" inside a whole number ("one hundred one"; "and" joins whole and part).
"""

from collections.abc import Mapping

from .saying import DOLLAR_CODES, NOON, PESO_CODES, CoinName, Joints, Saying, UnitName

_SMALL = (
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
_TENS = ("_", "_", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_GROUPS = ((10**12, "trillion"), (10**9, "billion"), (10**6, "million"), (1000, "thousand"))
_ORDINALS = {
    "one": "first",
    "two": "second",
    "three": "third",
    "five": "fifth",
    "eight": "eighth",
    "nine": "ninth",
    "twelve": "twelfth",
}
_DOLLARS = (CoinName("dollar", "dollars"), CoinName("cent", "cents"))
_PESOS = (CoinName("peso", "pesos"), CoinName("centavo", "centavos"))


class English(Saying):
    code = "en"
    joints = Joints("negative {}", "{} and {}", "{}, or {}", "{} {}", "{} and {}", "{} of one {}")
    decimal_places = ("", "tenth", "hundredth", "thousandth", "ten-thousandth", "hundred-thousandth", "millionth")
    parts_of_day = ((0, "morning"), (NOON, "afternoon"), (18 * 60, "evening"), (21 * 60, "night"))
    midnight_and_noon = ("midnight", "noon")
    halves_of_day = ("a.m.", "p.m.")
    units: Mapping[str, UnitName] = {
        "in": UnitName("inch", "inches", "an"),
        "ft": UnitName("foot", "feet", "a"),
        "yd": UnitName("yard", "yards", "a"),
        "mi": UnitName("mile", "miles", "a"),
        "mm": UnitName("millimeter", "millimeters", "a"),
        "cm": UnitName("centimeter", "centimeters", "a"),
        "m": UnitName("meter", "meters", "a"),
        "km": UnitName("kilometer", "kilometers", "a"),
        "oz": UnitName("ounce", "ounces", "an"),
        "lb": UnitName("pound", "pounds", "a"),
        "ton": UnitName("ton", "tons", "a"),
        "g": UnitName("gram", "grams", "a"),
        "kg": UnitName("kilogram", "kilograms", "a"),
        "fl oz": UnitName("fluid ounce", "fluid ounces", "a"),
        "cup": UnitName("cup", "cups", "a"),
        "pt": UnitName("pint", "pints", "a"),
        "qt": UnitName("quart", "quarts", "a"),
        "gal": UnitName("gallon", "gallons", "a"),
        "mL": UnitName("milliliter", "milliliters", "a"),
        "L": UnitName("liter", "liters", "a"),
        "s": UnitName("second", "seconds", "a"),
        "min": UnitName("minute", "minutes", "a"),
        "h": UnitName("hour", "hours", "an"),
        "d": UnitName("day", "days", "a"),
    }
    coins: Mapping[str, tuple[CoinName, CoinName]] = {
        **dict.fromkeys(DOLLAR_CODES, _DOLLARS),
        **dict.fromkeys(PESO_CODES, _PESOS),
        "EUR": (CoinName("euro", "euros"), CoinName("cent", "cents")),
        "GBP": (CoinName("pound", "pounds"), CoinName("penny", "pence")),
    }
    lands: Mapping[str, str] = {"EUR": "IE"}

    def _words(self, value: int, form: str) -> str:
        if value < 20:
            return _SMALL[value]
        if value < 100:
            tens, ones = divmod(value, 10)
            return _TENS[tens] + (f"-{_SMALL[ones]}" if ones else "")
        if value < 1000:
            hundreds, rest = divmod(value, 100)
            return f"{_SMALL[hundreds]} hundred" + (f" {self.cardinal(rest)}" if rest else "")
        size, name = next(group for group in _GROUPS if value >= group[0])
        many, rest = divmod(value, size)
        return f"{self.cardinal(many)} {name}" + (f" {self.cardinal(rest)}" if rest else "")

    def part_of(self, bottom: int, *, several: bool) -> str:
        if bottom == 2:
            return "halves" if several else "half"
        if bottom in (100, 1000):
            name = "hundredth" if bottom == 100 else "thousandth"
        else:
            name = _ordinal(self.cardinal(bottom)).replace(" ", "-")
        return f"{name}s" if several else name

    def part_of_unit(self, whole: int, part: str, name: UnitName, *, half: bool) -> str:
        if whole:
            return self._with_a_part(whole, part, name.several)
        return f"half {name.form} {name.one}" if half else f"{part} of {name.form} {name.one}"

    def part_of_coin(self, whole: int, part: str, name: CoinName) -> str:
        return self._with_a_part(whole, part, name.several)

    def _with_a_part(self, whole: int, part: str, several: str) -> str:
        return f"{self.joints.and_a_part.format(self.cardinal(whole), part)} {several}"

    def coin_gender(self, name: str) -> str:
        return "masculine"

    def time(self, hour: int, minute: int, *, halves: bool, quarters: bool, minute_of_day: int | None) -> str:
        said = self.cardinal(hour)
        if minute_of_day is not None:
            # Common practice, no source: "eleven forty-five p.m.", "six a.m.".
            minutes = f" {self._minutes(minute)}" if minute else ""
            return f"{said}{minutes} {self.half_of_day(minute_of_day)}"
        if minute == 0:
            return f"{said} o'clock"
        if minute == 30 and halves:
            return f"half past {said}"
        if minute == 15 and quarters:
            return f"quarter past {said}"
        if minute == 45 and quarters:
            return f"quarter to {self.cardinal(hour % 12 + 1)}"
        return f"{said} {self._minutes(minute)}"

    def _minutes(self, minute: int) -> str:
        return f"{'oh ' if minute < 10 else ''}{self.cardinal(minute)}"


def _ordinal(words: str) -> str:
    """Cardinal words as an ordinal: only the last word changes."""
    cut = max(words.rfind(" "), words.rfind("-")) + 1
    head, last = words[:cut], words[cut:]
    if last in _ORDINALS:
        return head + _ORDINALS[last]
    return head + (f"{last[:-1]}ieth" if last.endswith("y") else f"{last}th")


ENGLISH = English()
