"""To whom a count is suggested, why and by when."""

from collections.abc import Sequence
from datetime import date, timedelta
from typing import Any

from django import forms
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.models import User
from accounts.names_asked import NamesAskedForm
from accounts.typed_numbers import typed_id
from grade_bands.models import Grade, GradeBand
from routines.models import Routine

LONGEST_WHY = 1000
FURTHEST_AHEAD = timedelta(days=366)


def for_grade(grade: Grade) -> str:
    """The choice that means the team of this grade."""
    return f"grade-{grade.pk}"


class SuggestionForm(NamesAskedForm):
    asked_fields = ("why",)
    why = forms.CharField(
        max_length=LONGEST_WHY,
        label=gettext_lazy("Why"),
        help_text=gettext_lazy("What would children find in it? Write the idea, not who said it."),
        widget=forms.Textarea(attrs={"rows": 3}),
        error_messages={"required": gettext_lazy("Write a few words: why this count?")},
    )
    by_when = forms.DateField(
        required=False,
        label=gettext_lazy("By when, if it matters"),
        widget=forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
        error_messages={"invalid": gettext_lazy("Write the day as year-month-day, such as 2026-11-20.")},
    )

    def __init__(
        self, *args: Any, user: User, today: date, offered: Sequence[Routine] = (), grade: Grade, **kwargs: Any
    ) -> None:
        """offered: counts to choose one of, where the page is about none. grade: whose team is chosen at first."""
        super().__init__(*args, **kwargs)
        self.today = today
        self.receivers = _receivers(user)
        choices = [(group, list(people.items())) for group, people in self.receivers.items() if people]
        self.fields["to"] = forms.ChoiceField(
            choices=[("", _("choose whom")), *choices],
            label=_("To"),
            initial=next((key for key in (for_grade(grade), f"band-{grade.band_id}") if self._is_offered(key)), ""),
            error_messages={
                "required": _("Choose a team or a colleague."),
                "invalid_choice": _("Choose a team or a colleague from the list."),
            },
        )
        self.offered = {str(routine.pk): routine for routine in offered}
        if offered:
            self.fields["routine"] = forms.ChoiceField(
                choices=[(key, routine.title) for key, routine in self.offered.items()],
                initial=next(iter(self.offered)),
                label=_("Count"),
                widget=forms.RadioSelect,
                error_messages={
                    "required": _("Choose the count."),
                    "invalid_choice": _("Choose one of these counts."),
                },
            )

    def _is_offered(self, key: str) -> bool:
        return any(key in people for people in self.receivers.values())

    def clean_by_when(self) -> date | None:
        day: date | None = self.cleaned_data["by_when"]
        if day and not self.today <= day <= self.today + FURTHEST_AHEAD:
            raise forms.ValidationError(_("Choose a day from today to a year from now, or leave it empty."))
        return day

    def to_whom(self) -> dict[str, int]:
        """The column that says to whom, and its value."""
        sort, _dash, key = self.cleaned_data["to"].partition("-")
        return {f"to_{sort}_id": typed_id(key)}


def _receivers(user: User) -> dict[str, dict[str, str]]:
    """Teams, grades and teachers, each by the value that chooses it. A team of one grade stands there once."""
    bands = list(GradeBand.objects.with_grades().order_by("order"))
    several = [grade for band in bands if len(band.grades.all()) > 1 for grade in band.grades.all()]
    teachers = User.objects.active().filter(role=User.Role.TEACHER).exclude(pk=user.pk).in_name_order()
    return {
        _("Teams"): {
            f"band-{band.pk}": _("Team %(name)s") % {"name": band.name} for band in bands if band.grades.all()
        },
        _("Grades"): {for_grade(grade): _("Grade %(name)s") % {"name": grade.name} for grade in several},
        _("Colleagues"): {f"teacher-{person.pk}": person.display_name for person in teachers},
    }
