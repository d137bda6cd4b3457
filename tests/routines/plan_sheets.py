"""Filled plan forms and saved plans for the tests of the plan page."""

from accounts.models import User
from routines.models import Routine
from routines.models.plan_document import CountSection, Fold, Plan, Stop
from routines.plans.actions import start_routine


def sheet(**changes: object) -> dict[str, object]:
    """The plan form as a browser sends it: by 4 from 20, 18 counts, six in a line, for grade 2."""
    fields: dict[str, object] = {
        "title": "Fours from twenty",
        "grade": "2",
        "area": "",
        "language": "en",
        "kind": "whole",
        "start": "20",
        "step": "4",
        "terms": "18",
        "line_length": "6",
        "fill": "across",
        "lead": "0",
    }
    fields.update(changes)
    return {name: value for name, value in fields.items() if value is not None}


def stop_fields(number: int, after: object, question: str, **changes: object) -> dict[str, object]:
    row = {"after": after, "question": question, "answer": "", "routes": "", "think": 20, "partner": 60, "share": 90}
    return {f"stops-{number}-{name}": value for name, value in {**row, **changes}.items()}


def answer_fields(number: int, words: str, **changes: object) -> dict[str, object]:
    row = {"words": words, "reply": "", "sort": "own", "n": ""}
    return {f"expected-{number}-{name}": value for name, value in {**row, **changes}.items()}


def saved_plan(owner: User, *, shared: bool = False, **changes: object) -> Routine:
    plan = Plan(
        title="Fours from twenty",
        grade="2",
        area="whole",
        count=CountSection(kind="whole", start="20", step="4", terms=18),
        fold=Fold(line_length=6),
        stops=(Stop(after=12, question="What will stand under 64?"),),
    ).changed(**changes)
    routine = start_routine(plan=plan, by=owner)
    if shared:
        routine.share()
    return routine
