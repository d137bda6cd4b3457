"""English endings of a reply, which send children back to the grid: by level band, the shortest last."""

from ..language import Replies
from .notes import NOTES
from .slips import WORDS

ABOUT_A_JUMP: tuple[tuple[str, ...], ...] = (
    ("Point and show us.", "Show us on the grid.", "Touch {a} and go on.", "Point to it."),
    (
        "Put a finger on {a} in {line} and show us why.",
        "Look along {line} and tell us why.",
        "Make the jump again from {a} on the grid. Why?",
        "Show us on the grid how you know.",
        "Use the grid. Why?",
    ),
    (
        "Start at {a} in {line}, make {jump} on the grid, and say how you know.",
        "Compare it with the other counts in {line}: what does {jump} do there?",
        "Make {jump} once more from {a}, and show on the grid what changes and what stays.",
        "Show {jump} on the grid, and explain how you know.",
        "Check it on the grid.",
    ),
    (
        "Say what you think {jump} always does at such a place, and test it on {line}.",
        "Make a rule for {jump} from {a}, and test your rule on every count in {line}.",
        "What would have to be true of {jump} for that to work? Look for a count on the grid that shows it does not work.",
        "Test it on {line} of the grid.",
    ),
)

ABOUT_WRITING: tuple[tuple[str, ...], ...] = (
    ("Point and show us.", "Show us on the grid.", "Point to it."),
    (
        "Look along {line}: how did we write the others, and why?",
        "Find one like it on the grid, and tell us why.",
        "Compare it with {a} on the grid. Why?",
        "Use the grid. Why?",
    ),
    (
        "Look at the counts in {line}, and say what each part of them tells us.",
        "Compare it with {a} on the grid, and explain what each part tells us.",
        "Find another count on the grid that is written in this way, and explain its parts.",
        "Check it on the grid.",
    ),
    (
        "Make a rule for writing such a count, and test it on every count in {line}.",
        "When would two ways of writing name one number? Test your idea on the counts in {line}.",
        "Test it on {line} of the grid.",
    ),
)

REPLIES = Replies(
    WORDS,
    ABOUT_A_JUMP,
    ABOUT_WRITING,
    jump=("a jump of {size}", "a jump back of {size}"),
    joined=("added", "taken away"),
    cent="cent",
    notes=NOTES,
)
