"""What is said in English about slips in counts of measures in two units."""

from ...language import SlipWords

_NOT_RENAMED = SlipWords(
    "After {a} the {smalls} fill another {large} and are not renamed: it is the same amount, {b}.",
    "How many {smalls} make one {large}, and do we have that many now?",
)
_FULL_AT_TEN = SlipWords(
    "After {a} one {large} is taken to be full at ten {smalls}.",
    "Is one {large} already full at ten {smalls}, and how could we check?",
)
_TRADED_AT_TEN = SlipWords(
    "In the jump from {a} ten {smalls} are traded for one {large}.",
    "How many {smalls} do we trade for one {large}, and what is then left over?",
)

WORDS = {
    "L01": _NOT_RENAMED,
    "L02": _FULL_AT_TEN,
    "L03": SlipWords(
        "The {smalls} of {b} are written as if they were tenths of one {large}.",
        "What part of one {large} is one {small}: is it a tenth?",
    ),
    "L04": _FULL_AT_TEN,
    "L05": _NOT_RENAMED,
    "L06": _NOT_RENAMED,
    "L07": _NOT_RENAMED,
    "L08": _NOT_RENAMED,
    "L09": SlipWords(
        "The empty places between the {larges} and the {smalls} of {b} are left out.",
        "How many {smalls} make one {large}, and how many places do they need?",
    ),
    "L10": _NOT_RENAMED,
    "L11": _TRADED_AT_TEN,
    "L12": _TRADED_AT_TEN,
    "L13": SlipWords(
        "In the jump back from {a} one {large} is broken apart into ten {smalls}.",
        "How many {smalls} do we get when we break one {large} apart?",
    ),
    "L14": _NOT_RENAMED,
    "L15": SlipWords(
        "{b} has another name in the larger unit: it is the same amount.",
        "How many {smalls} are there in {heard}?",
    ),
    "L17": SlipWords(
        "A hundred minutes are taken for an hour, as a hundred centimeters are a meter.",
        "How many minutes fill one hour, and where would it stand among our counts?",
    ),
    "L16": SlipWords(
        "In the jump from {a} a hundred is crossed, and the digit of the hundreds is left as it was.",
        "When we jump from {a}, do we stay in the same hundred?",
    ),
}
