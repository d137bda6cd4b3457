"""The columns from which words are taken out, and what each is called on the page."""

from accounts.people_words import WordsColumn
from routines.models.people_words import ALL, COLUMNS

# The school's own names of people, classes and standards are changed where they are kept: plans and sign-in go by them.
ELSEWHERE = tuple(column for column in ALL if column not in COLUMNS)

CALLED = {
    "routines.Routine.title": "titles of counts",
    "routines.Routine.story": "stories of counts",
    "routines.Routine.search_text": "the bank’s search",
    "routines.RoutineVersion.plan": "saved plans, older saves too",
    "routines.PlanDraft.fields": "plans being written",
    "routines.ImportFile.name": "names of files brought in",
    "routines.ImportFile.plans": "files brought in",
    "routines.ImportFile.refused": "files brought in: what could not be added",
    "routines.Job.title": "titles of booklets",
    "routines.Job.said": "what was said of booklets and files",
    "routines.RoutineNote.text": "notes on counts",
    "routines.Suggestion.why": "suggestions to colleagues",
    "routines.LessonEvent.data": "lessons: what was said, written and noticed",
    "routines.Reflection.seen": "reflections: what was seen",
    "routines.Reflection.stuck": "reflections: where it was hard",
    "routines.Reflection.next_step": "reflections: what comes next",
    "routines.Reflection.to_next_year": "notes to next year",
}
ELSEWHERE_CALLED = {
    "accounts": "names of people and of the school (changed on the page of people)",
    "grade_bands": "names of grades, classes, years and standards (changed on the pages of classes and grades)",
}

# These columns go with another one, so they are chosen together: search and titles follow what is saved.
TOGETHER = {
    "routines.RoutineVersion.plan": ("routines.Routine.title", "routines.Routine.story", "routines.Routine.search_text")
}
FOLLOWERS = {name: leader for leader, names in TOGETHER.items() for name in names}
# The title and the story of a routine are those of its newest save, so they are by whoever made that.
AUTHORS = {"routines.Routine": "current_version__by"}


def author_of(column: WordsColumn) -> str:
    return AUTHORS.get(column.model, column.author)


def called(column: WordsColumn) -> str:
    return CALLED[str(column)]
