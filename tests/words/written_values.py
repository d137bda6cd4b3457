"""Reading written values back, with a grammar and a table of units of its own; imports nothing of the engine."""

import re
from dataclasses import dataclass
from fractions import Fraction

# NIST Handbook 44, Appendix C; each in the base unit of its measure and system.
UNIT_SIZES = {
    "in": Fraction(1),
    "ft": Fraction(12),
    "yd": Fraction(36),
    "mi": Fraction(63360),
    "mm": Fraction(1, 10),
    "cm": Fraction(1),
    "m": Fraction(100),
    "km": Fraction(100000),
    "oz": Fraction(1),
    "lb": Fraction(16),
    "ton": Fraction(32000),
    "g": Fraction(1),
    "kg": Fraction(1000),
    "fl oz": Fraction(1),
    "cup": Fraction(8),
    "pt": Fraction(16),
    "qt": Fraction(32),
    "gal": Fraction(128),
    "mL": Fraction(1),
    "L": Fraction(1000),
    "s": Fraction(1, 60),
    "min": Fraction(1),
    "h": Fraction(60),
    "d": Fraction(1440),
}
SAME_UNIT = {"cups": "cup", "taza": "cup", "tazas": "cup", "tons": "ton", "tonelada": "ton", "toneladas": "ton"}
SAME_UNIT |= {"de taza": "cup", "de tonelada": "ton"}
# As children say them, in English and in Spanish, one and several.
SPOKEN = {
    "in": ("inch", "inches", "pulgada", "pulgadas"),
    "ft": ("foot", "feet", "pie", "pies"),
    "yd": ("yard", "yards", "yarda", "yardas"),
    "mi": ("mile", "miles", "milla", "millas"),
    "mm": ("millimeter", "millimeters", "milímetro", "milímetros"),
    "cm": ("centimeter", "centimeters", "centímetro", "centímetros"),
    "m": ("meter", "meters", "metro", "metros"),
    "km": ("kilometer", "kilometers", "kilómetro", "kilómetros"),
    "oz": ("ounce", "ounces", "onza", "onzas"),
    "lb": ("pound", "pounds", "libra", "libras"),
    "g": ("gram", "grams", "gramo", "gramos"),
    "kg": ("kilogram", "kilograms", "kilogramo", "kilogramos"),
    "fl oz": ("fluid ounce", "fluid ounces", "onza líquida", "onzas líquidas"),
    "pt": ("pint", "pints", "pinta", "pintas"),
    "qt": ("quart", "quarts", "cuarto de galón", "cuartos de galón"),
    "gal": ("gallon", "gallons", "galón", "galones"),
    "mL": ("milliliter", "milliliters", "mililitro", "mililitros"),
    "L": ("liter", "liters", "litro", "litros"),
    "s": ("second", "seconds", "segundo", "segundos"),
    "min": ("minute", "minutes", "minuto", "minutos"),
    "h": ("hour", "hours", "hora", "horas"),
    "d": ("day", "days", "día", "días"),
}
SIGN_OF = {name: sign for sign, names in SPOKEN.items() for name in names}
SIGN_OF |= {f"de {one}": sign for sign, (_, _, one, _) in SPOKEN.items()}
SAID_UNIT = re.compile(rf"(?<=\d) ({'|'.join(sorted(SIGN_OF, key=len, reverse=True))})\b")
SAME_UNIT |= SIGN_OF
MEASURES = ("length", "mass", "capacity", "elapsed")
UNITS_OF_KIND = {
    "length": {"in", "ft", "yd", "mi", "mm", "cm", "m", "km"},
    "mass": {"oz", "lb", "ton", "g", "kg"},
    "capacity": {"fl oz", "cup", "pt", "qt", "gal", "mL", "L"},
    "elapsed": {"s", "min", "h", "d"},
    "clock": {"s", "min", "h", "d"},
}
# Only those that a kind has: a phrase is read with all of them many times over.
UNIT_OF_KIND = {
    kind: "|".join(sorted(units | {name for name, sign in SAME_UNIT.items() if sign in units}, key=len, reverse=True))
    for kind, units in UNITS_OF_KIND.items()
}
HALF = r"(?: (?:[ap]\. ?m\.|noon|midnight|(?:del )?mediodía|(?:de la )?medianoche))?"


def as_written(item: str) -> str:
    """A value as it is read off the board: "1 foot 3 inches" is "1 ft 3 in" there, and no top above a line is read as 0."""
    if item.lower() in ("none", "ninguno"):
        return "0"
    return SAID_UNIT.sub(lambda found: f" {SIGN_OF[found[1]]}", item)


@dataclass(frozen=True)
class Notation:
    """How one count's values are written: its kind, its marks, and the signs of its money."""

    kind: str
    decimal_mark: str
    thousands: str
    symbol: str = ""
    small_symbol: str = ""
    digits: int = 2
    in_small_coins: bool = False

    @property
    def number(self) -> str:
        """A plain number: whole, decimal, fraction or mixed."""
        mark = re.escape(self.decimal_mark)
        grouped = rf"\d{{1,3}}(?:{re.escape(self.thousands)}\d{{3}})+(?!\d)|" if self.thousands else ""
        whole = rf"(?:{grouped}\d+)"
        return rf"(?:(?:{whole} )?\d+/\d+|{whole}(?:{mark}\d+)?)(?![\d/])"

    @property
    def difference(self) -> str:
        """A jump, a sum or a product."""
        sides = rf"-?{self.number}"
        if self.kind in MEASURES or self.kind == "clock":
            one = rf"{self.number} (?:{UNIT_OF_KIND[self.kind]})\b"
            return rf"-?{one}(?: {one})?(?: \({one}(?: {one})?\))?"
        if self.kind == "money":
            symbol, small = re.escape(self.symbol), re.escape(self.small_symbol)
            forms = [rf"-?{symbol} ?{self.number}", rf"-?{self.number} ?{symbol}"]
            return "(?:" + "|".join([*forms, *([rf"-?{self.number} ?{small}"] if small else [])]) + ")"
        return rf"{sides}(?: = {sides})?"

    @property
    def value(self) -> str:
        """A count, or another value of its kind."""
        if self.kind == "clock":
            return rf"(?:las? )?\d{{1,2}}:\d{{2}}{HALF}"
        return self.difference

    def read(self, text: str) -> Fraction:
        """The value in the base unit; a clock time in minutes from midnight or noon."""
        text = re.sub(r"^las? ", "", text, flags=re.IGNORECASE)
        if re.match(r"\d{1,2}:\d{2}", text):
            return self._time(text)
        if text.endswith(")"):
            alone, larger = (self.read(side) for side in text.rstrip(")").split(" ("))
            assert alone == larger, f"two amounts that differ: {text}"
            return alone
        if self.kind in MEASURES or self.kind == "clock":
            minus, text = text.startswith("-"), text.lstrip("-")
            total = Fraction(0)
            for number, unit in re.findall(rf"({self.number}) ({UNIT_OF_KIND[self.kind]})\b", text):
                total += self._number(number) * UNIT_SIZES[SAME_UNIT.get(unit, unit)]
            return -total if minus else total
        if self.kind == "money":
            return self._money(text)
        sides = [self._number(side) for side in text.split(" = ")]
        assert len(set(sides)) == 1, f"two names for two numbers: {text}"
        return sides[0]

    def _money(self, text: str) -> Fraction:
        minus, text = text.startswith("-"), text.lstrip("-")
        small = self.small_symbol and text.endswith(self.small_symbol) and not text.startswith(self.symbol)
        if small and self.symbol.endswith(self.small_symbol) and text.endswith(self.symbol):
            small = False
        symbol = self.small_symbol if small else self.symbol
        number = text.removeprefix(symbol).removesuffix(symbol).strip()
        amount = self._number(number) * (1 if small else 10**self.digits)
        return -amount if minus else amount

    def _time(self, text: str) -> Fraction:
        clock = re.match(r"(\d{1,2}):(\d{2})(.*)", text)
        assert clock is not None
        hour, minute, half = int(clock[1]), int(clock[2]), clock[3].strip()
        if half:
            hour = hour % 12 + (12 if half.startswith("p") or half.endswith(("noon", "mediodía")) else 0)
        return Fraction(60 * hour + minute)

    def _number(self, text: str) -> Fraction:
        minus, text = text.startswith("-"), text.lstrip("-")
        total = Fraction(0)
        pieces = text.rsplit(" ", 1) if "/" in text and " " in text else [text]
        for piece in pieces:
            if "/" in piece:
                total += Fraction(piece)
                continue
            if self.thousands:
                piece = piece.replace(self.thousands, "")
            total += Fraction(piece.replace(self.decimal_mark, "."))
        return -total if minus else total
