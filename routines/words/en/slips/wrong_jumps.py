"""What is said in English about slips where another jump is made than the one that is due."""

from ...language import SlipWords

_ONES = SlipWords(
    "After {a} the count goes on by {least}, and not by {size}: that is the count known best.",
    "How far is it from {a} to that number, and how long is our jump?",
    "How big is our jump from {a}?",
)
_OTHER_WAY = SlipWords(
    "From {a} the count turns around.",
    "Which way do we count from {a}, and on which side of it is that number?",
    "Which way do we count from {a}?",
)
_UP_AGAIN = SlipWords(
    "From {a} the count turns and goes up.",
    "We are counting back: is {heard} more or less than {a}?",
    "Is {heard} more or less than {a}?",
)
WORDS = {
    "J01": _ONES,
    "J02": _ONES,
    "J03": SlipWords(
        "From {a} a jump is made that is easier to work with than {size}.",
        "How far is it from {a} to that number, and how long is our jump?",
        "How big is our jump from {a}?",
    ),
    "J04": _OTHER_WAY,
    "J04 back": _UP_AGAIN,
    "J05": _OTHER_WAY,
    "J05 back": _UP_AGAIN,
    "J06": SlipWords(
        "Only the larger part of {size} is counted on from {a}.",
        "Which parts does our jump have, and which of them did we make from {a}?",
        "Did we make the whole jump from {a}?",
    ),
    "J07": SlipWords(
        "Only the smaller part of {size} is counted on from {a}.",
        "Which parts does our jump have, and which of them did we make from {a}?",
        "Did we make the whole jump from {a}?",
    ),
    "J08": SlipWords(
        "After {a} one count is left out.",
        "Is there one of our counts between {a} and that one?",
        "Did we skip one after {a}?",
    ),
    "J09": SlipWords(
        "{a} is said again while the next count is being looked for.",
        "We have just said {a}: what changes with one jump more?",
        "We said {a}: what is one jump on?",
    ),
}
