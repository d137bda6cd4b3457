"""The plan on one page: the grid with its targets, what to listen for, stops with room to write, what they may say and slip."""

from collections.abc import Iterable, Sequence
from typing import Any

from django.template.loader import render_to_string
from django.utils.html import format_html
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import gettext_lazy as _

from routines.drawing import draw_sign
from routines.drawing.svg import tokens
from routines.models.plan_document import Stop
from routines.paper.languages import LANGUAGES, phrase
from routines.paper.picture import Picture, draw, place, text_room
from routines.paper.print import Print
from routines.paper.styles import logo_colours
from routines.paper.subject import Subject
from routines.words import SpokenPattern

ALSO_THERE = 3
TIMES = ("think", "partner", "share")
STOPS_IN_A_ROW = 3
ROWS_SIDE_BY_SIDE = 8
# Points: numerals that are read with ease on a desk, and those that need be no larger.
LARGE_ENOUGH, LARGEST = 12.0, 21.0
# The shares of the page that the grid may take: beside what to listen for, above it, and as a page of its own.
BESIDE, ABOVE, ALONE = (0.56, 0.34), (1.0, 0.3), (1.0, 0.78)


def plan_sheet(subject: Subject, *, anchor: str = "") -> SafeString:
    plan = subject.plan
    lit = [item.pattern for item in subject.shown.lit]
    layout, picture = place_grid(subject, lit)
    slips = [answer for answer in plan.expected if answer.sort == "slip"]
    says = [answer for answer in plan.expected if answer.sort != "slip"]
    context = {
        "anchor": anchor,
        "layout": layout,
        "picture": picture,
        "legend": legend(subject, lit),
        "listen_for": list(_listen_for(subject)),
        "also_there": [
            (subject.pattern_words(item.pattern, "statement"), sign(subject, item.pattern.holds))
            for item in subject.shown.listed
            if not item.target
        ][:ALSO_THERE],
        "stop_rows": in_rows([stop_row(subject, i, stop) for i, stop in enumerate(plan.stops, 1)], STOPS_IN_A_ROW),
        "says": says,
        "slips": [(_heard_as(subject, slip.n), slip) for slip in slips],
        "side_by_side": max(len(says), len(slips)) <= ROWS_SIDE_BY_SIDE,
        "next_rows": in_rows(list(_next_rows(subject)), STOPS_IN_A_ROW),
        **common(subject),
    }
    return mark_safe(render_to_string("paper/sheets/plan_page.html", context))  # noqa: S308 - our own template


def place_grid(subject: Subject, lit: Sequence[SpokenPattern]) -> tuple[str, Picture]:
    """Where the grid stands ("beside" what to listen for, "above" it, "alone") so that it is large enough to read."""
    width, height = text_room(subject.school)
    drawn = draw(subject, lit=lit)
    beside, above, alone = (place(drawn, (width * w, height * h), largest=LARGEST) for w, h in (BESIDE, ABOVE, ALONE))
    if beside.numeral >= LARGE_ENOUGH or beside.numeral >= 0.9 * above.numeral > LARGE_ENOUGH * 0.6:
        return "beside", beside
    if above.numeral >= LARGE_ENOUGH * 0.6:
        return "above", above
    return "alone", alone


def legend(subject: Subject, lit: Iterable[SpokenPattern]) -> list[tuple[SafeString, SafeString]]:
    """The signs in the picture with their words."""
    lit = list(lit)
    signs = [holds for holds in ("always", "shown") if any(pattern.holds == holds for pattern in lit)]
    if any(pattern.breaks_at and pattern.breaks_at <= subject.grid.terms for pattern in lit):
        signs.append("flag")
    return [(sign(subject, name), subject.say[name]) for name in signs] + landmark_legend(subject)


def landmark_legend(subject: Subject) -> list[tuple[SafeString, SafeString]]:
    """What the filled corners in the picture say, where there are some."""
    return [(_notch(subject), subject.say.each(subject.landmark_words))] if subject.shown.landmarks else []


def sign(subject: Subject, name: str) -> SafeString:
    """The sign of what holds so, "always" or "shown", or of the "flag"."""
    return mark_safe(draw_sign(name, on_paper=True, language=subject.say.main))  # noqa: S308 - drawn by us, escaped


def _notch(subject: Subject) -> SafeString:
    """The filled corner of a landmark."""
    drawn = '<svg viewBox="0 0 10 10" role="img"><title>{}</title><path d="M1 0h9l-9 9z" fill="{}"/></svg>'
    return format_html(drawn, subject.phrase("landmark_plain"), tokens()["--ink"])


def in_rows(items: list[Any], most: int) -> list[list[Any]]:
    """In rows of the same length where possible: four are two and two, not three and one."""
    rows = -(-len(items) // most)
    each = -(-len(items) // rows) if rows else 1
    return [items[first : first + each] for first in range(0, len(items), each)]


def _listen_for(subject: Subject) -> Iterable[dict[str, Any]]:
    """The targets: the teacher's own words first where she wrote some, then what the engine says."""
    for target, claim in zip(subject.plan.targets, subject.shown.target_claims, strict=True):
        pattern = next((item.pattern for item in subject.shown.patterns if item.pattern.claim == claim), None)
        if pattern is not None or target.words:
            yield {
                "words": target.words,
                "statement": subject.pattern_words(pattern, "statement") if pattern else "",
                "because": subject.pattern_words(pattern, "because") if pattern else "",
            }


def stop_row(subject: Subject, number: int, stop: Stop) -> dict[str, Any]:
    last = stop.after == subject.grid.terms
    return {
        "number": number,
        "stop": stop,
        "place": subject.say.tell(
            "after_last" if last else "after", text=subject.in_both(stop.after), nth=subject.nth(stop.after)
        ),
        "times": stop_times(subject, stop),
    }


def stop_times(subject: Subject, stop: Stop) -> SafeString:
    """ "think 20 s · partner 1 min"; a time of 0 is left out."""
    named = [
        (name, seconds) for name, seconds in zip(TIMES, (stop.think, stop.partner, stop.share), strict=True) if seconds
    ]

    def words(name: str, seconds: int, language: str) -> str:
        """Kept together: a line ends between the times, not within one."""
        return phrase(name, language, time=time_words(seconds)).replace(" ", "\u00a0")

    return subject.say.each(lambda language: " · ".join(words(*time, language) for time in named))


def time_words(seconds: int) -> str:
    """ "20 s", "2 min", not to be broken over two lines."""
    return f"{seconds // 60}\u00a0min" if seconds % 60 == 0 else f"{seconds}\u00a0s"


def _heard_as(subject: Subject, n: int) -> SafeString | str:
    return subject.say.tell("heard_as", text=subject.in_both(n), nth=subject.nth(n)) if n else ""


def _next_rows(subject: Subject) -> Iterable[dict[str, Any]]:
    for following in subject.plan.next_counts:
        grid = following.grid()
        yield {
            "outcome": subject.say[following.outcome],
            "why": following.why,
            "count": subject.line_of(grid) if grid is not None else "",
        }


def common(subject: Subject) -> dict[str, Any]:
    """What every sheet about one routine says: its head, its footers, the language of the teacher's own words."""
    plan = subject.plan
    written_lang = format_html(' lang="{}"', subject.written) if subject.written != subject.say.main else ""
    return {
        "subject": subject,
        "plan": plan,
        "say": subject.say,
        "written_lang": written_lang,
        "count_line": subject.count_line,
        "rule": subject.say.tell("rule", rule=subject.shown.rule) if subject.shown.rule else "",
        "grade": subject.say.tell("grade", grade=subject.routine.grade.name),
        "minutes": subject.say.tell("about_minutes", minutes=plan.minutes()),
        "logo": logo_colours(),
        "foot_left": f"{subject.school.name} · {subject.phrase('planned_by', name=subject.routine.owner.display_name)}",
        "foot_right": f"{subject.phrase('foot')} · {subject.phrase('version', number=subject.version.number)}",
        "as_written": as_written(subject),
    }


def as_written(subject: Subject) -> SafeString | str:
    """Of a print in other languages than the plan: that the teacher's own words stay in hers."""
    if subject.say.languages == LANGUAGES[subject.plan.language] or subject.say.languages == (subject.written,):
        return ""
    return subject.say.tell("as_written", named=lambda language: phrase(subject.written, language))


PLAN_PAGE = Print(
    title=_("Plan page"),
    about=_("Everything of the plan, on one page where it fits, with room to write."),
    button=_("Print the plan"),
    picture_title=_("The grid with its targets"),
    picture=lambda shown: {"lit": [item.pattern for item in shown.lit], "landmarks": shown.landmarks},
    sheets=lambda subject, wishes: [plan_sheet(subject)],
    pages=1,
)
