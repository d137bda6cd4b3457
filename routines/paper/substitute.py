"""A page for a substitute: no account, no knowledge of counts, no phone; what to do, when, and what to answer."""

from collections.abc import Iterable
from datetime import date, datetime, time, timedelta
from typing import Any

from django.template.loader import render_to_string
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import gettext_lazy as _

from routines.models.plan_document import Stop
from routines.models.shown_plan import ShownPlan
from routines.models.suggested_stop import suggested_stop
from routines.paper.fitting import PAGES_FIT
from routines.paper.picture import draw, place, text_room
from routines.paper.plan_page import LARGEST, common, legend, stop_times
from routines.paper.print import Print
from routines.paper.subject import Subject
from routines.words import likely_slips, suggest_stops

BEGIN, END = 60, 60  # seconds, beside the counting and the stops
SECONDS_A_COUNT = 5  # common practice, no source: plan_document.Plan.minutes
SAID_ALL = 40  # counts up to which each is written with its words
SLIPS_FORESEEN = 3
GRID_ROOM = (0.6, 0.24)


def substitute_sheet(subject: Subject, *, starts_at: time | None = None, anchor: str = "") -> SafeString:
    """`starts_at` turns the minutes of each step into clock times."""
    lit = [item.pattern for item in subject.shown.lit]
    width, height = text_room(subject.school)
    drawn = draw(subject, lit=lit)
    picture = place(drawn, (width * GRID_ROOM[0], height * GRID_ROOM[1]), largest=LARGEST)
    if not picture.is_readable or picture.numeral < 9:
        picture = place(drawn, (width, height * 0.5), largest=LARGEST)
    slips = list(_slips(subject))
    hard = {slip["n"] for slip in slips if slip["n"]} | {stop.after for stop in stops_of(subject)}
    context = {
        **common(subject),
        "anchor": anchor,
        "picture": picture,
        "legend": legend(subject, lit),
        "counts": list(_counts(subject, hard)),
        "wordy": subject.grid.terms <= SAID_ALL,
        "steps": _timed(subject, list(_steps(subject)), starts_at),
        "says": [answer for answer in subject.plan.expected if answer.sort != "slip"],
        "slips": slips,
        "please_not": [subject.say[name] for name in ("not_names", "not_correct", "not_tell", "not_phone")],
    }
    return mark_safe(render_to_string("paper/sheets/substitute.html", context))  # noqa: S308 - our own template


def stops_of(subject: Subject) -> list[Stop]:
    """The plan's stops, or where it has none, what the engine suggests."""
    if subject.plan.stops:
        return sorted(subject.plan.stops, key=lambda stop: stop.after)
    suggested = suggest_stops(subject.grid, subject.shown.target_claims, audience=subject.shown.audience)
    return list(map(suggested_stop, suggested))


def _slips(subject: Subject) -> Iterable[dict[str, Any]]:
    """What may be heard and what to ask then: as planned, else as foreseen."""
    planned = [(answer.n, answer.words, answer.reply) for answer in subject.plan.expected if answer.sort == "slip"]
    foreseen = likely_slips(subject.grid, audience=subject.shown.audience)[:SLIPS_FORESEEN] if not planned else []
    for n, heard, reply in planned or [(slip.n, slip.heard, slip.reply) for slip in foreseen]:
        instead = subject.say.tell("instead_of", text=subject.text(n)) if n else ""
        yield {"n": n, "heard": heard, "reply": reply, "instead": instead}


def _counts(subject: Subject, hard: set[int]) -> Iterable[dict[str, Any]]:
    """Every count in order; all with their words where they are few, else those that are hard to say."""
    count = subject.grid.count

    def words(n: int) -> SafeString:
        return subject.say.each(lambda language: count.words(n, language))

    for n in range(1, subject.grid.terms + 1):
        worded = subject.grid.terms <= SAID_ALL or n in hard
        yield {
            "text": subject.text(n),
            "hard": n in hard,
            "words": words(n) if worded else "",
        }


def _steps(subject: Subject) -> Iterable[dict[str, Any]]:
    """What to do, in order, each with the seconds it takes."""
    say, grid = subject.say, subject.grid
    counted = 1
    yield {
        "seconds": BEGIN,
        "do": say["begin"],
        "say": say.tell(
            "begin_say", count=lambda language: _lower(subject.count_words(language)), first=subject.text(1)
        ),
        "write": [say.tell(f"write_{grid.fill}", length=grid.line_length)]
        + ([say.tell("lead", lead=grid.lead)] if grid.lead else []),
    }
    for stop in stops_of(subject):
        if stop.after > counted:
            yield _count_on(subject, counted, stop.after)
            counted = stop.after
        yield {
            "seconds": stop.think + stop.partner + stop.share,
            "do": say.tell("stop_ask", text=subject.text(stop.after)),
            "stop": stop,
            "times": stop_times(subject, stop),
        }
    if counted < grid.terms:
        yield _count_on(subject, counted, grid.terms)
    yield {"seconds": END, "do": say["end"], "say": say["end_say"]}


def _count_on(subject: Subject, counted: int, to: int) -> dict[str, Any]:
    words = subject.say.tell("count_on", first=subject.text(counted + 1), last=subject.text(to))
    return {"seconds": SECONDS_A_COUNT * (to - counted), "do": words}


def _lower(words: str) -> str:
    return words[:1].lower() + words[1:]


def _timed(subject: Subject, steps: list[dict[str, Any]], starts_at: time | None) -> list[dict[str, Any]]:
    """Each step with when it begins: on the clock, or in minutes from the beginning."""
    gone = 0
    for step in steps:
        step["when"] = _clock(subject, starts_at, gone) if starts_at else subject.say.tell("minute", minute=gone // 60)
        gone += step["seconds"]
    return steps


def _clock(subject: Subject, starts_at: time, seconds: int) -> str:
    """The school's way to write a time: 13:05, or 1:05."""
    moment = datetime.combine(date.min, starts_at) + timedelta(seconds=seconds)
    hour = moment.hour if subject.school.clock == 24 else (moment.hour - 1) % 12 + 1
    return f"{hour}:{moment.minute:02}"


def _first_stop(shown: ShownPlan) -> int:
    return min((stop.after for stop in shown.plan.stops), default=max(2, shown.grid.terms // 2))


SUBSTITUTE = Print(
    title=_("For a substitute"),
    about=_("What to do, minute by minute, for somebody who has never led a count. Needs no account."),
    button=_("Print for a substitute"),
    picture_title=_("The grid at the first stop"),
    picture=lambda shown: {"upto": _first_stop(shown)},
    choices="paper/_substitute_choices.html",
    sheets=lambda subject, wishes: [substitute_sheet(subject, starts_at=wishes.starts_at)],
    pages=2,
    fit=PAGES_FIT,
)
