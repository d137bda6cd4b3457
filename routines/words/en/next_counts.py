"""English sentences about what changes in a next count, and why: for the teacher, and so the same at all grades."""

from routines.counting.grid import Fill

from ..language import NextCounts
from .next_questions import QUESTIONS

CHANGES = {
    "hard place": (
        "The same jumps, but only {terms} {places}, from {start}.",
        "The jump from {before} to {hard} comes early and in a short count, so there is time to look at it twice.",
    ),
    "hard to write": (
        "The same jumps, but only {terms} {places}, from {start}.",
        "{hard} comes early and in a short count, so there is time to look at how it and its neighbors are written.",
    ),
    "fold": (
        "The same count in lines of {length}.",
        "In lines of {length} a pattern is seen at one glance: {shows}",
    ),
    "fewer": (
        "The same count, but only the first {terms}, as far as {last}.",
        "With less on the board there is less to look through, and time to look at each line.",
    ),
    "multiples": (
        "The same jumps of {size}, starting at {start}.",
        "From {start} every count is a multiple of {size}, and the class knows these numbers.",
    ),
    "first jumps": (
        "The same jumps of {size} with smaller numbers, starting at {start}.",
        "With smaller numbers there is more time to look at what the jumps do.",
    ),
    "friendlier jump": (
        "Jumps of {size} instead of {old}, starting at {start}.",
        "{many} jumps of {size} make {round}, so we land on every {landmark}.",
    ),
    "round start": (
        "The same jumps of {size}, starting at {start}.",
        "From {start} it is easier to follow what is left over past each {landmark}.",
    ),
    "smaller place": (
        "The same jumps, starting at {start}, so that we pass {landmark} and not {larger}.",
        "The jump from {before} to {hard} is the hard one again, with smaller numbers.",
    ),
    "smaller place reached": (
        "The same jumps, starting at {start}, so that we reach {landmark} and not {larger}.",
        "The jump from {before} to {hard} is the hard one again, with smaller numbers.",
    ),
    "round number more": (
        "The same start, each time {jump}: {round} more in each jump.",
        "In every cell, what is left past the last {landmark} stays: {now} where it was {then}.",
    ),
    "ones digit kept": (
        "The same start, each time {jump}: {round} more in each jump.",
        "In every cell the ones digit is the same as before.",
    ),
    "two digits kept": (
        "The same start, each time {jump}: {round} more in each jump.",
        "In every cell the last two digits are the same as before.",
    ),
    "minutes kept": (
        "The same start, each time {jump}: {round} more in each jump.",
        "In every cell the minutes past the last full hour are the same as before.",
    ),
    "other start": (
        "The same jumps of {size} and the same lines, starting at {start}.",
        "It looks different, and yet {one} and the one just {beside} it are still {kept} apart.",
    ),
    "going on": (
        "The same jumps of {size}, going on from {end}, where the board ended.",
        "What was seen is looked for further on, where {one} and the one just {beside} it are still {kept} apart.",
    ),
    "back again": (
        "{same_numbers} the other way, from {start} to {last} by {size}.",
        "What was seen going one way is looked for going the other way.",
    ),
    "few back": (
        "Only {terms} {places} the other way, from {start} to {last} by {size}.",
        "What was seen going one way is looked for going the other way.",
    ),
    "two in one": (
        "Jumps of {size}, in lines of {length}.",
        "One jump does what two did, and {one} and the one just {beside} it are still {kept} apart.",
    ),
    "landmark": (
        "The same jumps of {size}, starting at {start}, so that the count passes {landmark}.",
        "What was seen is put to the test where the numbers change their look.",
    ),
    "landmark reached": (
        "The same jumps of {size}, starting at {start}, so that the count reaches {landmark}.",
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
    # Below zero what is ten times as far from it is smaller.
    "ten times from zero": (
        "Jumps of {size} instead of {old}, starting at {start}.",
        "Each count is ten times as far from zero as before: patterns come back one place further left.",
    ),
    "finer from zero": (
        "Jumps of {size} instead of {old}, starting at {start}.",
        "Each count is a tenth as far from zero as before: patterns come back one place further right.",
    ),
    "several parts": (
        "Jumps of {size} instead of {old}.",
        "The parts are the same, and a jump takes several of them, so that not every whole is landed on.",
    ),
    "unfriendly": (
        "Jumps of {size} instead of {old}.",
        "Jumps of {size} do not fit evenly into {round}, and here every {landmark} is jumped over.",
    ),
    "unfriendly landing": (
        "Jumps of {size} instead of {old}.",
        "Some jumps of {size} land right on {a_mark}, and others go over one.",
    ),
    "unfriendly once": (
        "Jumps of {size} instead of {old}.",
        "Here only one jump of {size} lands right on {a_mark}, and others go over one.",
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
        "{one} and the one just {beside} it are now {across} apart: look for what lines up and what slides.",
    ),
    "other fold": (
        "The same count in lines of {length}.",
        "The numbers are known, so all eyes are free for what the lines do.",
    ),
}

NEXT_COUNTS = NextCounts(
    CHANGES,
    QUESTIONS,
    why="{reason} Ask: “{ask}”",
    cut="Only the first {cut}, as far as {until}.",
    in_a_line="in lines of {}",
    empty=("with no empty cell", "with {} empty cell first", "with {} empty cells first"),
    beside={Fill.ACROSS: "below", Fill.ACROSS_UP: "above", Fill.DOWN: "beside"},
    along={"row": "along the rows", "column": "down the columns", "count": "along the count"},
    called={
        False: {"one": "a number", "places": "counts", "same_numbers": "the same numbers"},
        True: {"one": "a time", "places": "counts", "same_numbers": "the same times"},
    },
)
