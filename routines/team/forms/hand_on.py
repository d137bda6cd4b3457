"""Who takes over a leaver's counts."""

from typing import Any

from django import forms
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from accounts.offered import offer_rows


class HandOnForm(forms.Form):
    to = forms.ModelChoiceField(
        queryset=User.objects.none(),
        label=_("Hand them on to"),
        empty_label=_("choose a colleague"),
        error_messages={"required": _("Choose a colleague."), "invalid_choice": _("Choose a colleague from the list.")},
    )
    drafts = forms.BooleanField(required=False, label=_("The drafts too; the colleague will read them"))

    def __init__(self, *args: Any, leaver: User, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        offer_rows(self, "to", User.objects.active().exclude(pk=leaver.pk).in_name_order())
