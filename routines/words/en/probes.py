"""English sentences about what makes a number a good one to ask about."""

PROBES = {
    "landmark": "It comes past the end, the {nth} count, and it is a landmark: a multiple of {multiple}.",
    "zero": "It comes past the end, the {nth} count: how many jumps does it take to come to zero?",
    "lines": "It comes past the end, the {nth} count: {lines} lines on from {like}.",
    "next": "It comes past the end, the {nth} count: one jump on from {like}.",
    "far": "It comes much later, as the {nth} count; too far to say them all.",
    "ends alike": "It ends in {ending}, as {like} does, but it is jumped over.",
    "even": "It is even, as every count here is, but it is jumped over.",
    "odd": "It is odd, as every count here is, but it is jumped over.",
    "every": "Like every count here, it is {rest} more than a multiple of {multiple}, but it is jumped over.",
    "every multiple": "Like every count here, it is a multiple of {multiple}, but it is jumped over.",
    "alike": "Like {like}, it is {rest} more than a multiple of {multiple}, but it is jumped over.",
    "multiple": "Like {like}, it is a multiple of {multiple}, but it is jumped over.",
    "behind": "It is one jump of {step} the other way from the start, so the count goes away from it.",
}
