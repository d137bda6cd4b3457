"""Booklets: choosing the counts, watching it being made, opening it."""

from uuid import UUID

from django.contrib import messages
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
from routines.bank.paging import read_page
from routines.bank.views.mine import own_plans
from routines.jobs.queue import QueueFull
from routines.models import Job, JobFile, Routine
from routines.models.facts import LANGUAGES
from routines.models.routine import RoutineQuerySet
from routines.paper.booklet import AT_MOST
from routines.paper.booklet_jobs import booklet_of, drop_booklet, find_booklet, start_booklet
from routines.paper.forms.booklets import CONTENTS, BookletForm

OFFERED_AT_ONCE = 120


@require_http_methods(["GET", "POST"])
def booklet_choose(request: SignedInRequest) -> HttpResponse:
    """The counts of the bank's filter (the same query string), or with from=mine one's own plans, some at a time.

    What is ticked stays chosen while one looks further: with `look`, `after` or `before` the form only shows other counts.
    """
    form = None
    looks_on = request.method == "POST" and not request.POST.keys().isdisjoint(("look", "after", "before"))
    if request.method == "POST" and not looks_on:
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
    asked = request.GET.copy()
    if "q" in request.POST:
        asked["q"] = request.POST["q"]
    wanted = BankFilter.read(asked, grades)
    if mine:
        order = own_plans(request.user, wanted.text)
    else:
        year = SchoolYear.objects.on(timezone.localdate())
        order = wanted.order(request.user, year)
    page = read_page(order, request.POST if looks_on else request.GET, reader=request.user, size=OFFERED_AT_ONCE)
    shown = _in_order(page.routines, Routine.objects.all())
    filtered = mine or wanted.how_many_on() > 0
    ticked = page.routines[:AT_MOST] if filtered else []
    if request.method == "POST":
        ticked = typed_ids(request.POST.getlist("routine"))[: 2 * AT_MOST]
    elsewhere = [pk for pk in dict.fromkeys(ticked) if pk not in page.routines]
    context = {
        "section": "plans" if mine else "bank",
        "mine": mine,
        "filters_on": wanted.how_many_on(),
        "filter_query": wanted.query(),
        "looked_for": wanted.text,
        "said": f"{wanted.left_out} {page.said}".strip(),
        "chosen": _in_order(elsewhere, Routine.objects.visible_to(request.user)),
        "offered": [(routine, routine.pk in ticked) for routine in shown],
        "page": page,
        "at_most": AT_MOST,
        "form": form,
        "languages": LANGUAGES.items(),
        "before": booklet_of(request.user),
        "title": request.POST["title"] if "title" in request.POST else _title(wanted, mine),
        "contents": [
            (value, label, value in (request.POST.getlist("contents") if request.method == "POST" else ["plan"]))
            for value, label in CONTENTS
        ],
    }
    return render(request, "paper/booklet_choose.html", context, status=422 if form is not None else 200)


def _in_order(keys: list[int], routines: RoutineQuerySet) -> list[Routine]:
    found = routines.select_related("grade", "owner").defer("story", "search_text").in_bulk(keys)
    return [found[pk] for pk in keys if pk in found]


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
    messages.info(request, _("The booklet “%(title)s” was removed.") % {"title": job.title})
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
