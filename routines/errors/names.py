"""What the values of an error are called on a page: parameters, measures, units of currency, and numbers with their marks."""

from collections.abc import Mapping

from django.utils.functional import Promise
from django.utils.translation import get_language
from django.utils.translation import gettext_lazy as _

from routines.counting.errors import Value
from routines.counting.kinds.currency import currency_named
from routines.counting.languages import LANGUAGES

NAMES: Mapping[str, Mapping[str, str | Promise]] = {
    "name": {
        "along": _("along"),
        "block": _("block"),
        "blocks": _("blocks"),
        "change": _("change"),
        "difference": _("difference"),
        "direction": _("direction"),
        "earlier": _("earlier"),
        "every": _("every"),
        "first": _("first"),
        "length": _("length"),
        "lie": _("lie"),
        "line_length": _("line_length"),
        "lines": _("lines"),
        "modulus": _("modulus"),
        "multiple": _("multiple"),
        "pairs": _("pairs"),
        "part": _("part"),
        "place": _("place"),
        "slips": _("slips"),
        "start": _("start"),
        "step": _("step"),
        "targets": _("targets"),
        "unseen": _("unseen"),
        "value": _("value"),
        "which": _("which"),
    },
    "lie": {
        "row": _("row"),
        "column": _("column"),
        "rows": _("rows"),
        "columns": _("columns"),
        "down-right": _("down-right"),
        "down-left": _("down-left"),
        "scattered": _("scattered"),
    },
    "measure": {
        "length": _("length"),
        "mass": _("mass"),
        "capacity": _("capacity"),
        "elapsed": _("time"),
    },
    "example": {
        "length": _("2 ft 9 in or 45 cm"),
        "mass": _("1 lb 4 oz or 250 g"),
        "capacity": _("8 fl oz or 1 L 50 mL"),
        "elapsed": _("25 min or 1 h 35 min"),
    },
    "system": {"customary": _("customary"), "metric": _("metric")},
    "half": {"a.m.": _("a.m."), "p.m.": _("p.m."), "noon": _("noon"), "midnight": _("midnight")},
    "size": {"small": _("small"), "large": _("large")},
}
"""By the name that a value has in an error."""


def called(name: str, value: Value) -> str | int:
    """What stands for a value in a sentence. A number stays one where that chooses between singular and plural."""
    if isinstance(value, tuple):
        return ", ".join(str(called(name, one)) for one in value)
    if isinstance(value, int):
        return value if abs(value) < 1000 else f"{value:,}"
    if name == "currency":
        return _several(value)
    names = NAMES.get("measure" if name == "other" else name, {})
    return str(names.get(value, value))


def _several(code: str) -> str:
    """A currency's main unit in the plural, in the page's language where the engine knows it."""
    language = (get_language() or "en").partition("-")[0]
    return currency_named(code, language if language in LANGUAGES else "en").main.several
