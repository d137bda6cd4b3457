"""What is said in English about slips in counts of whole numbers that the table does not name."""

from ...language import SlipWords
from . import whole_numbers

WORDS = {
    "W32": SlipWords(
        "The word for {b} is made like those of the tens before it: ten tens have no such word.",
        "What new name do we give to ten tens?",
        "Nine tens are ninety. What do we call ten tens?",
    ),
    "W33": SlipWords(
        "The word for {b} ends almost like that of a teen number.",
        "How many tens have we counted after {a}?",
        "Which ten comes after {a}?",
    ),
    "W34": SlipWords(
        "At {a} the count turns around and goes up, the way it is known best.",
        "Are we counting up or back from {a}?",
        "Are we counting back from {a}?",
    ),
    "W35": SlipWords(
        "The end of the word for {b} sounds like that of a ten.",
        "How many ones does the next number have?",
        "How many ones come with the ten?",
    ),
    "W36": SlipWords(
        "After {a} the count falls back into ones, the count that is known best.",
        "How far is it from {a} to that number, and how long is our jump?",
        "How big is our jump from {a}?",
    ),
    "W37": SlipWords(
        "After {a} the tens are counted on instead of the fives.",
        "Is there one of our numbers between {a} and that one, and what does it end in?",
        "Did we skip one after {a}?",
    ),
    "W38": SlipWords(
        "After {a} the jump of {size} is doubled.",
        "How far did we jump from {a}, and how far did we jump before?",
    ),
    "W39": SlipWords(
        "{b} is left out: its word is made in a way of its own.",
        "Is there a number between {a} and that one?",
        "Did we skip one after {a}?",
    ),
    "W40": SlipWords(
        "The thousands of {b} are written out in full before the rest.",
        "How many thousands, hundreds, tens and ones do you hear in that number?",
    ),
    "W41": whole_numbers.WORDS["W13"],
    "W42": whole_numbers.WORDS["W11"],
    "W44": whole_numbers.WORDS["W08"],
    "W49": whole_numbers.WORDS["W15"],
    "W45": whole_numbers.WORDS["W20"],
    "W43": SlipWords(
        "{b} is left out: the words of the teens are hard to tell apart.",
        "Is there a number between {a} and that one?",
        "Did we skip one after {a}?",
    ),
    "W47": SlipWords(
        "In making the jump from {a} by ones, the count begins with {a} itself: one too few is counted.",
        "When we count the jump from {a} in ones, which number is the first that we say?",
    ),
    "W48": SlipWords(
        "{b} is said in hundreds, as numbers below a thousand are: it is the same number.",
        "How many hundreds do you say, and what new name do ten hundreds have?",
    ),
    "W46": SlipWords(
        "{b} is left out: the words of the teens are hard to tell apart.",
        "Is there a number between {a} and that one?",
        "Did we skip one after {a}?",
    ),
}
