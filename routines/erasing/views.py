"""Removing words from everything that is kept: type them, look where they stand, choose, confirm, see it done.

Looking and removing are jobs, so each page answers at once and can be left. The words travel in the one form in which they
are typed, never in an address, which browsers and servers write down; from there on everything goes by their hash.
"""

from typing import Any
from uuid import UUID

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, answer_again, keep_once
from routines.erasing.doing import Part, ask_to_finish, begin
from routines.erasing.forms import PlacesForm, WordsForm
from routines.erasing.look_jobs import Look, ask_to_look, drop_look, findings_of, look_again, look_of
from routines.erasing.places import TOGETHER
from routines.erasing.showing import shown
from routines.jobs.queue import QueueFull
from routines.models import Job
from routines.words_erased import list_of_erasures
from routines.words_erased.list_of_erasures import ListDamaged

LISTED = 30


@never_cache
@require_http_methods(["GET", "POST"])
def erase_words(request: SignedInRequest) -> HttpResponse:
    """The page; what is typed into it is looked for beside it, and stays in the field as long as this page stands."""
    person = request.user
    if request.method == "GET":
        return _page(request, WordsForm(person=person))
    form = WordsForm(request.POST, person=person)
    if form.is_valid():
        try:
            ask_to_look(form.cleaned_data["words"], by=person, whose=form.whose_texts)
        except QueueFull as full:
            form.add_error(None, str(full))
    return _page(request, form, status=422 if form.errors else 200)


@never_cache
@require_GET
def erase_look(request: SignedInRequest, key: UUID) -> HttpResponse:
    """How far the look is, and then what it has found; without scripts that stands on the page itself."""
    if not wants_fragment(request):
        return redirect("erase_words")
    return render(request, "erasing/_look.html", _looked(request, look_of(request.user, key)))


@require_POST
def erase_look_again(request: SignedInRequest, key: UUID) -> HttpResponse:
    try:
        look_again(_own_look(request, key))
    except QueueFull as full:
        messages.error(request, str(full))
    return redirect("erase_words")


@require_POST
def erase_leave(request: SignedInRequest, key: UUID) -> HttpResponse:
    """Stop searching, or leave everything as it is: nothing is kept of what was looked for."""
    drop_look(_own_look(request, key))
    messages.info(request, _("Nothing was changed."))
    return redirect("erase_words")


@never_cache
@require_POST
def erase_begin(request: SignedInRequest, key: UUID) -> HttpResponse:
    """Remove what this look has found, from the places that were chosen."""
    look = look_of(request.user, key)
    if look is None or not look.is_done:
        answer = answer_again(request)
        if answer is None:
            messages.error(request, _("What was found is not kept any longer. Nothing was changed; search again."))
            answer = redirect("erase_words")
        return answer
    if not Look.of(look).allowed_to(request.user):
        raise PermissionDenied
    chosen = PlacesForm(request.POST)
    error = ""
    if not chosen.is_valid():
        error = str(chosen.errors["places"][0])
    else:
        try:
            return keep_once(request, lambda: _begin(request, look, chosen.cleaned_data["places"]))
        except SentBefore as before:
            error = before.sentence
        except ListDamaged as damaged:
            error = str(damaged)
    return _page(request, WordsForm(person=request.user), error=error, status=422)


def _begin(request: SignedInRequest, look: Job, chosen: list[str]) -> str:
    wanted, by = Look.of(look), request.user
    places = [place for name in chosen for place in (name, *TOGETHER.get(name, ()))]
    begin(wanted.length, wanted.mark, by=by, places=places, whose=wanted.whose)
    drop_look(look)
    try:
        ask_to_finish(by)
    except QueueFull as full:
        messages.warning(request, _("Nothing is removed yet. %(why)s") % {"why": full})
    return reverse("erase_words")


@never_cache
@require_GET
def erase_progress(request: SignedInRequest) -> HttpResponse:
    """How far removing is, and what was removed so far."""
    if not wants_fragment(request):
        return redirect("erase_words")
    return render(request, "erasing/_progress.html", _removed(request))


@require_POST
def erase_finish(request: SignedInRequest) -> HttpResponse:
    """Go on with whatever is not at its end."""
    try:
        ask_to_finish(request.user)
    except QueueFull as full:
        messages.warning(request, str(full))
    return redirect("erase_words")


def _own_look(request: SignedInRequest, key: UUID) -> Job:
    look = look_of(request.user, key)
    if look is None:
        raise Http404
    return look


def _page(request: SignedInRequest, form: WordsForm, *, error: str = "", status: int = 200) -> HttpResponse:
    look = _looked(request, look_of(request.user), error=error)
    removed = _removed(request)
    context = {"form": form, **look, **removed, "waiting": look["looking"] or removed["removing"]}
    return render(request, "erasing/erase_words.html", context, status=status)


def _looked(request: SignedInRequest, look: Job | None, *, error: str = "") -> dict[str, Any]:
    """The look and what it has found. After an error the places stay ticked as they were sent."""
    context: dict[str, Any] = {"look": look, "looking": look is not None and not look.finished, "error": error}
    if look is None or not look.is_done:
        return context
    wanted = Look.of(look)
    if not wanted.allowed_to(request.user):
        return {**context, "look": None}
    found = shown(findings_of(look), wanted.sought(), reader=request.user, whose=wanted.whose)
    ticked = request.POST.getlist("places") if error else [place.name for place in found.places]
    return {
        **context,
        "found": found,
        "rows": [(place, place.name in ticked) for place in found.places],
        "everybody": wanted.whose is None,
        "sqlite": connection.vendor == "sqlite",
    }


def _removed(request: SignedInRequest) -> dict[str, Any]:
    """How far removing is. What was removed: by this person; all of it for an administrator."""
    person = request.user
    jobs = Job.objects.filter(kind=Job.Kind.ERASING)
    job = jobs.of(person).still_kept().last()
    removing = job is not None and not job.finished
    context: dict[str, Any] = {"job": job, "removing": removing, "part": _part(job), "damaged": "", "erasures": []}
    try:
        entries = list_of_erasures.read()
    except ListDamaged as damaged:
        return {**context, "damaged": str(damaged) if person.is_administrator else ""}
    if not person.is_administrator:
        entries = [entry for entry in entries if entry.by == person.pk]
    people = {one.pk: one.display_name for one in User.objects.filter(pk__in={entry.by for entry in entries})}
    listed = [(entry, people.get(entry.by or 0, "")) for entry in reversed(entries)][:LISTED]
    return {
        **context,
        "erasures": listed,
        "older": max(0, len(entries) - LISTED),
        # Whoever's job is under way goes on with every removal.
        "left": any(not entry.finished_at for entry in entries) and not jobs.unfinished().exists(),
    }


def _part(job: Job | None) -> str:
    part = job.payload.get("part") if job else None
    return str(Part(part).label) if part in Part.values else ""
