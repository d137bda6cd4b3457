"""Plans, routines and lessons for tests, made through the app's own actions. What a test is about, it says."""

from datetime import date

from routines.lessons.recording import record_paper_lesson, save_reflection
from routines.models import Lesson, Routine
from routines.models.plan_document import CountSection, Fold, Plan, Stop, Target
from routines.plans.actions import start_routine

SEVENS = Plan(
    title="Sevens from four",
    grade="2",
    area="whole",
    count=CountSection("whole", "4", "7", 20),
    fold=Fold(5),
    targets=(
        Target({"family": "step", "difference": "7"}),
        Target({"family": "neighbour", "direction": "down", "difference": "35"}),
    ),
    stops=(Stop(10, "What is under 11?", "46", ("5 jumps of 7 make 35",)),),
)

TAUGHT_ON = date(2026, 9, 15)


def make_routine(owner, *, co_authors=(), shared=True, plan: Plan = SEVENS, **changes) -> Routine:
    routine = start_routine(plan=plan.changed(**changes), by=owner)
    routine.co_authors.set(co_authors)
    if shared:
        routine.share()
    return routine


def make_lesson(
    routine: Routine, teacher, *, sharing="only-me", taught_on=TAUGHT_ON, practice=False, seen="", outcome="as-planned"
) -> Lesson:
    group = teacher.class_groups.select_related("grade", "year").get()
    lesson = record_paper_lesson(
        version=routine.current_version,
        class_group=group,
        teacher=teacher,
        taught_on=taught_on,
        practice=practice,
    )
    save_reflection(lesson=lesson, outcome=outcome, seen=seen, sharing=sharing)
    return lesson
