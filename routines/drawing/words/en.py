"""English."""

from .needed import Words

ENGLISH = Words(
    until="until",
    rows="rows",
    columns="columns",
    empty="empty",
    lit={"always": "always holds", "while": "holds for a while"},
    signs={"always": "always holds", "shown": "holds for a while", "flag": "stops here"},
    unfolded="The count unfolded",
    timeline="When each idea can be seen",
    counts_on_the_board="counts on the board",
    stop="stop",
    at="at",
    pictures={
        "line": "Number line",
        "time-line": "Time line",
        "clock": "Clocks",
        "ruler": "Ruler",
        "scale": "Scales",
        "jugs": "Measuring jugs",
        "coins": "Coins and notes",
        "bars": "Fraction bars",
    },
    picture="{name}: from {first} to {last}",
    jump=("Each jump is {step} more.", "Each jump is {step} less."),
    since=("{step} later", "{step} earlier"),
    wholes="{n} wholes",
    dark_parts=("before the jump", "what is left"),
    bracketed_parts=("the jump", "taken away"),
)
