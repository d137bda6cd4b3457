"""The form of one school year."""

from datetime import date
from typing import Any

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.model_forms import ModelForm
from accounts.templatetags.dates import day

from .models import SchoolYear

MOST_DAYS = 400  # coverage shows a school year week by week


class SchoolYearForm(ModelForm[SchoolYear]):
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
        return self.cleaned_data

    def _refuse_overlap(self, first: date, last: date) -> None:
        """A day belongs to one year: lessons and coverage go by it."""
        others = SchoolYear.objects.exclude(pk=self.instance.pk)
        other = others.filter(starts_on__lte=last, ends_on__gte=first).exclude(starts_on=first).first()
        if other is not None:
            said = {"year": other.name, "first": day(other.starts_on), "last": day(other.ends_on)}
            words = gettext("The year %(year)s runs from %(first)s to %(last)s. Choose days that are not in it.")
            self.add_error("starts_on" if other.starts_on <= first else "ends_on", words % said)
