"""What children may say, and questions that send them back to the grid, in English. They never say whether something is so.

Wording: common practice, no source.
"""

from collections.abc import Mapping

ANSWERS: Mapping[str, str] = {
    "write on": "Let us write on to the {nth} count. What do you see there?",
    "table": "We are counting the {step} times table.",
    "table reply": "Where would {multiple} be? Look between its neighbors.",
    "lands": "We will land on {value}.",
    "lands reply": "Which counts come near it? How can you find out without counting on?",
    "all even": "They are all even.",
    "all odd": "They are all odd.",
    "even reply": "Look at the first three counts. Which of them fit, and which come next?",
    "will we": "If we went on, would we say {value}? How can you know without counting?",
    "yes": "Yes. {reason}",
    "no": "No. {reason}",
}

# By the family of the pattern that was named; of a part where that is read off a part, not off a digit.
ASKED_BACK: Mapping[str, str] = {
    "step": "Show me one jump. Is it the same from the end of a line to the next?",
    "neighbour": "Point to two cells where you see it. Which jumps lie between them?",
    "digit": "Which digit do you mean? Put your finger on it, line by line.",
    "digit-run": "Which digit do you follow? What would it be in the next cell?",
    "digit of a part": "Which part of each one do you mean? Put your finger on it, line by line.",
    "digit-run of a part": "Which part of each one do you follow? What would it be in the next cell?",
    "digit-sum": "Add the digits of one more count. What do you get there?",
    "remainder": "How can you tell for a count that is not on the board yet?",
    "landmarks": "How many jumps from one of them to the next? Why there?",
    "how-many": "Circle them in one stretch. How many will stand in the next one?",
    "sums": "Try another place on the grid. What stays the same, and what moves?",
    "table": "Which count is it, and how many jumps make it?",
    "opposites": "Where would the next pair stand?",
}
