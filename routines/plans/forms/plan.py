"""The plan form: small forms that together read one plan, each wrong part with its own sentence."""

from functools import cached_property
from typing import Any

from django import forms
from django.utils.datastructures import MultiValueDict
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.offered import offer_choices
from accounts.text import read_json
from accounts.typed_numbers import typed_whole
from grade_bands.models import Area, Grade
from routines.counting import Claim, CountError, Grid, show_claim
from routines.counting.written_units import in_both_units
from routines.errors import say
from routines.models.facts import LANGUAGES, area_of
from routines.models.plan_document import LIST_LIMIT, SENTENCE_LIMIT, TEXT_LIMIT, TITLE_LIMIT, Plan, Story, Target
from routines.models.plan_reading import PlanError, read_document
from routines.plans.forms.count import CountForm
from routines.plans.forms.draft import DraftFields, claim_text, lit_was_chosen, only
from routines.plans.forms.fields import choice, sentence, short_text, shorten
from routines.plans.forms.limits import ROW_WORDS, rows_left, too_long, too_many
from routines.plans.forms.marks import in_mark
from routines.plans.forms.rows import AnswerRow, NextRow, Row, StopRow, read_rows
from routines.words import title_of_count

FURTHEST_ROW = 400  # a slip may be foreseen a little past the last count


class AboutForm(forms.Form):
    title = short_text(_("Title"), TITLE_LIMIT)
    grade = choice(_("Grade"), [])
    area = choice(_("Area"), [("", _("as the count says")), *Area.choices], required=False)
    language = choice(_("Language"), LANGUAGES.items())
    story_text = sentence(
        _("Story"), TEXT_LIMIT, rows=2, placeholder=_("Crates stand in a row, each 3 lb 8 oz heavier than the last …")
    )
    story_group = short_text(_("Each count is"), 40, placeholder=_("crate"))
    story_goal = short_text(_("Until"), 40, placeholder=_("21 lb"))
    landmark = short_text(_("Landmark"), 40)
    standards = short_text(_("Standards"), 600, placeholder=_("3.OA.D.9, 3.NBT.A.2"))
    notes = sentence(_("Notes to yourself and colleagues"), TEXT_LIMIT, rows=2)

    def __init__(self, typed: MultiValueDict[str, str], grades: list[Grade]) -> None:
        super().__init__(typed)
        offer_choices(
            self, "grade", [(grade.name, gettext("Grade %(name)s") % {"name": grade.name}) for grade in grades]
        )

    def clean_title(self) -> str:
        return " ".join(self.cleaned_data["title"].split())

    def clean_standards(self) -> tuple[str, ...]:
        codes = [code.strip() for code in self.cleaned_data["standards"].replace(";", ",").split(",")]
        kept = tuple(dict.fromkeys(code for code in codes if code))
        if any(len(code) > 60 for code in kept) or len(kept) > LIST_LIMIT:
            raise forms.ValidationError(gettext("Write the codes with commas between them."))
        return kept


class PlanForm:
    """Reads typed fields. `reading` is the plan as far as it can be read, `plan()` the whole of it, ready to be saved."""

    def __init__(self, typed: DraftFields, *, grades: list[Grade], for_saving: bool = False) -> None:
        self.typed = typed
        self.grades = grades
        data = MultiValueDict(typed)
        self.about = AboutForm(data, grades)
        self.count = CountForm(data, language=only(typed, "language", "en"), for_saving=for_saving)
        self.expected = read_rows(typed, AnswerRow)
        self.stops = read_rows(typed, StopRow)
        self.next = read_rows(typed, NextRow)
        self.count.is_valid()
        self._settle_rows()
        self.wrong_parts: list[str] = []
        self.too_many: dict[str, str] = {}

    def _settle_rows(self) -> None:
        """What rows need to know of the count: its style, and how many counts there are."""
        typed = self.count.count_typed
        if typed is None:
            return
        for row in self.next:
            same_kind = only(self.typed, row.add_prefix("kind")) == typed.kind
            row.style = dict(typed.style) if same_kind else self.marks(typed.style)
        for stop in self.stops:
            stop.said = self._written(stop, "after")
            after = stop.cleaned_data.get("after") if stop.has_changed() and not stop.errors.get("after") else None
            if after and after > typed.terms:
                stop.add_error(
                    "after", gettext("There are %(terms)s counts; stop after one of them.") % {"terms": typed.terms}
                )

    @staticmethod
    def marks(style: Any) -> dict[str, Any]:
        """The part of a style that belongs to the place rather than to the number kind."""
        return {name: style[name] for name in ("decimal_mark", "thousands", "currency", "language") if name in style}

    @property
    def said(self) -> list[AnswerRow]:
        """What they may say, right or not."""
        return [row for row in self.expected if not self._is_slip(row)]

    @property
    def slips(self) -> list[AnswerRow]:
        """Where they may slip; each row knows what stands at that count."""
        rows = [row for row in self.expected if self._is_slip(row)]
        for row in rows:
            row.right = self._written(row, "n")
        return rows

    def _written(self, row: Row[Any], name: str) -> str:
        """The count whose number is typed in a field of a row, past a larger unit in both; nothing where there is none."""
        n = typed_whole(only(self.typed, row.add_prefix(name)), 1, FURTHEST_ROW)
        return in_both_units(self.grid.count, self.grid.count.value(n)) if self.grid and n else ""

    def _is_slip(self, row: AnswerRow) -> bool:
        return only(self.typed, row.add_prefix("sort")) == "slip"

    # What is typed, read

    @property
    def grid(self) -> Grid | None:
        return self.count.grid

    @property
    def level(self) -> int:
        named = {grade.name: grade.level for grade in self.grades}
        return named.get(only(self.typed, "grade"), 3)

    @cached_property
    def own_words(self) -> dict[str, str]:
        """The teacher's own words for patterns, by the claim as text; they outlive a tick taken away."""
        return dict(zip(self.typed.get("words_of", []), self.typed.get("words", []), strict=False))

    @cached_property
    def targets(self) -> tuple[Target, ...]:
        """The ticked patterns. A tick box that holds no claim is left out."""
        found = []
        for text in dict.fromkeys(self.typed.get("target", [])):
            claim = read_claim(text)
            if claim is not None:
                found.append(Target(claim.as_dict(), self.own_words.get(text, "").strip()))
        return tuple(found)

    @property
    def wrong_words(self) -> dict[str, str]:
        """A sentence for each ticked pattern, by its claim as text, whose own words are too long."""
        return {
            claim_text(target.claim): shorten(SENTENCE_LIMIT, len(target.words))
            for target in self.seen_targets
            if len(target.words) > SENTENCE_LIMIT
        }

    @cached_property
    def seen_targets(self) -> tuple[Target, ...]:
        """The ticked patterns that this grid shows, be it for a while."""
        return tuple(target for target in self.targets if self._is_seen(target))

    @property
    def gone_targets(self) -> tuple[Target, ...]:
        """Ticked in another fold or count, and not to be seen in this one."""
        return tuple(target for target in self.targets if target not in self.seen_targets)

    def _is_seen(self, target: Target) -> bool:
        if self.grid is None:  # a count that can't be read yet shows nothing
            return False
        try:
            return show_claim(Claim.from_dict(dict(target.claim)), self.grid) is not None
        except CountError:
            return False

    @property
    def lit_before(self) -> list[str]:
        """The patterns that were lit when the page was made, each claim as text."""
        return self.typed.get("lit_before", [])

    @property
    def lit_claims(self) -> list[Claim] | None:
        """The patterns asked to be lit; None where the boxes are as the page filled them, from what lights up by itself."""
        if not lit_was_chosen(self.typed):
            return None
        return [claim for text in self.typed["lit"] if (claim := read_claim(text)) is not None]

    @property
    def proposed_area(self) -> str:
        return area_of(self.grid.count) if self.grid else "whole"

    @property
    def plain_title(self) -> str:
        """What a plan is called while nothing else is known: by its count."""
        return title_of_count(self.grid, self.about.cleaned_data.get("language") or "en") if self.grid else ""

    @cached_property
    def reading(self) -> Plan | None:
        """The plan without the rows that cannot be read yet; None without a readable count."""
        if self.count.count_typed is None or self.count.fold is None:
            return None
        self.about.is_valid()
        about = self.about.cleaned_data
        stops = [row.read() for row in self.stops if row.is_kept]
        return Plan(
            title=about.get("title") or self.plain_title[:TITLE_LIMIT],
            grade=about.get("grade", ""),
            area=about.get("area") or self.proposed_area,
            count=self.count.count_typed,
            fold=self.count.fold,
            language=about.get("language", "en"),
            story=Story(
                about.get("story_text", ""), about.get("story_group", ""), self.number(about.get("story_goal", ""))
            ),
            landmark=self.number(about.get("landmark", "")),
            targets=self.seen_targets,
            expected=tuple(row.read() for row in self.expected if row.is_kept),
            stops=tuple(sorted(stops, key=lambda stop: stop.after)),
            next_counts=tuple(row.read() for row in self.next if row.is_kept),
            standards=tuple(about.get("standards", ())),
            notes=about.get("notes", ""),
        )

    @property
    def is_told(self) -> bool:
        """Whether there is a story, a standard or a note to show."""
        told = ("story_text", "story_group", "story_goal", "standards", "notes")
        return any(only(self.typed, name).strip() for name in told)

    most_rows = LIST_LIMIT

    @property
    def is_too_long(self) -> bool:
        return bool(too_long(self.typed))

    @property
    def rows_left(self) -> dict[str, int]:
        """How many more rows each section has room for."""
        return {section: rows_left(self.typed, section) for section in ROW_WORDS}

    def focus_on(self, field_id: str) -> None:
        """Let the browser go to this field of a row when the row arrives."""
        written: list[Row[Any]] = [*self.expected, *self.stops, *self.next]
        for row in written:
            for name in row.fields:
                if row[name].id_for_label == field_id:
                    row.fields[name].widget.attrs["autofocus"] = True

    # Whether it can be saved

    def is_valid(self) -> bool:
        parts: list[forms.Form] = [self.about, self.count, *self.expected, *self.stops, *self.next]
        wrong = [part for part in parts if not part.is_valid()]
        for name in ("landmark", "story_goal"):
            self._check_value(name)
        self.too_many = too_many(self.typed)
        self.wrong_parts = [*filter(None, [too_long(self.typed)]), *self.too_many.values()]
        if wrong or self.about.errors or self.reading is None or self.wrong_parts or self.wrong_words:
            return False
        try:
            read_document(self.reading.as_dict())
        except PlanError as error:
            self.wrong_parts.append(str(error))
            return False
        return True

    def number(self, text: str) -> str:
        """A number typed anywhere on the page, in the plan's decimal mark."""
        return in_mark(text, self.count.mark, only(self.typed, "kind"))

    def _check_value(self, name: str) -> None:
        typed, grid = self.about.cleaned_data.get(name), self.count.grid
        if typed and grid is not None:
            try:
                grid.count.read(self.number(typed))
            except CountError as error:
                self.about.add_error(name, say(error))

    def plan(self, proposed_title: str = "") -> Plan:
        """The plan to save. Call `is_valid` first. Raises ValueError where the count cannot be read."""
        title = self.about.cleaned_data["title"] or (proposed_title or self.plain_title)[:TITLE_LIMIT]
        if self.reading is None:
            raise ValueError("There is no count to save.")
        return self.reading.changed(title=title)

    def first_wrong(self) -> str:
        """The id of the first field with a sentence beside it, to lead there."""
        for part in (self.about, self.count, *self.stops, *self.expected, *self.next):
            for name in part.errors:
                if name in part.fields:
                    return part[name].id_for_label
        if self.wrong_words:
            return "plan-list"
        return next((f"part-{section}" for section in self.too_many if section in ROW_WORDS), "id_start")

    def how_many_wrong(self) -> int:
        parts = (self.about, self.count, *self.expected, *self.stops, *self.next)
        return sum(len(part.errors) for part in parts) + len(self.wrong_parts) + len(self.wrong_words)


def read_claim(text: str) -> Claim | None:
    """The claim in a tick box; None for a text that is none."""
    try:
        return Claim.from_dict(read_json(text))
    except (ValueError, TypeError):
        return None


def text_of_claim(claim: Claim) -> str:
    return claim_text(claim.as_dict())
