"""Changing and removing one's own note on a count. What it said before is not kept."""

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from accounts.requests import SignedInRequest
from routines.bank.forms.note import NoteForm
from routines.models import RoutineNote
from routines.words_erased.late_words import what_went


def _own(request: SignedInRequest, pk: int) -> RoutineNote:
    """Raises: Http404 where she may not read the count, PermissionDenied where the note is another's."""
    note = get_object_or_404(RoutineNote.objects.visible_to(request.user).select_related("routine"), pk=pk)
    if note.by_id != request.user.pk:
        raise PermissionDenied
    return note


@require_http_methods(["GET", "POST"])
def change(request: SignedInRequest, pk: int) -> HttpResponse:
    note = _own(request, pk)
    form = NoteForm(request.POST if request.method == "POST" else None, initial={"text": note.text})
    if request.words_removed:
        form.add_error(None, what_went(request.words_removed))
    if request.method == "POST" and form.is_valid():
        note.rewrite(form.cleaned_data["text"])
        messages.success(request, _("Your note is changed."))
        return redirect(_beside(note))
    context = {"section": "bank", "routine": note.routine, "note": note, "form": form}
    return render(request, "team/change_note.html", context, status=422 if form.errors else 200)


@require_http_methods(["GET", "POST"])
def remove(request: SignedInRequest, pk: int) -> HttpResponse:
    """Asks first: what is removed does not come back."""
    note = _own(request, pk)
    if request.method == "POST":
        RoutineNote.objects.filter(pk=pk).delete()
        messages.success(request, _("Your note is removed."))
        return redirect(_beside(note))
    return render(request, "team/remove_note.html", {"section": "bank", "routine": note.routine, "note": note})


def _beside(note: RoutineNote) -> str:
    return f"{reverse('routine', kwargs={'pk': note.routine_id})}#notes"
