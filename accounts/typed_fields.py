"""Form fields that read ids out of a request."""

from django import forms

from .typed_numbers import typed_id


class Ticked(forms.ModelMultipleChoiceField):
    """Rows ticked by their ids. What is no id, or longer than any, was never offered: it is refused before it is looked up."""

    def clean(self, value):
        if isinstance(value, (list, tuple)):
            value = [typed_id(str(text)) for text in value]
            if 0 in value:
                raise forms.ValidationError("Choose from the list.", code="invalid_choice")
        return super().clean(value)
