"""Counts worth teaching for a grade and an area or a standard: six at once, more on request."""

from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_GET
from django.views.decorators.vary import vary_on_headers

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from grade_bands.models import Grade
from routines.counting import CountError
from routines.counting.worth_teaching import SHOWN_AT_ONCE
from routines.errors import say
from routines.plans.forms.worth_teaching import WorthForm
from routines.plans.suggestions.worth_teaching import WorthCard, worth_cards


@require_GET
@vary_on_headers("HX-Request", "HX-History-Restore-Request")
def worth_teaching(request: SignedInRequest) -> HttpResponse:
    grades = Grade.objects.in_order()
    page = "plans/_worth.html" if wants_fragment(request) else "plans/worth.html"
    if not grades:
        return render(request, page, {"section": "plans"})
    form = WorthForm(
        request.GET, grades=grades, taught=Grade.objects.taught_by(request.user).first(), school=request.school
    )
    cards, why_few = _found(form)
    context = {
        "section": "plans",
        "form": form,
        "page": Paginator(cards, SHOWN_AT_ONCE).get_page(request.GET.get("page")),
        "why_few": why_few,
    }
    return render(request, page, context)


def _found(form: WorthForm) -> tuple[list[WorthCard], str]:
    """Features that were stored before they were checked may be unreadable: the page says so and offers the rest."""
    try:
        return worth_cards(form)
    except CountError as error:
        return [], say(error)
