"""The count and its fold, typed as a sentence, and the way it is written and said."""

from typing import Any

from django import forms
from django.utils.datastructures import MultiValueDict
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.offered import offer_choices
from routines.counting import CountError, Grid, Kind
from routines.counting.languages import LANGUAGES
from routines.errors import say
from routines.models.facts import FILLS
from routines.models.plan_document import CountSection, Fold
from routines.plans.forms.fields import choice, short_text, whole_number
from routines.plans.forms.marks import POINT, in_mark, mark_of, read_both_ways, turned
from routines.plans.forms.number_kinds import EXAMPLES, KINDS, STYLE_CHOICES, styles_of


class StyleForm(forms.Form):
    """How the count is written and said. Empty means: as the engine does it unless told."""

    prefix = "style"

    fractions = choice(
        _("Parts"),
        [("", _("keep the denominator (2/4, 0.50)")), ("simplified", _("simplest form (1/2, 0.5)"))],
        required=False,
    )
    shape = choice(_("Shape"), [("", _("mixed: 1 1/3")), ("top-heavy", _("top-heavy: 4/3"))], required=False)
    wholes = choice(
        _("Wholes"),
        [("", _("as a number: 1")), ("fraction", _("as a fraction: 3/3")), ("both", _("both: 3/3 = 1"))],
        required=False,
    )
    clock = choice(_("Clock"), [("", _("12 hours: 1:30")), ("24", _("24 hours: 13:30"))], required=False)
    units = choice(_("Units"), [("", _("as typed")), ("one", _("one unit")), ("two", _("two units"))], required=False)
    places = choice(
        _("Decimal places"), [("", _("as many as it needs")), *((str(n), str(n)) for n in range(7))], required=False
    )
    saying = choice(
        _("Said"),
        [("", _("as written")), ("counted", _("counted: four thirds")), ("renamed", _("renamed: one and one third"))],
        required=False,
    )
    decimal_mark = choice(_("Decimal mark"), [("", _("point: 2.5")), (",", _("comma: 2,5"))], required=False)
    thousands = choice(
        _("Thousands"),
        [
            ("", _("usual mark")),
            (",", _("comma: 1,325")),
            (" ", _("gap: 1 325")),
            (".", _("point: 1.325")),
            ("none", _("none: 1325")),
        ],
        required=False,
    )
    currency = short_text(_("Currency"), 3)
    small = short_text(_("Small unit"), 10)
    large = short_text(_("Large unit"), 10)
    over = whole_number(_("Denominator kept"), 1, 10**6, required=False)
    halves = forms.BooleanField(required=False)

    def __init__(self, typed: MultiValueDict[str, str], kind: str) -> None:
        data = typed.copy()
        for name, plain in (("fractions", "kept"), ("shape", "mixed"), ("wholes", "number"), ("saying", "written")):
            if data.get(f"style-{name}") == plain:
                data[f"style-{name}"] = ""
        if data.get("style-clock") == "12":
            data["style-clock"] = ""
        if data.get("style-decimal_mark") == ".":
            data["style-decimal_mark"] = ""
        super().__init__(data)
        written = f"{typed.get('start', '')} {typed.get('step', '')}"
        self.offered = styles_of(kind, with_fractions="/" in written or bool(data.get("style-shape")))
        for name, choices in STYLE_CHOICES.get(kind, {}).items():
            if data.get(f"style-{name}", "") in dict(choices):  # what was chosen under another kind stays readable
                offer_choices(self, name, choices)
        for name, field in self.fields.items():
            if name not in self.offered:
                field.widget = forms.HiddenInput()

    def visible(self) -> list[forms.BoundField]:
        return [self[name] for name in self.offered]

    def keywords(self, language: str) -> dict[str, Any]:
        """The engine's style keywords; what is left empty is left out."""
        chosen: dict[str, Any] = {
            name: value for name, value in self.cleaned_data.items() if value not in ("", None, False)
        }
        for name in ("clock", "places"):
            if name in chosen:
                chosen[name] = int(chosen[name])
        if chosen.get("thousands") == "none":
            chosen["thousands"] = ""
        if language in LANGUAGES[1:]:  # the first is the engine's own
            chosen["language"] = language
        return chosen


class CountForm(forms.Form):
    """Reads the sentence with the counting engine. `grid` is None while something is missing or wrong."""

    kind = choice(_("Kind of number"), KINDS.items())
    start = short_text(_("Start"), 40, size=4)
    step = short_text(_("Step"), 40, size=4)
    terms = whole_number(_("Number of counts"), 2, 200, size=3)
    fill = choice(_("How it is filled"), FILLS.items())
    line_length = whole_number(_("Line length"), 1, 200, size=3)
    lead = whole_number(_("Empty cells before the first count"), 0, 199, required=False, size=3)

    grid: Grid | None = None
    count_typed: CountSection | None = None
    fold: Fold | None = None

    def __init__(self, typed: MultiValueDict[str, str], *, language: str, for_saving: bool) -> None:
        super().__init__(typed)
        self.language = language
        self.for_saving = for_saving
        kind = typed.get("kind", Kind.WHOLE.value)
        self.style = StyleForm(typed, kind)
        self.mark = mark_of(dict(typed.lists()))
        for name, example in zip(("start", "step"), EXAMPLES.get(kind, EXAMPLES[Kind.WHOLE]), strict=True):
            self.fields[name].widget.attrs["placeholder"] = turned(example, POINT, self.mark, kind)
        for name, field in self.fields.items():
            field.widget.attrs |= {"class": "blank", "aria-label": field.label, "aria-describedby": f"wrong-{name}"}

    @property
    def style_typed(self) -> dict[str, Any]:
        """The style as far as it is chosen, whether or not there is a count to write in it."""
        return self.style.keywords(self.language) if self.style.is_valid() else {}

    @property
    def offers(self) -> str:
        """The kind and what can be chosen of its writing, as one text: where it is another, the choices are shown anew."""
        return " ".join((self.data.get("kind", ""), *self.style.offered))

    @property
    def is_begun(self) -> bool:
        """True once there is a start and a step to read."""
        return bool(self.data.get("start", "").strip() and self.data.get("step", "").strip())

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        if not self.is_begun:
            if self.for_saving:
                for name, advice in (
                    ("start", gettext("Write where the count starts.")),
                    ("step", gettext("Write what it goes up or down by.")),
                ):
                    if not cleaned.get(name, "").strip():
                        self.add_error(name, advice)
            return cleaned
        if not self.style.is_valid():
            self.add_error(None, gettext("Choose how the count is written from the lists."))
        if self.errors:
            return cleaned
        typed = CountSection(
            kind=cleaned["kind"],
            start=in_mark(cleaned["start"].strip(), self.mark, cleaned["kind"]),
            step=in_mark(cleaned["step"].strip(), self.mark, cleaned["kind"]),
            terms=cleaned["terms"],
            style=self.style.keywords(self.language),
        )
        fold = Fold(cleaned["line_length"], cleaned["fill"], cleaned["lead"] or 0)
        try:
            grid = Grid(typed.count(), line_length=fold.line_length, fill=fold.fill, lead=fold.lead)
        except CountError as error:
            self.add_error(error.field if error.field in self.fields else None, say(error))
        else:
            self.count_typed, self.fold, self.grid = typed, fold, grid
        return cleaned

    @property
    def read_both_ways(self) -> list[str]:
        """A sentence for each number that may be meant with thousands or as a decimal."""
        kind = self.data.get("kind", "")
        found = (read_both_ways(self.data.get(name, ""), self.mark, kind) for name in ("start", "step"))
        return list(dict.fromkeys(filter(None, found)))

    def wrong(self) -> list[tuple[str, str]]:
        """Every field with its sentence, empty where nothing is wrong: what stands under the sentence."""
        found = [(name, " ".join(map(str, self.errors.get(name, [])))) for name in self.fields]
        return [*found, ("style", " ".join(map(str, self.non_field_errors())))]
