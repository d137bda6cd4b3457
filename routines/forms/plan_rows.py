"""The rows a teacher writes: what they may say, stops, next counts. A row with nothing in it is left out."""

from django import forms
from django.utils.datastructures import MultiValueDict

from routines.counting import CountError, Grid, Kind, Outcome
from routines.facts import FILLS
from routines.forms.plan_count import EXAMPLES, KINDS
from routines.forms.plan_fields import choice, sentence, short_text, whole_number
from routines.forms.plan_typed import Typed, row_numbers
from routines.plan_document import SENTENCE_LIMIT, CountTyped, ExpectedAnswer, Fold, NextCount, Stop

SORTS = {
    "own": "my guess",
    "easy": "easy",
    "deeper": "deeper",
    "not-for-long": "not for long",
    "not-so": "not so",
    "slip": "a slip",
}
OUTCOMES = {
    Outcome.NOT_YET: "it was not there yet",
    Outcome.AS_PLANNED: "it went as planned",
    Outcome.READY_FOR_MORE: "they are ready for more",
}


class Row(forms.Form):
    """One row of a section. `texts` are the fields whose words make the row worth keeping."""

    section = ""
    texts: tuple[str, ...] = ()

    def __init__(self, typed: MultiValueDict, number: int) -> None:
        super().__init__(typed, prefix=f"{self.section}-{number}", empty_permitted=True, use_required_attribute=False)
        self.number = number

    def has_changed(self) -> bool:
        return any(self.data.get(self.add_prefix(name), "").strip() for name in self.texts)

    @property
    def is_kept(self) -> bool:
        return self.has_changed() and self.is_valid()


class AnswerRow(Row):
    section = "expected"
    texts = ("words", "reply")
    right = ""

    sort = choice("Sort", SORTS.items())
    words = sentence("Words", SENTENCE_LIMIT, placeholder="What they may say", required=True)
    reply = sentence("Reply", SENTENCE_LIMIT, placeholder="What you ask back")
    n = whole_number("About count", 1, 400, required=False)

    def read(self) -> ExpectedAnswer:
        found = self.cleaned_data
        return ExpectedAnswer(words=found["words"], reply=found["reply"], sort=found["sort"], n=found["n"] or 0)


class StopRow(Row):
    section = "stops"
    texts = ("question", "answer", "routes")

    after = whole_number("After count", 1, 200)
    question = sentence("Question", SENTENCE_LIMIT, placeholder="What do you ask here?", required=True, rows=2)
    answer = sentence("Answer", SENTENCE_LIMIT, placeholder="The answer you hope for")
    routes = forms.CharField(
        label="Routes to it, one a line",
        required=False,
        widget=forms.Textarea(attrs={"rows": 2, "placeholder": "Routes through the grid, one a line"}),
    )
    think = whole_number("Think, seconds", 0, 600, required=False)
    partner = whole_number("Partner, seconds", 0, 1200, required=False)
    share = whole_number("Share, seconds", 0, 1800, required=False)

    def clean_routes(self) -> tuple[str, ...]:
        routes = tuple(line.strip() for line in self.cleaned_data["routes"].splitlines() if line.strip())
        if len(routes) > 6:
            raise forms.ValidationError("Keep six routes at most.")
        if any(len(route) > SENTENCE_LIMIT for route in routes):
            raise forms.ValidationError(f"Shorten each route to {SENTENCE_LIMIT} characters.")
        return routes

    def read(self) -> Stop:
        found = self.cleaned_data
        return Stop(
            after=found["after"],
            question=found["question"],
            answer=found["answer"],
            routes=found["routes"],
            think=found["think"] or 0,
            partner=found["partner"] or 0,
            share=found["share"] or 0,
        )


class NextRow(Row):
    section = "next"
    texts = ("why", "start", "step")

    outcome = choice("How it went", OUTCOMES.items())
    why = sentence("Why", SENTENCE_LIMIT, placeholder="What changes, and why")
    kind = choice("Kind of number", KINDS.items())
    start = short_text("Start", 40, size=4)
    step = short_text("Step", 40, size=4)
    terms = whole_number("Number of counts", 2, 200, required=False, size=3)
    line_length = whole_number("Line length", 1, 200, required=False, size=3)
    fill = choice("How it is filled", FILLS.items())

    def __init__(self, typed: MultiValueDict, number: int) -> None:
        super().__init__(typed, number)
        start, step = EXAMPLES.get(typed.get(self.add_prefix("kind"), ""), EXAMPLES[Kind.WHOLE])
        self.fields["start"].widget.attrs["placeholder"] = start
        self.fields["step"].widget.attrs["placeholder"] = step
        for name in ("kind", "start", "step", "terms", "line_length", "fill", "outcome"):
            self.fields[name].widget.attrs |= {"class": "blank", "aria-label": self.fields[name].label}
        self.style: dict = {}

    def clean(self):
        cleaned = super().clean()
        start, step = (cleaned.get(name, "").strip() for name in ("start", "step"))
        if self.errors or not (start or step):
            return cleaned
        for name, typed, advice in (
            ("start", start, "Write where it starts."),
            ("step", step, "Write what it goes up or down by."),
        ):
            if not typed:
                self.add_error(name, advice)
                return cleaned
        terms = cleaned["terms"] or 20
        length = cleaned["line_length"] or min(5, terms)
        typed = CountTyped(kind=cleaned["kind"], start=start, step=step, terms=terms, style=self.style)
        try:
            Grid(typed.count(), line_length=length, fill=cleaned["fill"])
        except CountError as error:
            self.add_error(error.field if error.field in self.fields else None, str(error))
        cleaned["count"], cleaned["fold"] = typed, Fold(length, cleaned["fill"])
        return cleaned

    def read(self) -> NextCount:
        found = self.cleaned_data
        return NextCount(outcome=found["outcome"], why=found["why"], count=found.get("count"), fold=found.get("fold"))


ROW_FORMS: dict[str, type[Row]] = {form.section: form for form in (AnswerRow, StopRow, NextRow)}


def read_rows(typed: Typed, section: str) -> list:
    """The rows of a section; stops in the order of their places as far as these can be read."""
    data = MultiValueDict(typed)
    return [ROW_FORMS[section](data, number) for number in row_numbers(typed, section)]
