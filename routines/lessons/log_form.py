"""The log of a lesson as a form: the grid is the form, and beside it how it went, in the order a teacher remembers."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from typing import Any

from django import forms
from django.utils import timezone
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.models import User
from accounts.names_asked import A_CHILD, NamesAskedForm, one_of
from accounts.names_of_children import look_like_names
from accounts.offered import offer_rows
from accounts.translated import Translated
from accounts.typed_numbers import typed_whole
from grade_bands.models import ClassGroup, SchoolYear
from routines.lessons.kinds import CELL_TEXT, KINDS, NOTICE, VOICES, Bounds, EventRefused
from routines.lessons.log import CellLog, Log
from routines.lessons.shown_count import coming, target_sentences
from routines.models import Lesson, Reflection, TargetOutcome
from routines.models.shown_plan import ShownPlan

# What fits into one event, whatever its letters.
SLIP_LIMIT = CELL_TEXT
NOTICED_LIMIT = NOTICE
SAID_IN_A_CELL = 12
STRETCHES = 40
NOTICED_LINES = 60

SEEN = [("", gettext_lazy("not recorded")), *TargetOutcome.Seen.choices]
WORDS = gettext_lazy("Write the idea, not who said it.")
HOW = {
    "strong": gettext_lazy("strong"),
    "mixed": gettext_lazy("mixed"),
    "faded": gettext_lazy("faded"),
    "alone": gettext_lazy("teacher alone"),
}


def _text(label: Translated, help_text: Translated = WORDS, rows: int = 2) -> forms.CharField:
    return forms.CharField(
        required=False, max_length=2000, label=label, help_text=help_text, widget=forms.Textarea(attrs={"rows": rows})
    )


def _as_event(kind: str, text: str) -> str:
    """The text, if an event of this kind may hold it."""
    try:
        KINDS[kind].parts["text"].check(text, Bounds(last_term=1))
    except EventRefused as refused:
        raise forms.ValidationError(f"“{text[:40]}”: {refused}") from refused
    return text


@dataclass(frozen=True, slots=True)
class Chip:
    """Something that may have been said in a cell: to tap, or tapped already."""

    text: str
    ticked: bool


@dataclass(frozen=True, slots=True)
class CellSlip:
    """The slip of paper of one cell."""

    n: int
    due: str
    cell: CellLog
    chips: list[Chip]


class LogForm(NamesAskedForm):
    """`standing` is the log as it is; `last` the last cell that can be tapped. One choice `target-N` a target of the plan."""

    asked_fields = ("noticed", "seen", "stuck", "next_step", "to_next_year")

    class_group = forms.ModelChoiceField(
        queryset=ClassGroup.objects.none(),
        label=gettext_lazy("Class"),
        empty_label=None,
        error_messages={
            "required": gettext_lazy("Choose the class."),
            "invalid_choice": gettext_lazy("Choose one of your own classes."),
        },
    )
    taught_on = forms.DateField(
        label=gettext_lazy("Day"),
        widget=forms.DateInput(attrs={"type": "date"}),
        error_messages={
            "invalid": gettext_lazy("Write the day as year-month-day, such as 2026-11-20."),
            "required": gettext_lazy("Choose the day."),
        },
    )
    outcome = forms.ChoiceField(
        choices=[*Reflection.Outcome.choices, ("", gettext_lazy("not recorded"))],
        required=False,
        widget=forms.RadioSelect,
        label=gettext_lazy("How did it go?"),
    )
    noticed = _text(
        gettext_lazy("What else was noticed?"), gettext_lazy("One idea a line. Write the idea, not who said it.")
    )
    seen = _text(gettext_lazy("What they saw, as written before"))
    stuck = _text(gettext_lazy("Where did it get stuck?"))
    next_step = _text(gettext_lazy("What next?"))
    to_next_year = _text(
        gettext_lazy("A note to yourself for next year"),
        gettext_lazy("Only you will read this. Write the idea, not who said it."),
    )
    sharing = forms.ChoiceField(
        choices=Lesson.Sharing.choices,
        initial=Lesson.Sharing.ONLY_ME,
        widget=forms.RadioSelect,
        label=gettext_lazy("Who may read this?"),
        help_text=gettext_lazy(
            "That the lesson took place is seen by your grade and the coach; what you write here only by whom you choose."
        ),
    )
    practice = forms.BooleanField(required=False, label=gettext_lazy("This was a practice run; don’t count it"))

    def __init__(
        self,
        *args: Any,
        user: User,
        shown: ShownPlan,
        standing: Log,
        last: int,
        next_choices: Iterable[tuple[str, str]] = (),
        **kwargs: Any,
    ) -> None:
        super().__init__(*args, **kwargs)
        self.shown, self.standing, self.last = shown, standing, last
        offer_rows(self, "class_group", ClassGroup.objects.filter(teachers=user).with_people().in_grade_order())
        for position, statement in enumerate(target_sentences(shown)):
            self.fields[f"target-{position}"] = forms.ChoiceField(
                choices=SEEN,
                required=False,
                label=statement,
                widget=forms.RadioSelect,
                initial=standing.targets.get(position, ""),
            )
        self.fields["next"] = forms.ChoiceField(
            choices=[("", ""), *next_choices], required=False, widget=forms.RadioSelect, label=_("Count next")
        )
        self.fields["noticed"].initial = "\n".join(text for text, expected in standing.noticed if expected is None)
        if not self.initial.get("seen"):
            del self.fields["seen"]

    # What the page shows

    def target_fields(self) -> list[forms.BoundField]:
        return [self[name] for name in self.fields if name.startswith("target-")]

    @cached_property
    def log(self) -> Log:
        """What was sent, as far as it can be read; else what stands."""
        if not self.is_bound:
            return self.standing
        return Log(self._cells_sent(), tuple(self._voices_sent()[0]))

    @cached_property
    def cell_slips(self) -> list[CellSlip]:
        foreseen, count, slips = coming(self.shown), self.shown.grid.count, []
        for n in range(1, self.last + 1):
            cell = self.log.cells.get(n, CellLog())
            likely = [row["heard"] for row in foreseen.get(str(n), []) if not row["equal"]]
            chips = [Chip(text, ticked=True) for text in cell.said]
            chips += [Chip(text, ticked=False) for text in likely if text not in cell.said and len(text) <= SLIP_LIMIT]
            slips.append(CellSlip(n, count.text(n), cell, chips))
        return slips

    @property
    def voice_rows(self) -> list[tuple[object, object, str]]:
        return [*self.log.voices, ("", "", "")]

    @property
    def voice_choices(self) -> Iterable[tuple[str, Translated]]:
        return HOW.items()

    @cached_property
    def expected_rows(self) -> list[tuple[int, str, bool]]:
        """The answers that were expected, slips aside, each as a sentence to tick."""
        ticked = (
            set(self._expected_sent()) if self.is_bound else {expected for _text, expected in self.standing.noticed}
        )
        return [
            (i, answer.words, i in ticked)
            for i, answer in enumerate(self.shown.plan.expected)
            if answer.sort != "slip" and len(answer.words) <= NOTICED_LIMIT
        ]

    # What was sent

    def _list(self, name: str) -> list[str]:
        return self.data.getlist(name) if hasattr(self.data, "getlist") else list(self.data.get(name, []))

    def _cells_named(self, name: str) -> set[int]:
        return {n for text in self._list(name) if (n := typed_whole(text, 1, self.last)) is not None}

    def _cells_sent(self) -> dict[int, CellLog]:
        left_out, again, stayed = (self._cells_named(name) for name in ("left-out", "again", "stayed"))
        cells = {}
        for n in range(1, self.last + 1):
            said = tuple(text for text in map(str.strip, self._list(f"heard-{n}")) if text)
            cell = CellLog(said, n in left_out, n in again, n in stayed and bool(said))
            if cell:
                cells[n] = cell
        return cells

    def _voices_sent(self) -> tuple[list[tuple[int, int, str]], bool]:
        """The stretches that can be read, and whether all could be."""
        rows = list(zip(*(self._list(f"voice-{part}") for part in ("from", "to", "how")), strict=False))
        found, whole = [], len(rows) <= STRETCHES
        for first, last, how in rows[:STRETCHES]:
            if not any((first.strip(), last.strip(), how)):
                continue
            a, b = typed_whole(first, 1, self.last), typed_whole(last, 1, self.last)
            if a is None or b is None or how not in VOICES:
                whole = False
            else:
                found.append((min(a, b), max(a, b), how))
        return found, whole

    def _expected_sent(self) -> list[int]:
        listed = range(len(self.shown.plan.expected))
        return sorted(
            {i for text in self._list("expected") if (i := typed_whole(text, 0, 39)) is not None and i in listed}
        )

    def clean_taught_on(self) -> date:
        day: date = self.cleaned_data["taught_on"]
        if day > timezone.localdate():
            raise forms.ValidationError(_("That day is still to come. Choose the day it was taught."))
        if not SchoolYear.objects.filter(starts_on__lte=day, ends_on__gte=day).exists():
            raise forms.ValidationError(_("That day lies in no school year of this school. Check the year."))
        return day

    def clean_noticed(self) -> str:
        lines = [line for line in map(str.strip, self.cleaned_data["noticed"].splitlines()) if line]
        if len(lines) > NOTICED_LINES:
            words = _("Put it into %(most)s lines at most; it has %(lines)s.")
            raise forms.ValidationError(words % {"most": NOTICED_LINES, "lines": len(lines)})
        for line in lines:
            if len(line) > NOTICED_LIMIT:
                words = _("Shorten “%(line)s…” to %(most)s characters, or break it into two lines; it has %(length)s.")
                raise forms.ValidationError(words % {"line": line[:40], "most": NOTICED_LIMIT, "length": len(line)})
        return "\n".join(_as_event("notice.add", line) for line in lines)

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        group, day = cleaned.get("class_group"), cleaned.get("taught_on")
        if group and day and not group.year.starts_on <= day <= group.year.ends_on:
            words = _("%(class)s is a class of %(year)s; choose a day in that year.")
            self.add_error("taught_on", words % {"class": group.name, "year": group.year.name})
        for n, cell in self.log.cells.items():
            self._check_cell(n, cell, ask=not cleaned.get("no_names"))
        if not self._voices_sent()[1]:
            words = _("The voice of a stretch goes from one count to another, 1 to %(last)s, and says how it was.")
            self.add_error(None, words % {"last": self.last})
        return cleaned

    def _check_cell(self, n: int, cell: CellLog, *, ask: bool) -> None:
        if len(cell.said) > SAID_IN_A_CELL:
            words = _("Count %(n)s holds %(most)s slips at most; it has %(slips)s.")
            self.add_error(None, words % {"n": n, "most": SAID_IN_A_CELL, "slips": len(cell.said)})
        for text in cell.said:
            if len(text) > SLIP_LIMIT:
                words = _("Shorten what was said at count %(n)s to %(most)s characters; it has %(length)s.")
                self.add_error(None, words % {"n": n, "most": SLIP_LIMIT, "length": len(text)})
                continue
            try:
                _as_event("term.write", text)
            except forms.ValidationError as error:
                self.add_error(None, error)
        names = look_like_names(". ".join(cell.said)) if ask else []
        if names:
            sentence = _("Is %(names)s at count %(n)s a child? Write what was said, or tick the box below.")
            self.add_error(None, forms.ValidationError(sentence % {"names": one_of(names), "n": n}, code=A_CHILD))

    # What was made of it

    def targets(self) -> dict[int, str]:
        """Which targets were seen or not yet, by their position in the plan; those not recorded are left out."""
        chosen = {name: self.cleaned_data[name] for name in self.fields if name.startswith("target-")}
        return {int(name.removeprefix("target-")): value for name, value in chosen.items() if value}

    def wanted(self) -> Log:
        """The log that this form asks for. An expected answer ticked before keeps the words that it was noticed in."""
        before = {expected: text for text, expected in self.standing.noticed if expected is not None}
        answers = self.shown.plan.expected
        asked = {i for i, _words, _ticked in self.expected_rows}
        ticked = [(before.get(i, answers[i].words), i) for i in self._expected_sent() if i in asked]
        lines = [(line, None) for line in self.cleaned_data["noticed"].splitlines()]
        return Log(cells=self.log.cells, voices=self.log.voices, noticed=(*ticked, *lines), targets=self.targets())

    def reflection(self) -> dict[str, str]:
        names = ("outcome", "seen", "stuck", "next_step", "to_next_year", "sharing")
        return {name: self.cleaned_data.get(name, "") for name in names}
