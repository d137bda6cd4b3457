"""What follows from the typed count, anew after each pause in typing: strip, grid, patterns, timeline."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property, lru_cache
from hashlib import sha256
from typing import Any
from uuid import UUID

from django.http import HttpResponse, QueryDict
from django.shortcuts import render
from django.urls import reverse
from django.utils import timezone
from django.utils.safestring import SafeString
from django.utils.translation import get_language
from django.views.decorators.http import require_POST
from django.views.decorators.vary import vary_on_headers
from django_htmx.http import trigger_client_event

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from accounts.written_once import made_once, typed_drawings, write, written_once
from grade_bands.models import Grade
from routines.counting import Claim, CountError
from routines.errors import say
from routines.models.facts import count_in_words
from routines.models.lit import MOST_LIT
from routines.models.shown_ideas import dying_ideas, same_subject
from routines.models.shown_plan import ShownPattern, ShownPlan
from routines.plans.forms.draft import ROWS, claim_text, lit_was_chosen, only
from routines.plans.forms.marks import COMMA, POINT, read_posted, turned
from routines.plans.forms.plan import PlanForm, text_of_claim
from routines.plans.reading_distance import far_reading
from routines.plans.suggestions.counted_before import counted_before
from routines.templatetags.countfold import grid as grid_tag
from routines.templatetags.countfold import strip
from routines.words import SpokenPattern, check, title_of
from routines.worked_out.made_by import made_by

SHOWN_AT_FIRST = 6
ALL_SHOWN = 24
PHONE_COLUMNS, PHONE_ROWS = 6, 8
MOST_TAPPED = 400
WORDS_ELSEWHERE = frozenset(("title", "area", "story_text", "standards", "notes", "words_of", "words", "based_on"))
LIGHTS = frozenset(("lit", "lit_before", "lit_by_itself"))
PART_NAMES = ("timeline", "says", "appear", "claim", "rule", "cells", "standards", "stops", "next", "design", "folds")


@dataclass(frozen=True, slots=True)
class FoundRow:
    """A pattern in the list, with what its boxes send: `value` is the claim as text."""

    key: str
    value: str
    pattern: SpokenPattern
    target: bool
    lit: bool
    words: str
    wrong: str = ""


@dataclass(frozen=True, slots=True)
class GoneRow:
    """A ticked pattern that this fold does not show, and why."""

    value: str
    because: str
    words: str


class NothingToShow(ValueError):
    """The count cannot be read yet. In a template it is nothing, not an error."""

    silent_variable_failure = True


class LivePlan:
    """Reads the form once; each picture is drawn when the template asks for it."""

    def __init__(self, form: PlanForm, tapped: str = "") -> None:
        self.form = form
        self.tapped_typed = tapped
        self.grid = form.grid
        self.plan = form.reading

    @cached_property
    def mark(self) -> str:
        """Of all that grid, strip and list follow from: whatever is typed, but for words that stand in their fields alone.

        Of own words it matters which are too long, and which of the patterns that are not ticked have any: these are listed.
        """
        form = self.form
        left_out = WORDS_ELSEWHERE if lit_was_chosen(form.typed) else WORDS_ELSEWHERE | LIGHTS
        typed = {name: texts for name, texts in form.typed.items() if name not in left_out}
        typed = {name: texts for name, texts in sorted(typed.items()) if name.partition("-")[0] not in ROWS}
        ticked = form.typed.get("target", [])
        written = sorted(claim for claim, words in form.own_words.items() if words and claim not in ticked)
        follows_from = (made_by(), get_language(), form.level, typed, written, sorted(form.wrong_words))
        return sha256(repr(follows_from).encode()).hexdigest()

    @cached_property
    def shown(self) -> ShownPlan:
        """Raises NothingToShow where the count cannot be read."""
        if self.plan is None:
            raise NothingToShow
        return ShownPlan(self.plan, self.form.level)

    @property
    def gone(self) -> list[GoneRow]:
        return [
            GoneRow(claim_text(target.claim), self._why_gone(Claim.from_dict(dict(target.claim))), target.words)
            for target in self.form.gone_targets
        ]

    def _why_gone(self, claim: Claim) -> str:
        try:
            return check(claim, self.shown.grid, audience=self.shown.audience).because
        except CountError as error:
            return say(error)

    @cached_property
    def listed(self) -> list[ShownPattern]:
        """Targets, what lights up by itself, then everything else found, most noticeable first.

        With what was found in the whole grid stands what held for a while on it and is over.
        """
        return self.shown.listed + self._over

    @cached_property
    def _over(self) -> list[ShownPattern]:
        """What held for a while. The grid is looked at anew for each count until which it may have held."""
        known = {item.pattern.claim for item in self.shown.listed}
        over = [idea.pattern for idea in dying_ideas(self.shown.grid, self.shown.audience)]
        return [ShownPattern(f"d{at}", pattern, False) for at, pattern in enumerate(over) if pattern.claim not in known]

    @cached_property
    def offered(self) -> list[ShownPattern]:
        """What is listed, as far as it can be shown: what is over stands last, and is looked for only where it could be."""
        found = self.shown.listed
        if self.shows_all or len(found) < ALL_SHOWN or any(item not in found for item in self.lit):
            return self.listed
        written = {claim for claim, words in self.form.own_words.items() if words}
        known = {text_of_claim(item.pattern.claim) for item in found} if written else set()
        return self.listed if written - known else found

    @cached_property
    def lit(self) -> list[ShownPattern]:
        """The patterns to light, two at most: those asked for as they look in this fold, else what lights up by itself."""
        asked = self.form.lit_claims
        if asked is None:
            return self.shown.lit
        found = [item for claim in asked if (item := self._find(claim))]
        if asked and not found:
            return self.shown.lit
        while len(found) > MOST_LIT:
            found.remove(self._least_wanted(found))
        return found

    def _find(self, claim: Claim) -> ShownPattern | None:
        for item in self.shown.listed:
            if item.pattern.claim == claim:
                return item
        for same in (lambda other: other == claim, lambda other: same_subject(other, claim)):
            for item in self.listed:
                if same(item.pattern.claim):
                    return item
        return None

    def _least_wanted(self, found: list[ShownPattern]) -> ShownPattern:
        """Which light goes out when a third one is lit: one that holds as the new one does, else the oldest."""
        new = [item for item in found if text_of_claim(item.pattern.claim) not in self.form.lit_before]
        newest = new[0] if new else found[-1]
        others = [item for item in found if item is not newest]
        return next((item for item in others if item.pattern.holds == newest.pattern.holds), others[0])

    @cached_property
    def _lit_keys(self) -> set[str]:
        return {item.key for item in self.lit}

    @property
    def lit_now(self) -> list[str]:
        """The claims that are lit, as text, in the order of the list."""
        return [text_of_claim(item.pattern.claim) for item in self.offered if item.key in self._lit_keys]

    def _row(self, item: ShownPattern) -> FoundRow:
        value, lit = text_of_claim(item.pattern.claim), item.key in self._lit_keys
        wrong = self.form.wrong_words.get(value, "")
        return FoundRow(item.key, value, item.pattern, item.target, lit, self.form.own_words.get(value, ""), wrong)

    def _always_shown(self, item: ShownPattern) -> bool:
        """Whether it is ticked, lit or written about."""
        if item.target or item.key in self._lit_keys:
            return True
        return bool(self.form.own_words) and bool(self.form.own_words.get(text_of_claim(item.pattern.claim)))

    @property
    def shows_all(self) -> bool:
        return "all_found" in self.form.typed

    @cached_property
    def rows(self) -> list[FoundRow]:
        """The first few, and always those ticked, lit or written about; all of them when asked for."""
        most = ALL_SHOWN if self.shows_all else SHOWN_AT_FIRST
        return [self._row(item) for at, item in enumerate(self.offered) if at < most or self._always_shown(item)]

    @property
    def all_to_show(self) -> int:
        """How many are listed when all are asked for."""
        return min(len(self.offered), ALL_SHOWN)

    @property
    def further(self) -> int:
        """How many more there are to show."""
        return self.all_to_show - len(self.rows)

    @property
    def unshown(self) -> int:
        """How many stay out of the list even when all are asked for: the least noticeable ones."""
        return len(self.offered) - len(self.rows) if self.shows_all else 0

    @property
    def is_large(self) -> bool:
        """True where a phone scrolls the grid rather than shrink its numerals."""
        grid = self.shown.grid
        return grid.columns > PHONE_COLUMNS or grid.rows > PHONE_ROWS

    @property
    def lit_by_itself(self) -> bool:
        """Whether nobody chose what is lit."""
        return self.lit is self.shown.lit

    @property
    def lit_patterns(self) -> tuple[SpokenPattern, ...]:
        return tuple(item.pattern for item in self.lit)

    @cached_property
    def tapped(self) -> tuple[int, ...]:
        """The cells tapped on the grid, as far as they are in it."""
        if not self.grid:
            return ()
        found = {typed_whole(n, 1, self.grid.terms) for n in self.tapped_typed.split()[:MOST_TAPPED]}
        return tuple(sorted(n for n in found if n))

    @cached_property
    def too_wide(self) -> str:
        grid = self.shown.grid
        return made_once(("far reading", grid), lambda: SafeString(far_reading(grid)), memory=typed_drawings)

    @property
    def strip(self) -> SafeString:
        grid, landmarks = self.shown.grid, self.shown.landmarks
        return made_once(("strip", grid, landmarks), lambda: strip(grid, landmarks), memory=typed_drawings)

    @property
    def picture(self) -> SafeString:
        """The grid to be tapped: the same while only words and times are typed."""
        grid, landmarks, lit = self.shown.grid, self.shown.landmarks, self.lit_patterns
        said = tuple((item.claim, item.groups, item.breaks_at, item.holds, item.statement) for item in lit)
        options: dict[str, Any] = {"title": self.in_words, "interactive": True, "chosen": self.tapped}
        return made_once(
            ("grid", grid, landmarks, said, self.in_words, self.tapped),
            lambda: grid_tag(grid, size="plan", lit=lit, landmarks=landmarks, **options),
            memory=typed_drawings,
        )

    @cached_property
    def in_words(self) -> str:
        return count_in_words(self.shown.grid)

    @property
    def last(self) -> str:
        count = self.shown.grid.count
        return count.text(count.terms)

    @property
    def wrong(self) -> SafeString:
        """What is wrong with the count, or may be meant otherwise. Most often nothing is, and that looks the same for all."""
        wrong, hints = tuple(self.form.count.wrong()), tuple(self.form.count.read_both_ways)
        is_plain = not hints and not any(sentence for _, sentence in wrong)
        said: dict[str, Any] = {"wrong": wrong, "hints": hints, "oob": True}
        return (written_once if is_plain else write)("plans/_wrong.html", **said)

    @cached_property
    def proposed_title(self) -> str:
        """What the plan is called where nobody writes a title: its count, and the first thing that the class will say of it."""
        if not self.grid:
            return ""
        patterns = [item.pattern for item in self.shown.patterns]
        return title_of(self.shown.grid, patterns, self.shown.audience.language)


def live_context(form: PlanForm, tapped: str = "") -> dict[str, Any]:
    return {"form": form, "live": LivePlan(form, tapped)}


@lru_cache(maxsize=256)  # a plan is previewed many times while it is written
def live_addresses(**plan: int | UUID) -> Mapping[str, Any]:
    """Where the page asks for its grid, is kept and changed, and for the parts that come when they are looked at."""
    return {
        "draft_url": reverse("plan_draft", kwargs=plan),
        "change_url": reverse("plan_change", kwargs=plan),
        "preview_url": reverse("plan_preview", kwargs=plan),
        "parts_at": {name: reverse("plan_part", kwargs={**plan, "name": name}) for name in PART_NAMES},
    }


def _turned_context(form: PlanForm, posted: QueryDict) -> dict[str, Any]:
    """The fields to be shown anew where the decimal mark was changed; all else is part of the grid or asks by itself."""
    old, new = posted.get("mark_before", ""), form.count.mark
    if old not in (POINT, COMMA) or old == new:
        return {}
    fields = [form.count["start"], form.count["step"], form.about["story_goal"]]
    for field in fields:
        field.field.widget.attrs["hx-swap-oob"] = "true"
    asked = turned(posted.get("ask_value", ""), old, new, only(form.typed, "kind"))
    return {"mark_changed": True, "turned_fields": fields, "ask_value": asked}


@require_POST
@vary_on_headers("HX-Request")
def preview(request: SignedInRequest, pk: int | None = None, key: UUID | None = None) -> HttpResponse:
    """One small fragment per pause in typing. A count that cannot be read leaves the last grid and says why.

    Where the page shows all of it already, as while own words are typed, none of it is made or sent. Reads nothing but what
    was sent, so it asks nothing about the plan whose address it is under.
    """
    typed = read_posted(request.POST)
    form = PlanForm(typed, grades=Grade.objects.in_order())
    live, fragment = LivePlan(form, request.POST.get("tapped", "")), wants_fragment(request)
    stands = fragment and form.grid is not None and request.POST.get("shown_before") == live.mark
    context = {
        "form": form,
        "live": live,
        "stands": stands,
        "kind_changed": request.POST.get("kind_before", "") != form.count.offers,
        **_turned_context(form, request.POST),
        "oob": True,
        "minutes": form.reading.minutes() if form.reading else None,
    }
    if not stands:
        before = counted_before(form.grid.count, request.user, timezone.localdate()) if form.grid else ""
        context |= {"counted_before": before, **(live_addresses(pk=pk) if pk else live_addresses(key=key))}
    page = "plans/_live.html" if fragment else "plans/preview.html"
    response = render(request, page, context, status=422 if form.count.errors else 200)
    return response if form.count.errors else trigger_client_event(response, "counted", after="settle")
