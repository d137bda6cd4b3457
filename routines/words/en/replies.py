"""English endings of a reply, which send children back to the grid: by level band, the shortest last.

{along} is the line as far as it is written, where it holds enough to look along, {alike} the same where a jump of its sort was
made in it; without them, the ending is not said.
"""

from ..language import Replies
from .notes import NOTES
from .slips import WORDS

ABOUT_A_JUMP: tuple[tuple[str, ...], ...] = (
    ("Point and show us.", "Show us on the grid.", "Touch {a} and go on.", "Point to it."),
    (
        "Put a finger on {a} in {line} and show us.",
        "Look along {along} and tell us.",
        "Make the jump again from {a} on the grid.",
        "Show us on the grid how you know.",
        "Show us on the grid.",
    ),
    (
        "Start at {a} in {line}, make {jump} on the grid, and say how you know.",
        "Compare it with the counts in {alike}: what does {jump} do there?",
        "Make our jump again from {a}, and show on the grid what changes and what stays.",
        "Show {jump} on the grid, and explain how you know.",
        "Check it on the grid.",
    ),
    (
        "Say what you think {jump} always does at such a place, and test it on {alike}.",
        "Make a rule for {jump}, and test your rule on every count in {along}.",
        "What would have to be true of {jump} for that to work? Look for a count in {alike} that shows it does not work.",
        "Show {jump} from {a} on the grid in two ways, and say what your ways have in common.",
        "Say as a rule what {jump} does, and show it on the grid from {a} in {line}.",
        "Test it on the grid.",
    ),
)

ABOUT_WRITING: tuple[tuple[str, ...], ...] = (
    ("Point and show us.", "Show us on the grid.", "Point to it."),
    (
        "Look along {along}, where we wrote the others, and tell us.",
        "Read it aloud next to {a} on the grid.",
        "Compare it with {a} on the grid.",
        "Show us on the grid.",
    ),
    (
        "Look at the counts in {along}, and say what each part of them tells us.",
        "Compare it with {a} on the grid, and explain what each part tells us.",
        "Read it aloud next to {a} on the grid, and explain the parts that you hear.",
        "Check it on the grid.",
    ),
    (
        "Make a rule for writing such a count, and test it on every count in {along}.",
        "When would two ways of writing name one number? Test your idea on the counts in {along}.",
        "Say as a rule what each part of a number tells us, and test it on {a} in {line} of the grid.",
        "Test it on the grid.",
    ),
)

ABOUT_SAYING: tuple[tuple[str, ...], ...] = (
    ("Point to it and say it slowly.", "Touch it and say it."),
    ("Point to it and say it aloud.", "Point to it and say it slowly."),
    (
        "Point to it, say it slowly, and explain which part of the word changes.",
        "Point to it and say it slowly.",
    ),
    (
        "Point to it, say it slowly, and say as a rule which part of the word changes.",
        "Point to it and say it slowly.",
    ),
)

ABOUT_NAMES: tuple[tuple[str, ...], ...] = (
    ("Show us on the grid.", "Point to it."),
    ("Show us on the grid how you know.", "Show us on the grid."),
    ("Explain how you know, and find another count on the grid with two names.", "Show it on the grid."),
    ("Explain how you know, and find other counts on the grid that have two names.", "Show it on the grid."),
)

REPLIES = Replies(
    WORDS,
    ABOUT_A_JUMP,
    ABOUT_WRITING,
    ABOUT_SAYING,
    ABOUT_NAMES,
    jump=("a jump of {size}", "a jump back of {size}"),
    jumps=("jumps of {size}", "jumps back of {size}"),
    joined=("added", "taken away"),
    cent="cent",
    notes=NOTES,
    called=({}, {}),
    of_gender=({}, {}),
    onward=(("more", "less"), ("later", "earlier")),
)
