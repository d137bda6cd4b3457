"""The moments of a lesson that a team talks about: stops, slips, guesses, phrases, noticings. In the order they happened."""

from collections.abc import Iterable
from dataclasses import dataclass

from django.utils.translation import gettext as _

from routines.counting import Count
from routines.lessons.state import Event, LessonState, in_order, reduce_events
from routines.models.plan_document import Plan


@dataclass(frozen=True, slots=True)
class Moment:
    """`upto`: so many events had happened. sort: begin, stop, slip, guess, phrase, noticed, again or end."""

    upto: int
    sort: str
    words: str


def moments_of(events: Iterable[Event], plan: Plan, count: Count) -> tuple[list[Event], list[Moment]]:
    """The events in order, and the moments among them. What was undone is no moment."""
    ordered = in_order(events)
    gone = {event["data"].get("event") for event in ordered if event["kind"] in ("undo", "mark.remove")}
    found = [Moment(0, "begin", _("before the first count"))]
    texts = {event["id"]: event["data"].get("text", "") for event in ordered}
    for position, event in enumerate(ordered, start=1):
        told = None if event["id"] in gone or event.get("erased") else _told(event, texts, plan, count)
        if told:
            found.append(Moment(position, *told))
    found.append(Moment(len(ordered), "end", _("the end")))
    return ordered, found


def _told(event: Event, texts: dict[str, str], plan: Plan, count: Count) -> tuple[str, str] | None:
    kind, data = event["kind"], event["data"]
    if kind == "stop.enter":
        stop = plan.stops[data["stop"]] if data["stop"] < len(plan.stops) else None
        return "stop", stop.question if stop else _("a stop")
    if kind == "term.correct":
        said = texts.get(data.get("over"), "")
        if said and said != data["text"]:
            return "slip", _("“%(said)s” is struck: %(text)s") % {"said": said, "text": data["text"]}
        return None
    if kind == "term.write" and not data.get("over") and data["text"] != count.text(data["n"]):
        return "slip", _("“%(said)s” is said for %(text)s") % {"said": data["text"], "text": count.text(data["n"])}
    if kind == "term.left-out":
        return "slip", _("%(text)s is left out") % {"text": count.text(data["n"])}
    if kind == "recount":
        stretch = {"first": count.text(data["from"]), "last": count.text(data["to"])}
        return "again", _("counted again: %(first)s to %(last)s") % stretch
    if kind == "predict":
        return "guess", _("a guess: %(text)s") % {"text": data["text"]}
    if kind == "phrase.add":
        return "phrase", f"“{data['text']}”"
    if kind == "notice.add":
        return "noticed", data["text"]
    return None


def state_at(ordered: list[Event], moment: Moment) -> LessonState:
    return reduce_events(ordered[: moment.upto])
