"""How the forms for classes, years, grades and bands are kept."""

from typing import TypeVar

from django.contrib import messages
from django.db import IntegrityError, transaction
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.model_forms import ModelForm
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, answer_again, keep_once
from accounts.translated import Translated

from ..models import ClassGroup, Grade, GradeBand, SchoolYear

KEPT = _("Kept: %(name)s.")
Named = TypeVar("Named", ClassGroup, Grade, GradeBand, SchoolYear)


def classes_of_year(row: ClassGroup | SchoolYear) -> str:
    """The address of the list in which it stands."""
    year = row.year_id if isinstance(row, ClassGroup) else row.pk
    return f"{reverse('grade_bands:classes')}?year={year}"


def keep_form(
    request: SignedInRequest, form: ModelForm[Named], *, to: str, said: Translated = KEPT
) -> HttpResponse | None:
    """Keep the form and go to the page `to`. None, with sentences in the form, when it cannot be kept as it is.

    A new row is made once, however often its form is sent; a row that was there may be changed again and again.
    """

    def make() -> str:
        form.save()
        messages.success(request, str(said) % {"name": form.instance.name})
        if isinstance(form.instance, (ClassGroup, SchoolYear)):
            return classes_of_year(form.instance)
        return reverse(to)

    if not form.is_valid():
        return answer_again(request)
    try:
        if form.instance.pk is None:
            return keep_once(request, make)
        with transaction.atomic():
            return redirect(make())
    except SentBefore as before:
        form.add_error(None, before.sentence)
    except IntegrityError:  # a colleague took the name or the place since the form was checked
        form.add_error(
            None, gettext("Somebody else kept one like this a moment ago. Look at the list, then try again.")
        )
    return None
