"""What is said in English about slips in counts of money."""

from ...language import SlipWords

WORDS = {
    "M01": SlipWords(
        "After {a} the {smalls} run on and are not changed for another {large}.",
        "How many {smalls} make one {large}, and do we have that many now?",
    ),
    "M02": SlipWords(
        "The empty place in the {smalls} of {b} is left out.",
        "How many {smalls} does that amount show, and how many do we mean?",
    ),
    "M03": SlipWords(
        "The zero at the end of {b} is left out: it is the same amount.",
        "How many digits do we write for the {smalls}, so that everybody reads the same?",
    ),
    "M04": SlipWords(
        "The decimal mark and the sign for {smalls} are used together for {b}.",
        "What does that sign count, and is this less than one {small}?",
    ),
    "M05": SlipWords(
        "After {a} the jump of {size} is doubled.",
        "How much did we jump from {a}, and how much did we jump before?",
    ),
    "M06": SlipWords(
        "After {a} the {smalls} start again, but the {large} is not taken away.",
        "We are counting back: is that amount less than {a}, or more?",
    ),
    "M07": SlipWords(
        "After {a} three digits of {smalls} are written.",
        "What can we do with the {smalls} when they fill another {large}?",
    ),
    "M08": SlipWords(
        "In the jump back from {a} a {large} is broken apart, but not taken away.",
        "When we jump back from {a}, do we keep as many whole {larges}?",
    ),
}
