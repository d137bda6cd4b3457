"""English frames: how a level puts a noticing, its evidence and its reason together, and how a line tells its end."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "until": (", until {until}",),
    "student.reason": ("{Core}, because {reason}.", "I see that {core}, because {reason}."),
    "student.both": ("{Core}, because {reason}. {Evidence}.",),
    "student.test": (
        "I think that {core}, because {reason}. {Test}.",
        "My conjecture is that {core}. The reason: {reason}. {Test}.",
    ),
    "test.further": (
        "to test it, go on to the {nth} count, {v}",
        "we can test it further on, at the {nth} count, {v}",
    ),
    "test.here": ("to test it, look at the {nth} count, {v}",),
    "test.dies": (
        "it does not go on for ever: look at the {nth} count, {v}",
        "going on, it stops being so at the {nth} count, {v}",
    ),
}
