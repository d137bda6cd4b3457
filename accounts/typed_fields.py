"""Form fields that read ids out of a request."""

from typing import Any, TypeVar

from django import forms
from django.db.models import Model, QuerySet
from django.utils.translation import gettext as _

from .model_forms import ModelMultipleChoiceField
from .typed_numbers import typed_id

M = TypeVar("M", bound=Model)


class Ticked(ModelMultipleChoiceField[M]):
    """Rows ticked by their ids. What is no id, or longer than any, was never offered: it is refused before it is looked up."""

    def clean(self, value: Any) -> QuerySet[M]:
        if isinstance(value, (list, tuple)):
            value = [typed_id(str(text)) for text in value]
            if 0 in value:
                raise forms.ValidationError(_("Choose from the list."), code="invalid_choice")
        return super().clean(value)
