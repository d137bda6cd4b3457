"""One routine: its grid, whose patterns light up their cells, its whole plan, where it came from and how it went."""

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.http import require_GET, require_POST
from django.views.decorators.vary import vary_on_headers

from routines.actions.plans import copy_routine
from routines.facts import count_in_words
from routines.forms.note import NoteForm
from routines.models import Lesson, Routine, RoutineNote
from routines.requests import wants_fragment
from routines.shown_plan import ShownPlan

SHOWN_AT_FIRST = 6


@require_GET
@vary_on_headers("HX-Request", "HX-History-Restore-Request")
def routine(request: HttpRequest, pk: int) -> HttpResponse:
    found = get_object_or_404(
        Routine.objects.visible_to(request.user)
        .with_teaching()
        .for_cards()
        .select_related("copied_from__owner")
        .prefetch_related("co_authors", "standards"),
        pk=pk,
    )
    context = {"section": "bank", "routine": found, **_grid_context(request, found)}
    if wants_fragment(request):
        return render(request, "routines/_lit_grid.html", context)
    context |= {
        "copies": Routine.objects.visible_to(request.user).filter(copied_from=found).select_related("owner")[:6],
        "origin_open": found.copied_from is not None
        and Routine.objects.visible_to(request.user).filter(pk=found.copied_from_id).exists(),
        "versions": found.versions.select_related("by").newest_first()[:8],
        "lessons": Lesson.objects.shared_about(found, request.user)
        .select_related("reflection", "class_group", "teacher")
        .order_by("-taught_on")[:6],
        "notes": found.notes.select_related("by")[:20],
        "note_form": NoteForm(),
        "may_edit": found.may_edit(request.user),
        "may_share": found.status == Routine.Status.DRAFT and found.is_author(request.user),
        "may_retire": found.may_retire(request.user),
    }
    return render(request, "routines/routine.html", context)


def _grid_context(request: HttpRequest, found: Routine) -> dict:
    """The drawn grid and its pattern list. `lit` in the query string says which patterns are lit, two at most."""
    shown = ShownPlan(found.plan, found.grade.level)
    keys = [item.key for item in shown.patterns]
    asked = [key for key in request.GET.getlist("lit") if key in keys][:2]
    lit = asked if "lit" in request.GET else [item.key for item in shown.lit_at_first]
    count = count_in_words(shown.grid)
    return {
        "plan": shown.plan,
        "shown": shown,
        "count": count,
        "lit": lit,
        "first_patterns": shown.patterns[:SHOWN_AT_FIRST],
        "more_patterns": shown.patterns[SHOWN_AT_FIRST:],
        "lit_patterns": [item.pattern for item in shown.patterns if item.key in lit],
        "overlays": [(item.key, item.pattern) for item in shown.patterns],
    }


@require_POST
def copy(request: HttpRequest, pk: int) -> HttpResponse:
    found = get_object_or_404(Routine.objects.visible_to(request.user).select_related("current_version"), pk=pk)
    made = copy_routine(routine=found, by=request.user)
    messages.success(
        request, f"This is your own copy of “{found.title}”. Change what you like; the original stays as it is."
    )
    return redirect("plan_edit", pk=made.pk)


@require_POST
def share(request: HttpRequest, pk: int) -> HttpResponse:
    found = get_object_or_404(Routine.objects.visible_to(request.user), pk=pk)
    if not found.is_author(request.user):
        raise PermissionDenied
    if found.status == Routine.Status.DRAFT:
        found.share()
        messages.success(request, f"“{found.title}” is in the bank. Every colleague can read, copy and teach it.")
    return redirect("routine", pk=pk)


@require_POST
def retire(request: HttpRequest, pk: int) -> HttpResponse:
    """Take a routine out of the bank, or put a retired one back (`back=1`)."""
    found = get_object_or_404(Routine.objects.visible_to(request.user), pk=pk)
    if not found.may_retire(request.user):
        raise PermissionDenied
    if request.POST.get("back"):
        found.share()
        messages.success(request, f"“{found.title}” is in the bank again.")
    else:
        found.retire()
        messages.success(request, f"“{found.title}” is out of the bank. Its lessons and copies stay.")
    return redirect("routine", pk=pk)


@require_POST
def add_note(request: HttpRequest, pk: int) -> HttpResponse:
    found = get_object_or_404(Routine.objects.visible_to(request.user), pk=pk)
    form = NoteForm(request.POST)
    if form.is_valid():
        RoutineNote.objects.create(routine=found, by=request.user, text=form.cleaned_data["text"])
        return redirect(f"{request.path.removesuffix('notes/')}#notes")
    return render(request, "routines/note.html", {"section": "bank", "routine": found, "note_form": form}, status=422)
