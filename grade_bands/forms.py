"""The forms of set-up, grades, classes and standards."""

import io
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.languages import LANGUAGES
from accounts.model_forms import ModelForm
from accounts.models import CodeTries, User
from accounts.models.code_tries import SET_UP, sentence_to_wait
from accounts.set_up_code import is_set_up_code
from accounts.text import read_bytes

from .models import Area, ClassGroup, Grade, GradeBand
from .standards import StandardRow, StandardsFileError, read_standards
from .starting_point import GRADE_NAMES, USUAL_LEVELS
from .teachers import Everybody, TeachersField, offer_teachers

LARGEST_FILE = 2_000_000
GRADES_TO_SPEAK_TO = [
    (0, _("Kindergarten")),
    (1, _("Grade 1")),
    (2, _("Grade 2")),
    (3, _("Grade 3")),
    (4, _("Grade 4")),
    (5, _("Grade 5")),
    (6, _("Grade 6")),
    (7, _("Grade 7")),
    (8, _("Grade 8")),
]


class SetUpForm(forms.Form):
    """What set-up asks beside the school and its first administrator."""

    levels = forms.TypedMultipleChoiceField(
        label=_("Grades of your school"),
        coerce=int,
        choices=list(enumerate(GRADE_NAMES)),
        initial=list(USUAL_LEVELS),
        widget=forms.CheckboxSelectMultiple,
        help_text=_("They plan together as K-1, 2-3, 4-5 and 6-8. You can change all of it later."),
        error_messages={"required": _("Choose at least one grade.")},
    )
    with_common_core = forms.BooleanField(
        label=_("Load the Common Core standards, K to 6"), required=False, initial=True
    )


class SetUpCodeForm(forms.Form):
    code = forms.CharField(
        label=_("Set-up code"),
        max_length=40,
        help_text=_("The server printed it when it started. Whoever runs it can read it there."),
        widget=forms.TextInput(attrs={"autocomplete": "off", "autocapitalize": "none", "spellcheck": "false"}),
        error_messages={"required": _("Write the code that the server printed.")},
    )

    def __init__(self, *args: Any, address: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.address = address
        self.locked = False

    def clean_code(self) -> str:
        wait = CodeTries.objects.take(SET_UP, self.address)
        if wait:
            self.locked = True
            raise ValidationError(sentence_to_wait(wait))
        typed: str = self.cleaned_data["code"]
        if not is_set_up_code(typed):
            raise ValidationError(gettext("This is not the code the server printed. Look there and type it again."))
        CodeTries.objects.forget(SET_UP)
        return typed


class GradeForm(ModelForm[Grade]):
    level = forms.TypedChoiceField(
        label=_("Questions and answers speak as for"),
        coerce=int,
        choices=GRADES_TO_SPEAK_TO,
        error_messages={"invalid_choice": _("Choose a grade from kindergarten to 8.")},
    )
    areas = forms.MultipleChoiceField(
        label=_("Areas expected in this grade"),
        choices=Area.choices,
        required=False,
        widget=forms.CheckboxSelectMultiple,
        help_text=_("Coverage shows the others as not expected. Ratios wait until counts can be made for them."),
    )

    class Meta:
        model = Grade
        fields = ["name", "order", "level", "band", "areas"]
        labels = {"order": _("Place in the order")}
        error_messages = {
            "name": {
                "required": _("Write a short name, such as K or 1."),
                "unique": _("There is a grade with this name."),
            },
            "order": {"unique": _("Another grade has this place. Choose another number.")},
        }


class GradeBandForm(ModelForm[GradeBand]):
    class Meta:
        model = GradeBand
        fields = ["name", "order"]
        labels = {"order": _("Place in the order")}
        error_messages = {
            "name": {"required": _("Write a short name, such as K-1."), "unique": _("There is a band with this name.")},
            "order": {"unique": _("Another band has this place. Choose another number.")},
        }


class ClassGroupForm(ModelForm[ClassGroup]):
    teachers = TeachersField()
    languages = forms.MultipleChoiceField(
        label=_("Languages of mathematics"),
        choices=LANGUAGES.items(),
        initial=["en"],
        widget=forms.CheckboxSelectMultiple,
        error_messages={"required": _("Choose at least one language.")},
    )

    class Meta:
        model = ClassGroup
        fields = ["name", "grade", "year", "teachers", "languages"]
        labels = {"name": _("Class")}
        help_texts = {"name": _("Such as 2B or Room 14. No names of children.")}
        error_messages = {
            "name": {"required": _("Write a name for the class.")},
            "grade": {"required": _("Choose a grade.")},
            "year": {"required": _("Choose a school year.")},
        }

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.everybody = Everybody(User.objects.active().in_name_order())
        now = User.objects.filter(class_groups=self.instance).in_name_order() if self.instance.pk else ()
        offer_teachers(self, self.everybody, {person.pk: person.display_name for person in now})


class _FrameworkForm(forms.Form):
    framework = forms.CharField(
        label=_("Name of the standards"),
        max_length=80,
        help_text=_("Such as the name of your state's or country's standards."),
        error_messages={"required": _("Write what these standards are called.")},
    )


class StandardsFileForm(_FrameworkForm):
    """Standards to be looked at. Cleaned, `file` is its text and its rows."""

    file = forms.FileField(
        label=_("CSV file"),
        help_text=_("First line: code, area, summary; if you have them also grade, number_limits, count_features."),
        error_messages={"required": _("Choose a file."), "empty": _("This file is empty. Choose another.")},
    )

    def clean_file(self) -> tuple[str, list[StandardRow]]:
        upload = self.cleaned_data["file"]
        if upload.size > LARGEST_FILE:
            raise ValidationError(gettext("This file is over 2 MB. Split it."))
        try:
            text = read_bytes(upload.read())
        except ValueError:
            raise ValidationError(gettext("Save the file as CSV in UTF-8 and choose it again.")) from None
        return text, _rows_of(text)


class StandardsTextForm(_FrameworkForm):
    """What was looked at, to be kept. Cleaned, `content` is its rows."""

    content = forms.CharField(
        strip=False, max_length=LARGEST_FILE, error_messages={"required": _("Choose the file again.")}
    )

    def clean_content(self) -> list[StandardRow]:
        return _rows_of(self.cleaned_data["content"])


def _rows_of(text: str) -> list[StandardRow]:
    try:
        return read_standards(io.StringIO(text, newline=""))
    except StandardsFileError as error:
        raise ValidationError(list(error.sentences)) from None
