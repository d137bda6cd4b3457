"""Slips in counts of measures that are written with a fraction: tops and bottoms added, and other names of one amount.

Beyond the table; they follow its rows on bare fractions.
"""

import re
from fractions import Fraction

from ..grid import Grid
from ..kinds.fraction_forms import write_fraction
from ..kinds.measure import Measure
from ..kinds.piece import join
from ..written_units import written_units
from .fractions import top_heavy
from .jump import Jump
from .rule import Area, Rule
from .sources import ADD_ACROSS

_NUMBER = re.compile(r"\d[\d/ ]*(?= )")
_PARTS = re.compile(r"(?:(\d+) )?(\d+)/(\d+) ")


def serves(grid: Grid) -> bool:
    units = written_units(grid.count)
    return isinstance(grid.count.form, Measure) and units is not None and units.large is None


def _parts(text: str) -> tuple[int, int, int] | None:
    """The whole, top and bottom that an amount is written with; None where it has no fraction."""
    found = _PARTS.match(text)
    return (int(found[1] or 0), int(found[2]), int(found[3])) if found else None


def _is_written_in_parts(jump: Jump) -> bool:
    return jump.b > 0 and _parts(jump.due) is not None


def _added_across(jump: Jump, language: str) -> str:
    """6/8 cup after 3/4 cup in a count by 3/4 cup."""
    before, step = _parts(jump.said), _parts(jump.count.difference_text(jump.s))
    if before is None or step is None:
        return ""
    whole, top, bottom = (one + other for one, other in zip(before, step, strict=True))
    return _with_number(jump.said, f"{whole} {top}/{bottom}" if whole else f"{top}/{bottom}")


def _top_heavy(jump: Jump, language: str) -> str:
    """6/4 cups for 1 2/4 cups."""
    parts = _parts(jump.due)
    return _with_number(jump.due, top_heavy(*parts)) if parts and parts[0] else ""


def _simplest(jump: Jump, language: str) -> str:
    """1 1/2 cups for 1 2/4 cups."""
    parts = _parts(jump.due)
    if parts is None:
        return ""
    amount = parts[0] + Fraction(parts[1], parts[2])
    style = jump.count.style
    return _with_number(jump.due, join(write_fraction(amount, amount.denominator, style, wholes="number")))


def _with_number(text: str, number: str) -> str:
    return _NUMBER.sub(number, text, count=1)


RULES = (
    Rule("F19", (3, 5), lambda j: j.s > 0 and j.a > 0, _added_across, 3, source=ADD_ACROSS),
    Rule("F20", (3, 5), _is_written_in_parts, _top_heavy, of_writing=True),
    Rule("F21", (3, 5), _is_written_in_parts, _simplest, 3, of_writing=True),
)

AREA = Area("parts of a unit", serves, RULES)
