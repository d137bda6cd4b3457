"""English sentences about steps: step, neighbour, table, digit-run."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "step.statement": ("each count is {d} {more}",),
    "step.core": (
        "each one is {d} {more} than the one before",
        "it goes {up} {d} every time",
    ),
    "step.says": (
        "I go {up} {d} every time",
        "every time we count, we jump {up} {d}",
    ),
    "step.reason": ("{d} {more} than {a} is {b}, and {d} {more} than {b} is {c}",),
    "step.reason-short": ("{d} {more} than {a} is {b}",),
    "neighbour.statement": ("each step {direction} is {diff} {more}",),
    "neighbour.core": ("each step {direction} is {diff} {more}",),
    "neighbour.says": (
        "when I go {direction}, it is always {diff} {more}",
        "going {direction}, I find {diff} {more} each time",
    ),
    "neighbour.reason": ("{n} in a {fills}, and {jumps}, so each step {direction} is {diff} {more}",),
    "neighbour.reason-short": ("{n} in a {fills}: {jumps}",),
    "neighbour.reason-one-more": ("{n} in a {fills} and 1 more: {jumps}, so each step {direction} is {diff} {more}",),
    "neighbour.reason-one-more-short": ("{n} in a {fills} and 1 more: {jumps}",),
    "neighbour.reason-one-less": ("{n} in a {fills}, 1 less: {jumps}, so each step {direction} is {diff} {more}",),
    "neighbour.reason-one-less-short": ("{n} in a {fills}, 1 less: {jumps}",),
    "neighbour.reason-bare": ("{jumps}",),
    "neighbour.reason-one": ("one step {direction} is the next count, and each jump is {diff}",),
    "table.statement": ("each count is its place times {step}",),
    "table.core": (
        "the {nth} is {n} jumps of {step} from zero",
        "the {nth} one we say is {n} times {step}",
    ),
    "table.reason": (
        "the start is 1 × {factor}, and each jump is one more {step}: {n} × {factor} = {v}",
        "{v} is the {nth} count, and {n} × {factor} = {v}",
    ),
    "run.statement": ("{within} the {feat} {rises} by {change}",),
    "run.core": ("{within} the {short} go {up} by {change}",),
    "run along the count.core": ("{within} {the_short_one} {rises} by {change}",),
    "run of places along the count.core": ("{within} the {short} go {up} by {change}",),
    "run in front.core": ("{within} the front number {rises} by {change}",),
    "run of ends.core": ("{within} it ends in {change} {more}",),
    "run.reason-place-line": ("{n} in a {fills}: {jumps}, and {total} {more} is {place} {more}",),
    "run.reason-place": ("{jumps}, and {total} {more} is {place} {more}", "{total} {more} is {place} {more}"),
    "run.reason-jumps": ("{jumps}", "{jumps}, so each time it is {total} {more}"),
    "run.reason-one": ("each jump is {total}",),
    "run.reason-nearly": ("each jump of {d} is {aside} {aside_more} than {own}",),
    "run.reason-carry": ("{total} {more} is {carry} {carry_more} and {own} {own_more}",),
    "run.reason-list": ("{in_line} the {feats} of {some} are {series}", "{in_line} the {feats} are {series}"),
    "run.reason-list-count": ("the {feats} of {some} are {series}", "at the start the {feats} are {series}"),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "step": (
        "Show me one jump. Is it the same from the end of one line to the start of the next?",
        "Put a finger on two neighbors. What happens between them?",
    ),
    "neighbour": (
        "Point to two cells where you see it. Which jumps lie between them?",
        "Try it from another cell. How many jumps is it each time?",
    ),
    "digit-run": (
        "Which digit do you follow? What will it be in the next cell?",
        "Where is that digit in each one? What comes when it gets to 9?",
    ),
    "digit-run in K": (
        "Follow them with your finger. What comes in the next one?",
        "Where do you see it in each one? What comes after nine?",
    ),
    "digit-run of a part": (
        "Which part of each one do you follow? What comes in the next cell?",
        "Where is that part in each one? How far can it go?",
    ),
    "table": (
        "Which one is it in our count? How many jumps make it?",
        "Pick another one. How many jumps is it from zero?",
    ),
}
