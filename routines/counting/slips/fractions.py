"""Slips in counts of fractions: top and bottom taken for two whole numbers, and the whole as an end."""

from fractions import Fraction
from math import gcd, lcm
from typing import NamedTuple

from ..grid import Grid
from ..kinds.names import Kind
from ..kinds.numerals import write_whole
from .jump import Jump
from .rule import Area, Rule
from .sources import ADD_ACROSS, HACKENBERG_2007, NI_ZHOU_2005


class Written(NamedTuple):
    """A fraction as a child sees it: a whole (0 where none is written), a top and a bottom."""

    whole: int
    top: int
    bottom: int


def serves(grid: Grid) -> bool:
    return grid.count.kind == Kind.FRACTION


def denominator(jump: Jump) -> int:
    """The denominator the count is written over; where each fraction is simplified, the common one."""
    count = jump.count
    return count.scale if count.style.fractions == "simplified" else lcm(count.scale, count.style.over)


def _written(jump: Jump, value: Fraction) -> Written:
    """`value` as this count writes it, with the parts of a written whole spelled out (2 is 2 0/8, or 16/8)."""
    over = value.denominator if jump.count.style.fractions == "simplified" else denominator(jump)
    if value.denominator == 1:
        over = denominator(jump)
    top = int(value * over)
    if jump.count.style.shape == "top-heavy" or value < 0:
        return Written(0, top, over)
    return Written(top // over, top % over, over)


def _fraction(jump: Jump, whole: int, top: int, bottom: int) -> str:
    return f"{_whole(jump, whole)} {top}/{bottom}" if whole else f"{top}/{bottom}"


def _whole(jump: Jump, whole: int) -> str:
    return write_whole(whole, jump.count.style)


def _added_across(jump: Jump, language: str) -> str:
    """2/12 after 1/6: tops added and bottoms added. Nobody adds when counting back, nor to a whole without parts."""
    a, s = _written(jump, jump.a), _written(jump, jump.s)
    if jump.s < 0 or a.top == 0:
        return ""
    return _fraction(jump, a.whole + s.whole, a.top + s.top, a.bottom + s.bottom)


def _bottom_counted(jump: Jump, language: str) -> str:
    """1/4 after 1/3; from a whole the first new part is named wrong: 2 1/9 after 2."""
    a = _written(jump, jump.a)
    return _fraction(jump, a.whole, a.top or 1, a.bottom + 1)


def _both_counted(jump: Jump, language: str) -> str:
    a = _written(jump, jump.a)
    return _fraction(jump, a.whole, a.top + 1, a.bottom + 1)


def _stops(jump: Jump, language: str) -> str:
    return "(they stop)" if language == "en" else "(se detienen)"


def _full_set_of_parts(jump: Jump, language: str) -> str:
    """1 5/5 for 2."""
    return _fraction(jump, int(jump.b) - 1, denominator(jump), denominator(jump))


def _run_together(jump: Jump, language: str) -> str:
    """12/3 for 1 2/3."""
    b = _written(jump, jump.b)
    return f"{b.whole}{b.top}/{b.bottom}"


def _renamed(jump: Jump, language: str) -> str:
    """1/3 for 2/6, or 2/6 where 1/3 is written."""
    size, sign = abs(jump.b), "-" if jump.b < 0 else ""
    mixed = jump.count.style.shape == "mixed"
    whole = int(size) if mixed or size.denominator == 1 else 0
    rest = size - whole
    simplest = sign + (_fraction(jump, whole, rest.numerator, rest.denominator) if rest else _whole(jump, whole))
    if simplest not in jump.due.split(" = "):
        return simplest
    over = denominator(jump)
    whole = whole if rest else whole - 1 if mixed else 0
    return sign + _fraction(jump, whole, int((size - whole) * over), over)


def top_heavy(whole: int, top: int, bottom: int) -> str:
    """5/4 for 1 1/4."""
    return f"{whole * bottom + top}/{bottom}"


def _as_parts(jump: Jump, language: str) -> str:
    return top_heavy(*_written(jump, jump.b))


def _from_the_renamed(jump: Jump, language: str) -> str:
    """2/4 after 1/4, which is 2/8 renamed in a count by 1/8."""
    whole = int(jump.a) if jump.count.style.shape == "mixed" else 0
    rest = jump.a - whole
    parts = int(jump.s * denominator(jump))
    return _fraction(jump, whole, rest.numerator + parts, rest.denominator)


def _hundredths(jump: Jump, language: str) -> str:
    return f"{10 + int(jump.s * 10)}/100"


def _unlike_added(jump: Jump, language: str) -> str:
    """2/5 for 1/2 + 1/3, or 2 2/12 for 2 1/4 + 1/8, by their simplest names."""
    a, size, sign = jump.a, abs(jump.s), 1 if jump.s > 0 else -1
    wholes = (a // 1, size // 1) if jump.count.style.shape == "mixed" and a >= 0 else (0, 0)
    top = (a - wholes[0]).numerator + sign * (size - wholes[1]).numerator
    bottom = a.denominator + sign * size.denominator
    whole = wholes[0] + sign * wholes[1]
    return _fraction(jump, whole, top, bottom) if top > 0 and bottom > 0 and whole >= 0 else ""


def _unlike(jump: Jump) -> bool:
    """Whether the count and the jump have parts of different sizes, on the board or by the names they were given.

    Where the board keeps one denominator, 2 2/8 and 1/8 are alike; 3/6 and 2/6 stand for 1/2 and 1/3, since neither
    is at home in sixths.
    """
    start, step, before = (number.denominator for number in (jump.start, jump.s, jump.a))
    renamed = jump.count.style.fractions == "simplified" or denominator(jump) not in (start, step)
    return renamed and start != step != before and 1 not in (start, step, before)


def _parts_miscounted(jump: Jump, language: str) -> str:
    """1 2/5 for 6/5: one part too many after the whole, or one too few where that would fill it."""
    size, over = abs(jump.b), denominator(jump)
    whole, top = int(size), int(size % 1 * over)
    top = top + 1 if top + 1 < over else top - 1
    sign = "-" if jump.b < 0 else ""
    return sign + (_fraction(jump, whole, top, over) if top else _whole(jump, whole))


def _smaller_from_larger(jump: Jump, language: str) -> str:
    """2 2/8 for 2 1/8 - 3/8: the parts are taken the other way round and the whole is left."""
    heard = jump.a // 1 - jump.s - jump.a % 1
    return jump.text(heard) if heard != jump.a else ""


def _opened_into_ten(jump: Jump, language: str) -> str:
    """2 9/5 for 3 1/5 - 2/5: the whole is opened into ten parts."""
    a, s = _written(jump, jump.a), _written(jump, -jump.s)
    return _fraction(jump, a.whole - 1, 10 + a.top - s.top * a.bottom // s.bottom, a.bottom)


def _opens_a_whole(jump: Jump) -> bool:
    """Counting back by less than a whole, there are too few parts to take from."""
    return _mixed(jump) and -1 < jump.s < 0 and jump.b > 0 and 0 < jump.a % 1 < -jump.s


def _splits(jump: Jump) -> bool:
    return denominator(jump) > 1


def _mixed(jump: Jump) -> bool:
    return _splits(jump) and jump.count.style.shape == "mixed"


def _by_one_part(jump: Jump) -> bool:
    return _splits(jump) and jump.a >= 0 and jump.s == Fraction(1, denominator(jump))


def _can_be_renamed(jump: Jump, value: Fraction) -> bool:
    return _splits(jump) and gcd(int(value * denominator(jump)), denominator(jump)) > 1


RULES = (
    # Ahead of F01, which hears the same where both parts are written: it says what is unlike.
    Rule("F12", (5, 5), _unlike, _unlike_added, 3, source=ADD_ACROSS),
    Rule("F01", (3, 5), lambda j: _splits(j) and j.a >= 0, _added_across, 3, source=f"{ADD_ACROSS}; {NI_ZHOU_2005}"),
    Rule("F02", (3, 4), _by_one_part, _bottom_counted, source=NI_ZHOU_2005),
    Rule("F03", (3, 4), _by_one_part, _both_counted, source=NI_ZHOU_2005),
    Rule(
        "F04",
        (3, 4),
        lambda j: _splits(j) and j.s > 0 and j.a == 1,
        lambda j, _: j.text(j.s),
        3,
        source=HACKENBERG_2007,
        turns=True,
    ),
    # Where a class stops nothing is heard: what is said comes first.
    Rule("F05", (3, 4), lambda j: _splits(j) and j.s > 0 and j.a <= 1 < j.b, _stops, 1, source=HACKENBERG_2007),
    Rule(
        "F06",
        (4, 5),
        lambda j: _mixed(j) and j.s > 0 and j.b > 0 and j.b % 1 == 0,
        _full_set_of_parts,
        3,
    ),
    Rule(
        "F07",
        (4, 5),
        lambda j: _mixed(j) and 0 < j.s < 1 and j.a > 1 and j.a % 1 != 0,
        lambda j, _: j.text(j.a + 1),
    ),
    Rule(
        "F08",
        (4, 5),
        lambda j: _mixed(j) and j.b > 1 and j.b % 1 != 0,
        _run_together,
        1,
        of_writing=True,
        only_as_written=True,
    ),
    Rule("F09", (3, 5), lambda j: j.b != 0 and _can_be_renamed(j, j.b), _renamed, 3, of_writing=True),
    Rule(
        "F10",
        (4, 5),
        lambda j: j.b > j.a >= 0 and j.a % 1 != 0 and _can_be_renamed(j, j.a),
        _from_the_renamed,
    ),
    Rule("F11", (4, 5), lambda j: denominator(j) == 10 and j.s > 0 and j.a == 1, _hundredths, 3),
    Rule(
        "F13",
        (4, 5),
        lambda j: _splits(j) and j.s < 0 and j.a >= 1 and j.a % 1 == 0 and j.s % 1 != 0,
        lambda j, _: j.text(j.a - 1),
        3,
    ),
    Rule(
        "F14",
        (4, 5),
        lambda j: _splits(j) and j.s > Fraction(1, denominator(j)) and j.a // 1 < j.b // 1 and j.b % 1 != 0,
        _parts_miscounted,
    ),
    Rule("F18", (3, 5), lambda j: _mixed(j) and j.b > 1 and j.b % 1 != 0, _as_parts, of_writing=True),
    # Beyond the table: counting down across a whole without landing on it, and opening a whole for its parts.
    Rule(
        "F15",
        (4, 5),
        lambda j: _splits(j) and -1 < j.s < 0 and j.b > 0 and j.a % 1 != 0 and j.b // 1 < j.a // 1,
        lambda j, _: j.text(j.b + 1),
    ),
    Rule("F16", (4, 5), _opens_a_whole, _smaller_from_larger),
    Rule("F17", (4, 5), lambda j: _opens_a_whole(j) and denominator(j) != 10, _opened_into_ten),
)

AREA = Area("fractions", serves, RULES)
