"""The rows a teacher writes: what they may say, stops, next counts. A row with nothing in it is left out."""

from collections.abc import Mapping
from typing import Any, Generic, TypeVar

from django import forms
from django.utils.datastructures import MultiValueDict
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from routines.counting import CountError, Grid, Kind, Outcome
from routines.errors import say
from routines.models.declared import declared
from routines.models.facts import FILLS
from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, NextCount, Part, Stop
from routines.plans.forms.draft import ROWS, DraftFields, row_numbers
from routines.plans.forms.fields import choice, short_text, whole_number, written
from routines.plans.forms.marks import POINT, in_mark, mark_of, turned
from routines.plans.forms.number_kinds import EXAMPLES, KINDS

MOST_ROUTES = 6

SORTS = {
    "own": _("my guess"),
    "easy": _("easy"),
    "deeper": _("deeper"),
    "not-for-long": _("not for long"),
    "not-so": _("not so"),
    "slip": _("a slip"),
}
OUTCOMES = {
    Outcome.NOT_YET: _("it was not there yet"),
    Outcome.AS_PLANNED: _("it went as planned"),
    Outcome.READY_FOR_MORE: _("they are ready for more"),
}


P = TypeVar("P", bound=Part)


class Row(forms.Form, Generic[P]):
    """One row of a section: the fields that its part of the document declares, but for those that a row draws itself.

    `texts` are the fields whose words make the row worth keeping, `needed` those that it cannot do without.
    """

    section = ""
    part: type[P]
    texts: tuple[str, ...] = ()
    needed: tuple[str, ...] = ()
    lines: Mapping[str, int] = {}  # how high a text stands, where it is more than one line

    def __init__(self, typed: MultiValueDict[str, str], number: int) -> None:
        super().__init__(typed, prefix=f"{self.section}-{number}", empty_permitted=True, use_required_attribute=False)
        self.number = number
        for name, field in declared(self.part).items():
            if name not in self.fields and name in ROWS[self.section]:
                self.fields[name] = written(field, required=name in self.needed, rows=self.lines.get(name, 1))

    def has_changed(self) -> bool:
        return any(self.data.get(self.add_prefix(name), "").strip() for name in self.texts)

    @property
    def is_kept(self) -> bool:
        return self.has_changed() and self.is_valid()

    def read(self) -> P:
        """The part as it stands in a document; a number left out is 0."""
        found = self.cleaned_data
        return self.part(**{name: 0 if found[name] is None else found[name] for name in declared(self.part)})


class AnswerRow(Row[ExpectedAnswer]):
    section = "expected"
    part = ExpectedAnswer
    texts = ("words", "reply")
    needed = ("words",)
    right = ""

    sort = choice(_("Sort"), SORTS.items())
    n = whole_number(_("About count"), 1, 400, required=False)


class StopRow(Row[Stop]):
    section = "stops"
    part = Stop
    texts = ("question", "answer", "routes")
    needed = ("after", "question")
    lines = {"question": 2, "routes": 2}
    said = ""

    def clean_routes(self) -> tuple[str, ...]:
        routes: tuple[str, ...] = self.cleaned_data["routes"]
        if len(routes) > MOST_ROUTES:
            raise forms.ValidationError(gettext("Keep six routes at most."))
        return routes


class NextRow(Row[NextCount]):
    section = "next"
    part = NextCount
    texts = ("why", "start", "step")

    outcome = choice(_("How it went"), OUTCOMES.items())
    kind = choice(_("Kind of number"), KINDS.items())
    start = short_text(_("Start"), 40, size=4)
    step = short_text(_("Step"), 40, size=4)
    terms = whole_number(_("Number of counts"), 2, 200, required=False, size=3)
    line_length = whole_number(_("Line length"), 1, 200, required=False, size=3)
    fill = choice(_("How it is filled"), FILLS.items())

    def __init__(self, typed: MultiValueDict[str, str], number: int) -> None:
        super().__init__(typed, number)
        self.mark, kind = mark_of(dict(typed.lists())), typed.get(self.add_prefix("kind"), "")
        for name, example in zip(("start", "step"), EXAMPLES.get(kind, EXAMPLES[Kind.WHOLE]), strict=True):
            self.fields[name].widget.attrs["placeholder"] = turned(example, POINT, self.mark, kind)
        for name in ("kind", "start", "step", "terms", "line_length", "fill", "outcome"):
            self.fields[name].widget.attrs |= {"class": "blank", "aria-label": self.fields[name].label}
        self.style: dict[str, Any] = {}

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        kind = cleaned.get("kind", "")
        start, step = (in_mark(cleaned.get(name, "").strip(), self.mark, kind) for name in ("start", "step"))
        if self.errors or not (start or step):
            return cleaned
        for name, text, advice in (
            ("start", start, gettext("Write where it starts.")),
            ("step", step, gettext("Write what it goes up or down by.")),
        ):
            if not text:
                self.add_error(name, advice)
                return cleaned
        terms = cleaned["terms"] or 20
        length = cleaned["line_length"] or min(5, terms)
        typed = CountSection(kind=cleaned["kind"], start=start, step=step, terms=terms, style=self.style)
        try:
            Grid(typed.count(), line_length=length, fill=cleaned["fill"])
        except CountError as error:
            self.add_error(error.field if error.field in self.fields else None, say(error))
        cleaned["count"], cleaned["fold"] = typed, Fold(length, cleaned["fill"])
        return cleaned

    def read(self) -> NextCount:
        found = self.cleaned_data
        return NextCount(outcome=found["outcome"], why=found["why"], count=found.get("count"), fold=found.get("fold"))


R = TypeVar("R", bound=Row[Any])


def read_rows(typed: DraftFields, form: type[R]) -> list[R]:
    """The rows of the form's section; stops in the order of their places as far as these can be read."""
    data = MultiValueDict(typed)
    return [form(data, number) for number in row_numbers(typed, form.section)]
