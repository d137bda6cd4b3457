"""A colleague's note on a routine."""

from django import forms
from django.utils.translation import gettext_lazy as _

from accounts.names_asked import NamesAskedForm


class NoteForm(NamesAskedForm):
    asked_fields = ("text",)
    text = forms.CharField(
        max_length=2000,
        label=_("A note for colleagues"),
        help_text=_("Write the idea, not who said it."),
        widget=forms.Textarea(attrs={"rows": 3}),
        error_messages={"required": _("Write a few words first.")},
    )
