"""English sentences about what changes in a next count, and why: for the teacher, and so the same at all grades."""

from ..language import NextCounts
from .next_questions import QUESTIONS

CHANGES = {
    "hard place": (
        "The same jumps, but only {terms} counts, from {start}.",
        "The jump from {before} to {hard} comes early and in a short count, so there is time to look at it twice.",
    ),
    "hard to write": (
        "The same jumps, but only {terms} counts, from {start}.",
        "{hard} comes early and in a short count, so there is time to look at how it and its neighbors are written.",
    ),
    "fold": (
        "The same count in lines of {length}.",
        "In lines of {length} it lines up, where it can be seen at one glance: {shows}",
    ),
    "fewer": (
        "The same count, but only the first {terms}, as far as {last}.",
        "With less on the board there is less to look through, and time to look at each line.",
    ),
    "multiples": (
        "The same jumps of {size}, starting at {start}.",
        "From {start} every count is a multiple of {size}, so the jumps are ones the class knows.",
    ),
    "first jumps": (
        "The same jumps of {size} with smaller, well-known numbers, starting at {start}.",
        "With numbers that need no effort, the class can look at what the jumps do.",
    ),
    "round start": (
        "The same jumps of {size}, starting at {start}.",
        "So it is easier to follow what is left over past each {landmark}.",
    ),
    "smaller place": (
        "The same jumps, starting at {start}: past {landmark} in place of {larger}.",
        "The jump from {before} to {hard} is the hard one again, with numbers that are easier to picture.",
    ),
    "round number more": (
        "The same start, each time {jump}: {round} more in each jump.",
        "In every cell, what is left past the last {landmark} is the same as before.",
    ),
    "other start": (
        "The same jumps of {size} and the same lines, starting at {start}.",
        "It looks different, and yet neighbors in two lines are still {kept} apart.",
    ),
    "going on": (
        "The same jumps of {size}, going on from {end}, where the board ended.",
        "What was seen is looked for further on, where neighbors in two lines are still {kept} apart.",
    ),
    "back again": (
        "The same numbers the other way, from {start} to {last} by {size}.",
        "What was seen going one way is looked for going the other way.",
    ),
    "two in one": (
        "Jumps of {size}, in lines of {length}.",
        "One jump does what two did, and neighbors in two lines are still {kept} apart.",
    ),
    "landmark": (
        "The same jumps of {size}, starting at {start}, so that the count passes {landmark}.",
        "What was seen is put to the test where the numbers change their look.",
    ),
    "nearly round": (
        "Jumps of {size} instead of {old}.",
        "{size} is nearly {round}: going by {round} and putting it right is a way the class can find.",
    ),
    "ten times": (
        "Jumps of {size} instead of {old}, starting at {start}.",
        "Each count is ten times as large as before: patterns come back one place further left.",
    ),
    "finer": (
        "Jumps of {size} instead of {old}, starting at {start}.",
        "Each count is a tenth as large as before: patterns come back one place further right.",
    ),
    "several parts": (
        "Jumps of {size} instead of {old}.",
        "The parts are the same, and a jump takes several of them, so that not every whole is landed on.",
    ),
    "unfriendly": (
        "Jumps of {size} instead of {old}.",
        "Jumps of {size} do not fit evenly into {round}, so not every {landmark} is landed on.",
    ),
    "unfriendly landing": (
        "Jumps of {size} instead of {old}.",
        "Some jumps of {size} land right on {a_mark}, and others go over one.",
    ),
    "unfriendly seldom": (
        "Jumps of {size} instead of {old}.",
        "With jumps of {size}, {a_mark} comes back only every {every} jumps, not every {often}.",
    ),
    "by tens from": (
        "Jumps of {size} instead of {old}, starting at {start}.",
        "One jump of {size} does what {many} jumps of {old} did.",
    ),
    "by tens": (
        "Jumps of {size} instead of {old}.",
        "One jump of {size} does what {many} jumps of {old} did.",
    ),
    "one more": (
        "The same count in lines of {length}.",
        "Neighbors in two lines are now {across} apart, so there is something else to see in the lines.",
    ),
    "other fold": (
        "The same count in lines of {length}.",
        "The numbers are known, so all eyes are free for what the lines do.",
    ),
}

NEXT_COUNTS = NextCounts(
    CHANGES, QUESTIONS, why="{reason} Ask: “{ask}”", cut="Only the first {cut}, as far as {until}."
)
