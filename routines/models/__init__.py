"""The nouns of the bank: one model per file, each under its own queryset."""

from .bank_total import BankOwner, BankTotal
from .draft import PlanDraft
from .event import LessonEvent
from .import_file import ImportFile
from .job import Job, JobFile
from .lesson import Lesson, Reflection, TargetOutcome
from .lesson_pass import LessonPass, PairingTries
from .note import RoutineNote
from .planned import Planned
from .routine import Routine, RoutinePattern
from .search_word import SearchWord
from .suggestion import Suggestion, SuggestionAnswer
from .taught import TaughtInWeek, TaughtInYear, TaughtOn, TimesTaught
from .version import RoutineVersion, UnreadablePlan
from .worked_out import WorkedOut

__all__ = [
    "BankOwner",
    "BankTotal",
    "ImportFile",
    "Job",
    "JobFile",
    "Lesson",
    "LessonEvent",
    "LessonPass",
    "PairingTries",
    "PlanDraft",
    "Planned",
    "Reflection",
    "Routine",
    "RoutineNote",
    "RoutinePattern",
    "RoutineVersion",
    "SearchWord",
    "Suggestion",
    "SuggestionAnswer",
    "TargetOutcome",
    "TaughtInWeek",
    "TaughtInYear",
    "TaughtOn",
    "TimesTaught",
    "UnreadablePlan",
    "WorkedOut",
]
