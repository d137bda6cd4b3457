"""Slips in decimal counts: the digits after the mark go on as a number of their own."""

from collections.abc import Callable
from fractions import Fraction

from ..grid import Grid
from ..kinds.decimal import DecimalNumber
from ..kinds.names import Kind
from .jump import Jump
from .rule import Area, Rule
from .sources import STEINLE_STACEY


def serves(grid: Grid) -> bool:
    return grid.count.kind == Kind.DECIMAL


def _places(jump: Jump) -> int:
    """How many decimal places the count is written with."""
    form = jump.count.form
    return form.places_shown if isinstance(form, DecimalNumber) else 0


def _whole_before(jump: Jump) -> str:
    mark = jump.count.style.decimal_mark
    return jump.text(jump.a // 1).partition(mark)[0] + mark


def _run_on(places: int) -> Callable[[Jump, str], str]:
    """2.10 after 2.9: the digits after the mark are counted on by themselves."""

    def heard(jump: Jump, language: str) -> str:
        return f"{_whole_before(jump)}{int((jump.a % 1 + jump.s) * 10**places)}"

    return heard


def _ten_in_the_last_place(places: int) -> Callable[[Jump, str], str]:
    """0.010 after 0.09: the last digit becomes a ten and the ones before it stay."""

    def heard(jump: Jump, language: str) -> str:
        before = int(jump.a % 1 * 10 ** (places - 1))
        return f"{_whole_before(jump)}{before:0{places - 1}d}10"

    return heard


def _shortest(jump: Jump, value: Fraction) -> str:
    """A decimal without zeros at its end, but with one place at least."""
    mark = jump.count.style.decimal_mark
    whole, _, decimals = jump.text(value).partition(mark)
    return f"{whole}{mark}{decimals.rstrip('0') or '0'}"


def _another_zero(jump: Jump, language: str) -> str:
    """0.4 for 0.40, or 0.40 where 0.4 is written."""
    shortest = _shortest(jump, jump.b)
    return shortest if shortest != jump.due else f"{shortest}0"


def _a_place_too_far_left(jump: Jump, language: str) -> str:
    """1.7 for 1.4 + 0.03; nothing where that would lead below zero."""
    heard = jump.a + 10 * jump.s
    return _shortest(jump, heard) if heard >= 0 or jump.a < 0 else ""


def _up(jump: Jump) -> bool:
    return jump.a >= 0 and 0 < jump.s < 1


def _passes_a_whole(jump: Jump) -> bool:
    return _up(jump) and jump.b // 1 > jump.a // 1


RULES = (
    Rule(
        "D01",
        (4, 5),
        lambda j: j.s == Fraction(1, 10) and j.a >= 0 and j.a * 10 % 10 == 9,
        _run_on(1),
        3,
        source=STEINLE_STACEY,
    ),
    Rule("D02", (4, 5), lambda j: _places(j) == 1 and _passes_a_whole(j), _run_on(1), 3, source=STEINLE_STACEY),
    Rule("D03", (4, 5), lambda j: _places(j) == 2 and _passes_a_whole(j), _run_on(2), 3, source=STEINLE_STACEY),
    Rule(
        "D04",
        (4, 5),
        lambda j: (
            _places(j) == 2 and j.s == Fraction(1, 100) and j.a >= 0 and j.a * 100 % 10 == 9 and j.a * 100 % 100 != 99
        ),
        _ten_in_the_last_place(2),
        3,
    ),
    Rule(
        "D05",
        (5, 5),
        lambda j: _places(j) == 3 and j.s == Fraction(1, 1000) and j.a >= 0 and j.a * 1000 % 10 == 9,
        _ten_in_the_last_place(3),
        3,
        source=STEINLE_STACEY,
    ),
    Rule("D06", (4, 5), lambda j: _places(j) == 2 and j.b * 100 % 10 == 0, _another_zero, 3, of_writing=True),
    Rule(
        "D07",
        (5, 5),
        lambda j: j.start * 10 % 1 == 0 and j.s * 10 % 1 != 0,
        _a_place_too_far_left,
    ),
    Rule("D08", (4, 5), lambda j: _up(j) and j.a % 1 == 0 and j.a > 0, lambda j, _: j.text(j.a + 1)),
    Rule("D09", (4, 5), lambda j: 0 < abs(j.s) < 1 and j.b % 1 == 0, lambda j, _: j.text(j.b + j.s)),
    Rule(
        "D10",
        (4, 5),
        lambda j: -1 < j.s < 0 and j.a > 0 and j.a % 1 == 0,
        lambda j, _: j.text(j.a + 1 + j.s),
        3,
    ),
    # Beyond the table: counting down across a whole without landing on it.
    Rule(
        "D11",
        (4, 5),
        lambda j: -1 < j.s < 0 and j.b > 0 and j.a % 1 != 0 and j.b // 1 < j.a // 1,
        lambda j, _: j.text(j.b + 1),
    ),
)

AREA = Area("decimals", serves, RULES)
