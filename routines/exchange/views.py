"""Files in and out: exporting a routine or the bank, importing with a look at what is in the file first."""

from datetime import datetime
from typing import Any
from uuid import UUID

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.core.files.uploadedfile import UploadedFile
from django.http import HttpResponse, JsonResponse, QueryDict
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils.datastructures import MultiValueDict
from django.utils.text import slugify
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, keep_once
from accounts.spreadsheets import csv_download
from grade_bands.models import Area, Grade
from routines.exchange.forms import ImportForm
from routines.exchange.grid_csv import grid_csv
from routines.exchange.importing import (
    StillAdding,
    file_being_added,
    hold_file,
    is_here,
    job_of,
    may_move_the_bank,
    start_adding,
    stop_adding,
)
from routines.exchange.reading import title_of
from routines.exchange.schema import schema
from routines.exchange.writing import written
from routines.jobs.queue import QueueFull
from routines.models import ImportFile, Routine, UnreadablePlan
from routines.models.plan_reading import PlanError, read_document
from routines.words_erased.list_of_erasures import ListDamaged

LOOKED_AT = 60


def _download(content: bytes, name: str, kind: str) -> HttpResponse:
    return HttpResponse(content, content_type=kind, headers={"Content-Disposition": f'attachment; filename="{name}"'})


@require_GET
def export_routine(request: SignedInRequest, pk: int) -> HttpResponse:
    routine = get_object_or_404(Routine.objects.visible_to(request.user).select_related("current_version"), pk=pk)
    return _download(written([routine.plan]), f"{slugify(routine.title) or 'count'}.json", "application/json")


@require_GET
def export_grid(request: SignedInRequest, pk: int) -> HttpResponse:
    routine = get_object_or_404(Routine.objects.visible_to(request.user).select_related("current_version"), pk=pk)
    return csv_download(grid_csv(routine.plan.grid()), f"{slugify(routine.title) or 'count'}.csv")


@require_GET
def export_bank(request: SignedInRequest) -> HttpResponse:
    """The whole bank: for coaches and administrators."""
    if not may_move_the_bank(request.user):
        raise PermissionDenied
    bank = Routine.objects.in_bank().select_related("current_version").order_by("pk")
    plans, unreadable = [], []
    for routine in bank.iterator():
        try:
            plans.append(routine.plan)
        except UnreadablePlan:
            unreadable.append(f"“{routine.title}”")
    if unreadable:
        left_out = ", ".join(unreadable[:12])
        if len(unreadable) > 12:
            left_out = _("%(titles)s and %(number)s more") % {"titles": left_out, "number": len(unreadable) - 12}
        words = _("Not in the file of the bank, because they can’t be read: %(titles)s.")
        messages.warning(request, words % {"titles": left_out})
    return _download(written(plans), "bank.json", "application/json")


@require_GET
def file_schema(request: SignedInRequest) -> HttpResponse:
    return JsonResponse(schema(), json_dumps_params={"indent": 1})


def _sent(request: SignedInRequest) -> tuple[QueryDict, "MultiValueDict[str, UploadedFile[bytes]]"] | tuple[None, None]:
    return (request.POST, request.FILES) if request.method == "POST" else (None, None)


@require_http_methods(["GET", "POST"])
def import_file(request: SignedInRequest) -> HttpResponse:
    """Choose a file; what it holds is shown before anything is added."""
    form = ImportForm(*_sent(request), grades=set(Grade.objects.values_list("name", flat=True)))

    def make() -> str:
        file = hold_file(by=request.user, name=form.cleaned_data["file"].name, read=form.read)
        return reverse("import_look", kwargs={"key": file.key})

    if request.method == "POST" and form.is_valid():
        try:
            try:
                return keep_once(request, make)
            except SentBefore:  # another file, chosen after Back: the newer one counts, as it does without a key
                return redirect(make())
        except StillAdding as adding:
            form.add_error("file", _("%(adding)s Wait until they are in, or stop that first.") % {"adding": adding})
        except ListDamaged as damaged:
            form.add_error("file", str(damaged))
    context = {
        "section": "plans",
        "form": form,
        "may_move_bank": may_move_the_bank(request.user),
        "adding": file_being_added(request.user),
    }
    return render(request, "exchange/import.html", context, status=422 if form.errors else 200)


@require_GET
def import_look(request: SignedInRequest, key: UUID) -> HttpResponse:
    file = get_object_or_404(ImportFile.objects.of(request.user), key=key)
    if file.done or job_of(file) is not None:
        return redirect("import_progress", key=key)
    rows = [_looked_at(document, request.user) for document in file.plans[:LOOKED_AT]]
    context = {
        "section": "plans",
        "file": file,
        "rows": rows,
        "new": len(file.plans) - sum(row.get("here", False) for row in rows),
        "more": max(0, len(file.plans) - LOOKED_AT),
        "left_out": [(datetime.fromisoformat(removed_at), texts) for removed_at, texts in file.left_out],
        "may_move_bank": may_move_the_bank(request.user),
    }
    return render(request, "exchange/import_look.html", context)


def _looked_at(document: object, user: User) -> dict[str, Any]:
    """A plan of the file with its grid; of one that cannot be read any more, its title and why."""
    try:
        plan = read_document(document)
    except PlanError as error:
        return {"title": title_of(document), "unreadable": str(error)}
    area = dict(Area.choices).get(plan.area, "")  # one that this school does not know is said when it is added
    return {"plan": plan, "area": area, "title": plan.title, "grid": plan.grid(), "here": is_here(plan, user)}


@require_POST
def import_add(request: SignedInRequest, key: UUID) -> HttpResponse:
    """Begin, or go on after a stop. From here on it goes on by itself, looked at or not."""
    file = get_object_or_404(ImportFile.objects.of(request.user), key=key)
    try:
        start_adding(file=file, into_bank=bool(request.POST.get("into_bank")))
    except QueueFull as full:
        messages.error(request, str(full))
        return redirect("import_look", key=key)
    return redirect("import_progress", key=key)


@require_GET
def import_progress(request: SignedInRequest, key: UUID) -> HttpResponse:
    """How far it is; the page asks again by itself, without scripts by refreshing."""
    file = get_object_or_404(ImportFile.objects.of(request.user).defer("plans"), key=key)
    template = "exchange/_import_progress.html" if wants_fragment(request) else "exchange/import_progress.html"
    return render(request, template, {"section": "plans", "file": file, "job": job_of(file)})


@require_POST
def import_stop(request: SignedInRequest, key: UUID) -> HttpResponse:
    file = get_object_or_404(ImportFile.objects.of(request.user), key=key)
    stop_adding(file=file)
    return redirect("import_progress", key=key)
