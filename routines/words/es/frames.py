"""Spanish frames: how a level puts a noticing, its evidence and its reason together, and how a line tells its end."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "until": (", hasta llegar a {until}",),
    "student.reason": ("{Core}, porque {reason}.", "Veo que {core}, porque {reason}."),
    "student.both": ("{Core}, porque {reason}. {Evidence}.",),
    "student.test": (
        "Creo que {core}, porque {reason}. {Test}.",
        "Mi conjetura es que {core}. La razón: {reason}. {Test}.",
    ),
    "test.further": (
        "para probarlo, sigamos hasta el {nth} número, {v}",
        "podemos probarlo más adelante, en el {nth} número, {v}",
    ),
    "test.here": ("para probarlo, mira el {nth} número, {v}",),
    "test.dies": (
        "no sigue así para siempre: mira el {nth} número, {v}",
        "si seguimos, deja de ser así en el {nth} número, {v}",
    ),
}
