"""The kinds of field that the plan form is made of, with the sentences they answer wrong input with."""

from collections.abc import Iterable
from typing import Any

from django import forms
from django.utils.functional import lazy
from django.utils.text import format_lazy
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.translated import Translated
from routines.models.declared import Declared


def _as_it_stands(words: Translated) -> str:
    return str(words).lower()


_lowered = lazy(_as_it_stands, str)


def whole_number(label: Translated, low: int, high: int, *, required: bool = True, size: int = 4) -> forms.IntegerField:
    """A whole number typed as text, so that a wrong one stays in its field."""
    wrong = format_lazy(_("Write a whole number from {low} to {high}."), low=low, high=high)
    return forms.IntegerField(
        label=label,
        min_value=low,
        max_value=high,
        required=required,
        widget=forms.TextInput(attrs={"inputmode": "numeric", "size": size, "autocomplete": "off"}),
        error_messages={"required": wrong, "invalid": wrong, "min_value": wrong, "max_value": wrong},
    )


def shorten(limit: int, length: int) -> str:
    return gettext("Shorten this to %(limit)s characters; it has %(length)s.") % {"limit": limit, "length": length}


def written(declared: Declared, *, required: bool = False, rows: int = 1, size: int = 4) -> forms.Field:
    """The field for what the plan document declares. A list is written one a line; a number left out is 0."""
    if declared.choices:
        raise ValueError("A choice needs its words: use `choice`.")
    if declared.type is int:
        return whole_number(_(declared.title), declared.low or 0, declared.high or 0, required=required, size=size)
    if declared.type is tuple:
        return Lines(declared, rows=rows)
    return sentence(_(declared.title), declared.limit or 0, rows=rows, placeholder=_(declared.hint), required=required)


class Lines(forms.CharField):
    """Texts one a line; the value is a tuple of them."""

    def __init__(self, declared: Declared, *, rows: int) -> None:
        super().__init__(
            label=_(declared.title),
            required=False,
            widget=forms.Textarea(attrs={"rows": rows, "placeholder": _(declared.hint)}),
        )
        self.declared = declared

    def clean(self, value: Any) -> tuple[str, ...]:
        lines = tuple(line.strip() for line in super().clean(value).splitlines() if line.strip())
        most, longest = self.declared.limit or 0, (self.declared.item or self.declared).limit or 0
        if len(lines) > most:
            raise forms.ValidationError(gettext("Keep %(most)s lines at most.") % {"most": most})
        if any(len(line) > longest for line in lines):
            raise forms.ValidationError(gettext("Shorten each line to %(longest)s characters.") % {"longest": longest})
        return lines


def sentence(
    label: Translated, limit: int, *, rows: int = 1, placeholder: Translated = "", required: bool = False
) -> forms.CharField:
    attrs = {"rows": rows, "placeholder": placeholder}
    return forms.CharField(
        label=label,
        max_length=limit,
        required=required,
        widget=forms.Textarea(attrs=attrs),
        error_messages={
            "required": format_lazy(_("Write the {label}, or take the row out."), label=_lowered(label)),
            "max_length": _("Shorten this to %(limit_value)d characters; it has %(show_value)d."),
        },
    )


def short_text(
    label: Translated, limit: int, *, placeholder: Translated = "", size: int | None = None
) -> forms.CharField:
    attrs: dict[str, object] = {"placeholder": placeholder, "autocomplete": "off"}
    if size:
        attrs["size"] = size
    return forms.CharField(
        label=label,
        max_length=limit,
        required=False,
        widget=forms.TextInput(attrs=attrs),
        error_messages={"max_length": _("Shorten this to %(limit_value)d characters; it has %(show_value)d.")},
    )


class Menu(forms.Select):
    """What it offers is given anew or not at all, so that no form needs a copy of it."""

    def __deepcopy__(self, memo: dict[int, Any]) -> "Menu":
        return forms.Widget.__deepcopy__(self, memo)


class Choice(forms.ChoiceField):
    """As its menu."""

    widget = Menu

    def __deepcopy__(self, memo: dict[int, Any]) -> "Choice":
        return forms.Field.__deepcopy__(self, memo)


def choice(label: Translated, choices: Iterable[tuple[str, Translated]], *, required: bool = True) -> forms.ChoiceField:
    listed = list(choices)
    return Choice(
        label=label,
        choices=listed,
        required=required,
        error_messages={
            "required": format_lazy(_("Choose the {label}."), label=_lowered(label)),
            "invalid_choice": format_lazy(_("Choose the {label} from the list."), label=_lowered(label)),
        },
    )
