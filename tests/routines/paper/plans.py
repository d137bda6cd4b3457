"""Plans that try the paper: every kind of number, every way to fold, long and short."""

from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, NextCount, Plan, Stop, Story, Target
from tests.routines.making import SEVENS

ALWAYS_FOUR_LEFT = {"family": "remainder", "modulus": "7", "along": "count", "blocks": [["4"]]}

FULL = SEVENS.changed(
    story=Story("Seven plums go into each bag.", "bag", "60"),
    expected=(
        ExpectedAnswer("It grows by seven.", "Show me one jump.", "easy"),
        ExpectedAnswer("Under 11 is 46.", "How do you know?", "deeper"),
        ExpectedAnswer("59", "What comes after sixty?", "slip", 9),
    ),
    stops=(
        Stop(10, "What is under 11?", "First line\nsecond line\nthird line\nfourth line", ("5 jumps of 7 make 35",)),
        Stop(20, "Will 200 come?", "Yes, later.", ("go on by sevens",), think=15, partner=0, share=75),
    ),
    next_counts=(NextCount("not-yet", "Start at zero.", CountSection("whole", "0", "7", 20), Fold(5)),),
    standards=("2.NBT.A.2",),
    notes="Bring the long tape.\n\nAsk about the bags.",
    targets=(
        *SEVENS.targets,
        Target(ALWAYS_FOUR_LEFT, "Always 4 left over"),
    ),
)

BY_KIND = {
    "fraction": CountSection("fraction", "3/4", "3/4", 16, {"fractions": "kept"}),
    "length": CountSection("length", "1 ft 2 in", "10 in", 12, {"units": "two"}),
    "clock": CountSection("clock", "7:10", "40 min", 12),
    "money": CountSection("money", "$0.20", "$0.25", 16),
    "below zero": CountSection("whole", "18", "-3", 15),
}


def plan_of(count: CountSection, fold: Fold, **changes) -> Plan:
    return SEVENS.changed(count=count, fold=fold, targets=(), stops=(), **changes)
