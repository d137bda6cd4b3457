"""Choosing a colleague to write a plan together with."""

from django import forms

from accounts.models import User
from routines.models import Routine


class CoAuthorForm(forms.Form):
    person = forms.ModelChoiceField(
        queryset=User.objects.none(),
        label="Write it together with",
        empty_label="choose a colleague",
        error_messages={"required": "Choose a colleague.", "invalid_choice": "Choose a colleague from the list."},
    )

    def __init__(self, *args, routine: Routine, **kwargs) -> None:
        super().__init__(*args, **kwargs)
        others = User.objects.active().exclude(pk=routine.owner_id)
        # Those who are co-authors already are not offered, but asking for one twice is no mistake.
        if not self.is_bound:
            others = others.exclude(co_authored_routines=routine)
        self.fields["person"].queryset = others.in_name_order()
