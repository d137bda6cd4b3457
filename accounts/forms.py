"""The forms of people and of the school."""

import zoneinfo
from typing import Any

from django import forms
from django.contrib.auth import authenticate
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.utils.dates import MONTHS
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from .languages import LANGUAGES
from .model_forms import ModelForm
from .models import CodeTries, School, User
from .models.code_tries import RECOVERY, sentence_to_wait
from .passphrases import MOST_TYPED, TOO_LONG
from .recovery import CodeRefused, meant_by
from .requests import SignedInRequest
from .same_text import passphrase_text
from .translated import Translated


class PassphraseField(forms.CharField):
    """Typed unseen, unless one asks to see it; handed on just as it was typed, spaces and all. `purpose` is what password
    managers go by. A spelling checker, which may be somebody's far away, gets none of it while it is seen.
    """

    def __init__(self, *, label: Translated, missing: Translated, purpose: str, help_text: Translated = "") -> None:
        super().__init__(
            label=label,
            max_length=MOST_TYPED,
            strip=False,
            help_text=help_text,
            widget=forms.PasswordInput(
                attrs={"autocomplete": purpose, "autocapitalize": "none", "spellcheck": "false"}
            ),
            error_messages={"required": missing, "max_length": TOO_LONG},
        )

    def widget_attrs(self, widget: forms.Widget) -> dict[str, Any]:
        return {}  # a browser would cut what is pasted at the limit, and say nothing


class SignInForm(forms.Form):
    name = forms.CharField(
        label=_("Name or e-mail"),
        max_length=254,
        widget=forms.TextInput(attrs={"autocomplete": "username", "autocapitalize": "none", "spellcheck": "false"}),
        error_messages={"required": _("Write your sign-in name or your e-mail.")},
    )
    passphrase = PassphraseField(label=_("Passphrase"), missing=_("Write your passphrase."), purpose="current-password")


class NewPassphraseFields(forms.Form):
    """A new passphrase, typed twice."""

    passphrase = PassphraseField(
        label=_("New passphrase"),
        missing=_("Choose a passphrase."),
        purpose="new-password",
        help_text=(
            _(
                "Fifteen characters or more. Four or five words that don't belong together are easy to keep in mind. "
                "A sign that another keyboard lacks is hard to type there."
            )
        ),
    )
    passphrase_again = PassphraseField(
        label=_("The same again"), missing=_("Type the passphrase a second time."), purpose="new-password"
    )

    def check_new_passphrase(self, person: User) -> None:
        passphrase, again = self.cleaned_data.get("passphrase"), self.cleaned_data.get("passphrase_again")
        if passphrase and again and passphrase_text(passphrase) != passphrase_text(again):
            self.add_error("passphrase_again", gettext("The two are not the same. Type both again."))
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


class OwnPassphraseForm(forms.Form):
    """Asks for the passphrase until now. A wrong one is a try like any at sign-in, counted with those."""

    current = PassphraseField(
        label=_("Your passphrase until now"),
        missing=_("Write the passphrase you have now."),
        purpose="current-password",
    )

    def __init__(self, *args: Any, request: SignedInRequest, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.request = request

    def clean_current(self) -> str:
        typed: str = self.cleaned_data["current"]
        person = self.request.user
        if authenticate(self.request, username=person.sign_in_name, password=typed) != person:
            raise ValidationError(gettext("This is not your passphrase. Try again."))
        return typed


class ChangePassphraseForm(OwnPassphraseForm, NewPassphraseFields):
    field_order = ["current", "passphrase", "passphrase_again"]

    def clean(self) -> dict[str, Any]:
        super().clean()
        self.check_new_passphrase(self.request.user)
        return self.cleaned_data


class ProveItIsYouForm(OwnPassphraseForm):
    """Before something is shown or made that would be worth much to whoever finds a computer left signed in."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.fields["current"].label = _("Your passphrase")


class RecoveryForm(NewPassphraseFields):
    """Name and code of an administrator whom nobody else can let in, and the passphrase she chooses."""

    name = forms.CharField(
        label=_("Your name or e-mail, as at sign-in"),
        max_length=254,
        widget=forms.TextInput(attrs={"autocomplete": "username", "autocapitalize": "none", "spellcheck": "false"}),
        error_messages={"required": _("Write your sign-in name or your e-mail.")},
    )
    pass_code = forms.CharField(
        label=_("Recovery code"),
        max_length=60,
        widget=forms.TextInput(attrs={"autocomplete": "off", "autocapitalize": "none", "spellcheck": "false"}),
        error_messages={"required": _("Write the recovery code from its paper.")},
    )
    field_order = ["name", "pass_code", "passphrase", "passphrase_again"]

    def __init__(self, *args: Any, address: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.address = address
        self.locked = False
        self.person: User | None = None

    def clean(self) -> dict[str, Any]:
        super().clean()
        name, code = self.cleaned_data.get("name"), self.cleaned_data.get("pass_code")
        if name and code:
            self.person = self._who_may(name, code)
        if self.person:
            self.check_new_passphrase(self.person)
        return self.cleaned_data

    def _who_may(self, name: str, code: str) -> User | None:
        if wait := CodeTries.objects.take(RECOVERY, self.address):
            self.locked = True
            self.add_error("pass_code", sentence_to_wait(wait))
            return None
        try:
            person = meant_by(name, code)
        except CodeRefused:
            self.refuse()
            return None
        CodeTries.objects.forget(RECOVERY)
        return person

    def refuse(self) -> None:
        self.add_error(
            "pass_code",
            gettext("Name and code don't go together, or the code was used. It works for administrators only."),
        )


class PersonDetails(ModelForm[User]):
    class Meta:
        model = User
        fields = ["display_name", "email"]
        labels = {"display_name": _("Your name"), "email": _("E-mail (if you like)")}
        help_texts = {"email": _("You can sign in with it too. Countfold sends no mail.")}
        error_messages = {
            "display_name": {"required": _("Write the name your colleagues know you by.")},
            "email": {"invalid": _("Write an e-mail such as lee@school.example, or leave it empty.")},
        }


class NewPersonForm(NewPassphraseFields, PersonDetails):
    """Someone with a fresh account: the first administrator, or whoever takes an invitation."""

    class Meta(PersonDetails.Meta):
        fields = ["display_name", "sign_in_name", "email"]
        labels = {**PersonDetails.Meta.labels, "sign_in_name": _("Sign-in name")}
        help_texts = {**PersonDetails.Meta.help_texts, "sign_in_name": _("Short, such as lee or l.moreno.")}
        error_messages = {
            **PersonDetails.Meta.error_messages,
            "sign_in_name": {
                "required": _("Choose a short name to sign in with."),
                "unique": _("Someone already signs in with this name. Choose another."),
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
        label=_("Name"), max_length=80, error_messages={"required": _("Write whom the invitation is for.")}
    )
    role = forms.ChoiceField(
        label=_("Role"),
        choices=User.Role.choices,
        initial=User.Role.TEACHER,
        error_messages={"invalid_choice": _("Choose teacher, math coach or administrator.")},
    )


class RoleForm(forms.Form):
    role = forms.ChoiceField(
        choices=User.Role.choices,
        error_messages={"invalid_choice": _("Choose teacher, math coach or administrator.")},
    )


def time_zones() -> list[tuple[str, str]]:
    names = sorted(name for name in zoneinfo.available_timezones() if "/" in name and not name.startswith("Etc/"))
    return [(name, name.replace("_", " ")) for name in [*names, "UTC"]]


class SchoolForm(ModelForm[School]):
    languages = forms.MultipleChoiceField(
        label=_("Languages of mathematics"),
        choices=LANGUAGES.items(),
        widget=forms.CheckboxSelectMultiple,
        initial=["en"],
        error_messages={"required": _("Choose at least one language.")},
    )
    time_zone = forms.ChoiceField(
        label=_("Time zone"),
        choices=time_zones,
        initial="America/New_York",
        error_messages={"invalid_choice": _("Choose a time zone from the list.")},
    )

    year_starts_month = forms.TypedChoiceField(
        label=_("The school year starts in"),
        coerce=int,
        choices=list(MONTHS.items()),
        initial=8,
        error_messages={"invalid_choice": _("Choose a month.")},
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
            "name": _("Name of the school"),
            "paper": _("Paper"),
            "unit_system": _("Units"),
            "currency": _("Currency"),
            "decimal_mark": _("Decimal mark"),
            "thousands": _("Between thousands"),
            "clock": _("Clock"),
            "year_starts_day": _("on day"),
        }
        help_texts = {"currency": _("Three letters, such as USD.")}
        error_messages = {
            "name": {"required": _("Write the name of the school.")},
            "currency": {"max_length": _("Write the three letters of the currency, such as USD.")},
            "year_starts_day": {
                "min_value": _("Choose a day of the month."),
                "max_value": _("Choose a day of the month."),
            },
        }

    def clean_currency(self) -> str:
        typed: str = self.cleaned_data["currency"]
        return typed.upper()

    def clean(self) -> dict[str, Any]:
        super().clean()
        month, day = self.cleaned_data.get("year_starts_month"), self.cleaned_data.get("year_starts_day")
        if month and day and day > DAYS_OF_MONTH[month - 1]:
            self.add_error("year_starts_day", gettext("This month has no such day. Choose an earlier one."))
        if self.cleaned_data.get("decimal_mark") == self.cleaned_data.get("thousands"):
            self.add_error("thousands", gettext("Choose something other than the decimal mark."))
        return self.cleaned_data


# February has 28: the first day of school comes every year.
DAYS_OF_MONTH = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
