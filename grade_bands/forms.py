"""The forms of set-up, grades, classes, years and standards."""

import io
from datetime import timedelta
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from accounts.forms import LANGUAGES
from accounts.model_forms import ModelForm
from accounts.models import SetUpTries, User
from accounts.offered import offer_rows
from accounts.set_up_code import is_set_up_code
from accounts.text import read_bytes
from accounts.typed_fields import Ticked

from .models import Area, ClassGroup, Grade, GradeBand, SchoolYear
from .standards import StandardRow, StandardsFileError, read_standards
from .starting_point import GRADE_NAMES, USUAL_LEVELS

LARGEST_FILE = 2_000_000
MOST_DAYS = 400  # coverage shows a school year week by week


class SetUpForm(forms.Form):
    """What set-up asks beside the school and its first administrator."""

    levels = forms.TypedMultipleChoiceField(
        label="Grades of your school",
        coerce=int,
        choices=list(enumerate(GRADE_NAMES)),
        initial=list(USUAL_LEVELS),
        widget=forms.CheckboxSelectMultiple,
        help_text="They plan together as K-1, 2-3, 4-5 and 6-8. You can change all of it later.",
        error_messages={"required": "Choose at least one grade."},
    )
    with_common_core = forms.BooleanField(label="Load the Common Core standards, K to 6", required=False, initial=True)


class SetUpCodeForm(forms.Form):
    code = forms.CharField(
        label="Set-up code",
        max_length=40,
        help_text="The server printed it when it started. Whoever runs it can read it there.",
        widget=forms.TextInput(attrs={"autocomplete": "off", "autocapitalize": "none", "spellcheck": "false"}),
        error_messages={"required": "Write the code that the server printed."},
    )

    def __init__(self, *args: Any, address: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.address = address
        self.locked = False

    def clean_code(self) -> str:
        wait = SetUpTries.objects.take(self.address)
        if wait:
            self.locked = True
            minutes = -(-wait // timedelta(minutes=1))
            raise ValidationError(
                f"Too many tries. Wait {minutes} minute{'s' if minutes > 1 else ''}, then type the code again."
            )
        typed: str = self.cleaned_data["code"]
        if not is_set_up_code(typed):
            raise ValidationError("This is not the code the server printed. Look there and type it again.")
        SetUpTries.objects.all().delete()
        return typed


class GradeForm(ModelForm[Grade]):
    areas = forms.MultipleChoiceField(
        label="Areas expected in this grade",
        choices=Area.choices,
        required=False,
        widget=forms.CheckboxSelectMultiple,
        help_text="Coverage shows the others as not expected.",
    )

    class Meta:
        model = Grade
        fields = ["name", "order", "level", "band", "areas"]
        labels = {"level": "How texts speak", "order": "Place in the order"}
        help_texts = {"level": "0 for kindergarten, 1 for grade 1, up to 8."}
        error_messages = {
            "name": {"required": "Write a short name, such as K or 1.", "unique": "There is a grade with this name."},
            "order": {"unique": "Another grade has this place. Choose another number."},
            "level": {
                "min_value": "The level goes from 0 for kindergarten to 8.",
                "max_value": "The level goes from 0 for kindergarten to 8.",
            },
        }


class GradeBandForm(ModelForm[GradeBand]):
    class Meta:
        model = GradeBand
        fields = ["name", "order"]
        labels = {"order": "Place in the order"}
        error_messages = {
            "name": {"required": "Write a short name, such as K-1.", "unique": "There is a band with this name."},
            "order": {"unique": "Another band has this place. Choose another number."},
        }


class SchoolYearForm(ModelForm[SchoolYear]):
    class Meta:
        model = SchoolYear
        fields = ["name", "starts_on", "ends_on"]
        labels = {"name": "Year", "starts_on": "First day", "ends_on": "Last day"}
        widgets = {
            "starts_on": forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
            "ends_on": forms.DateInput(attrs={"type": "date"}, format="%Y-%m-%d"),
        }
        error_messages = {
            "name": {"required": "Write a name, such as 2026-27.", "unique": "There is a year with this name."},
            "starts_on": {
                "required": "Choose the first day.",
                "invalid": "Write a date such as 2026-08-15.",
                "unique": "Another year starts on this day.",
            },
            "ends_on": {"required": "Choose the last day.", "invalid": "Write a date such as 2027-06-11."},
        }

    def clean(self) -> dict[str, Any]:
        super().clean()
        first, last = self.cleaned_data.get("starts_on"), self.cleaned_data.get("ends_on")
        if first and last and (last - first).days > MOST_DAYS:
            self.add_error("ends_on", f"A school year has at most {MOST_DAYS} days. Choose an earlier last day.")
        return self.cleaned_data


class ClassGroupForm(ModelForm[ClassGroup]):
    languages = forms.MultipleChoiceField(
        label="Languages of mathematics",
        choices=LANGUAGES,
        initial=["en"],
        widget=forms.CheckboxSelectMultiple,
        error_messages={"required": "Choose at least one language."},
    )

    class Meta:
        model = ClassGroup
        fields = ["name", "grade", "year", "teachers", "languages"]
        labels = {"name": "Class", "teachers": "Who teaches it"}
        widgets = {"teachers": forms.CheckboxSelectMultiple}
        field_classes = {"teachers": Ticked}
        help_texts = {"name": "Such as 2B or Room 14. No names of children."}
        error_messages = {
            "name": {"required": "Write a name for the class."},
            "grade": {"required": "Choose a grade."},
            "year": {"required": "Choose a school year."},
        }

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        here = User.objects.active()
        if self.instance.pk:
            here = here | User.objects.filter(class_groups=self.instance)
        offer_rows(self, "teachers", here.distinct().order_by("display_name"))


class StandardsFileForm(forms.Form):
    framework = forms.CharField(
        label="Name of the standards",
        max_length=80,
        help_text="Such as the name of your state's or country's standards.",
        error_messages={"required": "Write what these standards are called."},
    )
    file = forms.FileField(
        label="CSV file",
        help_text="First line: code, area, summary; if you have them also grade, number_limits, count_features.",
        error_messages={"required": "Choose a file.", "empty": "This file is empty. Choose another."},
    )

    def clean_file(self) -> list[StandardRow]:
        upload = self.cleaned_data["file"]
        if upload.size > LARGEST_FILE:
            raise ValidationError("This file is over 2 MB. Split it.")
        try:
            text = read_bytes(upload.read())
        except ValueError:
            raise ValidationError("Save the file as CSV in UTF-8 and choose it again.") from None
        try:
            return read_standards(io.StringIO(text, newline=""))
        except StandardsFileError as error:
            raise ValidationError(str(error)) from None
