"""From which day to which day coverage looks."""

from datetime import date
from typing import Any

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from grade_bands.models import SchoolYear

INVALID = {"invalid": _("Write the day as year-month-day, such as 2026-11-20.")}


class WindowForm(forms.Form):
    """A window inside one school year; empty fields mean the year so far."""

    first = forms.DateField(
        required=False, label=_("From"), widget=forms.DateInput(attrs={"type": "date"}), error_messages=INVALID
    )
    last = forms.DateField(
        required=False, label=_("To"), widget=forms.DateInput(attrs={"type": "date"}), error_messages=INVALID
    )

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        first, last = cleaned.get("first"), cleaned.get("last")
        if first and last and last < first:
            self.add_error("last", gettext("Choose a last day that is not before the first."))
        return cleaned

    def window(self, year: SchoolYear, today: date) -> tuple[date, date]:
        """The first and last day to look at, inside the year. Units: days, both included."""
        kept = self.cleaned_data if self.is_valid() else {}
        first = max(kept.get("first") or year.starts_on, year.starts_on)
        last = min(kept.get("last") or max(min(today, year.ends_on), year.starts_on), year.ends_on)
        return first, max(first, last)
