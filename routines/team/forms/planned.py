"""For which class, and on which day, a count is planned."""

from collections.abc import Sequence
from datetime import date
from typing import Any

from django import forms
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.model_forms import ModelChoiceField
from accounts.models import User
from accounts.offered import offer_rows
from accounts.templatetags.dates import day
from grade_bands.models import ClassGroup
from routines.models import Routine
from routines.team.school_days import next_school_day


class ClassOfAYear(ModelChoiceField[ClassGroup]):
    """A class by its name; `with_year`, in the weeks when classes of two years are offered, by its year too."""

    with_year = False

    def label_from_instance(self, obj: ClassGroup) -> str:
        return f"{obj.name} ({obj.year.name})" if self.with_year else obj.name


class PlannedForm(forms.Form):
    """Chosen at first: a class of the count's own grade, else the first, and the next school day of its year.

    offered: counts to choose one of, where the page is about none; then `grade` is that of the gap they could fill.
    """

    class_group = ClassOfAYear(
        queryset=ClassGroup.objects.none(),
        label=gettext_lazy("Class"),
        widget=forms.RadioSelect,
        empty_label=None,
        error_messages={
            "required": gettext_lazy("Choose the class."),
            "invalid_choice": gettext_lazy("Choose one of your own classes."),
        },
    )
    on = forms.DateField(
        label=gettext_lazy("Day"),
        widget=forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
        error_messages={
            "required": gettext_lazy("Choose the day."),
            "invalid": gettext_lazy("Write the day as year-month-day, such as 2026-11-20."),
        },
    )

    def __init__(
        self, *args: Any, user: User, grade: int, today: date, offered: Sequence[Routine] = (), **kwargs: Any
    ) -> None:
        super().__init__(*args, **kwargs)
        self.today = today
        classes = ClassGroup.objects.taught_by(user).filter(year__ends_on__gte=today).with_people()
        mine = classes.order_by("year__starts_on", "grade__order", "name")
        offer_rows(self, "class_group", mine)
        self.has_classes = bool(mine)
        offered_classes = self.fields["class_group"]
        if isinstance(offered_classes, ClassOfAYear):
            offered_classes.with_year = len({group.year_id for group in mine}) > 1
        self.fields["on"].initial = next_school_day(today)
        if mine:
            first = min(mine, key=lambda group: (group.year.starts_on, group.grade_id != grade))
            self.fields["class_group"].initial = first.pk
            self.fields["on"].initial = min(max(next_school_day(today), first.year.starts_on), first.year.ends_on)
        self.fields["on"].widget.attrs["min"] = today.isoformat()
        self.offered = {str(routine.pk): routine for routine in offered}
        if offered:
            self.fields["routine"] = forms.ChoiceField(
                choices=[(key, routine.title) for key, routine in self.offered.items()],
                initial=next(iter(self.offered)),
                error_messages={"required": _("Choose the count."), "invalid_choice": _("Choose one of these counts.")},
            )

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        group, on = cleaned.get("class_group"), cleaned.get("on")
        if on and on < self.today:
            self.add_error("on", _("Choose today or a later day."))
        elif group and on and not group.year.starts_on <= on <= group.year.ends_on:
            days = {
                "class": group.name,
                "first": day(group.year.starts_on),
                "last": day(group.year.ends_on),
            }
            self.add_error("on", _("Choose a day from %(first)s to %(last)s, the school year of %(class)s.") % days)
        return cleaned
