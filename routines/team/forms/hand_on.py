"""Who takes over a leaver's counts and classes."""

from typing import Any

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from accounts.offered import offer_rows
from routines.team.handing_on import Left


class HandOnForm(forms.Form):
    to = forms.ModelChoiceField(
        queryset=User.objects.none(),
        label=_("Hand them on to"),
        empty_label=_("choose a colleague"),
        error_messages={"required": _("Choose a colleague."), "invalid_choice": _("Choose a colleague from the list.")},
    )
    drafts = forms.BooleanField(required=False, label=_("The drafts too; the colleague will read them"))

    classes = forms.BooleanField(required=False, label=_("The classes too, with what is planned for them"))

    def __init__(self, *args: Any, leaver: User, left: Left, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.left = left
        offer_rows(self, "to", User.objects.active().exclude(pk=leaver.pk).in_name_order())

    def clean(self) -> dict[str, Any]:
        """Something must be handed on: counts of the bank are, all else where it is ticked."""
        super().clean()
        chosen = self.cleaned_data
        asked = self.left.shared or (self.left.drafts and chosen["drafts"]) or (self.left.classes and chosen["classes"])
        if not asked:
            self.add_error(None, gettext("Tick what is to be handed on."))
        return chosen
