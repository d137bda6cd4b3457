"""Slips in how a number is written: digits that change places, a zero inside that is lost or moved, each part in full.

Beyond the table; common practice, no source.
"""

from fractions import Fraction

from ..count import Count
from ..grid import Grid
from ..kinds.decimal import DecimalNumber
from ..kinds.names import Kind
from .jump import Jump
from .rule import Area, Rule, of_kind
from .sources import BYRGE_2014, NRC_2009_TEENS
from .writing import in_thousands, with_part


def serves(grid: Grid) -> bool:
    return True


def _is_easily_turned(jump: Jump) -> bool:
    """A teen, whose ones are heard first, or a number with a zero, which may stand in either place, past a full ten."""
    tens, ones = divmod(int(jump.b) % 100, 10)
    turned_is_as_long = ones or jump.b > 100
    return jump.b > 10 and bool(turned_is_as_long) and (tens == 1 or 0 in (tens, ones)) and jump.is_hard


def _swapped(jump: Jump, language: str) -> str:
    """203 for 230, 41 for 14: the tens and the ones change places."""
    tens, ones = divmod(int(jump.b) % 100, 10)
    return jump.text(jump.b - 10 * tens - ones + 10 * ones + tens) if tens != ones else ""


def _as_it_is_said(jump: Jump, language: str) -> str:
    """1007 for one hundred seven."""
    return f"{int(jump.b) // 100 * 100}{int(jump.b) % 100}"


def _zero_dropped(jump: Jump, language: str) -> str:
    """17 for 107."""
    digits = str(int(jump.b))
    at = digits.find("0", 1)
    return jump.text(Fraction(digits[:at] + digits[at + 1 :])) if at > 0 and digits[at + 1 :].strip("0") else ""


def _hundreds_moved_up(jump: Jump, language: str) -> str:
    """1,300 for 1,030, 1 kg 500 g for 1 kg 50 g: the empty hundreds are lost, and the digits move up."""
    size = in_thousands(jump.count)
    if not size or jump.b <= 1000 * size:
        return ""
    rest = jump.b % (1000 * size)
    return jump.text(jump.b + 9 * rest) if 0 < rest < 100 * size else ""


def _last_zero_lost(jump: Jump, language: str) -> str:
    """4 L 4 mL for 4 L 40 mL."""
    size = in_thousands(jump.count)
    if not size or jump.b <= 1000 * size:
        return ""
    rest = jump.b % (1000 * size)
    return jump.text(jump.b - rest + rest // 10) if 0 < rest < 100 * size and rest % (10 * size) == 0 else ""


def _empty_tenths(jump: Jump, language: str) -> str:
    """4.5 for 4.05."""
    form, mark = jump.count.form, jump.count.style.decimal_mark
    if not isinstance(form, DecimalNumber) or form.places_shown < 2:
        return ""
    whole, _, decimals = jump.due.partition(mark)
    shown = decimals.lstrip("0")
    return f"{whole}{mark}{shown}" if decimals[:1] == "0" and shown else ""


def _empty_dimes(jump: Jump, language: str) -> str:
    """$4.5 for $4.05."""
    names = jump.count.part_names()
    small = jump.count.parts(jump.n).get(names[1], 0) if len(names) == 2 else 0
    return with_part(jump, jump.b, names[1], str(small)) if 0 < small < 10 else ""


def _empty_tens_of_minutes(jump: Jump, language: str) -> str:
    """7:5 for 7:05."""
    minutes = int(jump.b % 60)
    return with_part(jump, jump.b, "minutes", str(minutes)) if 0 < minutes < 10 else ""


def _has_thousands(count: Count) -> bool:
    return in_thousands(count) is not None


RULES = (
    Rule(
        "Z02",
        (1, 1),
        lambda j: 100 < j.b < 1000 and j.b % 100 != 0 and j.is_hard,
        _as_it_is_said,
        source=BYRGE_2014,
        of_writing=True,
        counts=of_kind(Kind.WHOLE),
    ),
    Rule(
        "Z03",
        (1, 5),
        lambda j: j.b > 100 and j.is_hard,
        _zero_dropped,
        1,
        of_writing=True,
        counts=of_kind(Kind.WHOLE),
    ),
    Rule("Z04", (2, 8), lambda j: j.is_hard, _hundreds_moved_up, of_writing=True, counts=_has_thousands),
    Rule("Z05", (2, 8), lambda j: j.is_hard, _last_zero_lost, 1, of_writing=True, counts=_has_thousands),
    Rule("Z06", (3, 8), lambda j: True, _empty_tenths, of_writing=True, counts=of_kind(Kind.DECIMAL)),
    Rule("Z07", (5, 8), lambda j: True, _empty_dimes, 1, of_writing=True, counts=of_kind(Kind.MONEY)),
    Rule("Z08", (4, 8), lambda j: True, _empty_tens_of_minutes, 0, of_writing=True, counts=of_kind(Kind.CLOCK)),
)

AREA = Area("zeros and digits", serves, RULES)
SWAPPED = Area(
    "digits swapped",
    serves,
    (Rule("Z01", (0, 3), _is_easily_turned, _swapped, 1, source=NRC_2009_TEENS, counts=of_kind(Kind.WHOLE)),),
    of_every_kind=True,
)
