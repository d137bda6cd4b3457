"""What is said in English about slips in counts of time."""

from ...language import SlipWords
from . import measurement

_HUNDRED_MINUTES = SlipWords(
    "In the jump from {a} the hour is treated as one hundred minutes.",
    "How many minutes are left in the hour at {a}, and is our jump longer?",
)
_HOUR_KEPT = SlipWords(
    "The minutes start again after {a}, but the hour is kept.",
    "The minutes have gone all the way around: is that later than {a}?",
)
WORDS = {
    "T01": SlipWords(
        "After {a} the minutes are counted up to sixty and no new hour begins.",
        "How many minutes are there from {a} until the hour is full, and which hour begins?",
    ),
    "T02": _HUNDRED_MINUTES,
    "T03": _HOUR_KEPT,
    "T04": SlipWords(
        "After {a} the hours are counted on past twelve, as a 24-hour clock counts them after noon.",
        "Where does the hour hand point then, and what does our clock call it?",
    ),
    "T05": SlipWords(
        "After {a} we pass noon, but a.m. is not changed to p.m. there.",
        "At the time you said, are we at lunch or asleep?",
    ),
    "T06": SlipWords(
        "After {a} midnight and noon are confused.",
        "When does a new day begin: in the light or in the dark?",
    ),
    "T07": SlipWords(
        "The empty tens place in the minutes of {b} is left out.",
        "How many digits do we write for the minutes, and what does each one show?",
        "How many digits show the minutes?",
    ),
    "T08": SlipWords(
        "After {a} the minutes start again, but the hour is not lowered.",
        "We are counting back: is that time earlier than {a}, or later?",
    ),
    "T09": SlipWords(
        "In the jump from {a} a hundred minutes, not sixty, are taken to fill the hour.",
        "How many of all those minutes would fill another whole hour?",
    ),
    "T10": SlipWords(
        "After {a} the hours are counted on past midnight.",
        "What does our clock show when a new day begins after {a}?",
    ),
    "T11": SlipWords(
        "The jump back from {a} crosses the hour, and the hour is not lowered.",
        "When we jump back from {a}, do we stay in the same hour?",
    ),
    "T12": _HUNDRED_MINUTES,
    "T13": _HOUR_KEPT,
    "T15": SlipWords(
        "The half hour is said with the hour that comes next: the hour hand is on its way there.",
        "Which hour has begun by then, and which one has not begun yet?",
        "Has that hour begun yet?",
    ),
    "T17": SlipWords(
        "The full hours take over after {a}: they are known best.",
        "How far is it from {a} to that time, and how long is our jump?",
        "Is that our whole jump from {a}?",
    ),
    "T14": SlipWords(
        "After {a} the minutes fill an hour and start again, but no hour is added.",
        "The minutes filled another hour after {a}: where do we see that hour?",
    ),
}
WORDS["T09 named"] = measurement.WORDS["L01"]
WORDS["T04 named"] = WORDS["T04"]._replace(
    why="After {a} the hours are counted on past twelve, as on a 24-hour clock: it is the same time."
)
for _key in ("T04", "T04 named"):
    WORDS[_key.replace("T04", "T16")] = WORDS[_key]._replace(show="What comes after twelve on our clock?")
WORDS["T10 named"] = WORDS["T10"]._replace(why="After {a} the hours are counted on past midnight: it is the same time.")
