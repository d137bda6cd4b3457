"""Booklets: choosing the counts, watching it being made, opening it."""

from django.core.paginator import Paginator
from django.http import FileResponse, Http404, HttpRequest, HttpResponse
from django.shortcuts import render
from django.urls import reverse
from django.utils import timezone
from django.utils.text import slugify
from django.views.decorators.http import require_GET, require_http_methods

from accounts.sent_once import SentBefore, keep_once
from accounts.typed_numbers import typed_ids
from grade_bands.models import Grade, SchoolYear
from routines.forms.bank import BankFilter
from routines.forms.booklet import BookletForm
from routines.models import Routine
from routines.paper.booklet import AT_MOST, Booklet
from routines.paper.booklet_jobs import BookletJob, find_booklet, start_booklet
from routines.paper.subject import Subject
from routines.requests import wants_fragment

OFFERED_AT_ONCE = 120


@require_http_methods(["GET", "POST"])
def booklet_choose(request: HttpRequest) -> HttpResponse:
    """The counts of the bank's filter (the same query string), or with from=mine one's own plans."""
    form = None
    if request.method == "POST":
        form = BookletForm(request.POST, offered=Routine.objects.visible_to(request.user).for_cards())
        if form.is_valid():
            try:
                return keep_once(request, lambda: reverse("booklet", kwargs={"key": _start(request, form).key}))
            except SentBefore as before:
                form.add_error(None, before.sentence)
    mine = request.GET.get("from") == "mine"
    grades = list(Grade.objects.order_by("order"))
    wanted = BankFilter.read(request.GET, grades)
    if mine:
        offered = Routine.objects.of(request.user).for_cards()
    else:
        year = SchoolYear.objects.on(timezone.localdate())
        offered = wanted.apply(
            Routine.objects.in_bank().with_teaching_for(request.user, year), request.user, year
        ).for_cards()
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
        "title": request.POST.get("title", "") if form is not None else _title(wanted, mine),
        "contents": [
            (value, label, value in (request.POST.getlist("contents") if form is not None else ["plan"]))
            for value, label in BookletForm.base_fields["contents"].choices
        ],
    }
    return render(request, "routines/booklet_choose.html", context, status=422 if form is not None else 200)


def _title(wanted: BankFilter, mine: bool) -> str:
    if mine:
        return "My counts"
    return f"Counts for grade {', '.join(wanted.grades)}" if wanted.grades else "Our counts"


def _start(request: HttpRequest, form: BookletForm) -> BookletJob:
    """Everything is read here, so that the thread that makes the booklet needs no database."""
    chosen = form.cleaned_data
    subjects = []
    for routine in chosen["routine"]:
        routine.current_version.routine = routine
        subjects.append(Subject(routine.current_version, request.school, chosen["language"]))
    return start_booklet(Booklet(chosen["title"], subjects, chosen["contents"]), owner=request.user.pk)


def _job(request: HttpRequest, key) -> BookletJob:
    job = find_booklet(key, owner=request.user.pk)
    if job is None:
        raise Http404
    return job


@require_GET
def booklet(request: HttpRequest, key) -> HttpResponse:
    """How far it is; the page asks again by itself, without scripts by refreshing."""
    template = "routines/_booklet_progress.html" if wants_fragment(request) else "routines/booklet.html"
    return render(request, template, {"section": "bank", "job": _job(request, key)})


@require_GET
def booklet_pdf(request: HttpRequest, key) -> HttpResponse:
    job = _job(request, key)
    if not job.done:
        raise Http404
    name = f"{slugify(job.title) or 'booklet'}.pdf"
    return FileResponse(job.pdf_path.open("rb"), content_type="application/pdf", filename=name)
