"""Slips in counts of money: cents run past the dollar, and zeros that are left out."""

from ..grid import Grid
from ..kinds.currency import currency_named
from ..kinds.names import Kind
from .jump import Jump
from .rule import Area, Rule
from .writing import with_part


def serves(grid: Grid) -> bool:
    """Money whose main unit is a hundred of the small one, written in either."""
    count = grid.count
    return count.kind == Kind.MONEY and (count.style.units == "one" or len(count.part_names()) == 2)


def _in_dollars(jump: Jump) -> bool:
    return len(jump.count.part_names()) == 2


def _cents(jump: Jump) -> str:
    return jump.count.part_names()[1]


def _cents_run_on(jump: Jump, language: str) -> str:
    """$2.100 after $2.95."""
    return with_part(jump, jump.a, _cents(jump), str(int(jump.a % 100 + jump.s)))


def _zero_left_out(jump: Jump, language: str) -> str:
    """$4.5 for $4.05."""
    return with_part(jump, jump.b, _cents(jump), str(int(jump.b % 100)))


def _last_zero_dropped(jump: Jump, language: str) -> str:
    return with_part(jump, jump.b, _cents(jump), str(int(jump.b % 100) // 10))


def _point_and_cent_sign(jump: Jump, language: str) -> str:
    """0.65¢ for 65¢; nothing where the currency has no sign for its small unit."""
    sign = currency_named(jump.count.style.currency, language).small_symbol
    return f"0{jump.count.style.decimal_mark}{int(jump.b):02d}{sign}" if sign else ""


def _up_past_a_dollar(jump: Jump) -> bool:
    return _in_dollars(jump) and 0 < jump.s < 100 and jump.b // 100 > jump.a // 100


RULES = (
    # Ahead of M01, which hears the same from wherever the count comes.
    Rule("M07", (2, 4), lambda j: j.s == 10 and _up_past_a_dollar(j) and j.a % 10 != 0, _cents_run_on, 3),
    Rule("M01", (2, 4), _up_past_a_dollar, _cents_run_on, 3),
    Rule("M02", (2, 4), lambda j: _in_dollars(j) and 0 < j.b % 100 < 10, _zero_left_out, 3, of_writing=True),
    Rule(
        "M03",
        (2, 4),
        lambda j: _in_dollars(j) and j.b % 10 == 0 and j.b % 100 != 0,
        _last_zero_dropped,
        1,
        of_writing=True,
    ),
    Rule("M04", (2, 4), lambda j: 0 < j.b < 100, _point_and_cent_sign, 1, of_writing=True),
    Rule("M05", (2, 3), lambda j: j.s == 25 and j.a % 100 == 0 and j.a > 0, lambda j, _: j.text(j.a + 50)),
    Rule(
        "M06",
        (2, 4),
        lambda j: -100 < j.s < 0 and j.a % 100 == 0 and j.a > 0,
        lambda j, _: j.text(j.a + 100 + j.s),
        3,
    ),
    # Beyond the table: counting down across a dollar without landing on it.
    Rule(
        "M08",
        (2, 4),
        lambda j: -100 < j.s < 0 and j.a % 100 != 0 and j.b // 100 < j.a // 100,
        lambda j, _: j.text(j.b + 100),
    ),
)

AREA = Area("money", serves, RULES)
