"""English sentences about times of day, in place of those about amounts: later and earlier, after and before."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "step.statement, on a clock": ("{d} {more} each time", "each count is {d} {more} than the one before"),
    "step.core, on a clock": ("each one is {d} {more} than the one before",),
    "step.says, on a clock": (
        "every time we count, it is {d} {more}",
        "each time I look, it gets {d} {more}",
    ),
    "step.reason, on a clock": ("{d} {after} {a} it is {b}, and {d} {after} {b} it is {c}",),
    "step.reason-short, on a clock": ("{d} {after} {a} it is {b}",),
    "neighbour.statement, on a clock": ("{direction}: {diff} {more}", "each step {direction} is {diff} {more}"),
    "neighbour.core, on a clock": ("each step {direction} is {diff} {more}",),
    "neighbour.says, on a clock": ("when I go {direction}, it is always {diff} {more}",),
    "run.reason-jumps, on a clock": ("{jumps}", "{jumps}, so each time it is {total} {more}"),
    "run.reason-one, on a clock": ("each jump is {total}",),
    "reason.line-change, on a clock": ("{n} in a {fills}: {jumps}, and {total} {more} the {feats} are the same",),
    "reason.stays, on a clock": ("{jumps}, and {total} {more} the {feats} are the same",),
    "reason.comes-back, on a clock": ("{jumps}, and {total} {more} the {feats} are the same",),
    "no.step, on a clock": ("{diff} {after} {a} it is {b}",),
    "no.neighbour, on a clock": ("one step {direction} from {a} we come to {b}, {diff} {more}",),
}
