"""The form of one school year."""

from datetime import date
from typing import Any

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.model_forms import ModelForm
from accounts.templatetags.dates import day

from .models import SchoolYear
from .models.term import FEWEST_TERMS, MOST_TERMS

MOST_DAYS = 400  # coverage shows a school year week by week


def _term(number: int) -> str:
    return f"term{number}"


def _day_field(label: str) -> forms.DateField:
    return forms.DateField(
        label=label,
        required=False,
        widget=forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
        error_messages={"invalid": _("Write a date such as 2026-08-15.")},
    )


class SchoolYearForm(ModelForm[SchoolYear]):
    """A year, and in `term1` .. `term6` the first days of its terms: all empty, or two and more, with none left out."""

    class Meta:
        model = SchoolYear
        fields = ["name", "starts_on", "ends_on"]
        labels = {"name": _("Year"), "starts_on": _("First day"), "ends_on": _("Last day")}
        widgets = {
            "starts_on": forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
            "ends_on": forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
        }
        error_messages = {
            "name": {"required": _("Write a name, such as 2026-27."), "unique": _("There is a year with this name.")},
            "starts_on": {
                "required": _("Choose the first day."),
                "invalid": _("Write a date such as 2026-08-15."),
                "unique": _("Another year starts on this day."),
            },
            "ends_on": {"required": _("Choose the last day."), "invalid": _("Write a date such as 2027-06-11.")},
        }

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        for number in range(1, MOST_TERMS + 1):
            self.fields[_term(number)] = _day_field(gettext("Term %(number)s begins") % {"number": number})
        for term in self.instance.terms:
            self.initial.setdefault(_term(term.number), term.first)

    @property
    def year_fields(self) -> list[forms.BoundField]:
        return [self[name] for name in self._meta.fields or ()]

    @property
    def term_fields(self) -> list[forms.BoundField]:
        return [self[_term(number)] for number in range(1, MOST_TERMS + 1)]

    @property
    def has_terms(self) -> bool:
        """Whether anything stands in their fields."""
        return any(field.value() for field in self.term_fields)

    def clean(self) -> dict[str, Any]:
        super().clean()
        first, last = self.cleaned_data.get("starts_on"), self.cleaned_data.get("ends_on")
        if first and last:
            self._refuse_overlap(first, last)
        if first and last and (last - first).days > MOST_DAYS:
            self.add_error(
                "ends_on",
                gettext("A school year has at most %(most)s days. Choose an earlier last day.") % {"most": MOST_DAYS},
            )
        self.instance.term_starts = self._term_starts(first, last)
        return self.cleaned_data

    def _term_starts(self, first: date | None, last: date | None) -> list[str]:
        """What stands in the fields of the terms; at each that is wrong a sentence."""
        typed = [self.cleaned_data.get(_term(number)) for number in range(1, MOST_TERMS + 1)]
        filled = [number for number, begins in enumerate(typed, 1) if begins or _term(number) in self.errors]
        before: date | None = None
        for number, begins in enumerate(typed, 1):
            wrong = ""
            if begins is None:
                if number < max(filled, default=0) and _term(number) not in self.errors:
                    wrong = gettext("Choose the first day of this term too, or empty those after it.")
                elif filled == [1] and number == FEWEST_TERMS:
                    wrong = gettext("Choose the first day of a second term, or empty the first.")
            elif first and last and not first <= begins <= last:
                said = {"first": day(first), "last": day(last)}
                wrong = gettext("Choose a day of this year, from %(first)s to %(last)s.") % said
            elif before and begins <= before:
                said = {"day": day(before)}
                wrong = gettext("Choose a day after %(day)s, when the term before begins.") % said
            if wrong:
                self.add_error(_term(number), wrong)
            before = begins or before
        return [begins.isoformat() for begins in typed if begins]

    def _refuse_overlap(self, first: date, last: date) -> None:
        """A day belongs to one year: lessons and coverage go by it."""
        others = SchoolYear.objects.exclude(pk=self.instance.pk)
        other = others.filter(starts_on__lte=last, ends_on__gte=first).exclude(starts_on=first).first()
        if other is not None:
            said = {"year": other.name, "first": day(other.starts_on), "last": day(other.ends_on)}
            words = gettext("The year %(year)s runs from %(first)s to %(last)s. Choose days that are not in it.")
            self.add_error("starts_on" if other.starts_on <= first else "ends_on", words % said)
