"""A new school year, for administrators: its dates, and the classes that go on, on one page."""

from collections.abc import Mapping

from django.contrib import messages
from django.db import IntegrityError
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods

from accounts.access import administrators_only
from accounts.models import School
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, answer_again, keep_once

from ..models import SchoolYear
from ..turning import CarriedClasses, proposed_year
from ..year_form import SchoolYearForm


@administrators_only
@require_http_methods(["GET", "POST"])
def new_year(request: SignedInRequest) -> HttpResponse:
    """The dates are proposed, last year's classes ticked; nothing of last year changes."""
    today = timezone.localdate()
    last = SchoolYear.objects.order_by("-starts_on").first()
    sent = request.POST if request.method == "POST" else None
    form = SchoolYearForm(sent, initial=proposed_year(last, School.objects.first(), today))
    carried = CarriedClasses.of(last, None, sent)
    if request.method == "POST" and (kept := _keep(request, carried, form)):
        return kept
    coming = last if last and last.starts_on > today else None
    context = {"form": form, "source": last, "coming": coming, "title": _("New year")}
    return _page(request, carried, context, wrong=bool(form.errors))


@administrators_only
@require_http_methods(["GET", "POST"])
def carry_over(request: SignedInRequest, pk: int) -> HttpResponse:
    """Classes of the year before into one that is there: those that it has already stay out."""
    year = get_object_or_404(SchoolYear, pk=pk)
    source = SchoolYear.objects.filter(starts_on__lt=year.starts_on).order_by("-starts_on").first()
    sent = request.POST if request.method == "POST" else None
    carried = CarriedClasses.of(source, year, sent, part=request.GET.get("page"))
    if request.method == "POST" and (kept := _keep(request, carried, year)):
        return kept
    context = {"year": year, "source": source, "title": _("Carry classes over to %(year)s") % {"year": year}}
    return _page(request, carried, context, wrong=False)


def _keep(request: SignedInRequest, carried: CarriedClasses, into: SchoolYearForm | SchoolYear) -> HttpResponse | None:
    """Keep year and classes, or nothing. None, with sentences at their places, when they cannot be kept as they are."""

    def make() -> str:
        year = into.save() if isinstance(into, SchoolYearForm) else into
        made = carried.keep_in(year)
        said = {"year": year.name, "number": len(made)}
        words = ngettext(
            "Kept: %(year)s, %(number)s class added.", "Kept: %(year)s, %(number)s classes added.", len(made)
        )
        messages.success(request, words % said)
        if carried.page.has_next():
            return f"{reverse('grade_bands:carry_over', args=[year.pk])}?page={carried.page.next_page_number()}"
        return f"{reverse('grade_bands:classes')}?year={year.pk}"

    valid = carried.is_valid()
    if isinstance(into, SchoolYearForm):
        valid = into.is_valid() and valid
    if not valid:
        return answer_again(request)
    try:
        return keep_once(request, make)
    except SentBefore as before:
        messages.error(request, before.sentence)
    except IntegrityError:  # a colleague took the name or the days since they were checked
        messages.error(request, _("Somebody else kept one like this a moment ago. Look at the list, then try again."))
    return None


def _page(
    request: SignedInRequest, carried: CarriedClasses, context: Mapping[str, object], *, wrong: bool
) -> HttpResponse:
    wrong = wrong or any(form.errors for form in carried.forms)
    page = {"section": "school", "part": "classes", "carried": carried, "wrong": wrong, **context}
    return render(request, "grade_bands/turn_year.html", page, status=422 if wrong else 200)
