"""Booklets: choosing the counts, watching it being made, opening it."""

from uuid import UUID

from django.contrib import messages
from django.core.paginator import Paginator
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.text import slugify
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, keep_once
from accounts.typed_numbers import typed_ids
from grade_bands.models import Grade, SchoolYear
from routines.bank.forms.filters import BankFilter
from routines.jobs.queue import QueueFull
from routines.models import Job, JobFile, Routine
from routines.models.facts import LANGUAGES
from routines.paper.booklet import AT_MOST
from routines.paper.booklet_jobs import booklet_of, drop_booklet, find_booklet, start_booklet
from routines.paper.forms.booklets import CONTENTS, BookletForm

OFFERED_AT_ONCE = 120


@require_http_methods(["GET", "POST"])
def booklet_choose(request: SignedInRequest) -> HttpResponse:
    """The counts of the bank's filter (the same query string), or with from=mine one's own plans."""
    form = None
    if request.method == "POST":
        form = BookletForm(request.POST, offered=Routine.objects.visible_to(request.user).for_cards())
        if form.is_valid():
            try:
                return keep_once(request, lambda: reverse("booklet", kwargs={"key": _start(request, form).key}))
            except SentBefore as before:
                form.add_error(None, before.sentence)
            except QueueFull as full:
                form.add_error(None, str(full))
    mine = request.GET.get("from") == "mine"
    grades = list(Grade.objects.order_by("order"))
    wanted = BankFilter.read(request.GET, grades)
    if mine:
        offered = Routine.objects.of(request.user).for_cards()
    else:
        year = SchoolYear.objects.on(timezone.localdate())
        offered = wanted.apply(Routine.objects.in_bank(), request.user, year).for_cards()
    page = Paginator(offered, OFFERED_AT_ONCE).get_page(1)
    filtered = mine or wanted.how_many_on() > 0
    ticked = {routine.pk for routine in page.object_list[:AT_MOST]} if filtered else set()
    if form is not None:
        ticked = set(typed_ids(request.POST.getlist("routine")))
    context = {
        "section": "plans" if mine else "bank",
        "mine": mine,
        "filters_on": wanted.how_many_on(),
        "filter_query": wanted.query(),
        "offered": [(routine, routine.pk in ticked) for routine in page.object_list],
        "left_out": page.paginator.count - len(page.object_list),
        "at_most": AT_MOST,
        "form": form,
        "languages": LANGUAGES.items(),
        "before": booklet_of(request.user),
        "title": request.POST.get("title", "") if form is not None else _title(wanted, mine),
        "contents": [
            (value, label, value in (request.POST.getlist("contents") if form is not None else ["plan"]))
            for value, label in CONTENTS
        ],
    }
    return render(request, "paper/booklet_choose.html", context, status=422 if form is not None else 200)


def _title(wanted: BankFilter, mine: bool) -> str:
    if mine:
        return _("My counts")
    return _("Counts for grade %(grades)s") % {"grades": ", ".join(wanted.grades)} if wanted.grades else _("Our counts")


def _start(request: SignedInRequest, form: BookletForm) -> Job:
    chosen = form.cleaned_data
    return start_booklet(
        owner=request.user,
        title=chosen["title"],
        versions=[routine.newest_save for routine in chosen["routine"]],
        contents=chosen["contents"],
        language=chosen["language"],
    )


def _job(request: SignedInRequest, key: UUID) -> Job:
    job = find_booklet(key, owner=request.user)
    if job is None:
        raise Http404
    return job


@require_GET
def booklet(request: SignedInRequest, key: UUID) -> HttpResponse:
    """How far it is; the page asks again by itself, without scripts by refreshing."""
    template = "paper/_booklet_progress.html" if wants_fragment(request) else "paper/booklet.html"
    return render(request, template, {"section": "bank", "job": _job(request, key)})


@require_POST
def booklet_drop(request: SignedInRequest, key: UUID) -> HttpResponse:
    """No longer wanted: nobody goes on with it."""
    job = _job(request, key)
    drop_booklet(key, owner=request.user)
    messages.info(request, _("The booklet “%(title)s” was dropped.") % {"title": job.title})
    return redirect("booklet_choose")


@require_GET
def booklet_pdf(request: SignedInRequest, key: UUID) -> HttpResponse:
    job = _job(request, key)
    file = JobFile.objects.filter(job=job).first()
    if file is None:
        raise Http404
    name = f"{slugify(job.title) or 'booklet'}.pdf"
    return HttpResponse(
        bytes(file.content),
        content_type="application/pdf",
        headers={"Content-Disposition": f'inline; filename="{name}"'},
    )
