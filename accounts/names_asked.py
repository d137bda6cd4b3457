"""Free text beside a lesson: a text that looks as if it named a child is asked about before it is kept."""

from collections.abc import Sequence
from typing import Any

from django import forms
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.names_of_children import look_like_names

A_CHILD = "a-child"
"""The code of the question."""


def one_of(names: Sequence[str]) -> str:
    """The words that may be names, as the question lists them."""
    return _(" or ").join(names)


class NamesAskedForm(forms.Form):
    """`asked_fields` are looked through; ticking `no_names` says that the words found are not children."""

    asked_fields: tuple[str, ...] = ()
    no_names = forms.BooleanField(required=False, label=gettext_lazy("These are not children’s names; keep the text"))

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        if not cleaned.get("no_names"):
            for name in self.asked_fields:
                names = look_like_names(cleaned.get(name) or "")
                if names:
                    words = _("Is %(names)s a child? Write the idea, not who said it, or tick the box below.")
                    self.add_error(name, forms.ValidationError(words % {"names": one_of(names)}, code=A_CHILD))
        return cleaned

    @property
    def asks_about_names(self) -> bool:
        """True when the box to say "not a child" should be shown."""
        return any(self.has_error(name, A_CHILD) for name in self.errors)
