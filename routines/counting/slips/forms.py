"""Forms that nobody may write, whatever they are meant to name: minutes past the hour, more than two digits of cents,
decimals read part by part.

They are never foreseen by themselves; where a rule of the tables hears the same, the rule is named instead.
"""

import re
from fractions import Fraction

from ..kinds.decimal import DecimalNumber
from ..kinds.names import Kind
from .jump import Jump
from .slip import Slip

FORMS = ("A01", "A02", "A03")

_CLOCK = re.compile(r"\s*\d{1,2}:(\d{2})(?!\d)")
_SPLIT = re.compile(r"\s*([-\u2212]?)(\d+)\W(\d+)\s*$")


def form_slip(jump: Jump, said: str) -> Slip | None:
    """The slip in how a number is written, if what was said has a form that nobody may write."""
    form = _form(jump, said)
    if form is None:
        return None
    return Slip(rule=form, n=jump.n, heard=said, correct=jump.due, of_writing=True)


def _form(jump: Jump, said: str) -> str | None:
    kind = jump.count.kind
    if kind == Kind.CLOCK:
        found = _CLOCK.match(said)
        return "A01" if found and int(found[1]) >= 60 else None
    if kind == Kind.MONEY:
        mark = re.escape(jump.count.style.decimal_mark)
        return "A02" if len(jump.count.part_names()) == 2 and re.search(rf"{mark}\d{{3,}}\D*$", said) else None
    if kind == Kind.DECIMAL:
        return "A03" if _part_by_part(jump, said) == jump.b else None
    return None


def _part_by_part(jump: Jump, said: str) -> Fraction | None:
    """2.100 read as 2 and a hundred of the last place."""
    form, found = jump.count.form, _SPLIT.match(said)
    if not found or not isinstance(form, DecimalNumber) or not form.places_shown:
        return None
    size = int(found[2]) + Fraction(int(found[3]), 10**form.places_shown)
    return -size if found[1] else size
