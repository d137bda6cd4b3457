"""What the plan's forms say and offer of each kind of number."""

from django.utils.translation import gettext_lazy as _

from accounts.translated import Translated
from routines.counting import Kind

KINDS = {
    Kind.WHOLE: _("whole numbers"),
    Kind.DECIMAL: _("decimals"),
    Kind.FRACTION: _("fractions"),
    Kind.LENGTH: _("lengths"),
    Kind.MASS: _("masses"),
    Kind.CAPACITY: _("capacities"),
    Kind.MONEY: _("money"),
    Kind.CLOCK: _("clock times"),
    Kind.ELAPSED: _("elapsed times"),
}

# What a teacher might type for start and step, shown while a field is empty.
EXAMPLES: dict[str, tuple[str, str]] = {
    Kind.WHOLE: ("10", "6"),
    Kind.DECIMAL: ("0.4", "0.3"),
    Kind.FRACTION: ("1/4", "3/4"),
    Kind.LENGTH: ("9 in", "1 ft 3 in"),
    Kind.MASS: ("12 oz", "12 oz"),
    Kind.CAPACITY: ("250 mL", "400 mL"),
    Kind.MONEY: ("$0.10", "35c"),
    Kind.CLOCK: ("8:10", "25 min"),
    Kind.ELAPSED: ("20 min", "25 min"),
}

STYLES_OF_KIND: dict[str, tuple[str, ...]] = {
    Kind.WHOLE: ("thousands",),
    Kind.DECIMAL: ("fractions", "places", "saying", "decimal_mark", "thousands"),
    Kind.FRACTION: ("fractions", "shape", "wholes", "saying"),
    Kind.LENGTH: ("units", "shape", "decimal_mark"),
    Kind.MASS: ("units", "shape", "decimal_mark"),
    Kind.CAPACITY: ("units", "shape", "decimal_mark"),
    Kind.MONEY: ("decimal_mark", "thousands"),
    Kind.CLOCK: ("clock", "saying"),
    Kind.ELAPSED: ("units",),
}


def styles_of(kind: str, *, with_fractions: bool) -> tuple[str, ...]:
    """What can be chosen of how this kind is written. Measures have a shape where fractions of a unit are typed."""
    styles = STYLES_OF_KIND.get(kind, ())
    return styles if kind == Kind.FRACTION or with_fractions else tuple(name for name in styles if name != "shape")


# The choices of a style as this kind knows them; what is not named here is the same for all kinds that have it.
STYLE_CHOICES: dict[str, dict[str, tuple[tuple[str, Translated], ...]]] = {
    Kind.DECIMAL: {
        "fractions": (("", _("keep the zeros: 0.50")), ("simplified", _("leave them off: 0.5"))),
        "saying": (
            ("", _("as written")),
            ("counted", _("counted: one hundred eighty hundredths")),
            ("renamed", _("renamed: one and eight tenths")),
        ),
    },
    Kind.FRACTION: {
        "fractions": (("", _("keep the denominator: 2/4")), ("simplified", _("simplest form: 1/2"))),
    },
    Kind.CLOCK: {"saying": (("", _("half past two")), ("counted", _("two thirty")))},
}

# Limits in which a class of any grade finds something; the teacher narrows them.
LIMITS = ("grain", "start_low", "start_high", "step_low", "step_high", "multiple")
USUAL: dict[str, tuple[str, ...]] = {
    Kind.WHOLE: ("1", "0", "60", "2", "12", "10"),
    Kind.DECIMAL: ("0.1", "0", "2", "0.1", "0.9", "1"),
    Kind.FRACTION: ("1/4", "0", "2", "1/4", "5/4", "1"),
    Kind.LENGTH: ("1 in", "0 in", "2 ft", "2 in", "1 ft 6 in", "1 ft"),
    Kind.MASS: ("1 oz", "0 oz", "2 lb", "2 oz", "1 lb 8 oz", "1 lb"),
    Kind.CAPACITY: ("50 mL", "0 mL", "1 L", "50 mL", "800 mL", "1 L"),
    Kind.MONEY: ("$0.05", "$0.00", "$2.00", "$0.05", "$0.95", "$1.00"),
    Kind.CLOCK: ("5 min", "8:00", "9:00", "5 min", "50 min", "1 h"),
    Kind.ELAPSED: ("5 min", "0 min", "60 min", "5 min", "50 min", "1 h"),
}
BELOW_ZERO: dict[str, str] = {Kind.WHOLE: "-20", Kind.DECIMAL: "-2", Kind.FRACTION: "-2"}
