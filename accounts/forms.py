"""The forms of people and of the school."""

import zoneinfo
from calendar import month_name
from typing import Any

from django import forms
from django.contrib.auth import authenticate
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError

from .model_forms import ModelForm
from .models import School, User
from .passphrases import MOST_TYPED, TOO_LONG
from .requests import SignedInRequest
from .same_text import passphrase_text

LANGUAGES = [("en", "English"), ("es", "Spanish")]


class PassphraseField(forms.CharField):
    """Typed unseen; handed on just as it was typed, spaces and all. `purpose` is what password managers go by."""

    def __init__(self, *, label: str, missing: str, purpose: str, help_text: str = "") -> None:
        super().__init__(
            label=label,
            max_length=MOST_TYPED,
            strip=False,
            help_text=help_text,
            widget=forms.PasswordInput(attrs={"autocomplete": purpose}),
            error_messages={"required": missing, "max_length": TOO_LONG},
        )

    def widget_attrs(self, widget: forms.Widget) -> dict[str, Any]:
        return {}  # a browser would cut what is pasted at the limit, and say nothing


class SignInForm(forms.Form):
    name = forms.CharField(
        label="Name or e-mail",
        max_length=254,
        widget=forms.TextInput(attrs={"autocomplete": "username", "autocapitalize": "none", "spellcheck": "false"}),
        error_messages={"required": "Write your sign-in name or your e-mail."},
    )
    passphrase = PassphraseField(label="Passphrase", missing="Write your passphrase.", purpose="current-password")


class NewPassphraseFields(forms.Form):
    """A new passphrase, typed twice."""

    passphrase = PassphraseField(
        label="New passphrase",
        missing="Choose a passphrase.",
        purpose="new-password",
        help_text=(
            "Fifteen characters or more. Four or five words that don't belong together are easy to keep in mind. "
            "A sign that another keyboard lacks is hard to type there."
        ),
    )
    passphrase_again = PassphraseField(
        label="The same again", missing="Type the passphrase a second time.", purpose="new-password"
    )

    def check_new_passphrase(self, person: User) -> None:
        passphrase, again = self.cleaned_data.get("passphrase"), self.cleaned_data.get("passphrase_again")
        if passphrase and again and passphrase_text(passphrase) != passphrase_text(again):
            self.add_error("passphrase_again", "The two are not the same. Type both again.")
        elif passphrase:
            try:
                validate_password(passphrase, person)
            except ValidationError as error:
                self.add_error("passphrase", error)


class ResetForm(NewPassphraseFields):
    def __init__(self, *args: Any, person: User, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.reset_for = person

    def clean(self) -> dict[str, Any]:
        super().clean()
        self.check_new_passphrase(self.reset_for)
        return self.cleaned_data


class ChangePassphraseForm(ResetForm):
    """Asks for the passphrase until now. A wrong one is a try like any at sign-in, counted with those."""

    current = PassphraseField(
        label="Your passphrase until now", missing="Write the passphrase you have now.", purpose="current-password"
    )
    field_order = ["current", "passphrase", "passphrase_again"]

    def __init__(self, *args: Any, request: SignedInRequest, **kwargs: Any) -> None:
        super().__init__(*args, person=request.user, **kwargs)
        self.request = request

    def clean_current(self) -> str:
        typed: str = self.cleaned_data["current"]
        if authenticate(self.request, username=self.reset_for.sign_in_name, password=typed) != self.reset_for:
            raise ValidationError("This is not your passphrase. Try again.")
        return typed


class PersonDetails(ModelForm[User]):
    class Meta:
        model = User
        fields = ["display_name", "email"]
        labels = {"display_name": "Your name", "email": "E-mail (if you like)"}
        help_texts = {"email": "You can sign in with it too. Countfold sends no mail."}
        error_messages = {
            "display_name": {"required": "Write the name your colleagues know you by."},
            "email": {"invalid": "Write an e-mail such as lee@school.example, or leave it empty."},
        }


class NewPersonForm(NewPassphraseFields, PersonDetails):
    """Someone with a fresh account: the first administrator, or whoever takes an invitation."""

    class Meta(PersonDetails.Meta):
        fields = ["display_name", "sign_in_name", "email"]
        labels = {**PersonDetails.Meta.labels, "sign_in_name": "Sign-in name"}
        help_texts = {**PersonDetails.Meta.help_texts, "sign_in_name": "Short, such as lee or l.moreno."}
        error_messages = {
            **PersonDetails.Meta.error_messages,
            "sign_in_name": {
                "required": "Choose a short name to sign in with.",
                "unique": "Someone already signs in with this name. Choose another.",
            },
        }
        widgets = {
            "sign_in_name": forms.TextInput(
                attrs={"autocomplete": "username", "autocapitalize": "none", "spellcheck": "false"}
            )
        }

    def clean(self) -> dict[str, Any]:
        super().clean()
        typed = {name: self.cleaned_data.get(name, "") for name in ("sign_in_name", "display_name", "email")}
        self.check_new_passphrase(User(**typed))
        return self.cleaned_data


class InviteForm(forms.Form):
    display_name = forms.CharField(
        label="Name", max_length=80, error_messages={"required": "Write whom the invitation is for."}
    )
    role = forms.ChoiceField(
        label="Role",
        choices=User.Role.choices,
        initial=User.Role.TEACHER,
        error_messages={"invalid_choice": "Choose teacher, math coach or administrator."},
    )


class RoleForm(forms.Form):
    role = forms.ChoiceField(
        choices=User.Role.choices,
        error_messages={"invalid_choice": "Choose teacher, math coach or administrator."},
    )


def time_zones() -> list[tuple[str, str]]:
    names = sorted(name for name in zoneinfo.available_timezones() if "/" in name and not name.startswith("Etc/"))
    return [(name, name.replace("_", " ")) for name in [*names, "UTC"]]


class SchoolForm(ModelForm[School]):
    languages = forms.MultipleChoiceField(
        label="Languages of mathematics",
        choices=LANGUAGES,
        widget=forms.CheckboxSelectMultiple,
        initial=["en"],
        error_messages={"required": "Choose at least one language."},
    )
    time_zone = forms.ChoiceField(
        label="Time zone",
        choices=time_zones,
        initial="America/New_York",
        error_messages={"invalid_choice": "Choose a time zone from the list."},
    )

    year_starts_month = forms.TypedChoiceField(
        label="The school year starts in",
        coerce=int,
        choices=[(number, name) for number, name in enumerate(month_name) if number],
        initial=8,
        error_messages={"invalid_choice": "Choose a month."},
    )

    class Meta:
        model = School
        fields = [
            "name",
            "paper",
            "unit_system",
            "currency",
            "decimal_mark",
            "thousands",
            "clock",
            "time_zone",
            "year_starts_month",
            "year_starts_day",
            "languages",
        ]
        labels = {
            "name": "Name of the school",
            "paper": "Paper",
            "unit_system": "Units",
            "currency": "Currency",
            "decimal_mark": "Decimal mark",
            "thousands": "Between thousands",
            "clock": "Clock",
            "year_starts_day": "on day",
        }
        help_texts = {"currency": "Three letters, such as USD."}
        error_messages = {
            "name": {"required": "Write the name of the school."},
            "currency": {"max_length": "Write the three letters of the currency, such as USD."},
            "year_starts_day": {"min_value": "Choose a day of the month.", "max_value": "Choose a day of the month."},
        }

    def clean_currency(self) -> str:
        typed: str = self.cleaned_data["currency"]
        return typed.upper()

    def clean(self) -> dict[str, Any]:
        super().clean()
        month, day = self.cleaned_data.get("year_starts_month"), self.cleaned_data.get("year_starts_day")
        if month and day and day > DAYS_OF_MONTH[month - 1]:
            self.add_error("year_starts_day", "This month has no such day. Choose an earlier one.")
        if self.cleaned_data.get("decimal_mark") == self.cleaned_data.get("thousands"):
            self.add_error("thousands", "Choose something other than the decimal mark.")
        return self.cleaned_data


# February has 28: the first day of school comes every year.
DAYS_OF_MONTH = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
