"""What a field of a form offers, where that is known only once the form is made."""

from collections.abc import Iterable
from typing import Any

from django import forms
from django.db.models import QuerySet

from .translated import Translated


def offer_rows(form: forms.BaseForm, name: str, rows: QuerySet[Any]) -> None:
    """Let the field `name` of this form offer these rows. Raises TypeError where it is no field that offers rows."""
    field = form.fields[name]
    if not isinstance(field, forms.ModelChoiceField):
        raise TypeError(f"{name} offers no rows.")
    field.queryset = rows


def offer_choices(form: forms.BaseForm, name: str, choices: Iterable[tuple[str, Translated]]) -> None:
    """Let the field `name` of this form offer these (value, label). Raises TypeError where it is no field of choices."""
    field = form.fields[name]
    if not isinstance(field, forms.ChoiceField):
        raise TypeError(f"{name} offers no choices.")
    field.choices = list(choices)
