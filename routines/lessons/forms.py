"""Recording a count that was taught: what was slipped, seen and heard, and how it went."""

from datetime import date

from django import forms
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from accounts.typed_numbers import typed_whole
from grade_bands.models import ClassGroup, SchoolYear
from routines.forms.names_asked import NamesAskedForm
from routines.lessons.kinds import CELL_TEXT, KINDS, NOTICE, Bounds, EventRefused
from routines.models import Lesson, Planned, Reflection, TargetOutcome
from routines.plan_document import Plan

VOICES = [("", "not noted"), ("strong", "strong"), ("mixed", "mixed"), ("faded", "faded"), ("alone", "teacher alone")]
SEEN = [("", "not recorded"), *TargetOutcome.Seen.choices]
WORDS = "Write the idea, not who said it."
# What fits into one event, whatever its letters.
SLIP_LIMIT = CELL_TEXT
NOTICED_LIMIT = NOTICE


def _text(label: str, help_text: str = WORDS, rows: int = 2) -> forms.CharField:
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


class ReflectionForm(NamesAskedForm):
    """How it went, and who may read it. One choice `target-N` for each target of the plan."""

    asked_fields = ("seen", "stuck", "next_step", "to_next_year")

    outcome = forms.ChoiceField(
        choices=Reflection.Outcome.choices,
        widget=forms.RadioSelect,
        label="How did it go?",
        error_messages={"required": "Choose how it went."},
    )
    seen = _text("What did they see?")
    stuck = _text("Where did it get stuck?")
    next_step = _text("What next?")
    to_next_year = _text("A note to yourself for next year", "Only you will read this. " + WORDS)
    sharing = forms.ChoiceField(
        choices=Lesson.Sharing.choices,
        initial=Lesson.Sharing.ONLY_ME,
        widget=forms.RadioSelect,
        label="Who may read this?",
        help_text="That the lesson took place is seen by your grade and the coach; what you write here only by whom you choose.",
    )

    def __init__(self, *args, plan: Plan, statements: list[str], **kwargs) -> None:
        super().__init__(*args, **kwargs)
        self.plan = plan
        for position, statement in enumerate(statements):
            self.fields[f"target-{position}"] = forms.ChoiceField(
                choices=SEEN, required=False, label=statement, widget=forms.RadioSelect
            )

    def target_fields(self):
        return [self[name] for name in self.fields if name.startswith("target-")]

    def targets(self) -> dict[int, str]:
        """Which targets were seen or not yet, by their position in the plan; those not recorded are left out."""
        chosen = {name: self.cleaned_data[name] for name in self.fields if name.startswith("target-")}
        return {int(name.removeprefix("target-")): value for name, value in chosen.items() if value}


class TeachForm(forms.Form):
    """Class and where to begin. Chosen at first: the class it is planned for today, else one of its grade."""

    BEGIN = [
        ("lectern", _("The lectern on this device; another shows the board")),
        ("board", _("The board on this device; my phone is the lectern")),
        ("alone", _("The board on this device; my plan is on paper")),
    ]

    class_group = forms.ModelChoiceField(
        queryset=ClassGroup.objects.none(),
        label=_("Class"),
        widget=forms.RadioSelect,
        empty_label=None,
        error_messages={"required": _("Choose the class."), "invalid_choice": _("Choose one of your own classes.")},
    )
    begin = forms.ChoiceField(choices=BEGIN, initial="lectern", widget=forms.RadioSelect, label=_("Begin with"))
    practice = forms.BooleanField(required=False, label=_("This is a practice run; don’t count it"))

    def __init__(self, *args, user, routine, today: date, **kwargs) -> None:
        super().__init__(*args, **kwargs)
        classes = (
            ClassGroup.objects.taught_by(user).in_year(SchoolYear.objects.on(today)).with_people().in_grade_order()
        )
        planned = Planned.objects.filter(routine=routine, on=today, class_group__in=classes).first()
        of_its_grade = [group for group in classes if group.grade_id == routine.grade_id]
        self.fields["class_group"].queryset = classes
        self.fields["class_group"].initial = (
            planned.class_group_id if planned else next((group.pk for group in of_its_grade or classes), None)
        )


class PairForm(forms.Form):
    """The code that a waiting device shows, and what the device shall be."""

    code = forms.CharField(
        max_length=12,
        label=_("Code on the device"),
        widget=forms.TextInput(attrs={"inputmode": "numeric", "autocomplete": "off", "placeholder": "000 000"}),
        error_messages={
            "required": _("Type the six digits that the device shows."),
            "max_length": _("Type the six digits that the device shows."),
        },
    )
    role = forms.ChoiceField(
        choices=[
            ("board", _("a board for the class")),
            ("substitute", _("a lectern for a substitute, for this lesson only")),
        ],
        initial="board",
        required=False,
        widget=forms.RadioSelect,
        label=_("The device becomes"),
    )

    def clean_role(self) -> str:
        return self.cleaned_data["role"] or "board"


class TaughtForm(ReflectionForm):
    """A whole lesson after the fact: class, day, what was said wrong where, voice, noticings, and the reflection."""

    asked_fields = (*ReflectionForm.asked_fields, "noticed")

    class_group = forms.ModelChoiceField(
        queryset=ClassGroup.objects.none(),
        label="Class",
        empty_label=None,
        error_messages={"required": "Choose the class.", "invalid_choice": "Choose one of your own classes."},
    )
    taught_on = forms.DateField(
        label="Day",
        widget=forms.DateInput(attrs={"type": "date"}),
        error_messages={
            "invalid": "Write the day as year-month-day, such as 2026-11-20.",
            "required": "Choose the day.",
        },
    )
    slips = forms.CharField(
        required=False,
        max_length=2000,
        label="Slips heard",
        help_text="One a line: the count it happened at, a colon, what was said. Such as 8: 925.",
        widget=forms.Textarea(attrs={"rows": 3, "placeholder": "8: 925"}),
    )
    voice = forms.ChoiceField(required=False, choices=VOICES, widget=forms.RadioSelect, label="The voice of the class")
    noticed = _text("What they noticed", "One idea a line. " + WORDS, rows=3)
    practice = forms.BooleanField(required=False, label="This was a practice run; don’t count it")

    def __init__(self, *args, user, **kwargs) -> None:
        super().__init__(*args, **kwargs)
        self.fields["class_group"].queryset = ClassGroup.objects.filter(teachers=user).with_people().in_grade_order()

    def clean_taught_on(self) -> date:
        day = self.cleaned_data["taught_on"]
        if day > timezone.localdate():
            raise forms.ValidationError("That day is still to come. Choose the day it was taught.")
        if not SchoolYear.objects.filter(starts_on__lte=day, ends_on__gte=day).exists():
            raise forms.ValidationError("That day lies in no school year of this school. Check the year.")
        return day

    def clean_slips(self) -> dict[int, str]:
        """What was said, by the term it was said at."""
        said: dict[int, str] = {}
        for line in filter(None, map(str.strip, self.cleaned_data["slips"].splitlines())):
            place, colon, heard = line.partition(":")
            n = typed_whole(place, 0, 999)
            if not colon or n is None or not heard.strip():
                raise forms.ValidationError(
                    f"“{line[:40]}”: write the count’s number, a colon and what was said, such as 8: 925."
                )
            if not 1 <= n <= self.plan.count.terms:
                raise forms.ValidationError(f"There is no count number {n}; this one has {self.plan.count.terms}.")
            if len(heard.strip()) > SLIP_LIMIT:
                raise forms.ValidationError(
                    f"Shorten what was said at count {n} to {SLIP_LIMIT} characters; it has {len(heard.strip())}."
                )
            if n in said:
                raise forms.ValidationError(f"Count {n} has two lines. Put both into one, such as {n}: 54, then 63.")
            said[n] = _as_event("term.write", heard.strip())
        return said

    def clean_noticed(self) -> str:
        lines = [line for line in map(str.strip, self.cleaned_data["noticed"].splitlines()) if line]
        for line in lines:
            if len(line) > NOTICED_LIMIT:
                raise forms.ValidationError(
                    f"Shorten “{line[:40]}…” to {NOTICED_LIMIT} characters, or break it into two lines; it has {len(line)}."
                )
        return "\n".join(_as_event("notice.add", line) for line in lines)

    def clean(self):
        cleaned = super().clean()
        group, day = cleaned.get("class_group"), cleaned.get("taught_on")
        if group and day and not group.year.starts_on <= day <= group.year.ends_on:
            self.add_error("taught_on", f"{group.name} is a class of {group.year.name}; choose a day in that year.")
        return cleaned
