"""The kinds of field that the plan form is made of, with the sentences they answer wrong input with."""

from django import forms


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


def short_text(label: str, limit: int, *, placeholder: str = "", size: int | None = None) -> forms.CharField:
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


def choice(label: str, choices, *, required: bool = True) -> forms.ChoiceField:
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
