"""Grades, bands and standards, for administrators."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.access import administrators_only
from accounts.requests import SignedInRequest

from ..actions import load_standards
from ..forms import GradeBandForm, GradeForm, StandardsFileForm, StandardsTextForm
from ..models import Grade, GradeBand, Standard
from ..standards import unreadable
from ..standards_looked_at import look_at
from .keeping import keep_form

LOOKED_AT = 60


def show_grades(request: SignedInRequest, *, file_form: StandardsFileForm | None = None) -> HttpResponse:
    standards = list(Standard.objects.in_reading_order().select_related("grade"))
    context = {
        "section": "school",
        "bands": GradeBand.objects.with_grades(),
        "standards": standards,
        "unreadable": unreadable(standards),
        "file_form": file_form or StandardsFileForm(),
    }
    return render(request, "grade_bands/grades.html", context, status=422 if file_form else 200)


@administrators_only
@require_GET
def grades(request: SignedInRequest) -> HttpResponse:
    return show_grades(request)


@administrators_only
@require_http_methods(["GET", "POST"])
def edit_grade(request: SignedInRequest, pk: int | None = None) -> HttpResponse:
    grade = get_object_or_404(Grade, pk=pk) if pk else None
    form = GradeForm(request.POST or None, instance=grade)
    if request.method == "POST" and (
        kept := keep_form(request, form, to="grade_bands:grades", said=_("Kept: grade %(name)s."))
    ):
        return kept
    context = {
        "section": "school",
        "part": "grades",
        "form": form,
        "title": _("Grade %(name)s") % {"name": grade} if grade else _("New grade"),
    }
    return render(request, "grade_bands/edit.html", context, status=422 if form.errors else 200)


@administrators_only
@require_http_methods(["GET", "POST"])
def edit_band(request: SignedInRequest, pk: int | None = None) -> HttpResponse:
    band = get_object_or_404(GradeBand, pk=pk) if pk else None
    form = GradeBandForm(request.POST or None, instance=band)
    if request.method == "POST" and (kept := keep_form(request, form, to="grade_bands:grades")):
        return kept
    context = {
        "section": "school",
        "part": "grades",
        "form": form,
        "title": _("Band %(name)s") % {"name": band} if band else _("New band"),
    }
    return render(request, "grade_bands/edit.html", context, status=422 if form.errors else 200)


@administrators_only
@require_POST
def import_common_core(request: SignedInRequest) -> HttpResponse:
    messages.success(request, _loaded(load_standards()))
    return redirect("grade_bands:grades")


@administrators_only
@require_POST
def import_standards(request: SignedInRequest) -> HttpResponse:
    """What is in a file, before anything of it is stored."""
    form = StandardsFileForm(request.POST, request.FILES)
    if not form.is_valid():
        return show_grades(request, file_form=form)
    text, rows = form.cleaned_data["file"]
    framework = form.cleaned_data["framework"]
    looked = look_at(rows, framework)
    context = {
        "section": "school",
        "framework": framework,
        "text": text,
        "looked": looked,
        "rows": looked.rows[:LOOKED_AT],
        "more": max(0, len(rows) - LOOKED_AT),
    }
    return render(request, "grade_bands/standards_look.html", context)


@administrators_only
@require_POST
def keep_standards(request: SignedInRequest) -> HttpResponse:
    """Store what was looked at: all of it, or nothing."""
    form = StandardsTextForm(request.POST)
    if not form.is_valid():
        again = StandardsFileForm({"framework": request.POST.get("framework", "")})
        again.is_valid()
        again.errors.pop("file", None)
        again.add_error("file", [sentence for errors in form.errors.values() for sentence in errors])
        return show_grades(request, file_form=again)
    count = load_standards(rows=form.cleaned_data["content"], framework=form.cleaned_data["framework"])
    messages.success(request, _loaded(count))
    return redirect("grade_bands:grades")


def _loaded(number: int) -> str:
    return ngettext("%(number)s standard is loaded.", "%(number)s standards are loaded.", number) % {"number": number}
