"""What board and lectern are told once of a count, so that scripts never compute: texts, places, names of jumps; and, for
the lectern alone, the plan.
"""

from collections import Counter
from collections.abc import Iterable
from typing import Any

from django.utils.translation import gettext as _

from routines.counting import Fill, Grid
from routines.counting.written_units import in_both_units
from routines.lessons.kinds import PAST_THE_END
from routines.models import Lesson
from routines.models.plan_document import Plan
from routines.models.shown_plan import ShownPlan
from routines.words import likely_slips, probes, title_of_count

MINUS = "\u2212"
PROBES = 6
MOST_FORESEEN = 4


def board_count(lesson: Lesson, shown: ShownPlan) -> dict[str, Any]:
    """The count for drawing. No title, question, answer, slip or note: a curious child may read all of it."""
    grid, plan = shown.grid, shown.plan
    last = grid.count.terms + PAST_THE_END
    return {
        "lesson": str(lesson.key),
        "title": spoken_title(shown),
        "grade": lesson.grade.name,
        "language": shown.audience.language,
        "terms": grid.count.terms,
        "line_length": grid.line_length,
        "fill": grid.fill,
        "lead": grid.lead,
        "rows": grid.rows,
        "columns": grid.columns,
        "texts": [grid.count.text(n) for n in range(1, last + 1)],
        "places": list(places(grid, last)),
        "landmarks": list(shown.landmarks),
        "groups": groups(plan, last),
        "jumps": jumps(grid, last),
        "stops": [stop.after for stop in plan.stops],
    }


def spoken_title(shown: ShownPlan) -> str:
    """What a teacher says before the first count, in the count's language. A plan's own title may give a pattern away."""
    return title_of_count(shown.grid, shown.audience.language)


def places(grid: Grid, last: int) -> Iterable[list[int]]:
    """Row and column of each count. Past the end the grid goes on; where rows fill upwards, above row 1: 0, -1 ..."""
    grown = grid.grown(last)
    above = grown.rows - grid.rows if grid.fill is Fill.ACROSS_UP else 0
    for n in range(1, last + 1):
        row, column = grown.place(n)
        yield [row - above, column]


def groups(plan: Plan, last: int) -> list[str]:
    """The small label of each count where it answers a story: "crate 3"."""
    group = plan.story.group.strip()
    return [f"{group} {n}" for n in range(1, last + 1)] if group else []


def jumps(grid: Grid, last: int) -> dict[str, str]:
    """The name of a jump by how many counts it goes on, or back: "+6", "−6"."""
    named = {}
    for counts in range(1, last):
        total = counts * grid.count.step
        size = grid.count.difference_text(abs(total))
        signs = ("+", MINUS) if total > 0 else (MINUS, "+")
        named[str(counts)], named[str(-counts)] = signs[0] + size, signs[1] + size
    return named


def lectern_count(lesson: Lesson, shown: ShownPlan) -> dict[str, Any]:
    """The same and the plan, for the teacher's eyes."""
    grid, plan, audience = shown.grid, shown.plan, shown.audience
    return {
        **board_count(lesson, shown),
        "plan_title": plan.title,
        "stops": [
            {
                "after": stop.after,
                "said": in_both_units(grid.count, grid.count.value(stop.after)) if stop.after else "",
                "question": stop.question,
                "answer": stop.answer,
                "routes": list(stop.routes),
                "think": stop.think,
                "partner": stop.partner,
                "share": stop.share,
            }
            for stop in plan.stops
        ],
        "coming": coming(shown),
        "flags": flags(shown),
        "expected": [
            {"words": answer.words, "reply": answer.reply, "sort": answer.sort, "n": answer.n}
            for answer in plan.expected
        ],
        "targets": target_sentences(shown),
        "probes": [probe.text for probe in probes(grid, audience=audience)[:PROBES]],
        "minutes": plan.minutes(),
    }


def coming(shown: ShownPlan) -> dict[str, list[dict[str, Any]]]:
    """What may be said instead, by count: what the teacher foresaw, then the likeliest that the engine foresees.

    With more than `MOST_FORESEEN` to choose from, a thumb is quicker with the other words.
    """
    heard: dict[int, dict[str, dict[str, Any]]] = {}
    for answer in shown.plan.expected:
        if answer.sort == "slip" and answer.n:
            row = {"heard": answer.words, "why": "", "reply": answer.reply, "equal": False}
            heard.setdefault(answer.n, {})[answer.words] = row
    found: Counter[int] = Counter()
    for slip in likely_slips(shown.grid, audience=shown.audience):
        if found[slip.n] == MOST_FORESEEN and not slip.equal_name:
            continue
        found[slip.n] += not slip.equal_name
        row = {"heard": slip.heard, "why": slip.why, "reply": slip.reply, "equal": slip.equal_name}
        heard.setdefault(slip.n, {}).setdefault(slip.heard, row)
    return {str(n): list(rows.values()) for n, rows in sorted(heard.items())}


def flags(shown: ShownPlan) -> dict[str, list[str]]:
    """Where something that was true is true no longer, among the counts that are planned."""
    over: dict[int, list[str]] = {}
    for item in shown.patterns:
        ends = item.pattern.breaks_at
        if ends is not None and ends <= shown.grid.terms + PAST_THE_END:
            over.setdefault(ends, []).append(item.pattern.statement)
    return {str(n): sentences for n, sentences in sorted(over.items())}


def target_sentences(shown: ShownPlan) -> list[str]:
    """One line for each target of the plan, in the plan's order."""
    said = {item.pattern.claim: item.pattern.statement for item in shown.patterns if item.target}
    return [
        target.words or said.get(claim) or _("Target %(number)s") % {"number": position + 1}
        for position, (target, claim) in enumerate(zip(shown.plan.targets, shown.target_claims, strict=True))
    ]


def shown_of(lesson: Lesson) -> ShownPlan:
    """The plan that was taught, which may be older than the one in the bank."""
    return ShownPlan(lesson.version.read_plan(), lesson.grade.level)
