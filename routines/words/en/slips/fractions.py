"""What is said in English about slips in counts of fractions."""

from ...language import SlipWords

WORDS = {
    "F01": SlipWords(
        "After {a} top and bottom are worked out apart, as if they were two whole numbers.",
        "We count up: is {heard} more than {a}?",
    ),
    "F02": SlipWords(
        "The bottom number is counted on after {a}, though the parts stay the same size.",
        "What does the bottom number tell us about the parts, and do they change?",
    ),
    "F03": SlipWords(
        "After {a} both numbers go up by one.",
        "Which number counts the parts, and which one names their size?",
    ),
    "F04": SlipWords(
        "One whole is taken for the end, so after {a} the count starts again.",
        "After {a}, is the next count more than a whole or less?",
    ),
    "F05": SlipWords(
        "Fractions are thought to be less than one, so the count stops after {a}.",
        "Can we take one more jump from {a}, and what do we then have?",
    ),
    "F06": SlipWords(
        "After {a} a full set of parts is not renamed as a whole: it is the same number, {b}.",
        "That number has a shorter name: what do all its parts make together?",
    ),
    "F07": SlipWords(
        "The whole in {a} is counted on instead of its parts.",
        "What grows with each of our jumps: the wholes or the parts?",
    ),
    "F08": SlipWords(
        "The whole and the top number of {b} are run together.",
        "Which number there counts the wholes, and which counts the parts left over?",
    ),
    "F09": SlipWords(
        "{b} has another name, too: it is the same number.",
        "What other name does {heard} have, and is it still the same number?",
    ),
    "F10": SlipWords(
        "{a} was renamed in larger parts, and the next top number is counted from that name.",
        "Which name of {a} has parts of the same size as our jump?",
    ),
    "F11": SlipWords(
        "Two digits on top seem to ask for a new bottom number, so tenths turn into hundredths.",
        "Has the size of the parts changed after {a}, or only how many we have?",
    ),
    "F12": SlipWords(
        (
            "By their simplest names {a} and the jump of {size} have unlike parts, and these are taken as if they were "
            "alike."
        ),
        "How many parts make one whole in that number, and how many in {a}?",
    ),
    "F13": SlipWords(
        "From {a} a whole is taken away instead of {size}.",
        "How much of one whole do we take away in the jump from {a}?",
    ),
    "F14": SlipWords(
        "In the jump from {a} the parts left over after the whole are miscounted.",
        "How many parts of the jump from {a} fill the whole, and how many are left?",
    ),
    "F15": SlipWords(
        "The jump back from {a} crosses a whole, and the whole is not lowered.",
        "When we jump back from {a}, do we stay above the same whole?",
    ),
    "F16": SlipWords(
        "The parts are taken the other way around in the jump back from {a}: the fewer from the more.",
        "Does {a} have enough parts to take our jump away without breaking a whole apart?",
    ),
    "F17": SlipWords(
        "In the jump back from {a} a whole is broken apart into ten parts.",
        "How many of our parts do we get when we break one whole of {a} apart?",
    ),
}
WORDS["F18"] = WORDS["F09"]._replace(
    ask="How many wholes do the parts of that number fill, and how many parts are left over?"
)
WORDS |= {"F19": WORDS["F01"], "F20": WORDS["F18"], "F21": WORDS["F09"]}
