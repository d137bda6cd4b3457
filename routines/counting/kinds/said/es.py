"""Numbers as they are said in Spanish.

Source: Real Academia Española, Diccionario panhispánico de dudas, "cardinales", "fraccionarios" and "millón" (from
memory).
"""

from collections.abc import Mapping

from .saying import DOLLAR_CODES, NOON, PESO_CODES, CoinName, Joints, Saying, UnitName

_SMALL = (
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
_TENS = ("_", "_", "_", "treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa")
_HUNDREDS = (
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
_PARTS = ("_", "_", "medio", "tercio", "cuarto", "quinto", "sexto", "séptimo", "octavo", "noveno", "décimo")
_GROUPS = ((10**12, "billón", "billones"), (10**6, "millón", "millones"))
_BEFORE_A_NOUN = {
    (1, "masculine"): "un",
    (21, "masculine"): "veintiún",
    (1, "feminine"): "una",
    (21, "feminine"): "veintiuna",
}
_DOLARES = (CoinName("dólar", "dólares"), CoinName("centavo", "centavos"))
_PESOS = (CoinName("peso", "pesos"), CoinName("centavo", "centavos"))
# The first words of CLDR's Spanish currency names that are feminine. CLDR has no genders, but its adjectives agree
# (rupia india, naira nigeriano); those of dobra, kuna and unidad are from memory.
_FEMININE = (
    *("corona", "dobra", "grivna", "kuna", "leona", "leva", "libra", "lira", "litas"),
    *("pataca", "peseta", "plata", "rufiya", "rupia", "talonas", "unidad"),
)


class Spanish(Saying):
    code = "es"
    joints = Joints("menos {}", "{} y {}", "{}, o {}", "{} y {}", "{} con {}", "{} de {}")
    decimal_places = ("", "décima", "centésima", "milésima", "diezmilésima", "cienmilésima", "millonésima")
    parts_of_day = ((0, "madrugada"), (6 * 60, "mañana"), (NOON, "tarde"), (20 * 60, "noche"))
    midnight_and_noon = ("medianoche", "mediodía")
    halves_of_day = ("a. m.", "p. m.")
    part_written_of = "de {}"
    units: Mapping[str, UnitName] = {
        "in": UnitName("pulgada", "pulgadas", "feminine"),
        "ft": UnitName("pie", "pies", "masculine"),
        "yd": UnitName("yarda", "yardas", "feminine"),
        "mi": UnitName("milla", "millas", "feminine"),
        "mm": UnitName("milímetro", "milímetros", "masculine"),
        "cm": UnitName("centímetro", "centímetros", "masculine"),
        "m": UnitName("metro", "metros", "masculine"),
        "km": UnitName("kilómetro", "kilómetros", "masculine"),
        "oz": UnitName("onza", "onzas", "feminine"),
        "lb": UnitName("libra", "libras", "feminine"),
        "ton": UnitName("tonelada", "toneladas", "feminine"),
        "g": UnitName("gramo", "gramos", "masculine"),
        "kg": UnitName("kilogramo", "kilogramos", "masculine"),
        "fl oz": UnitName("onza líquida", "onzas líquidas", "feminine"),
        "cup": UnitName("taza", "tazas", "feminine"),
        "pt": UnitName("pinta", "pintas", "feminine"),
        "qt": UnitName("cuarto de galón", "cuartos de galón", "masculine"),
        "gal": UnitName("galón", "galones", "masculine"),
        "mL": UnitName("mililitro", "mililitros", "masculine"),
        "L": UnitName("litro", "litros", "masculine"),
        "s": UnitName("segundo", "segundos", "masculine"),
        "min": UnitName("minuto", "minutos", "masculine"),
        "h": UnitName("hora", "horas", "feminine"),
        "d": UnitName("día", "días", "masculine"),
    }
    coins: Mapping[str, tuple[CoinName, CoinName]] = {
        **dict.fromkeys(DOLLAR_CODES, _DOLARES),
        **dict.fromkeys(PESO_CODES, _PESOS),
        "EUR": (CoinName("euro", "euros"), CoinName("céntimo", "céntimos")),
        "GBP": (CoinName("libra", "libras", "feminine"), CoinName("penique", "peniques")),
    }
    lands: Mapping[str, str] = {"EUR": "ES"}

    def _words(self, value: int, form: str) -> str:
        for size, one, several in _GROUPS:
            if value >= size:
                many, rest = divmod(value, size)
                head = f"un {one}" if many == 1 else f"{self.cardinal(many, 'masculine')} {several}"
                return head + (f" {self.cardinal(rest, form)}" if rest else "")
        if value >= 1000:
            many, rest = divmod(value, 1000)
            before = "feminine" if form == "feminine" else "masculine"
            head = "mil" if many == 1 else f"{self.cardinal(many, before)} mil"
            return head + (f" {self.cardinal(rest, form)}" if rest else "")
        if value >= 100:
            return self._hundreds(value, form)
        if value >= 30:
            tens, ones = divmod(value, 10)
            return _TENS[tens] + (f" y {self.cardinal(ones, form)}" if ones else "")
        return _BEFORE_A_NOUN.get((value, form), _SMALL[value])

    def _hundreds(self, value: int, form: str) -> str:
        if value == 100:
            return "cien"
        hundreds, rest = divmod(value, 100)
        head = _HUNDREDS[hundreds]
        if form == "feminine" and hundreds > 1:
            head = head[:-2] + "as"
        return head + (f" {self.cardinal(rest, form)}" if rest else "")

    def before_what_is_counted(self, value: int) -> str:
        # "De" stands right before what is counted: un millón de pies, un millón una libras.
        return " de " if value and value % 10**6 == 0 else " "

    def part_of(self, bottom: int, *, several: bool) -> str:
        name = self._part(bottom)
        return f"{name}s" if several else name

    def _part(self, bottom: int) -> str:
        if bottom <= 10:
            return _PARTS[bottom]
        if bottom in (100, 1000):
            return "centésimo" if bottom == 100 else "milésimo"
        fused = self.cardinal(bottom, "masculine").replace(" y ", "i").replace(" ", "")
        plain = fused.translate(str.maketrans("áéíóú", "aeiou"))
        return plain + ("vo" if plain.endswith("a") else "avo")

    def part_of_unit(self, whole: int, part: str, name: UnitName, *, half: bool) -> str:
        if half:
            part = "media" if name.form == "feminine" else "medio"
        if whole:
            return self.joints.and_a_part.format(self.counted(whole, name), part)
        return f"{part} {name.one}" if half else f"{part} de {name.one}"

    def part_of_coin(self, whole: int, part: str, name: CoinName) -> str:
        return self.joints.and_a_part.format(self.counted(whole, name), part)

    def coin_gender(self, name: str) -> str:
        return "feminine" if name.split()[0] in _FEMININE else "masculine"

    def time(self, hour: int, minute: int, *, halves: bool, quarters: bool, minute_of_day: int | None) -> str:
        said = self._time(hour, minute, halves, quarters)
        return said if minute_of_day is None else f"{said} de la {self.part_of_day(minute_of_day)}"

    def _time(self, hour: int, minute: int, halves: bool, quarters: bool) -> str:
        if minute == 45 and quarters:
            return f"{self._hour(hour % 12 + 1)} menos cuarto"
        said = self._hour(hour)
        if minute == 0:
            return said
        if minute == 30 and halves:
            return f"{said} y media"
        if minute == 15 and quarters:
            return f"{said} y cuarto"
        return f"{said} y {self.cardinal(minute)}"

    def _hour(self, hour: int) -> str:
        return f"{'la' if hour == 1 else 'las'} {self.cardinal(hour, 'feminine')}"


SPANISH = Spanish()
