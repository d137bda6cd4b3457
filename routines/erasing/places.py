"""The columns from which words are taken out, and what each is called on the page."""

from django.utils.translation import gettext_lazy as _

from accounts.people_words import WordsColumn
from routines.models.people_words import ALL, COLUMNS

# The school's own names of people, classes and standards are changed where they are kept: plans and sign-in go by them.
ELSEWHERE = tuple(column for column in ALL if column not in COLUMNS)

CALLED = {
    "routines.Routine.title": _("titles of counts"),
    "routines.Routine.story": _("stories of counts"),
    "routines.Routine.search_text": _("the bank’s search"),
    "routines.RoutineVersion.plan": _("saved plans, older saves too"),
    "routines.PlanDraft.fields": _("plans being written"),
    "routines.ImportFile.name": _("names of files brought in"),
    "routines.ImportFile.plans": _("files brought in"),
    "routines.ImportFile.refused": _("files brought in: what could not be added"),
    "routines.Job.title": _("titles of booklets"),
    "routines.Job.said": _("what was said of booklets and files"),
    "routines.RoutineNote.text": _("notes on counts"),
    "routines.Suggestion.why": _("suggestions to colleagues"),
    "routines.LessonEvent.data": _("lessons: what was said, written and noticed"),
    "routines.Reflection.seen": _("reflections: what was seen"),
    "routines.Reflection.stuck": _("reflections: where it was hard"),
    "routines.Reflection.next_step": _("reflections: what comes next"),
    "routines.Reflection.to_next_year": _("notes to next year"),
}
ELSEWHERE_CALLED = {
    "accounts": _("names of people and of the school (changed on the page of people)"),
    "grade_bands": _("names of grades, classes, years and standards (changed on the pages of classes and grades)"),
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
    return str(CALLED[str(column)])
