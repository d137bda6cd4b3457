"""Slips in counts of whole numbers: leaving nine, crossing tens and hundreds, and the well-known multiples."""

from fractions import Fraction

from ..grid import Grid
from ..kinds.names import Kind
from .jump import Jump
from .known_facts import is_known_multiple
from .places import is_sung
from .rule import Area, Rule
from .sayings import in_hundreds
from .sources import BYRGE_2014, NRC_2009, NSW_2010, PROGRESSIONS_NBT, SECADA_FUSON_HALL_1983

# After 29 and 49 the irregular words for 30 and 50 are mixed up; elsewhere an earlier decade comes back.
_WRONG_DECADE = {30: 50, 40: 20, 50: 30, 60: 40, 70: 50, 80: 60, 90: 70}

COUNTED_BEFORE_TABLES = (2, 5, 10, 100)


def serves(grid: Grid) -> bool:
    return grid.count.kind == Kind.WHOLE


def _ten_more_than(jump: Jump, language: str) -> str:
    """The last ten and "ten" after it: fifty-ten, cincuenta y diez, veintidiez."""
    decade = int(jump.a) // 10 * 10
    if language == "en":
        return f"{jump.words(decade, 'en')}-ten"
    if decade % 100 == 20:
        return jump.words(decade, "es").removesuffix("veinte") + "veintidiez"
    return f"{jump.words(decade, 'es')} y diez"


def _past_a_thousand(jump: Jump, language: str) -> str:
    """4,1000: the last three digits go on by themselves; 999 has no thousand yet, so it is said."""
    if jump.a < 1000:
        return _ten_more_than(jump, language)
    return f"{jump.text(jump.a // 1000)}{jump.count.style.thousands}{int(jump.a % 1000 + jump.s)}"


def _passes_a_thousand(jump: Jump) -> bool:
    return jump.a >= 1000 and 1 < jump.s < 1000 and jump.a % 1000 + jump.s >= 1000


def _empty_hundred(jump: Jump, language: str) -> str:
    """1,300 for 1,030; where nothing comes after the thousand, the hundreds are counted on: ten hundred."""
    if jump.b % 1000:
        return jump.text(jump.b + jump.b % 1000 * 9)
    return in_hundreds(jump.count, jump.b, language)


def _as_it_is_said(jump: Jump, language: str) -> str:
    """3007 for three hundred seven."""
    return f"{int(jump.b) // 100 * 100}{int(jump.b) % 100}"


def _thousands_as_said(jump: Jump, language: str) -> str:
    """50001 for five thousand one."""
    return f"{int(jump.b) // 1000 * 1000}{int(jump.b) % 1000}"


def _a_ten_of_tens(jump: Jump, language: str) -> str:
    """The ten after ninety, made like the tens before it."""
    return "tenty" if language == "en" else "noventa y diez"


def _smaller_from_larger(jump: Jump, language: str) -> str:
    """54 for 52 - 6: the ones are taken the other way round and the ten is left."""
    return jump.text(jump.a // 10 * 10 + (-jump.s - jump.a % 10))


def _ones(jump: Jump) -> bool:
    return jump.s == 1 and jump.a >= 0


def _back_in_ones(jump: Jump) -> bool:
    return jump.s == -1 and jump.b >= 0


def _above_zero(jump: Jump) -> bool:
    return jump.a >= 0 and jump.b >= 0


def _crosses(jump: Jump, size: int) -> bool:
    return _above_zero(jump) and jump.a // size != jump.b // size


def _next_multiple(jump: Jump) -> Fraction:
    """The first multiple of the step past the count before."""
    return (jump.a // jump.s + 1) * jump.s


def _pulled_to_a_multiple(jump: Jump) -> bool:
    beside = jump.s > 1 and _above_zero(jump) and jump.start % jump.s != 0
    return beside and is_known_multiple(_next_multiple(jump), jump.s)


def _known_by_heart(jump: Jump) -> bool:
    """25, 50, 75, 100 and the fifties are said as a song; nobody works them out."""
    return jump.s in (25, 50) and jump.start % 25 == 0


def _from_a_ten(jump: Jump) -> bool:
    """The jump starts at a ten that the multiples of the step land on, not past a hundred."""
    return 0 < jump.a <= 100 and jump.a % 10 == 0 and jump.start % jump.s == 0


RULES = (
    Rule("W01", (0, 1), lambda j: j.s == 1 and j.a % 10 == 9 and 19 < j.a < 99, _ten_more_than, 3, source=NRC_2009),
    Rule(
        "W02",
        (0, 1),
        lambda j: j.s == 1 and j.a % 10 == 9 and 19 < j.a < 99,
        lambda j, _: j.text(_WRONG_DECADE[int(j.b)]),
        source=f"{NRC_2009}; irregular decade words",
    ),
    Rule(
        "W03",
        (0, 1),
        lambda j: _ones(j) and j.b % 10 == 0 and j.b < 100,
        lambda j, _: j.text(j.b + 1),
        1,
    ),
    Rule("W04", (0, 1), lambda j: _ones(j) and j.a % 10 == 0 and j.a > 0, lambda j, _: j.said, 1),
    Rule(
        "W05",
        (0, 1),
        lambda j: _ones(j) and 13 <= j.b <= 19,
        lambda j, _: j.text((j.b - 10) * 10),
        languages=("en",),
        source=NSW_2010,
    ),
    Rule(
        "W06",
        (0, 1),
        lambda j: j.s == 1 and j.a == 19,
        lambda j, _: j.text(91),
        0,
        languages=("en",),
        source=NSW_2010,
    ),
    Rule(
        "W07",
        (0, 2),
        lambda j: 13 <= j.b <= 19,
        lambda j, _: j.text((j.b - 10) * 10 + 1),
        languages=("en",),
        anywhere=True,
        of_writing=True,
    ),
    Rule("W08", (0, 2), lambda j: j.s == 1 and j.a == 99, _ten_more_than, 3),
    Rule(
        "W09",
        (1, 2),
        lambda j: _ones(j) and j.a % 100 == 0 and j.a >= 100,
        lambda j, _: j.text(j.a + 100),
        1,
    ),
    Rule(
        "W10",
        (1, 2),
        lambda j: _ones(j) and j.a > 100 and j.a % 100 == 9,
        lambda j, _: j.text(j.a + 91),
        source=PROGRESSIONS_NBT,
    ),
    Rule(
        "W11",
        (1, 3),
        lambda j: _ones(j) and j.a > 100 and j.a % 10 == 9 and j.a % 100 not in (9, 99),
        _ten_more_than,
        source=PROGRESSIONS_NBT,
    ),
    Rule(
        "W12",
        (2, 3),
        lambda j: _ones(j) and j.a > 100 and j.a % 100 == 99 and j.a % 1000 != 999,
        lambda j, _: j.text(1000 if j.a < 1000 else (j.a // 1000 + 1) * 1000),
        2,
        source=PROGRESSIONS_NBT,
    ),
    Rule("W13", (3, 5), lambda j: _ones(j) and j.a % 1000 == 999, _past_a_thousand, 3),
    Rule(
        "W14",
        (2, 3),
        lambda j: j.s == 10 and j.a >= 100 and j.a % 100 >= 90 and j.a % 10 != 0,
        lambda j, _: j.text(j.b - 100),
        3,
    ),
    Rule(
        "W15",
        (1, 2),
        lambda j: j.s == 10 and j.a % 100 == 0 and j.a >= 100,
        lambda j, _: j.text(j.a + 100),
        3,
    ),
    # Kindergarten counts by tens too. Source: Common Core State Standards (2010), K.CC.A.1.
    Rule(
        "W49",
        (0, 0),
        lambda j: j.a % 100 == 0 and j.a >= 100,
        lambda j, _: j.text(j.a + 100),
        3,
        counts=lambda count: count.step == 10,
    ),
    Rule(
        "W16",
        (2, 4),
        lambda j: j.s == 100 and _above_zero(j) and j.a % 1000 >= 900,
        _empty_hundred,
        3,
        same_number=lambda j: j.b % 1000 == 0,
    ),
    Rule(
        "W17",
        (2, 3),
        lambda j: j.s == 100 and j.a % 1000 == 0 and j.a >= 1000,
        lambda j, _: j.text(j.a + 1000),
        1,
    ),
    Rule(
        "W18",
        (2, 4),
        lambda j: 100 < j.b < 1000 and j.b % 100 != 0,
        _as_it_is_said,
        1,
        source=BYRGE_2014,
        anywhere=True,
        of_writing=True,
    ),
    Rule(
        "W19",
        (2, 4),
        lambda j: 1 < j.s < 10 and _crosses(j, 10) and j.a % 10 != 0,
        lambda j, _: j.text(j.b + 1),
    ),
    Rule(
        "W20",
        (3, 4),
        _pulled_to_a_multiple,
        lambda j, _: j.text(_next_multiple(j)),
    ),
    # Before the tables are learned the same happens with what is counted by in class.
    Rule(
        "W45",
        (1, 2),
        lambda j: j.s in COUNTED_BEFORE_TABLES and _pulled_to_a_multiple(j),
        lambda j, _: j.text(_next_multiple(j)),
    ),
    Rule("W21", (2, 4), lambda j: j.s == 9 and _above_zero(j) and j.a % 10 == 0, lambda j, _: j.text(j.b + 10)),
    Rule("W22", (3, 5), lambda j: j.s == 11 and j.a == 99, lambda j, _: j.text(111), 3),
    Rule(
        "W23",
        (1, 3),
        lambda j: _back_in_ones(j) and j.a % 10 == 0 and j.a % 100 != 0,
        lambda j, _: j.text(j.a + 9),
        3,
    ),
    Rule(
        "W24",
        (1, 3),
        lambda j: _back_in_ones(j) and j.b % 10 == 0 and j.b > 0,
        lambda j, _: j.text(j.b - 10),
    ),
    Rule(
        "W25",
        (2, 4),
        lambda j: _back_in_ones(j) and j.a % 100 == 0 and j.a > 0,
        lambda j, _: j.text(j.a + 99),
        3,
    ),
    Rule(
        "W26",
        (2, 4),
        lambda j: j.s == -10 and j.a % 100 < 10 and j.a >= 100,
        lambda j, _: j.text(j.a - 100),
        1,
    ),
    Rule(
        "W27",
        (3, 5),
        lambda j: j.s == -100 and j.a % 1000 < 100 and j.a >= 1000,
        lambda j, _: j.text(j.a + 900),
        3,
    ),
    # Beyond the table: steps that it does not name, and counting back and skip-counting in the first grades.
    Rule(
        "W28",
        (2, 5),
        lambda j: 10 < j.s < 100 and j.a >= 100 and _crosses(j, 100) and not _known_by_heart(j),
        lambda j, _: j.text(j.b - 100),
    ),
    Rule(
        "W29",
        (2, 5),
        lambda j: -100 < j.s < -10 and _crosses(j, 100),
        lambda j, _: j.text(j.b + 100),
        3,
    ),
    Rule(
        "W30",
        (2, 4),
        lambda j: 10 < j.s < 100 and _above_zero(j) and j.a % 10 + j.s % 10 >= 10 and not _known_by_heart(j),
        lambda j, _: j.text(j.b - 10),
    ),
    Rule(
        "W31",
        (2, 4),
        lambda j: -10 < j.s < -1 and _crosses(j, 10) and j.a % 10 != 0,
        _smaller_from_larger,
        3,
    ),
    Rule("W32", (0, 1), lambda j: j.s == 10 and j.a == 90, _a_ten_of_tens, 3),
    Rule(
        "W33",
        (0, 1),
        lambda j: j.s == 10 and j.a % 10 == 0 and 30 <= j.b <= 90,
        lambda j, _: j.text(j.b // 10 + 10),
        languages=("en",),
        source=NSW_2010,
    ),
    Rule("W34", (0, 1), lambda j: j.s in (-1, -2) and j.a in (10, 20), lambda j, _: j.text(j.a - j.s), turns=True),
    Rule(
        "W35",
        (0, 1),
        lambda j: j.s == -1 and 13 <= j.b <= 19,
        lambda j, _: j.text((j.b - 10) * 10),
        languages=("en",),
        source=NSW_2010,
    ),
    Rule("W36", (0, 2), lambda j: j.s in (2, 5, 10) and _from_a_ten(j), lambda j, _: j.text(j.a + 1)),
    Rule("W37", (0, 2), lambda j: j.s == 5 and _from_a_ten(j), lambda j, _: j.text(j.a + 10)),
    Rule("W38", (2, 4), lambda j: j.s == 25 and j.a % 100 == 0 and j.a > 0, lambda j, _: j.text(j.a + 50)),
    Rule("W39", (0, 1), lambda j: _ones(j) and j.b == 15, lambda j, _: j.text(16), 1),
    Rule("W41", (3, 5), _passes_a_thousand, _past_a_thousand),
    Rule("W42", (2, 2), lambda j: j.s == 1 and j.a % 10 == 9 and 19 < j.a < 99, _ten_more_than, 1, source=NRC_2009),
    # Fourteen and fifteen are left out before any other number; the words run into each other. In Spanish they do not.
    Rule(
        "W43",
        (0, 1),
        lambda j: _ones(j) and j.b == 14,
        lambda j, _: j.text(j.b + 1),
        3,
        languages=("en",),
        source=NRC_2009,
    ),
    Rule("W46", (0, 1), lambda j: _ones(j) and j.b in (13, 16, 17, 18), lambda j, _: j.text(j.b + 1), 0),
    Rule("W44", (0, 2), lambda j: j.s in (2, 5) and j.b == 100, _ten_more_than, 3),
    # The count before is said as the first of the jump; the slip of W19 the other way.
    Rule(
        "W47",
        (2, 4),
        lambda j: _crosses(j, 10) and j.a % 10 != 0,
        lambda j, _: j.text(j.b - 1 if j.s > 0 else j.b + 1),
        source=SECADA_FUSON_HALL_1983,
        counts=lambda count: 2 < abs(count.step) < 10 and not is_sung(count),
    ),
    Rule(
        "W48",
        (2, 4),
        lambda j: j.a // 1000 != j.b // 1000 and j.b % 1000 < 100 and j.a >= 0,
        lambda j, language: in_hundreds(j.count, j.b, language),
        same_number=lambda j: True,
        counts=lambda count: count.step > 0,
    ),
    Rule("W40", (3, 4), lambda j: 1000 < j.b < 10_000 and 0 < j.b % 1000 < 100, _thousands_as_said, 1, of_writing=True),
)

AREA = Area("whole numbers", serves, RULES)
