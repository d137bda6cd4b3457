"""The kinds of field that the plan form is made of, with the sentences they answer wrong input with."""

from collections.abc import Iterable
from typing import Any

from django import forms

from accounts.translated import Translated
from routines.models.declared import Declared


def whole_number(label: str, low: int, high: int, *, required: bool = True, size: int = 4) -> forms.IntegerField:
    """A whole number typed as text, so that a wrong one stays in its field."""
    wrong = f"Write a whole number from {low} to {high}."
    return forms.IntegerField(
        label=label,
        min_value=low,
        max_value=high,
        required=required,
        widget=forms.TextInput(attrs={"inputmode": "numeric", "size": size, "autocomplete": "off"}),
        error_messages={"required": wrong, "invalid": wrong, "min_value": wrong, "max_value": wrong},
    )


def shorten(limit: int, length: int) -> str:
    return f"Shorten this to {limit} characters; it has {length}."


def written(declared: Declared, *, required: bool = False, rows: int = 1, size: int = 4) -> forms.Field:
    """The field for what the plan document declares. A list is written one a line; a number left out is 0."""
    if declared.choices:
        raise ValueError("A choice needs its words: use `choice`.")
    if declared.type is int:
        return whole_number(declared.title, declared.low or 0, declared.high or 0, required=required, size=size)
    if declared.type is tuple:
        return Lines(declared, rows=rows)
    return sentence(declared.title, declared.limit or 0, rows=rows, placeholder=declared.hint, required=required)


class Lines(forms.CharField):
    """Texts one a line; the value is a tuple of them."""

    def __init__(self, declared: Declared, *, rows: int) -> None:
        super().__init__(
            label=declared.title,
            required=False,
            widget=forms.Textarea(attrs={"rows": rows, "placeholder": declared.hint}),
        )
        self.declared = declared

    def clean(self, value: Any) -> tuple[str, ...]:
        lines = tuple(line.strip() for line in super().clean(value).splitlines() if line.strip())
        most, longest = self.declared.limit or 0, (self.declared.item or self.declared).limit or 0
        if len(lines) > most:
            raise forms.ValidationError(f"Keep {most} lines at most.")
        if any(len(line) > longest for line in lines):
            raise forms.ValidationError(f"Shorten each line to {longest} characters.")
        return lines


def sentence(
    label: str, limit: int, *, rows: int = 1, placeholder: str = "", required: bool = False
) -> forms.CharField:
    attrs = {"rows": rows, "placeholder": placeholder}
    return forms.CharField(
        label=label,
        max_length=limit,
        required=required,
        widget=forms.Textarea(attrs=attrs),
        error_messages={
            "required": f"Write the {label.lower()}, or take the row out.",
            "max_length": "Shorten this to %(limit_value)d characters; it has %(show_value)d.",
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
        error_messages={"max_length": "Shorten this to %(limit_value)d characters; it has %(show_value)d."},
    )


def choice(label: Translated, choices: Iterable[tuple[str, Translated]], *, required: bool = True) -> forms.ChoiceField:
    listed = list(choices)
    return forms.ChoiceField(
        label=label,
        choices=listed,
        required=required,
        error_messages={
            "required": f"Choose the {label.lower()}.",
            "invalid_choice": f"Choose the {label.lower()} from the list.",
        },
    )
