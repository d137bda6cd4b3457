"""What is said in English about forms that nobody may write."""

from ...language import SlipWords

FORMS = {
    "A01": SlipWords(
        "Minutes are written past the end of the hour: no clock shows sixty or more.",
        "How far do the minutes on a clock go before a new hour begins?",
        "How far do the minutes go?",
    ),
    "A02": SlipWords(
        "More than two digits of {smalls} are written after the mark.",
        "How many digits do we write for the {smalls}, and what do we do when there are more?",
        "How many digits show the {smalls}?",
    ),
    "A03": SlipWords(
        "The digits after the mark are read as a whole number by themselves.",
        "What does each digit after the mark tell us, place by place?",
        "What does each digit tell us?",
    ),
}
