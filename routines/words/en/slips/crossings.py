"""What is said in English about slips where a ten, a hundred, a whole or a larger unit is crossed, filled or left."""

from ...language import SlipWords

# To the youngest no place has a name yet: what was said lies behind, or not far enough ahead.
_TURNED_BACK = "Is that {onward} than {a}?"
_TOO_SHORT = "Did we make the whole jump from {a}?"


def _not_counted(rule: str, place: str, several: str, digit: str, smaller: str) -> dict[str, SlipWords]:
    """A place that is left as it was: entered with its digit unchanged, made by the smaller ones, or broken apart."""
    opened = SlipWords(
        f"In the jump from {{a}} one {place} is broken apart, and it is still counted in full.",
        f"What do we break apart in the jump from {{a}}, and how many {several} are left?",
        _TURNED_BACK,
    )
    return {
        rule: SlipWords(
            f"The jump from {{a}} leads into another {place}, and that {place} is not counted.",
            f"How does the {digit} change in the jump from {{a}}?",
            _TURNED_BACK,
        ),
        f"{rule} made": SlipWords(
            f"In the jump of {{size}} from {{a}} the {smaller} make a new {place}, and the new {place} is not counted.",
            f"What do the {smaller} make together in the jump from {{a}}?",
            _TOO_SHORT,
        ),
        f"{rule} opened": opened,
        f"{rule} opened far": opened._replace(show=_TOO_SHORT),
        f"{rule} neared": SlipWords(
            f"Below zero the jump from {{a}} leads nearer to zero, and one {place} too many is still counted.",
            f"Going up from {{a}}, do we come nearer to zero, and how does the {digit} change?",
            "Do we come nearer to zero?",
        ),
    }


WORDS = {
    **_not_counted("C01", "ten", "tens", "tens digit", "ones"),
    **_not_counted("C02", "hundred", "hundreds", "hundreds digit", "tens"),
    **_not_counted("C03", "thousand", "thousands", "thousands digit", "hundreds"),
    **_not_counted("C04", "whole", "wholes", "number of wholes", "parts"),
    **_not_counted("C05", "{large}", "{larges}", "number of {larges}", "{smalls}"),
    "C06": SlipWords(
        "In the jump from {a} one place runs over into the next, and that is not counted there.",
        "Which places change in the jump from {a}, and which ones stay as they were?",
        "Which digits of {a} change now?",
    ),
    "C06 made": SlipWords(
        "In the jump of {size} from {a} the smaller places make one more in the next, and it is not counted there.",
        "What do the smaller places make together in the jump from {a}?",
        "Which digits of {a} change now?",
    ),
    "C06 opened": SlipWords(
        "In the jump from {a} one is broken apart in the next larger place, and it is still counted there.",
        "In which place do we break one apart in the jump from {a}, and what is left there?",
        "Which digits of {a} change now?",
    ),
    "C06 neared": SlipWords(
        "Below zero the jump from {a} leads nearer to zero, and one too many is still counted in the next larger place.",
        "Going up from {a}, do we come nearer to zero, and which digits change?",
        "Do we come nearer to zero?",
    ),
    "C07": SlipWords(
        "The rhythm runs ahead of the numbers: {b} is left out, and the count after it is said.",
        "Is there one of our counts between {a} and that one?",
        "Did we skip one after {a}?",
    ),
    "C08": SlipWords(
        "The jump from {a} stops at the round number that it crosses.",
        "How far is it from {a} to that number, and how much of our jump is left?",
        "Is that our whole jump from {a}?",
    ),
    "C09": SlipWords(
        "After {a} the next round number is said, without our jump of {size}: round numbers are known best.",
        "How far is it from {a} to that number, and how long is our jump?",
        "How big is our jump from {a}?",
    ),
    "C10": SlipWords(
        "After {a} a round number is crossed, and the next round one is said.",
        "How far past the round number does our jump from {a} go?",
        "Is that one jump from {a}, or more?",
    ),
    "C11": SlipWords(
        "{a} is said again while the next count is being looked for.",
        "We have just said {a}: what changes with one jump more?",
        "We said {a}: what is one jump on?",
    ),
    "C12": SlipWords(
        "After {a} the round number that follows {b} is said, too early.",
        "How far is it from {a} to that number, and how long is our jump?",
        "How big is our jump from {a}?",
    ),
}
WORDS["C06 opened far"] = WORDS["C06 opened"]
WORDS["C13"] = WORDS["C10"]
WORDS["C13 landed"] = WORDS["C12"]
