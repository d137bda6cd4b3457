"""How long a sentence with amounts is."""

import re

from routines.counting.kinds.unit_names import NAMES
from routines.counting.kinds.units import UNITS

_NAMES = {form for name in NAMES.values() for form in (name.one, name.several)}
_UNIT = "|".join(sorted(map(re.escape, {*UNITS, *_NAMES, "a.m.", "p.m.", "a. m.", "p. m."}), key=len, reverse=True))
_ONE = rf"\d(?:[\d.,/:]*\d)?(?: \d+/\d+)?(?: (?:de )?(?:{_UNIT})(?!\w))"
_AMOUNT = re.compile(rf"{_ONE}(?: {_ONE})?(?: \({_ONE}(?: {_ONE})?\))?|\d+ \d+/\d+")


def words_in(text: str) -> int:
    """How many words a text has, an amount being one, however it is written: 1 2/3; 2 lb 10 oz; 48 oz (3 lb)."""
    return len(_AMOUNT.sub("#", text).split())
