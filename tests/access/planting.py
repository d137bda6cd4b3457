"""Words planted in the demo school, each in something that is not everybody's, with those who may meet it."""

from collections.abc import Iterable
from dataclasses import dataclass, field

from django.urls import reverse
from django.utils import timezone

from accounts.actions import invite
from accounts.models import User
from grade_bands.models import ClassGroup
from routines.exchange.importing import hold_file
from routines.exchange.reading import read
from routines.exchange.writing import written
from routines.lessons.recording import record_paper_lesson, save_reflection
from routines.models import Lesson, Planned, Routine, Suggestion, SuggestionAnswer
from routines.models.plan_document import ExpectedAnswer, Plan, Stop
from routines.paper.booklet_jobs import start_booklet
from routines.plans.actions import copy_routine, keep_draft, save_version
from tests.routines.lessons.making import open_lesson
from tests.routines.making import SEVENS, make_routine

# Who looks: by role, their sign-in names in the demo school. Almost all of what is planted is by Delia Marsh, in whose
# team Owen Tran is and Marcus Bell is not.
LOOKING = {"teammate": "tran", "other_teacher": "bell", "coach": "calloway", "administrator": "whitlock"}


@dataclass
class Planted:
    """readers: of each word, by role. only_on: (word, role) where a reader meets it on pages of such names alone."""

    readers: dict[str, frozenset[str]] = field(default_factory=dict)
    only_on: dict[tuple[str, str], str] = field(default_factory=dict)
    addresses: list[str] = field(default_factory=list)
    on_now: Lesson | None = None

    def word(self, said: str, *readers: str) -> str:
        """A word that stands nowhere else."""
        word = f"zq{said}zq"
        self.readers[word] = frozenset(readers)
        return word

    def behind(self, names: Iterable[str], **parts: object) -> None:
        self.addresses += [reverse(name, kwargs=parts) for name in names]


COUNT_PAGES = (
    "routine", "routine_compare", "print", "plan_pdf", "plan_edit", "plan_history", "export_routine", "export_grid",
    "planned_new", "suggest", "lesson_taught", "lesson_teach",
)  # fmt: skip
LESSON_PAGES = (
    "lesson", "lesson_replay", "lesson_board", "lesson_board_json", "lesson_lectern", "lesson_lectern_json",
    "lesson_events", "lesson_pair", "lesson_delete",
)  # fmt: skip


def plant() -> Planted:
    planted = Planted()
    marsh = User.objects.get(sign_in_name="marsh")
    _counts(planted, marsh)
    _lessons(planted, marsh)
    _suggestions(planted, marsh)
    _files(planted, marsh)
    _people(planted, marsh)
    return planted


def _plan(title: str, **more: object) -> Plan:
    return SEVENS.changed(title=title, **more)


def _count(planted: Planted, owner: User, plan: Plan, **more: object) -> Routine:
    routine = make_routine(owner, plan=plan, **more)
    planted.behind(COUNT_PAGES, pk=routine.pk)
    return routine


def _counts(planted: Planted, marsh: User) -> None:
    word, tran = planted.word, User.objects.get(sign_in_name="tran")
    draft = _count(planted, marsh, _plan(word("drafttitle"), notes=word("draftnotes")), shared=False)
    draft.notes.create(by=marsh, text=word("noteonadraft"))
    joined = _plan(word("joinedtitle", "teammate"), notes=word("joinednotes", "teammate"))
    _count(planted, marsh, joined, shared=False, co_authors=[tran])

    shared = _count(planted, marsh, _plan("Sevens for everybody", notes=word("oldersave", "coach")))
    save_version(routine=shared, plan=_plan("Sevens for everybody"), based_on=shared.newest_save, by=marsh)
    keep_draft(by=marsh, fields={"typed": {"notes": [word("changenotsaved")]}, "steps": []}, routine=shared)
    unsaved = keep_draft(by=marsh, fields={"typed": {"title": [word("plannotsaved")]}, "steps": []})
    planted.behind(["plan_edit"], key=unsaved.key)

    # Its copy is in the bank; it was taught, planned and suggested before it left the bank.
    retired = _count(planted, marsh, _plan(word("retiredtitle", "coach", "administrator")))
    copy = copy_routine(routine=retired, by=marsh)
    save_version(routine=copy, plan=_plan("Sevens after all"), based_on=copy.newest_save, by=marsh)
    copy.share()
    planted.behind(COUNT_PAGES, pk=copy.pk)
    lesson = _taught(retired, marsh, planted)
    save_reflection(lesson=lesson, outcome="as-planned", seen="", sharing="team-coach")
    group = marsh.class_groups.get()
    planned = Planned.objects.create(routine=retired, class_group=group, on=timezone.localdate(), by=marsh)
    planted.behind(["planned_move"], pk=planned.pk)
    Suggestion.objects.create(routine=retired, by=marsh, to_teacher=tran, why="A count that left.")
    retired.retire()


def _taught(routine: Routine, teacher: User, planted: Planted, **more: object) -> Lesson:
    lesson = record_paper_lesson(
        version=routine.newest_save,
        class_group=teacher.class_groups.select_related("grade", "year").get(),
        teacher=teacher,
        taught_on=timezone.localdate(),
        **more,
    )
    planted.behind(LESSON_PAGES, key=lesson.key)
    return lesson


def _lessons(planted: Planted, marsh: User) -> None:
    word = planted.word
    routine = make_routine(marsh, plan=_plan("Sevens that were taught"))
    for sharing, readers in (("only-me", ()), ("team", ("teammate",)), ("team-coach", ("teammate", "coach"))):
        name = sharing.replace("-", "")
        noticed = [(word(f"noticed{name}", *readers), None)]
        lesson = _taught(routine, marsh, planted, noticed=noticed, heard={3: [word(f"slip{name}", *readers)]})
        save_reflection(
            lesson=lesson,
            outcome="as-planned",
            seen=word(f"seen{name}", *readers),
            stuck=word(f"stuck{name}", *readers),
            next_step=word(f"next{name}", *readers),
            to_next_year=word(f"nextyear{name}"),
            sharing=sharing,
        )
    # The plan of the lesson that is on is everybody's who is signed in, and never told to the board.
    people = tuple(LOOKING)
    shown = _count(
        planted,
        marsh,
        _plan(
            word("boardtitle", *people),
            notes=word("boardnotes", *people),
            stops=(Stop(10, word("boardquestion", *people), word("boardanswer", *people)),),
            expected=(ExpectedAnswer(word("boardexpected", *people), word("boardreply", *people)),),
        ),
    )
    planted.on_now = open_lesson(marsh, routine=shown)
    planted.behind(LESSON_PAGES, key=planted.on_now.key)


def _suggestions(planted: Planted, marsh: User) -> None:
    by = {name: User.objects.get(sign_in_name=name) for name in ("tran", "bell", "calloway", "lindqvist", "mori")}
    routine, word = make_routine(marsh, plan=_plan("Sevens that were suggested")), planted.word
    grade_five = by["bell"].class_groups.get().grade
    for sender, to, why in (
        ("lindqvist", {"to_teacher": by["mori"]}, word("betweenothers")),
        ("calloway", {"to_teacher": by["tran"]}, word("fromthecoach", "teammate", "coach")),
        ("calloway", {"to_grade": grade_five}, word("forgradefive", "other_teacher", "coach")),
        ("tran", {"to_teacher": by["mori"]}, word("declined", "teammate")),
    ):
        made = Suggestion.objects.create(routine=routine, by=by[sender], why=why, **to)
        planted.behind(["suggestion_answer", "suggestion_withdraw"], pk=made.pk)
    made.answer(by["mori"], SuggestionAnswer.Answer.DECLINED)


def _files(planted: Planted, marsh: User) -> None:
    routine = make_routine(marsh, plan=_plan("Sevens in a booklet"))
    booklet = start_booklet(
        owner=marsh, title=planted.word("booklet"), versions=[routine.newest_save], contents=["plan"]
    )
    planted.behind(["booklet", "booklet_pdf"], key=booklet.key)
    file = hold_file(
        by=marsh, name=planted.word("filename"), read=read(written([_plan(planted.word("infile"))]), {"2"})
    )
    planted.behind(["import_look", "import_progress"], key=file.key)


def _people(planted: Planted, marsh: User) -> None:
    word = planted.word
    marsh.email = f"{word('mailofacolleague')}@school.example"
    marsh.save()
    leaver = User.objects.get(sign_in_name="okeefe")
    _count(planted, leaver, _plan(word("draftofaleaver")), shared=False)
    leaver.email = f"{word('mailofaleaver')}@school.example"
    leaver.is_active = False
    leaver.save()
    planted.behind(["hand_on"], pk=leaver.pk)
    administrator = User.objects.get(sign_in_name="whitlock")
    invite(by=administrator, display_name=word("invited", "administrator"), role="teacher")
    name = word("classofgradefive", "other_teacher", "coach", "administrator")
    ClassGroup.objects.filter(name="5 Lantern").update(name=name)
    planted.only_on[name, "administrator"] = "grade_bands:"
