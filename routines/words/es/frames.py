"""Spanish frames: how a child of a level begins what it has noticed, and how a line tells its end."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "until": (", hasta llegar a {until}",),
    "student.0": ("mira, {core}", "veo que {core}"),
    "student.1": ("veo que {core}", "mira, {core}", "vi que {core}"),
    "student.2": ("noto que {core}", "mira, {core}", "descubrí que {core}"),
    "student.3": ("creo que {core}", "mi conjetura es que {core}", "me parece que {core}"),
}
