"""The plan on one page: the grid with its targets, what to listen for, stops with room to write, what they may say and slip."""

from django.template.loader import render_to_string

from accounts.models import School
from routines.drawing.svg import tokens
from routines.facts import count_in_words
from routines.models import RoutineVersion
from routines.paper.press import printing
from routines.paper.styles import paper_css
from routines.shown_plan import ShownPlan

LISTEN_FOR = 5


def plan_page_html(version: RoutineVersion, school: School) -> str:
    plan = version.read_plan()
    routine = version.routine
    shown = ShownPlan(plan, routine.grade.level)
    count = count_in_words(shown.grid)
    targets = [item for item in shown.patterns if item.target]
    lit = [item.pattern for item in shown.lit_at_first]
    return render_to_string(
        "routines/paper/plan_page.html",
        {
            "school": school,
            "routine": routine,
            "version": version,
            "plan": plan,
            "shown": shown,
            "count": count,
            "listen_for": [item.pattern for item in (targets or shown.patterns)[:LISTEN_FOR]],
            "lit": lit,
            "logo": {name: tokens()[f"--{name}"] for name in ("ink", "sheet", "accent")},
        },
    )


def plan_page_pdf(version: RoutineVersion, school: School) -> bytes:
    """Raises PaperError when it cannot be printed."""
    return printing.pdf(plan_page_html(version, school), paper_css(school.paper))
