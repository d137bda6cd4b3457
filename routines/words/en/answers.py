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
