"""What is said in English about digits that change places, and zeros inside a number that are lost."""

from ...language import SlipWords
from . import money, time, whole_numbers

_EMPTY_PLACE = "Which place of that number has nothing in it, and how do we show it?"

WORDS = {
    "Z01": SlipWords(
        "The tens and the ones of {b} change places.",
        "Which digit tells how many tens there are, and which one tells the ones?",
        "Which digit shows the tens?",
    ),
    "Z02": whole_numbers.WORDS["W18"]._replace(show="How many hundreds and tens do you hear?"),
    "Z03": SlipWords("The zero inside {b} is left out.", _EMPTY_PLACE, "How do we show an empty place?"),
    "Z04": SlipWords(
        "The hundreds of {b} are empty, and a later digit is written in their place.",
        "How far past the thousand are we now, and which place is empty in the number we want?",
    ),
    "Z05": SlipWords(
        "The zero at the end of {b} is left out, and the digit before it means less.",
        "What does the last digit of that count tell us, and how much do we mean?",
    ),
    "Z06": SlipWords("The empty tenths of {b} are left out.", _EMPTY_PLACE),
    "Z07": money.WORDS["M02"],
    "Z08": time.WORDS["T07"],
}
