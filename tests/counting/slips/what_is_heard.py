"""What each slip of the table leads to, worked out from its columns alone, at every count where it happens.

Source: the columns `student_says_example` and `why` of tests/reference/common_slips.csv, put as arithmetic. Where the
answer is a number, it is a function of the count before (a), the one due (b), the step (s), in the table's units;
where it is a way of writing, it is the text. None: nothing is heard there that could be told from the count due.
"""

import re
from collections.abc import Callable
from fractions import Fraction
from math import floor, gcd

Numbers = Callable[[Fraction, Fraction, Fraction], Fraction | int]
_BEFORE = {30: 50, 40: 20, 50: 30, 60: 40, 70: 50, 80: 60, 90: 70}
_TENS = ("", "ten", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_ONES = ("", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")

# The number that is said.
SAID: dict[str, Numbers] = {
    "W02": lambda a, b, s: _BEFORE[int(b)],
    "W03": lambda a, b, s: b + 1,
    "W04": lambda a, b, s: a,
    "W05": lambda a, b, s: 10 * (b - 10),
    "W06": lambda a, b, s: 91,
    "W07": lambda a, b, s: int(str(b)[::-1]),
    "W09": lambda a, b, s: a + 100,
    "W10": lambda a, b, s: (a // 100 + 1) * 100,
    "W12": lambda a, b, s: (a // 1000 + 1) * 1000,
    "W14": lambda a, b, s: b - 100,
    "W15": lambda a, b, s: a + 100,
    "W17": lambda a, b, s: a + 1000,
    "W19": lambda a, b, s: b + 1,
    "W20": lambda a, b, s: s * (floor(a / s) + 1),
    "W21": lambda a, b, s: a + 19,
    "W22": lambda a, b, s: 111,
    "W23": lambda a, b, s: a + 9,
    "W24": lambda a, b, s: b - 10,
    "W25": lambda a, b, s: a + 99,
    "W26": lambda a, b, s: a - 100,
    "W27": lambda a, b, s: a + 900,
    "F04": lambda a, b, s: s,
    "F07": lambda a, b, s: a + 1,
    "F13": lambda a, b, s: a - 1,
    "D08": lambda a, b, s: a + 1,
    "D09": lambda a, b, s: b + s,
    "D10": lambda a, b, s: a + 1 + s,
    "M05": lambda a, b, s: a + 2 * s,
    "M06": lambda a, b, s: a + 100 + s,
    "T03": lambda a, b, s: floor(a / 60) * 60 + b % 60,
    "T05": lambda a, b, s: b + 720,
    "T06": lambda a, b, s: b + 720,
    "T08": lambda a, b, s: a + 60 + s,
    "L02": lambda a, b, s: 12 * (floor(b / 12) + 1) + b % 12 - 10,
    "L04": lambda a, b, s: 16 * (floor(b / 16) + 1) + b % 16 - 10,
    "N01": lambda a, b, s: 0,
    "N02": lambda a, b, s: s,
    "N03": lambda a, b, s: s,
    "N04": lambda a, b, s: a - s,
    "N05": lambda a, b, s: -b,
    "N06": lambda a, b, s: a - 9,
    "N07": lambda a, b, s: a + 9,
}


def _in_words(number: int) -> str:
    """A number below ten thousand and not in the teens, as it is said in the United States."""
    thousands, hundreds, tens, ones = (number // size % 10 for size in (1000, 100, 10, 1))
    said = [f"{_ONES[thousands]} thousand" if thousands else "", f"{_ONES[hundreds]} hundred" if hundreds else ""]
    return " ".join(filter(None, [*said, "-".join(filter(None, (_TENS[tens], _ONES[ones])))]))


def _run_past_nine(a: Fraction) -> str:
    return f"{_in_words(int(a) // 10 * 10)}-ten"


def _past_a_thousand(a: Fraction) -> str:
    return _run_past_nine(a) if a < 1000 else f"{int(a) // 1000},1000"


def _hundreds_lost(b: Fraction) -> str:
    """1,300 for 1,030; a full thousand is counted on as hundreds."""
    if b % 1000 == 0:
        return f"{_in_words(int(b) // 100)} hundred"
    return f"{int(b // 1000 * 1000 + 10 * (b % 1000)):,}"


def _decimal_part(value: Fraction, places: int) -> int:
    return int(value % 1 * 10**places)


def _shortest_decimal(value: Fraction) -> str:
    whole, _, rest = f"{int(value)}.{_decimal_part(value, 3):03d}".partition(".")
    return f"{whole}.{rest.rstrip('0') or '0'}"


def _mixed(whole: int, top: int, bottom: int) -> str:
    return f"{whole} {top}/{bottom}" if whole else f"{top}/{bottom}"


def _of_fractions(identity: str, a: Fraction, b: Fraction, s: Fraction, d: int) -> str | None:
    whole, top = floor(a), int(a % 1 * d)
    if identity == "F01":
        jump, parts = int(s), int(s % 1 * d)
        # Adding across needs two fractions to add.
        return _mixed(whole + jump, top + parts, 2 * d) if s > 0 and top else None
    if identity in ("F02", "F03"):
        return _mixed(whole, (top or 1) if identity == "F02" else top + 1, d + 1)
    if identity == "F05":
        return "(they stop)"
    if identity == "F06":
        return _mixed(int(b) - 1, d, d)
    if identity == "F08":
        return f"{floor(b)}{int(b % 1 * d)}/{d}"
    if identity == "F09":
        if b % 1 == 0:
            return _mixed(int(b) - 1, d, d)
        divisor = gcd(int(b % 1 * d), d)
        return _mixed(floor(b), int(b % 1 * d) // divisor, d // divisor)
    if identity == "F10":
        divisor = gcd(top, d)
        return _mixed(whole, top // divisor + int(s * d), d // divisor)
    if identity == "F11":
        return f"{10 + int(s * 10)}/100"
    if identity == "F12":
        # Wholes with wholes, tops with tops, bottoms with bottoms.
        turn = 1 if s > 0 else -1
        size = abs(s)
        wholes = floor(a) + turn * floor(size)
        over, under = (a % 1).numerator + turn * (size % 1).numerator, a.denominator + turn * size.denominator
        return _mixed(wholes, over, under) if over > 0 and under > 0 and wholes >= 0 else None
    left = int(b % 1 * d)
    off = left + 1 if left + 1 < d else left - 1
    return _mixed(floor(b), off, d) if off else str(floor(b))


def written(identity: str, a: Fraction, b: Fraction, s: Fraction, parts: int) -> str | None:
    """What is written or worded. parts: the denominator of fractions, the places of decimals."""
    if identity[0] == "F":
        return _of_fractions(identity, a, b, s, parts)
    if identity in ("W01", "W08", "W11"):
        return _run_past_nine(a)
    if identity in ("L01", "L05", "L06", "L07", "L08", "L10"):
        size, large, small = {
            "L01": (12, "ft", "in"),
            "L05": (16, "lb", "oz"),
            "L06": (3, "yd", "ft"),
            "L07": (4, "gal", "qt"),
            "L08": (100, "m", "cm"),
            "L10": (1000, "L", "mL"),
        }[identity]
        rest = f"{int(a % size + s):,} {small}"
        return f"{int(a) // size} {large} {rest}" if a >= size else rest
    texts: dict[str, Callable[[], str | None]] = {
        "W13": lambda: _past_a_thousand(a),
        "W16": lambda: _hundreds_lost(b),
        "W18": lambda: f"{int(b) // 100 * 100}{int(b) % 100}",
        "D01": lambda: f"{int(a)}.{_decimal_part(a, 1) + 1}",
        "D02": lambda: f"{int(a)}.{_decimal_part(a, 1) + int(s * 10)}",
        "D03": lambda: f"{int(a)}.{_decimal_part(a, 2) + int(s * 100)}",
        "D04": lambda: f"{int(a)}.{_decimal_part(a, 1)}10",
        "D05": lambda: f"{int(a)}.{_decimal_part(a, 2):02d}10",
        "D06": lambda: _shortest_decimal(b),
        "D07": lambda: _shortest_decimal(a + 10 * s) if a + 10 * s >= 0 else None,
        "M01": lambda: f"${int(a) // 100}.{int(a % 100 + s)}",
        "M02": lambda: f"${int(b) // 100}.{int(b) % 100}",
        "M03": lambda: f"${int(b) // 100}.{int(b) % 100 // 10}",
        "M04": lambda: f"0.{int(b):02d}¢",
        "M07": lambda: f"${int(a) // 100}.{int(a % 100 + s)}",
        "T01": lambda: f"{_hour(a)}:60",
        "T02": lambda: _hundred_minutes(a, s),
        "T04": lambda: f"13:{int(b) % 60:02d}",
        "T07": lambda: f"{_hour(b)}:{int(b) % 60}",
        "T09": lambda: _hundred_minutes_elapsed(a, s),
        "L03": lambda: f"{int(b) // 12}.{int(b) % 12} ft",
        "L09": lambda: f"{int(b) // 1000}.{str(int(b) % 1000).rstrip('0')} kg",
    }
    return texts[identity]()


def _hour(minutes: Fraction) -> int:
    return int(minutes) // 60 % 12 or 12


def _hundred_minutes(a: Fraction, s: Fraction) -> str:
    minutes = int(a % 60 + s)
    return f"{_hour(a)}:{minutes}" if minutes < 100 else f"{_hour(a + 60)}:{minutes - 100:02d}"


def _hundred_minutes_elapsed(a: Fraction, s: Fraction) -> str:
    hours, minutes = int(a) // 60, int(a % 60 + s)
    hours, minutes = (hours, minutes) if minutes < 100 else (hours + 1, minutes - 100)
    return f"{hours} h {minutes} min" if minutes else f"{hours} h"


_SIZES = {"ft": 12, "in": 1, "lb": 16, "oz": 1}


def number_said(text: str, kind: str) -> Fraction:
    """The number that a text names, in the base unit; on a clock minutes from midnight, noon where nothing is said."""
    text = text.replace(",", "")
    if kind == "money":
        return Fraction(text.removeprefix("$")) * 100
    if kind == "clock":
        hour, minute = map(int, re.findall(r"\d+", text)[:2])
        return Fraction(hour % 12 * 60 + minute)
    if kind in ("length", "mass"):
        return sum((Fraction(many) * _SIZES[unit] for many, unit in re.findall(r"(\d+) (\w+)", text)), Fraction(0))
    whole, _, parts = text.rpartition(" ") if "/" in text else (text, "", "0")
    size = abs(Fraction(whole or 0)) + abs(Fraction(parts))
    return -size if text.startswith("-") else size
