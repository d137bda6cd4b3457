"""Parts of the plan page that come when they are asked for: timeline, suggestions, answers to a question.

Each reads the form as typed and changes nothing. With scripts a part comes as its fragment; without, as a page that
carries the typed plan along, so that what it offers can be taken too.
"""

from collections.abc import Callable
from typing import Any
from uuid import UUID

from django.http import Http404, HttpResponse, QueryDict
from django.shortcuts import render
from django.views.decorators.http import require_POST
from django.views.decorators.vary import vary_on_headers

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from grade_bands.models import Area, Standard
from grade_bands.standards import why_unreadable
from routines.counting import Audience, CountError, Kind
from routines.errors import say
from routines.models.shown_ideas import ideas_to_show
from routines.plans.forms.claim import ClaimForm
from routines.plans.forms.design import DesignForm
from routines.plans.forms.draft import only, rows
from routines.plans.forms.fields import shorten
from routines.plans.forms.marks import in_mark, read_posted
from routines.plans.forms.plan import PlanForm, text_of_claim
from routines.plans.suggestions.answers import suggest_answers
from routines.plans.suggestions.appearing import look_for
from routines.plans.suggestions.designs import designs_for
from routines.plans.suggestions.folds import other_folds
from routines.plans.suggestions.taking import offered_next_counts, offered_stops
from routines.words import check, explain_cells, judge_rule, probes, show_claim, suggest_standards, unit_of_rule

from .live import LivePlan
from .open_plan import open_plan

MOST_ROUNDS = 6
LONGEST_NUMBER = 40
MOST_STANDARDS = 5
LEVEL_OF_RULES = 3
"""From here on a class looks for what goes on through a table or a count (common practice, no source)."""


def timeline(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    chosen = [item.pattern.claim for item in live.shown.patterns if item.target]
    chosen += [item.pattern.claim for item in live.lit]
    places = sorted(stop.after for stop in live.shown.plan.stops)
    return {"ideas": ideas_to_show(live.shown.grid, live.shown.audience, chosen), "places": places}


def says(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    rounds = min(typed_whole(posted.get("rounds", ""), 1, 99) or 1, MOST_ROUNDS)
    written = {row["words"] for row in rows(live.form.typed, "expected")}
    chosen = [item.pattern.claim for item in (*live.lit, *live.shown.patterns) if item.target or item in live.lit]
    found = suggest_answers(live.shown.grid, live.shown.audience, rounds=rounds, written=written, targets=chosen)
    return {"suggestions": found, "rounds": rounds, "next_rounds": rounds + 1 if rounds < MOST_ROUNDS else None}


def appear(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    typed = (posted.get("ask_probe") or posted.get("ask_value", "")).strip()
    grid = live.shown.grid
    good = ((probe, grid.place(probe.n) if probe.n else None) for probe in probes(grid, live.shown.audience))
    answer: dict[str, Any] = {"probes": list(good)}
    if len(typed) > LONGEST_NUMBER:
        answer["wrong"] = shorten(LONGEST_NUMBER, len(typed))
    elif typed:
        try:
            answer["found"] = look_for(live.shown.grid, typed, live.shown.audience)
        except CountError as error:
            answer["wrong"] = say(error)
    return answer


def claim(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    form = ClaimForm(posted, live.shown.grid)
    answer: dict[str, Any] = {"claim_form": form}
    asked = any(posted.get(f"claim-{name}", "").strip() for name in ("digits", "jump", "multiple", "many", "rest"))
    if (asked or "check_claim" in posted) and form.is_valid():
        try:
            answer["verdict"] = check(form.claim, live.shown.grid, audience=live.shown.audience)
            pattern = show_claim(form.claim, live.shown.grid, audience=live.shown.audience)
        except CountError as error:
            form.refuse(error)
        else:
            answer["take"] = f"target.add {text_of_claim(pattern.claim)}" if pattern else ""
    return answer


def rule(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    """Asked for by the button alone; judged again when the count has changed."""
    count, audience = live.shown.grid.count, live.shown.audience
    typed = in_mark(posted.get("ask_rule", "").strip(), count.style.decimal_mark, count.kind)
    answer: dict[str, Any] = {"typed_rule": typed}
    if live.form.level < LEVEL_OF_RULES:
        return answer | {"too_young": True}
    if count.wrap is not None:
        return answer | {"on_a_clock": True}
    answer["unit"] = unit_of_rule(count, audience.language)
    if typed or "check_rule" in posted:
        try:
            answer["verdict"] = judge_rule(typed, count, audience)
        except CountError as error:
            answer["wrong"] = say(error)
    return answer


def cells(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    patterns = explain_cells(live.shown.grid, live.tapped, live.shown.audience) if live.tapped else []
    found = [(pattern, f"target.add {text_of_claim(pattern.claim)}") for pattern in patterns]
    return {"explained": found, "tapped": [live.shown.grid.count.text(n) for n in live.tapped]}


def standards(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    already = set(live.shown.plan.standards)
    known = [
        {"code": row.code, "grade": row.grade.name if row.grade else "", "area": row.area, "summary": row.summary,
         "count_features": row.count_features}
        for row in Standard.objects.select_related("grade").exclude(count_features="")
        if not why_unreadable(row.count_features)
    ]  # fmt: skip
    found = suggest_standards(live.shown.grid, known, live.form.level, audience=live.shown.audience)
    return {"fits": [fit for fit in found if fit.code not in already][:MOST_STANDARDS]}


def folds(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    chosen = [item.pattern.claim for item in live.lit]
    return {"folds": other_folds(live.shown.grid, chosen, live.shown.audience)}


def stops(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    targets = [item.pattern.claim for item in live.shown.patterns if item.target]
    asked_already = {row["question"] for row in rows(live.form.typed, "stops")}
    return {"offers": offered_stops(live.shown.grid, targets, live.shown.audience, asked_already)}


def following(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    written = {row["why"] for row in rows(live.form.typed, "next")}
    return {"offers": offered_next_counts(live.shown.grid, live.shown.audience, written)}


def design(live: LivePlan, posted: QueryDict) -> dict[str, Any]:
    typed = live.form.typed
    form = DesignForm(
        posted,
        live.form.count.style_typed,
        kind=only(typed, "kind", Kind.WHOLE),
        below_zero=only(typed, "area") == Area.INTEGERS,
    )
    answer: dict[str, Any] = {"design_form": form}
    if form.is_begun and form.is_valid():
        try:
            audience = Audience(level=live.form.level)
            answer["designs"], answer["all_of_them"] = designs_for(form.wanted, form.limits, audience)
        except CountError as error:
            form.refuse(error)
    return answer


PARTS: dict[str, tuple[str, Callable[[LivePlan, QueryDict], dict[str, Any]]]] = {
    "timeline": ("plans/_timeline.html", timeline),
    "says": ("plans/_says.html", says),
    "appear": ("plans/_appear.html", appear),
    "claim": ("plans/_claim.html", claim),
    "rule": ("plans/_rule.html", rule),
    "cells": ("plans/_cells.html", cells),
    "standards": ("plans/_standards.html", standards),
    "folds": ("plans/_folds.html", folds),
    "stops": ("plans/_stop_offers.html", stops),
    "next": ("plans/_next_offers.html", following),
    "design": ("plans/_design.html", design),
}
WITHOUT_A_COUNT = ("design",)


@require_POST
@vary_on_headers("HX-Request")
def part(request: SignedInRequest, name: str, pk: int | None = None, key: UUID | None = None) -> HttpResponse:
    if name not in PARTS:
        raise Http404
    opened = open_plan(request, pk, key)
    typed = read_posted(request.POST)
    form = PlanForm(typed, grades=opened.grades)
    live = LivePlan(form, request.POST.get("tapped", ""))
    template, build = PARTS[name]
    context = {
        "section": "plans",
        "fragment": template,
        "form": form,
        "live": live,
        "typed": typed,
        "title": only(typed, "title"),
        "part_url": request.path,
        "change_url": opened.url("plan_change"),
        "draft_url": opened.url("plan_draft"),
        "oob": wants_fragment(request),
        **(build(live, request.POST) if live.grid or name in WITHOUT_A_COUNT else {}),
    }
    return render(request, template if wants_fragment(request) else "plans/part.html", context)
