"""Classes and school years, for administrators."""

from django.contrib import messages
from django.db.models import Prefetch, ProtectedError
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET, require_http_methods, require_POST

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
    context = {"section": "school", "years": SchoolYear.objects.prefetch_related(groups)}
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
@require_POST
def remove_class(request: SignedInRequest, pk: int) -> HttpResponse:
    group = get_object_or_404(ClassGroup, pk=pk)
    try:
        group.delete()
    except ProtectedError:
        messages.error(request, _("%(name)s has lessons, so it stays. Rename it instead.") % {"name": group.name})
    else:
        messages.success(request, _("Taken away: %(name)s.") % {"name": group.name})
    return redirect("grade_bands:classes")
