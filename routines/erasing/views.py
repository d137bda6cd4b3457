"""Removing words from everything that is kept: type them, look where they stand, choose, confirm."""

from typing import Any

from django.contrib import messages
from django.db import connection
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_http_methods

from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, keep_once
from routines.erasing.doing import ask_to_finish, begin
from routines.erasing.forms import PlacesForm, WordsForm
from routines.erasing.looking import Found, look_for
from routines.erasing.places import TOGETHER
from routines.jobs.queue import QueueFull
from routines.models import Job
from routines.words_erased import list_of_erasures
from routines.words_erased.list_of_erasures import ListDamaged
from routines.words_erased.matching import Sought

LISTED = 30


@never_cache
@require_http_methods(["GET", "POST"])
def erase_words(request: SignedInRequest) -> HttpResponse:
    """The words travel in forms only, never in an address, which browsers and servers write down."""
    if request.method == "GET":
        if wants_fragment(request):
            return render(request, "erasing/_progress.html", _done(request))
        return _page(request, WordsForm(person=request.user))
    if request.POST.get("do") == "finish":
        return _finish(request)
    form = WordsForm(request.POST, person=request.user)
    if not form.is_valid():
        return _page(request, form, status=422)
    found = look_for(Sought.in_words(form.cleaned_data["words"]), reader=request.user, whose=form.whose_texts)
    if request.POST.get("do") != "remove":
        return _page(request, form, found=found)
    chosen = PlacesForm(request.POST)
    if not chosen.is_valid():
        return _page(request, form, found=found, places=chosen, status=422)
    try:
        return keep_once(request, lambda: _remove(request, form, chosen.cleaned_data["places"]))
    except SentBefore as before:
        form.add_error(None, before.sentence)
    except ListDamaged as damaged:
        form.add_error(None, str(damaged))
    return _page(request, form, found=found, places=chosen, status=422)


def _remove(request: SignedInRequest, form: WordsForm, chosen: list[str]) -> str:
    places = [place for name in chosen for place in (name, *TOGETHER.get(name, ()))]
    begin(form.cleaned_data["words"], by=request.user, places=places, whose=form.whose_texts)
    try:
        ask_to_finish(request.user)
    except QueueFull as full:
        messages.warning(request, f"The words are out of the pages. The files are not done: {full}")
    else:
        messages.success(request, "The words are out of the pages. The files beside them follow now.")
    return reverse("erase_words")


def _finish(request: SignedInRequest) -> HttpResponse:
    try:
        ask_to_finish(request.user)
    except QueueFull as full:
        messages.warning(request, str(full))
    return redirect("erase_words")


def _done(request: SignedInRequest) -> dict[str, Any]:
    """What was removed: by this person; all of it for an administrator. And how far the files are."""
    job = Job.objects.of(request.user).filter(kind=Job.Kind.ERASING).last()
    context: dict[str, Any] = {"job": job, "damaged": "", "erasures": []}
    try:
        entries = list_of_erasures.read()
    except ListDamaged as damaged:
        return {**context, "damaged": str(damaged) if request.user.is_administrator else ""}
    if not request.user.is_administrator:
        entries = [entry for entry in entries if entry.by == request.user.pk]
    people: dict[int | None, str] = {
        person.pk: person.display_name for person in User.objects.filter(pk__in={entry.by for entry in entries})
    }
    shown = [(entry, people.get(entry.by, "")) for entry in reversed(entries)][:LISTED]
    going_on = job is not None and not job.finished
    return {
        **context,
        "erasures": shown,
        "older": max(0, len(entries) - LISTED),
        "left": not going_on and any(not entry.finished_at for entry in entries),
    }


def _page(
    request: SignedInRequest,
    form: WordsForm,
    *,
    found: Found | None = None,
    places: PlacesForm | None = None,
    status: int = 200,
) -> HttpResponse:
    ticked = request.POST.getlist("places") if places is not None else None
    context = {
        "form": form,
        "found": found,
        "places": places,
        "rows": [(place, ticked is None or place.name in ticked) for place in found.places] if found else [],
        "words": form.cleaned_data.get("words", "") if form.is_bound else "",
        "everybody": form.is_bound and form.is_valid() and form.whose_texts is None,
        "sqlite": connection.vendor == "sqlite",
        **_done(request),
    }
    return render(request, "erasing/erase_words.html", context, status=status)
