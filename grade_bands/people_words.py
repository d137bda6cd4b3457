"""The columns of grades, classes and standards that hold people's words (see `accounts.people_words`)."""

from accounts.people_words import WordsColumn

COLUMNS = (
    WordsColumn("grade_bands.GradeBand", "name"),
    WordsColumn("grade_bands.Grade", "name"),
    WordsColumn("grade_bands.SchoolYear", "name"),
    WordsColumn("grade_bands.ClassGroup", "name"),
    *(
        WordsColumn("grade_bands.Standard", name)
        for name in ("framework", "code", "summary", "number_limits", "count_features")
    ),
)

WORDLESS = (
    "grade_bands.Grade.areas",
    "grade_bands.SchoolYear.term_starts",
    "grade_bands.ClassGroup.languages",
    "grade_bands.Standard.area",
)
