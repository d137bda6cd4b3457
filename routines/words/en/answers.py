"""What children may say, and questions that send them back to the grid, in English. They never say whether something is so.

Wording: common practice, no source. Where there are two, no two children are answered alike.
"""

from collections.abc import Mapping

ANSWERS: Mapping[str, tuple[str, ...]] = {
    "write on": (
        "Let us go on to the {nth} count. What do you see there?",
        "Will that go on? Let us write as far as the {nth} count.",
    ),
    "table": (
        "We are counting the {step} times table.",
        "Look, this is the {step} times table.",
    ),
    "table reply": ("Where would {multiple} be? Look between its neighbors.",),
    "lands": (
        "We will land on {value}.",
        "I think we get to {value}.",
    ),
    "lands reply": (
        "Which counts come near it? What do they tell you?",
        "Between which two does it belong? Show us.",
    ),
    "every even": (
        "We say all the even numbers.",
        "Here we leave out no even number.",
    ),
    "every even reply": ("Show us an even number that is next to {value}. Do we say it?",),
    "line": (
        "When I go one {line} on, it is {value} more.",
        "Look, from {line} to {line} it is {value} more.",
    ),
    "line back": (
        "When I go one {line} on, it is {value} less.",
        "Look, from {line} to {line} it is {value} less.",
    ),
    "line later": (
        "When I go one {line} on, it is {value} later.",
        "Look, from {line} to {line} it is {value} later.",
    ),
    "line earlier": (
        "When I go one {line} on, it is {value} earlier.",
        "Look, from {line} to {line} it is {value} earlier.",
    ),
    "line reply": (
        "Start at {first} and count the jumps. Where do you stop?",
        "Point from {first} to where the next {line} begins. How many jumps?",
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
