"""Build the demo school through the app's own actions."""

from collections.abc import Callable
from datetime import date, datetime, time, timedelta
from typing import TypedDict

from django.db import transaction
from django.utils import timezone

from accounts.models import User
from grade_bands.models import ClassGroup, Grade, GradeBand
from routines.demo.board_lessons import BOARD_LESSONS
from routines.demo.lesson_script import events_of
from routines.demo.lessons import LESSONS, NOTES, DemoLesson
from routines.demo.notation import DemoPlan
from routines.demo.people import make_classes, make_grades, make_people, make_school, make_year
from routines.demo.plans import PLANS
from routines.demo.team import PLANNED, SUGGESTIONS, DemoSuggestion
from routines.lessons.recording import keep_events, record_paper_lesson, save_reflection, start_lesson
from routines.models import Lesson, Planned, Routine, RoutineNote, RoutineVersion, Suggestion, SuggestionAnswer
from routines.plans.actions import save_version, start_routine
from routines.team.school_days import monday_now


@transaction.atomic
def make_demo_school(*, today: date, load_standards: Callable[[], object], told: Callable[[str], object]) -> None:
    """Everything at once or nothing. `told` is called with a line for each thing made."""
    make_school()
    people = make_people()
    grades = make_grades()
    load_standards()
    year = make_year(today)
    classes = make_classes(people, grades, year)
    told(f"{len(people)} people, {len(classes)} classes")
    routines = _make_routines(people, year.starts_on)
    told(f"{len(routines)} counts")
    for lesson in (*LESSONS, *BOARD_LESSONS):
        _make_lesson(lesson, routines, people, classes, year.starts_on, today)
    told(f"{len(LESSONS) + len(BOARD_LESSONS)} lessons, {len(BOARD_LESSONS)} of them on the board")
    for key, name, text in NOTES:
        RoutineNote.objects.create(routine=routines[key], by=people[name], text=text)
    for planned in PLANNED:
        Planned.objects.create(
            routine=routines[planned.routine],
            class_group=classes[planned.class_name],
            on=monday_now(today) + timedelta(weeks=planned.week, days=planned.weekday),
            by=people[planned.teacher],
        )
    for suggestion in SUGGESTIONS:
        _suggest(suggestion, routines, people, today)


def _make_routines(people: dict[str, User], first_day: date) -> dict[str, Routine]:
    made: dict[str, Routine] = {}
    for position, demo in enumerate(PLANS):
        made[demo.key] = _make_routine(demo, made, people)
        _date_back(made[demo.key], first_day, position)
    return made


def _make_routine(demo: DemoPlan, made: dict[str, Routine], people: dict[str, User]) -> Routine:
    owner = people[demo.owner]
    origin: RoutineVersion | None = made[demo.copy_of].newest_save if demo.copy_of else None
    first, *later = (*demo.earlier, demo.plan)
    routine = start_routine(plan=first, by=owner, copied_from=origin)
    for plan in later:
        save_version(routine=routine, plan=plan, based_on=routine.newest_save, by=owner)
        routine.refresh_from_db()
    routine.co_authors.set([people[name] for name in demo.co_authors])
    if demo.status != "draft":
        routine.share()
    return routine


def _date_back(routine: Routine, first_day: date, position: int) -> None:
    """Spread the counts over the weeks before and after the year began, so that "newest first" means something."""
    moment = _at(first_day + timedelta(days=2 * position - 20), time(15, 40))
    moment = min(moment, timezone.now() - timedelta(minutes=90))
    Routine.objects.filter(pk=routine.pk).update(
        created_at=moment, shared_at=moment if routine.status != Routine.Status.DRAFT else None
    )
    for version in routine.versions.all():
        RoutineVersion.objects.filter(pk=version.pk).update(at=moment + timedelta(minutes=11 * (version.number - 1)))


class Taught(TypedDict):
    """What every lesson has, on the board or on paper."""

    version: RoutineVersion
    class_group: ClassGroup
    teacher: User
    taught_on: date
    practice: bool


def _make_lesson(
    demo: DemoLesson,
    routines: dict[str, Routine],
    people: dict[str, User],
    classes: dict[str, ClassGroup],
    first_day: date,
    today: date,
) -> None:
    day = min(first_day + timedelta(weeks=demo.week, days=demo.weekday), today)
    begins = _at(day, time(9, 15))
    taught = Taught(
        version=routines[demo.routine].newest_save,
        class_group=classes[demo.class_name],
        teacher=people[demo.teacher],
        taught_on=day,
        practice=demo.practice,
    )
    if demo.script:
        lesson = start_lesson(**taught, surface=Lesson.Surface.BOARD)
        count = lesson.version.read_plan().count.count()
        keep_events(lesson=lesson, events=events_of(demo.script, count=count, begins=begins))
    else:
        lesson = record_paper_lesson(
            **taught,
            heard={n: [said] for n, said in demo.slips},
            voices=[{"from": first, "to": last, "how": how} for first, last, how in demo.voices],
            noticed=[(text, None) for text in demo.noticed],
            targets=dict(demo.targets),
            at=begins,
        )
    if demo.outcome:
        save_reflection(
            lesson=lesson,
            outcome=demo.outcome,
            seen=demo.seen,
            stuck=demo.stuck,
            next_step=demo.next_step,
            to_next_year=demo.to_next_year,
            sharing=demo.sharing,
        )


def _suggest(demo: DemoSuggestion, routines: dict[str, Routine], people: dict[str, User], today: date) -> None:
    sort, _space, name = demo.to.partition(" ")
    made = Suggestion.objects.create(
        routine=routines[demo.routine],
        by=people[demo.by],
        why=demo.why,
        by_when=today + timedelta(days=demo.days) if demo.days else None,
        to_grade=Grade.objects.get(name=name) if sort == "grade" else None,
        to_band=GradeBand.objects.get(name=name) if sort == "team" else None,
        to_teacher=people.get(sort),
    )
    if demo.taken_by:
        made.answer(people[demo.taken_by], SuggestionAnswer.Answer.TAKEN)


def _at(day: date, moment: time) -> datetime:
    return timezone.make_aware(datetime.combine(day, moment))
