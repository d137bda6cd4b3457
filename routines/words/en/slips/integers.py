"""What is said in English about slips in counts that go below zero."""

from ...language import SlipWords

WORDS = {
    "N01": SlipWords(
        "Zero is taken for the smallest number, so the count stays there.",
        "What lies one jump below {a}, and how far from zero is it?",
    ),
    "N02": SlipWords(
        "{b} is left out: it is not taken for a number of its own.",
        "What stands between the counts above zero and those below, and do we land there?",
    ),
    "N03": SlipWords(
        "The count starts again at zero: the part of the jump that led from {a} to zero is forgotten.",
        "How much of the jump from {a} takes us to zero, and how much is left?",
    ),
    "N04": SlipWords(
        "Larger digits are taken for larger numbers, so the count goes the wrong way from {a}.",
        "We are counting up: is that above {a} on a number line, or below it?",
    ),
    "N05": SlipWords(
        "The distance from zero is said without the sign.",
        "On which side of zero is the count after {a}, and how do we show that?",
    ),
    "N06": SlipWords(
        (
            "After {a} the end of the number starts again, but what stands before it is not changed: going up leads "
            "nearer to zero."
        ),
        "Going up from {a}, do we come nearer to zero or move away from it?",
    ),
    "N07": SlipWords(
        "After {a} the end of the number starts again, but what stands before it must lie further from zero.",
        "Counting down from {a}, how does the distance from zero change?",
    ),
    "N08": SlipWords(
        "The count after {a} is past zero, but it is said as if we were still on the side we came from.",
        "Which way do we go on from {a}, and on which side of zero is the next count?",
        "On which side of zero are we after {a}?",
    ),
    "N09": SlipWords(
        "Below zero the count turns back from {a}, towards zero.",
        "We are counting back: is that further below zero than {a}, or nearer to it?",
        "Do we go further below zero after {a}?",
    ),
    "N10": SlipWords(
        "{b} is left out: it is not taken for a number of its own.",
        "What stands between the counts above zero and those below, and do we land there?",
        "Did we skip one after {a}?",
    ),
    "N11": SlipWords(
        "Zero is taken for the smallest number, so the count stays there.",
        "What lies one jump below {a}, and how far from zero is it?",
        "What comes below {a}?",
    ),
    "N12": SlipWords(
        "The count starts again at zero: the part of the jump that led from {a} to zero is forgotten.",
        "How much of the jump from {a} takes us to zero, and how much is left?",
        "Is that our whole jump from {a}?",
    ),
}
WORDS["N13"] = WORDS["N08"]
