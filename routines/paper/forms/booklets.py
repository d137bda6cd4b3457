"""Choosing what goes into a booklet."""

from typing import Any

from django import forms
from django.db.models import QuerySet
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.offered import offer_rows
from accounts.typed_fields import Ticked
from accounts.typed_numbers import typed_ids
from routines.models import Routine, UnreadablePlan
from routines.paper.booklet import AT_MOST
from routines.paper.forms.prints import LANGUAGES
from routines.paper.prints import PRINTS

CONTENTS = [(name, one.title) for name, one in PRINTS.items()]


class BookletForm(forms.Form):
    """`offered` are the routines that the person may print."""

    title = forms.CharField(max_length=120, error_messages={"required": _("Give the booklet a title.")})
    routine = Ticked(queryset=Routine.objects.none(), error_messages={"required": _("Tick at least one count.")})
    contents = forms.MultipleChoiceField(
        choices=CONTENTS, error_messages={"required": _("Tick what goes into the booklet.")}
    )
    language = forms.ChoiceField(choices=LANGUAGES, required=False)

    def __init__(self, *args: Any, offered: QuerySet[Routine], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        offer_rows(self, "routine", offered)

    def clean_routine(self) -> list[Routine]:
        """In the order in which they were listed."""
        ticked = list(self.cleaned_data["routine"])
        if len(ticked) > AT_MOST:
            raise forms.ValidationError(
                gettext("A booklet holds %(most)s counts at most; %(number)s are ticked.")
                % {"most": AT_MOST, "number": len(ticked)}
            )
        for routine in ticked:
            try:
                routine.plan  # noqa: B018 - read only to see whether it can be
            except UnreadablePlan:
                raise forms.ValidationError(
                    gettext("The plan of “%(title)s” can’t be read. Take it off.") % {"title": routine.title}
                ) from None
        order = {pk: place for place, pk in enumerate(typed_ids(self["routine"].data))}
        return sorted(ticked, key=lambda routine: order[routine.pk])
