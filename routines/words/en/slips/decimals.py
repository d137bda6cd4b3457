"""What is said in English about slips in decimal counts."""

from ...language import SlipWords

WORDS = {
    "D01": SlipWords(
        "The decimal digits of {a} are read as a whole number that goes on.",
        "What do ten tenths make, and where do we write it?",
    ),
    "D02": SlipWords(
        "In the jump from {a} the tenths pass ten and are not renamed as a whole.",
        "We count up: is {heard} more than {a}, and how many tenths fill a whole?",
    ),
    "D03": SlipWords(
        "In the jump from {a} the hundredths pass one hundred and are not renamed.",
        "What do a hundred hundredths make, and where do we write it?",
    ),
    "D04": SlipWords(
        "After {a} the ten is written behind the digit that already stands there.",
        "What do ten hundredths make, and in which place do we write it?",
    ),
    "D05": SlipWords(
        "The last place of {a} passes nine and is not renamed.",
        "What do ten thousandths make, and in which place do we write it?",
    ),
    "D06": SlipWords(
        "A zero can stand at the end of {b} or not: it is the same number.",
        "Does a zero at the end change how much there is, or only how we write it?",
    ),
    "D07": SlipWords(
        "The digits of the jump {size} are {joined} one place too far to the left.",
        "In which place does the last digit of our jump belong, and what stands there in {a}?",
    ),
    "D08": SlipWords(
        "After {a} the wholes are counted, because no other digit is left to see.",
        "Does our jump change the wholes of {a}, or the places after them?",
    ),
    "D09": SlipWords(
        "The whole {b} is left out of the count.",
        "How far is it from {a} to that number: one jump, or more?",
    ),
    "D10": SlipWords(
        "After {a} the decimal digits start again, but the whole is not lowered.",
        "We count back: is {heard} less than {a}?",
    ),
    "D11": SlipWords(
        "The jump back from {a} crosses a whole, and the whole is not lowered.",
        "When we jump back from {a}, do we stay above the same whole?",
    ),
}
