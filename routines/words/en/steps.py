"""English sentences about steps: step, neighbour, table, digit-run."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "step.statement": ("{d} {more} each time", "each count is {d} {more}"),
    "step.core": (
        "it goes {up} {d} every time",
        "each one is {d} {more} than the one before",
        "every time we count, we jump {up} {d}",
    ),
    "step.evidence": (
        "from {a} to {b} is {d} {more}, and from {b} to {c} is {d} {more} again",
        "{a} and {d} {more} is {b}, then {d} {more} is {c}",
    ),
    "step.evidence-short": ("from {a} to {b} is {d} {more}", "{a} and {d} {more} is {b}"),
    "step.reason": ("{a} and {d} {more} is {b}, and {b} and {d} {more} is {c}",),
    "step.reason-short": ("{a} and {d} {more} is {b}",),
    "neighbour.statement": ("{direction}: {diff} {more}", "each step {direction} is {diff} {more}"),
    "neighbour.core": (
        "when I go {direction}, it is always {diff} {more}",
        "going {direction}, each one is {diff} {more}",
    ),
    "neighbour.evidence": (
        "from {a} to {b} is {diff} {more}, and from {b2} to {c2} it is {diff} {more} too",
        "{a} and {diff} {more} is {b}, and from {b2} to {c2} is {diff} {more} as well",
    ),
    "neighbour.evidence-short": ("from {a} to {b} is {diff} {more}", "{a} and {diff} {more} is {b}"),
    "neighbour.reason": ("{jumps}", "one step {direction} is {k} counts on, and {jumps}"),
    "neighbour.reason-back": (
        "one step {direction} is {k} counts back, and {jumps}",
        "one step {direction} goes {k} counts back: {jumps}",
    ),
    "neighbour.reason-short": ("{jumps}",),
    "neighbour.reason-one": ("one step {direction} is the next count, and each jump is {diff}",),
    "neighbour.reason-one-back": ("one step {direction} is the count before, and each jump is {diff}",),
    "table.statement": ("each count is its place times {step}", "count number n is n jumps of {step}"),
    "table.core": (
        "the {nth} one is {n} jumps of {step}",
        "the {nth} one we say is {n} times {step}",
    ),
    "table.evidence": (
        "look at the {nth} one we wrote, {v}: that is {n} × {factor}",
        "count the jumps up to {v}: there are {n}, and {n} × {factor} = {v}",
    ),
    "table.evidence-short": ("that makes {v}", "so that one is {v}"),
    "table.reason": (
        "the start is 1 × {factor}, and each jump is one more {step}: {n} × {factor} = {v}",
        "{v} is the {nth} count, and {n} × {factor} = {v}",
    ),
    "run.statement": ("the {feat} {rises} {change} {each_way}", "{feats} go {up} {change} {each_way}"),
    "run.core": (
        "the {feats} go {up} {change} {each_way}",
        "{each_way} the {feats} go {up} by {change}",
    ),
    "run.evidence": ("{in_line} the {feats} are {series}", "look {in_line}: the {feats} are {series}"),
    "run.evidence-count": ("at the start the {feats} are {series}", "look at {some}: the {feats} are {series}"),
    "run.reason-place": ("{total} {more} is {place} {more}", "{jumps}, and {total} {more} is {place} {more}"),
    "run.reason-jumps": ("{jumps}", "{jumps}, so each time it is {total} {more}"),
    "run.reason-one": ("each jump is {total}", "each jump is {total} {more}"),
    "run.reason-carry": ("{total} {more} is {carry} {carry_more} and {own} {own_more}",),
    "run.reason-list": ("{in_line} {some} have {feats} {series}", "{in_line} the {feats} are {series}"),
    "run.reason-list-count": ("{some} have {feats} {series}", "at the start the {feats} are {series}"),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, str] = {
    "step": "Show me one jump. Is it the same from the end of a line to the next?",
    "neighbour": "Point to two cells where you see it. Which jumps lie between them?",
    "digit-run": "Which digit do you follow? What would it be in the next cell?",
    "digit-run of a part": "Which part of each one do you follow? What would it be in the next cell?",
    "table": "Which count is it, and how many jumps make it?",
}
