"""Choosing a colleague to write a plan together with."""

from typing import Any

from django import forms
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from accounts.models.user import UserQuerySet
from accounts.offered import offer_rows
from routines.models import Routine


class CoAuthorForm(forms.Form):
    person = forms.ModelChoiceField(
        queryset=User.objects.none(),
        label=_("Write it together with"),
        empty_label=_("choose a colleague"),
        error_messages={"required": _("Choose a colleague."), "invalid_choice": _("Choose a colleague from the list.")},
    )

    def __init__(self, *args: Any, routine: Routine, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        # Those who are co-authors already are not offered, but asking for one twice is no mistake.
        offer_rows(self, "person", _others(routine.owner_id))


def may_be_taken_in(routine: Routine, owner: int) -> UserQuerySet:
    """Who is offered."""
    return _others(owner).exclude(co_authored_routines=routine)


def _others(owner: int) -> UserQuerySet:
    return User.objects.active().exclude(pk=owner).in_name_order()
