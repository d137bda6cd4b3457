"""What children may say, and questions that send them back to the grid, in English. They never say whether something is so.

Wording: common practice, no source. Where there are two, no two children are answered alike.
"""

from collections.abc import Mapping

ANSWERS: Mapping[str, tuple[str, ...]] = {
    "write on": (
        "Look at {place}. Does it still fit there?",
        "What is in {place}? Is it still so there?",
    ),
    "write past the end": (
        "Let us go on to {value}. Where would we write it, and does it still fit?",
        "Say on as far as {value}. Where does it go? Is it still so there?",
    ),
    "table": (
        "We are counting the {step} times table.",
        "Look, this is the {step} times table.",
    ),
    "table reply": ("Between which two counts would {multiple} be?",),
    "lands": (
        "We will land on {value}.",
        "I think we get to {value}.",
    ),
    "lands reply": (
        "Which counts come near it? What do they tell you?",
        "Between which two does it belong? Show us.",
    ),
    "lands why": ("No: {line} {marks} come {apart} apart: {a}, then {b}. We jump over {value}.",),
    "every even": (
        "We say all the even numbers.",
        "Here we leave out no even number.",
    ),
    "every even reply": ("Go on from {value} by twos. Is each of those numbers on our grid?",),
    "below zero": (
        "Below 0 the numbers get bigger again.",
        "Past 0 the numbers grow again.",
    ),
    "below zero reply": ("Look at {a} and then at {b}. Which one is less, and how do you know?",),
    "below zero why": ("No: from {a} to {b} we still go down {step}. Below 0, farther from 0 is less.",),
    "line way": ("down one", "one to the right", "up one"),
    "line": (
        "When I go {way}, it is {value} more.",
        "Look, from {line} to {line} it is {value} more.",
    ),
    "line back": (
        "When I go {way}, it is {value} less.",
        "Look, from {line} to {line} it is {value} less.",
    ),
    "line later": (
        "When I go {way}, it is {value} later.",
        "Look, from {line} to {line} it is {value} later.",
    ),
    "line earlier": (
        "When I go {way}, it is {value} earlier.",
        "Look, from {line} to {line} it is {value} earlier.",
    ),
    "line reply": (
        "Start at {first}. How many jumps to its neighbor in the next {line}?",
        "Point to {first} and to its neighbor in the next {line}. How many jumps?",
    ),
    "double": (
        "I think the {far} count is double the {near}.",
        "Our {far} count must be double the {near}.",
    ),
    "double reply": ("What are the {near} and the {far} count? Where does each begin?",),
    "double why": ("No: the {near} count is {a}, the {far} is {b}, and double {a} is {twice}.",),
    "will we": ("If we went on, would we say {value}? How can you know without counting?",),
    "yes": ("Yes. {reason}",),
    "no": ("No. {reason}",),
}
