"""What differs between two plans, part by part, in words: for history, for copies, and for two saves at once."""

from dataclasses import dataclass
from typing import Any

from django.utils.text import capfirst
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from routines.counting import CountError
from routines.models import Reflection
from routines.models.declared import paths_of_words
from routines.models.facts import FILLS
from routines.models.plan_document import CountSection, Fold, NextCount, Plan, Stop

PARTS = {
    "title": _("Title"),
    "grade": _("Grade"),
    "area": _("Area"),
    "count": _("Count"),
    "language": _("Language"),
    "story": _("Story"),
    "landmark": _("Landmark"),
    "targets": _("Target patterns"),
    "stops": _("Stops"),
    "expected": _("They may say"),
    "next_counts": _("Next counts"),
    "standards": _("Standards"),
    "notes": _("Notes"),
}


@dataclass(frozen=True, slots=True)
class PartChange:
    """One part of the plan as it stands in the one and in the other, line by line."""

    part: str
    label: str
    before: tuple[str, ...]
    after: tuple[str, ...]


def changes_between(before: Plan, after: Plan, level: int = 3) -> list[PartChange]:
    """The parts that differ, in the order of the plan page."""
    return [
        PartChange(part, str(label), lines_of(before, part, level), lines_of(after, part, level))
        for part, label in PARTS.items()
        if _value(before, part) != _value(after, part)
    ]


def _value(plan: Plan, part: str) -> Any:
    document = plan.as_dict()
    return (document["count"], document["fold"]) if part == "count" else document[part]


def lines_of(plan: Plan, part: str, level: int = 3) -> tuple[str, ...]:
    """A part of the plan as lines of text; () when it is empty."""
    readers = {
        "count": lambda: (count_line(plan.count, plan.fold), *_style_lines(plan.count)),
        "story": lambda: _filled(
            plan.story.text,
            _labelled(gettext("Each count:"), plan.story.group),
            _labelled(gettext("Until:"), plan.story.goal),
        ),
        "targets": lambda: _target_lines(plan, level),
        "stops": lambda: tuple(_stop_line(stop) for stop in plan.stops),
        "expected": lambda: tuple(_filled_line(f"“{said.words}”", said.reply) for said in plan.expected),
        "next_counts": lambda: tuple(_next_line(following) for following in plan.next_counts),
        "standards": lambda: plan.standards,
    }
    if part in readers:
        return readers[part]()
    return _filled(getattr(plan, part))


def count_line(count: CountSection, fold: Fold) -> str:
    lead = gettext(", %(lead)s cells left empty first") % {"lead": fold.lead} if fold.lead else ""
    return gettext(
        "By %(step)s from %(start)s, %(terms)s counts, %(fill)s, %(length)s in a line%(lead)s (%(kind)s)"
    ) % {
        "step": count.step,
        "start": count.start,
        "terms": count.terms,
        "fill": FILLS[fold.fill],
        "length": fold.line_length,
        "lead": lead,
        "kind": count.kind,
    }


def _style_lines(count: CountSection) -> tuple[str, ...]:
    chosen = [f"{name.replace('_', ' ')}: {value}" for name, value in sorted(count.style.items()) if name != "currency"]
    return (gettext("Written: %(choices)s") % {"choices": ", ".join(chosen)},) if chosen else ()


def _target_lines(plan: Plan, level: int) -> tuple[str, ...]:
    from routines.models.shown_plan import ShownPlan

    try:
        shown = {item.pattern.claim: item.pattern.statement for item in ShownPlan(plan, level).patterns}
        claims = plan.claims()
    except CountError:
        return tuple(str(target.claim.get("family", "")) for target in plan.targets)
    pairs = zip(plan.targets, claims, strict=True)
    return tuple(
        target.words or shown.get(claim, gettext("%(family)s, not in this fold") % {"family": claim.family})
        for target, claim in pairs
    )


def _stop_line(stop: Stop) -> str:
    words = [getattr(stop, path.removesuffix(".*")) for path in paths_of_words(Stop)]
    texts = ["; ".join(text) if isinstance(text, tuple) else text for text in words]
    times = f"think {stop.think} s, partner {stop.partner} s, share {stop.share} s"
    return gettext("After count %(after)s: %(words)s") % {
        "after": stop.after,
        "words": _filled_line(*texts, f"({times})"),
    }


def _next_line(following: NextCount) -> str:
    count = count_line(following.count, following.fold or Fold()) if following.count else ""
    outcome = capfirst(Reflection.Outcome(following.outcome).label)
    return _filled_line(f"{outcome}:", count, following.why)


def _labelled(label: str, text: str) -> str:
    return f"{label} {text}" if text else ""


def _filled(*lines: str) -> tuple[str, ...]:
    return tuple(line for line in lines if line)


def _filled_line(*pieces: str) -> str:
    return " ".join(_filled(*pieces))
