"""A page for a substitute: no account, no knowledge of counts, no phone; what to do, when, and what to answer."""

from collections.abc import Collection, Iterable, Sequence
from datetime import date, datetime, time, timedelta
from typing import Any

from django.template.defaultfilters import striptags
from django.template.loader import render_to_string
from django.utils.html import format_html
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import gettext_lazy as _

from routines.counting.crossed import crossed
from routines.counting.slips.places import Place
from routines.models.plan_document import Stop
from routines.models.shown_plan import ShownPlan
from routines.models.suggested_stop import suggested_stop
from routines.paper.languages import phrase
from routines.paper.picture import Picture, draw, place, text_room
from routines.paper.plan_page import LARGEST, common, legend, stop_times
from routines.paper.print import Print
from routines.paper.subject import Subject
from routines.words import SpokenPattern, likely_slips, suggest_stops
from routines.words.slips import larger_units

BEGIN, END = 60, 60  # seconds, beside the counting and the stops
SECONDS_A_COUNT = 5  # common practice, no source: plan_document.Plan.minutes
SAID_ALL = 40  # counts up to which each is written with its words
SLIPS_FORESEEN = 3
# The shares of the page that the grid may take: beside how the counts are said, and above it.
BESIDE, ABOVE = (0.46, 0.2), (1.0, 0.24)
SMALLEST_BESIDE = 8.5  # points, of a numeral
# Points that a letter of the counts and their words takes, about; and in how many columns they may stand.
LETTER, MOST_COLUMNS = 3.9, 5
LINE, RULES = 10.4, 76.0  # points: a count with its words; what is asked not to be done
BETWEEN_COLUMNS, BETWEEN_PARTS = 2, 18.0  # letters, points


def substitute_sheet(subject: Subject, *, starts_at: time | None = None, anchor: str = "") -> SafeString:
    """`starts_at` turns the minutes of each step into clock times."""
    lit = [item.pattern for item in subject.shown.lit]
    layout, picture = _place_grid(subject, lit)
    found = crossed(subject.grid.count)
    columns = _columns(list(_counts(subject, found.terms if found else ())), _room_to_say(subject, layout, picture))
    context = {
        **common(subject),
        "rule": "",  # nobody needs it to lead the count
        "anchor": anchor,
        "layout": layout,
        "picture": picture,
        "legend": legend(subject, lit),
        "columns": columns,
        "rules_under_grid": layout == "beside" and LINE * len(columns[0]) - picture.height > RULES,
        "crossing": subject.say.each(lambda language: crossing_words(subject, found.place, language)) if found else "",
        "steps": _timed(subject, list(_steps(subject)), starts_at),
        "says": [answer for answer in subject.plan.expected if answer.sort != "slip"],
        "slips": list(_slips(subject)),
        "please_not": [subject.say[name] for name in ("not_names", "not_correct", "not_tell", "not_phone")],
    }
    return mark_safe(render_to_string("paper/sheets/substitute.html", context))  # noqa: S308 - our own template


def _place_grid(subject: Subject, lit: Sequence[SpokenPattern]) -> tuple[str, Picture]:
    """Where the grid stands ("beside" how the counts are said, or "above" it), as large as a desk asks for."""
    width, height = text_room(subject.school)
    drawn = draw(subject, lit=lit)
    beside, above = (place(drawn, (width * w, height * h), largest=LARGEST) for w, h in (BESIDE, ABOVE))
    if beside.numeral >= min(SMALLEST_BESIDE, 0.9 * above.numeral):
        return "beside", beside
    return "above", above if above.is_readable else place(drawn, (width, height * 0.5), largest=LARGEST)


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
        instead = subject.say.tell("instead_of", text=subject.in_both(n)) if n else ""
        yield {"n": n, "heard": heard, "reply": reply, "instead": instead}


def _counts(subject: Subject, crossing: Collection[int]) -> Iterable[dict[str, Any]]:
    """Every count in order; all with their words where they are few, else those where something is crossed."""
    count = subject.grid.count

    def words(n: int) -> SafeString:
        return subject.say.each(lambda language: count.words(n, language))

    for n in range(1, subject.grid.terms + 1):
        worded = subject.grid.terms <= SAID_ALL or n in crossing
        yield {"text": subject.text(n), "crossing": n in crossing, "words": words(n) if worded else ""}


def _room_to_say(subject: Subject, layout: str, picture: Picture) -> float:
    """The width, in points, that the counts with their words have."""
    width, _ = text_room(subject.school)
    return width - picture.width - BETWEEN_PARTS if layout == "beside" else width


def _columns(counts: list[dict[str, Any]], room: float) -> list[list[dict[str, Any]]]:
    """In as many columns as leave none of them broken, read from top to bottom."""
    longest = max(len(count["text"]) + 1 + len(striptags(count["words"])) for count in counts)
    columns = max(1, min(MOST_COLUMNS, int(room / LETTER) // (longest + BETWEEN_COLUMNS)))
    each = -(-len(counts) // columns)
    return [counts[first : first + each] for first in range(0, len(counts), each)]


def crossing_words(subject: Subject, crossed_place: Place, language: str) -> str:
    """ "Bold: the hundreds change." """
    return phrase(f"crossing_{crossed_place.name}", language, units=larger_units(subject.grid, language))


def _steps(subject: Subject) -> Iterable[dict[str, Any]]:
    """What to do, in order, each with the seconds it takes: to count on to a stop and to ask there is one step."""
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
        yield {
            "seconds": SECONDS_A_COUNT * max(0, stop.after - counted) + stop.think + stop.partner + stop.share,
            "do": _count_to_stop(subject, counted, stop.after),
            "stop": stop,
            "times": stop_times(subject, stop),
        }
        counted = max(counted, stop.after)
    if counted < grid.terms:
        yield {"seconds": SECONDS_A_COUNT * (grid.terms - counted), "do": _count_on(subject, counted, grid.terms)}
    yield {"seconds": END, "do": say["end"], "say": say["end_say"]}


def _count_on(subject: Subject, counted: int, to: int) -> SafeString:
    """From the count after the last one said."""
    if to == counted + 1:
        return subject.say.tell("count_one", text=subject.in_both(to))
    return subject.say.tell("count_on", first=subject.text(counted + 1), last=subject.in_both(to))


def _count_to_stop(subject: Subject, counted: int, stop: int) -> SafeString:
    if stop <= counted:
        return subject.say.tell("stop_ask", text=subject.in_both(stop))
    return format_html("{} {}", _count_on(subject, counted, stop), subject.say["then_ask"])


def _lower(words: str) -> str:
    return words[:1].lower() + words[1:]


def _timed(subject: Subject, steps: list[dict[str, Any]], starts_at: time | None) -> list[dict[str, Any]]:
    """Each step with when it begins: on the clock, or in minutes from the beginning; no minute is named twice."""
    gone, last = 0, None
    for step in steps:
        minute = gone // 60
        if minute != last:
            at = _clock(subject, starts_at, 60 * minute) if starts_at else subject.say.tell("minute", minute=minute)
            step["when"] = at
        gone, last = gone + step["seconds"], minute
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
    pages=1,
)
