"""What to print, and how."""

from typing import Any

from django import forms
from django.db.models import QuerySet
from django.utils.translation import gettext as _

from accounts.offered import offer_rows
from routines.models import Lesson
from routines.models.facts import LANGUAGES as OF_A_PLAN
from routines.paper.print import Wishes
from routines.paper.recording import AMOUNTS

LANGUAGES = [("", "as planned"), *OF_A_PLAN.items()]
SHOWS = [("plain", "plain"), ("lit", "with the targets lit"), ("lesson", "as it happened")]


class PrintForm(forms.Form):
    """`lessons` are those of this routine that the reader may read. Every field may be left out."""

    language = forms.ChoiceField(choices=LANGUAGES, required=False)
    starts_at = forms.TimeField(required=False)
    show = forms.ChoiceField(choices=SHOWS, required=False)
    lesson = forms.ModelChoiceField(queryset=Lesson.objects.none(), to_field_name="key", required=False)
    cleaned = forms.BooleanField(required=False)
    amount = forms.MultipleChoiceField(choices=[(amount, amount) for amount in AMOUNTS], required=False)

    def __init__(self, *args: Any, lessons: QuerySet[Lesson], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        offer_rows(self, "lesson", lessons)

    def clean(self) -> dict[str, Any]:
        super().clean()
        chosen = self.cleaned_data
        if chosen.get("show") == "lesson" and not chosen.get("lesson") and "lesson" not in self.errors:
            self.add_error("lesson", _("Choose the lesson."))
        return chosen

    def wishes(self) -> Wishes:
        chosen = self.cleaned_data
        return Wishes(
            starts_at=chosen["starts_at"],
            lit=chosen["show"] == "lit",
            lesson=chosen["lesson"] if chosen["show"] == "lesson" else None,
            cleaned=chosen["cleaned"],
            amounts=chosen["amount"],
        )
