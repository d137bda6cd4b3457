"""Slips of the Spanish number words: look-alike tens, patterns run on, and words that join.

Beyond the table; common practice, no source.
"""

from ..grid import Grid
from ..kinds.names import Kind
from .jump import Jump
from .rule import Area, Rule

_ES = ("es",)
_MADE_UP_TEENS = {11: "dieciuno", 12: "diecidós", 13: "diecitrés", 14: "diecicuatro", 15: "diecicinco"}
_MADE_UP_HUNDREDS = {5: "cincocientos", 7: "sietecientos", 9: "nuevecientos"}
_REGULAR_HUNDREDS = {5: "quinientos", 7: "setecientos", 9: "novecientos"}


def serves(grid: Grid) -> bool:
    return grid.count.kind in (Kind.WHOLE, Kind.FRACTION)


def _whole(jump: Jump) -> bool:
    return jump.count.kind == Kind.WHOLE and jump.a >= 0 and jump.b >= 0


def _new(jump: Jump, size: int) -> bool:
    """Whether the jump enters another ten (size 10) or hundred (size 100)."""
    return _whole(jump) and jump.a // size != jump.b // size


def _other_of_sixty_and_seventy(jump: Jump, language: str) -> str:
    return jump.text(jump.b + 10 if jump.b % 100 // 10 == 6 else jump.b - 10)


def _without_y(jump: Jump, language: str) -> str:
    return jump.words(int(jump.b), "es").replace(" y ", " ")


def _made_up_hundred(jump: Jump, language: str) -> str:
    digit = int(jump.b) // 100 % 10
    return jump.words(int(jump.b), "es").replace(_REGULAR_HUNDREDS[digit], _MADE_UP_HUNDREDS[digit])


def _cien_kept(jump: Jump, language: str) -> str:
    return jump.words(int(jump.b), "es").replace("ciento ", "cien ")


def _ordinal_parts(jump: Jump, language: str) -> str:
    """dos terceros for dos tercios."""
    return jump.count.words_of(jump.b, "es").replace("tercio", "tercero")


RULES = (
    Rule(
        "S01",
        (0, 1),
        lambda j: _new(j, 10) and j.b % 100 // 10 in (6, 7),
        _other_of_sixty_and_seventy,
        3,
        languages=_ES,
    ),
    # Where the tens have long been said in order, it is heard now and then.
    Rule(
        "S08",
        (2, 3),
        lambda j: _new(j, 10) and j.b % 100 // 10 in (6, 7),
        _other_of_sixty_and_seventy,
        1,
        languages=_ES,
    ),
    Rule("S02", (0, 1), lambda j: _whole(j) and j.s == 1 and j.a == 19, lambda j, _: "diecidiez", 3, languages=_ES),
    Rule(
        "S03",
        (0, 1),
        lambda j: _whole(j) and 11 <= j.b <= 15,
        lambda j, _: _MADE_UP_TEENS[int(j.b)],
        languages=_ES,
        of_writing=True,
    ),
    Rule(
        "S04",
        (0, 2),
        lambda j: _whole(j) and j.s == 1 and 30 < j.b < 100 and j.b % 10 == 1,
        _without_y,
        1,
        languages=_ES,
        of_writing=True,
    ),
    Rule(
        "S05",
        (2, 4),
        lambda j: _new(j, 100) and j.b // 100 % 10 in _MADE_UP_HUNDREDS,
        _made_up_hundred,
        3,
        languages=_ES,
        of_writing=True,
    ),
    Rule(
        "S06",
        (1, 3),
        lambda j: _whole(j) and 100 < j.b < 200 and (j.a <= 100 or j.a >= 200),
        _cien_kept,
        languages=_ES,
        of_writing=True,
    ),
    Rule(
        "S07",
        (3, 5),
        lambda j: (
            j.count.kind == Kind.FRACTION
            and j.b > 0
            and j.b.denominator == 3
            and "tercio" in j.count.words_of(j.b, "es")
        ),
        _ordinal_parts,
        languages=_ES,
        of_writing=True,
    ),
)

AREA = Area("Spanish number words", serves, RULES)
