"""English frames: how a child of a level begins what it has noticed, and how a line tells its end."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "until": (", until {until}",),
    "student.0": ("look, {core}", "I see {core}"),
    "student.1": ("I see that {core}", "look, {core}", "I found that {core}"),
    "student.2": ("I notice that {core}", "look, {core}", "I found that {core}"),
    "student.3": ("I think that {core}", "my conjecture is that {core}", "it looks to me as if {core}"),
}
