"""Where in a document a text stands, as its writer would say it: "Stop 2: question", not "stops.1.question"."""

from typing import Any

from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

# In the order in which they are read; * is the number of what is meant.
IN_A_PLAN = {
    "title": gettext_lazy("Title"),
    "story.text": gettext_lazy("Story"),
    "story.group": gettext_lazy("Each count is"),
    "story.goal": gettext_lazy("Until"),
    "landmark": gettext_lazy("Landmark"),
    "targets.*.words": gettext_lazy("Pattern %(number)s, in your words"),
    "stops.*.question": gettext_lazy("Stop %(number)s: question"),
    "stops.*.answer": gettext_lazy("Stop %(number)s: answer"),
    "stops.*.routes.*": gettext_lazy("Stop %(number)s: a route to it"),
    "expected.*.words": gettext_lazy("Expected answer %(number)s"),
    "expected.*.reply": gettext_lazy("What you ask back at answer %(number)s"),
    "next_counts.*.why": gettext_lazy("Next count %(number)s: why"),
    "standards.*": gettext_lazy("Standard"),
    "notes": gettext_lazy("Notes"),
}
IN_AN_EVENT = {
    "term.write": gettext_lazy("Written at count %(number)s"),
    "term.correct": gettext_lazy("Corrected at count %(number)s"),
    "predict": gettext_lazy("Guessed at count %(number)s"),
    "phrase.add": gettext_lazy("A phrase"),
    "notice.add": gettext_lazy("Noticed"),
    "notice.edit": gettext_lazy("Noticed, in other words"),
}
WITHOUT_WORDS = ("lesson.open", "target")  # events that hold choices and marks alone

Texts = list[tuple[str, str]]
GROUPS = list(dict.fromkeys(path.partition(".")[0] for path in IN_A_PLAN))


def for_a_reader(column: str, row: Any, texts: Texts) -> Texts:
    """The texts of one row with their places as they are said, in the order in which they are read, "" where there is no
    more to say than what the column is called. What no person wrote is left out."""
    if column == "routines.LessonEvent.data":
        return _of_an_event(row, texts)
    if column == "routines.PlanDraft.fields":
        return [(place.split(".")[1], text) for place, text in texts if place.startswith("typed.")]
    if column in ("routines.RoutineVersion.plan", "routines.ImportFile.plans"):
        depth = int(column == "routines.ImportFile.plans")
        read = sorted((_order(place.split("."), depth), place, text) for place, text in texts)
        return [(_in_a_plan(place.split(".")[depth:]), text) for _order_of_it, place, text in read]
    return [("", text) for _place, text in texts]


def _of_an_event(row: Any, texts: Texts) -> Texts:
    if row.kind in WITHOUT_WORDS:
        return []
    called = IN_AN_EVENT.get(row.kind)
    said = str(called) % {"number": row.data.get("n", "")} if called else _("In the lesson")
    return [(said, text) for _place, text in texts]


def _pattern(parts: list[str]) -> str:
    return ".".join("*" if part.isdecimal() else part for part in parts)


def _order(parts: list[str], depth: int) -> tuple[int, ...]:
    """The plan of a file, the part of the plan, the number in it, what of it, and which of several."""
    numbers = [int(part) for part in parts[depth:] if part.isdecimal()] + [0, 0]
    pattern = _pattern(parts[depth:])
    which = list(IN_A_PLAN).index(pattern) if pattern in IN_A_PLAN else len(IN_A_PLAN)
    group = GROUPS.index(parts[depth]) if parts[depth] in GROUPS else len(GROUPS)
    return (int(parts[0]) if depth else 0, group, numbers[0], which, numbers[1])


def _in_a_plan(parts: list[str]) -> str:
    number = next((int(part) + 1 for part in parts if part.isdecimal()), "")
    called = IN_A_PLAN.get(_pattern(parts))
    return str(called) % {"number": number} if called else ".".join(parts)
