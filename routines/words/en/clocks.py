"""English sentences about times of day, in place of those about amounts: later and earlier, after and before."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "step.statement, on a clock": ("{d} {more} each time", "each count is {d} {more} than the one before"),
    "step.core, on a clock": (
        "it gets {d} {more} every time",
        "each one is {d} {more} than the one before",
        "every time we count, it is {d} {more}",
    ),
    "step.evidence, on a clock": (
        "{d} {after} {a} it is {b}, and {d} {after} {b} it is {c}",
        "from {a} we come to {b}, {d} {more}, and then to {c}, {d} {more} again",
    ),
    "step.evidence-short, on a clock": ("{d} {after} {a} it is {b}",),
    "step.reason, on a clock": ("{d} {after} {a} it is {b}, and {d} {after} {b} it is {c}",),
    "step.reason-short, on a clock": ("{d} {after} {a} it is {b}",),
    "neighbour.statement, on a clock": ("{direction}: {diff} {more}", "each step {direction} is {diff} {more}"),
    "neighbour.core, on a clock": (
        "when I go {direction}, it is always {diff} {more}",
        "going {direction}, each one is {diff} {more}",
    ),
    "neighbour.evidence, on a clock": (
        "{diff} {after} {a} it is {b}, and {diff} {after} {b2} it is {c2}",
        "from {a} we come to {b}, {diff} {more}, and from {b2} to {c2}, {diff} {more} too",
    ),
    "neighbour.evidence-short, on a clock": ("{diff} {after} {a} it is {b}",),
    "run.reason-jumps, on a clock": ("{jumps}", "{jumps}, so each time it is {total} {more}"),
    "run.reason-one, on a clock": ("each jump is {total}",),
    "reason.pure, on a clock": ("{jumps}, and {total} {more} the {feats} are the same",),
    "no.step, on a clock": ("{diff} {after} {a} it is {b}",),
    "no.neighbour, on a clock": ("one step {direction} from {a} we come to {b}, {diff} {more}",),
}
