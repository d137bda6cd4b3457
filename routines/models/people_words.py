"""The columns of the bank and of lessons that hold people's words, and all such columns of the school together.

Sessions, and the list of wrong sign-ins, belong to packages and pass within days; finished booklets and files of
one's own words are files (`drop_files_of_words`).
"""

from accounts.people_words import COLUMNS as OF_ACCOUNTS
from accounts.people_words import WORDLESS as WORDLESS_OF_ACCOUNTS
from accounts.people_words import WordsColumn
from grade_bands.people_words import COLUMNS as OF_GRADE_BANDS
from grade_bands.people_words import WORDLESS as WORDLESS_OF_GRADE_BANDS
from routines.models.declared import paths_of_words
from routines.models.plan_document import Plan

# Where words stand in a plan document; numbers as typed, choices and claims of the engine are no words.
IN_A_PLAN = tuple(paths_of_words(Plan))

COLUMNS = (
    WordsColumn("routines.Routine", "title", author="owner"),
    WordsColumn("routines.Routine", "story", author="owner"),
    WordsColumn("routines.Routine", "search_text", author="owner", derived=True),
    WordsColumn("routines.RoutineVersion", "plan", parts=IN_A_PLAN, author="by"),
    WordsColumn(
        "routines.PlanDraft", "fields", parts=("typed.*.*", "steps.*.said", "steps.*.fields.*.*"), author="person"
    ),
    WordsColumn("routines.ImportFile", "name", author="by"),
    WordsColumn("routines.ImportFile", "plans", parts=tuple(f"*.{part}" for part in IN_A_PLAN), author="by"),
    # An entry that was refused: its number, its title, the part at fault, why.
    WordsColumn("routines.ImportFile", "refused", parts=("*.1", "*.2", "*.3"), author="by"),
    WordsColumn("routines.Job", "title", author="owner"),
    WordsColumn("routines.Job", "said", author="owner"),
    WordsColumn("routines.RoutineNote", "text", author="by"),
    WordsColumn("routines.Suggestion", "why", author="by"),
    # Kinds of event that this server does not know yet may hold words anywhere; ids of events and marks are none.
    WordsColumn("routines.LessonEvent", "data", parts=("**",), but=("event", "over", "mark", "how"), author="user"),
    *(
        WordsColumn("routines.Reflection", name, author="lesson__teacher")
        for name in ("seen", "stuck", "next_step", "to_next_year")
    ),
)

# The words of titles and of what is searched, one in a row: too many to be read one by one, and written anew with these.
ONE_BY_ONE = ("routines.SearchWord.word",)

# Choices, facts and claims of the engine, and what machines call themselves.
WORDLESS = (
    *(f"routines.Routine.{name}" for name in ("area", "status", "kind", "direction", "fill", "engine_version")),
    *(f"routines.RoutinePattern.{name}" for name in ("family", "holds", "lie", "claim")),
    *(f"routines.Lesson.{name}" for name in ("surface", "sharing", "area")),
    *(f"routines.LessonEvent.{name}" for name in ("device", "kind")),
    *(f"routines.TargetOutcome.{name}" for name in ("family", "seen")),
    *(f"routines.Job.{name}" for name in ("kind", "payload", "state")),
    # A finished booklet or file of one's own words: gone within the hour, or by `drop_files_of_words`. What a look for
    # words has found: keys of rows.
    # has found: keys of rows.
    "routines.JobFile.content",
    *(f"routines.LessonPass.{name}" for name in ("address", "code", "role", "secret_hash")),
    "routines.Reflection.outcome",
    *(f"routines.WorkedOut.{name}" for name in ("key", "document", "made_by", "said")),
    "routines.ImportFile.left_out",
    "routines.SuggestionAnswer.answer",
    "routines.TaughtOn.area",
    "routines.TaughtInWeek.area",
    "routines.BankTotal.area",
)

ALL = (*OF_ACCOUNTS, *OF_GRADE_BANDS, *COLUMNS)
ALL_WORDLESS = (*WORDLESS_OF_ACCOUNTS, *WORDLESS_OF_GRADE_BANDS, *WORDLESS)
