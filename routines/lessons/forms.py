"""Opening a lesson and pairing a device with it."""

from datetime import date
from typing import Any

from django import forms
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from accounts.offered import offer_rows
from grade_bands.models import ClassGroup, SchoolYear
from routines.models import Planned, Routine


class TeachForm(forms.Form):
    """Class and where to begin. Chosen at first: the class asked for, that it is planned for today, or one of its grade."""

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

    def __init__(
        self, *args: Any, user: User, routine: Routine, today: date, asked_for: int = 0, **kwargs: Any
    ) -> None:
        super().__init__(*args, **kwargs)
        classes = (
            ClassGroup.objects.taught_by(user).in_year(SchoolYear.objects.on(today)).with_people().in_grade_order()
        )
        planned = Planned.objects.filter(routine=routine, on=today, class_group__in=classes).first()
        offered = [group.pk for group in classes]
        of_its_grade = [group.pk for group in classes if group.grade_id == routine.grade_id]
        wanted = [asked_for, planned.class_group_id if planned else 0, *of_its_grade, *offered]
        offer_rows(self, "class_group", classes)
        self.fields["class_group"].initial = next((group for group in wanted if group in offered), None)


class PairForm(forms.Form):
    """The code that a waiting device shows, and what the device shall be."""

    code = forms.CharField(
        max_length=12,
        label=_("Code on the device"),
        widget=forms.TextInput(attrs={"inputmode": "numeric", "autocomplete": "off", "placeholder": "000 000"}),
        error_messages={
            "required": _("Type the six digits that the device shows."),
            "max_length": _("That is more than six characters. Type the six digits that the device shows."),
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
        return str(self.cleaned_data["role"] or "board")
