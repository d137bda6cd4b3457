"""English sentences about what makes a number a good one to ask about."""

COMES = "It comes past the end, the {nth} count, in row {row}, column {column}"
JUMPED = "but it is jumped over, from {before} to {after}."

PROBES = {
    "landmark": COMES + ": a landmark, {a_mark}.",
    "zero": COMES + ": how many jumps does it take to come to zero?",
    "lines": COMES + ": {lines} lines on from {like}.",
    "line": COMES + ": one line on from {like}.",
    "next": COMES + ": one jump on from {like}.",
    "jumps": COMES + ": {jumps} jumps on from {like}.",
    "step": "It is a multiple of {step}, and each jump is {step}, but the count starts at {start}: it is jumped over, from "
    "{before} to {after}.",
    "ends alike": "It ends in {ending}, as {like} does, " + JUMPED,
    "even": "It is even, as every count here is, " + JUMPED,
    "odd": "It is odd, as every count here is, " + JUMPED,
    "every": "Like every count here, it is {rest} more than a multiple of {multiple}, " + JUMPED,
    "every multiple": "Like every count here, it is a multiple of {multiple}, " + JUMPED,
    "alike": "Like {like}, it is {rest} more than a multiple of {multiple}, " + JUMPED,
    "multiple": "Like {like}, it is {a_mark}, " + JUMPED,
    "behind": "It lies on the other side of {start}: each jump of {step} goes away from it.",
}
