"""Classes and school years, for administrators."""

from django.contrib import messages
from django.db.models import Prefetch, ProtectedError
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET, require_http_methods

from accounts.access import administrators_only
from accounts.requests import SignedInRequest

from ..forms import ClassGroupForm
from ..models import ClassGroup, SchoolYear
from ..year_form import SchoolYearForm
from .keeping import keep_form


@administrators_only
@require_GET
def classes(request: SignedInRequest) -> HttpResponse:
    groups = Prefetch("class_groups", queryset=ClassGroup.objects.with_people().in_grade_order())
    now = SchoolYear.objects.now()
    years = list(SchoolYear.objects.prefetch_related(groups))
    context = {
        "section": "school",
        "years": [year for year in years if now is None or year.starts_on >= now.starts_on],
        "earlier": [year for year in years if now is not None and year.starts_on < now.starts_on],
        "first": years[-1] if years else None,
    }
    return render(request, "grade_bands/classes.html", context)


@administrators_only
@require_http_methods(["GET", "POST"])
def edit_class(request: SignedInRequest, pk: int | None = None) -> HttpResponse:
    group = get_object_or_404(ClassGroup, pk=pk) if pk else None
    initial = {} if group else {"year": SchoolYear.objects.on(timezone.localdate())}
    form = ClassGroupForm(request.POST or None, instance=group, initial=initial)
    if request.method == "POST" and (kept := keep_form(request, form, to="grade_bands:classes")):
        return kept
    context = {
        "section": "school",
        "part": "classes",
        "form": form,
        "title": _("Class %(name)s") % {"name": group} if group else _("New class"),
    }
    return render(request, "grade_bands/edit.html", context, status=422 if form.errors else 200)


@administrators_only
@require_http_methods(["GET", "POST"])
def edit_year(request: SignedInRequest, pk: int) -> HttpResponse:
    year = get_object_or_404(SchoolYear, pk=pk)
    form = SchoolYearForm(request.POST or None, instance=year)
    if request.method == "POST" and (kept := keep_form(request, form, to="grade_bands:classes")):
        return kept
    context = {
        "section": "school",
        "part": "classes",
        "form": form,
        "title": _("Year %(name)s") % {"name": year},
    }
    return render(request, "grade_bands/edit.html", context, status=422 if form.errors else 200)


@administrators_only
@require_http_methods(["GET", "POST"])
def remove_class(request: SignedInRequest, pk: int) -> HttpResponse:
    """Asks first: what is planned for it goes too. A class with lessons stays."""
    group = get_object_or_404(ClassGroup.objects.select_related("year"), pk=pk)
    names = {"name": group.name, "year": group.year.name}
    title = _("Remove the class %(name)s of %(year)s?") % names
    what_goes = _("What is planned for it goes with it. A class that has lessons is not removed.")
    return _remove(request, group, title, what_goes, _("%(name)s has lessons, so it stays. Rename it instead.") % names)


@administrators_only
@require_http_methods(["GET", "POST"])
def remove_year(request: SignedInRequest, pk: int) -> HttpResponse:
    """One that was added by mistake: a year with classes or lessons stays."""
    year = get_object_or_404(SchoolYear, pk=pk)
    names = {"name": year.name}
    title = _("Remove the year %(name)s?") % names
    what_goes = _("Only its name and its dates go. A year that has classes or lessons is not removed.")
    refused = _("%(name)s has classes or lessons, so it stays. Change its name or its dates instead.") % names
    return _remove(request, year, title, what_goes, refused)


def _remove(
    request: SignedInRequest, row: ClassGroup | SchoolYear, title: str, what_goes: str, refused: str
) -> HttpResponse:
    if request.method != "POST":
        context = {"section": "school", "part": "classes", "title": title, "what_goes": what_goes}
        return render(request, "grade_bands/remove.html", context)
    try:
        row.delete()
    except ProtectedError:
        messages.error(request, refused)
    else:
        messages.success(request, _("Removed: %(name)s.") % {"name": row.name})
    return redirect("grade_bands:classes")
