"""What is said in English about slips where a ten, a hundred, a whole or a larger unit is crossed, filled or left."""

from ...language import SlipWords


def _kept(place: str, digit: str) -> SlipWords:
    return SlipWords(
        f"The jump from {{a}} leads into another {place}, and that {place} is not {{joined}}.",
        f"How does the {digit} change in the jump from {{a}}?",
        f"Do we stay in the same {place}?",
    )


WORDS = {
    "C01": _kept("ten", "tens digit"),
    "C02": _kept("hundred", "hundreds digit"),
    "C03": _kept("thousand", "thousands digit"),
    "C04": _kept("whole", "whole"),
    "C05": SlipWords(
        "The jump from {a} leads into another {large}, and that {large} is not {joined}.",
        "When we jump from {a}, do we still have as many whole {larges}?",
        "Do we have as many {larges} as before?",
    ),
    "C06": SlipWords(
        "In the jump from {a} one place runs over into the next, and that one is not {joined}.",
        "Which places change in the jump from {a}, and which ones stay as they were?",
        "Which digits of {a} change now?",
    ),
    "C07": SlipWords(
        "{b} is left out, and the count after it is said.",
        "Is there one of our counts between {a} and that one?",
        "Did we skip one after {a}?",
    ),
    "C08": SlipWords(
        "The jump from {a} stops at the round number that it crosses.",
        "How far is it from {a} to that number: is it our whole jump?",
        "Is that our whole jump from {a}?",
    ),
    "C09": SlipWords(
        "After {a}, a round number, the next round one is said, and not one jump of {size}.",
        "How far does each of our jumps go, and how far did this one go from {a}?",
        "How big is our jump from {a}?",
    ),
    "C10": SlipWords(
        "After {a} a round number is crossed, and the next round one is said.",
        "How far past the round number does our jump from {a} go?",
        "How big is our jump from {a}?",
    ),
    "C11": SlipWords(
        "{a} is said again while the next count is being looked for.",
        "We have just said {a}: what changes with one jump more?",
        "We said {a}: what is one jump on?",
    ),
    "C12": SlipWords(
        "After {a} the round number below {b} is said, too early.",
        "How far is it from {a} to that number, and how long is our jump?",
        "How big is our jump from {a}?",
    ),
}
