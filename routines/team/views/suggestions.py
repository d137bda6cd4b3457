"""Suggesting a count, and what its receiver makes of it. Its sender learns that it was taken, or nothing."""

from collections.abc import Sequence

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, keep_once
from grade_bands.models import Grade, SchoolYear
from routines.coverage.behind import Field
from routines.models import Routine, Suggestion
from routines.plans.actions import copy_routine
from routines.team.forms.suggestion import SuggestionForm
from routines.team.small_counts import small_counts
from routines.team.suggesting import (
    Answer,
    counts_for,
    declined_by,
    suggest,
    take,
    waiting_for,
)
from routines.team.views.gaps import gap_of_area, gap_of_standard
from routines.words_erased.late_words import what_went

WAITING_AT_MOST = 30
DECLINED_AT_MOST = 30
SENT_ON_A_PAGE = 20


@require_GET
def suggestions(request: SignedInRequest) -> HttpResponse:
    """What was suggested to me, what I suggested, and what I declined."""
    user = request.user
    waiting = waiting_for(user, WAITING_AT_MOST + 1)
    older = len(waiting) > WAITING_AT_MOST
    waiting = waiting[:WAITING_AT_MOST]
    said = small_counts([one.routine_id for one in waiting], user)
    sent = Suggestion.objects.filter(by=user).with_titles_for(user).with_taken().in_words()
    context = {
        "section": "plans",
        "waiting": [(one, said.get(one.routine_id)) for one in waiting],
        "older": older,
        "page": Paginator(sent, SENT_ON_A_PAGE).get_page(request.GET.get("page")),
        "declined": declined_by(user, DECLINED_AT_MOST),
    }
    return render(request, "team/suggestions.html", context)


@require_http_methods(["GET", "POST"])
def suggest_count(request: SignedInRequest, pk: int) -> HttpResponse:
    """Suggest a count of the bank to a colleague or a team."""
    routine = get_object_or_404(Routine.objects.visible_to(request.user).as_cards(), pk=pk)
    if request.user.is_administrator or routine.status != Routine.Status.SHARED:
        raise PermissionDenied
    return _suggest(request, [routine], routine.grade)


@require_http_methods(["GET", "POST"])
def suggest_for_gap(request: SignedInRequest, grade: int, area: str) -> HttpResponse:
    """From a gap in the coverage: one of the counts that could fill it, to the team of its grade."""
    return _suggest_for(request, gap_of_area(request, grade, area))


@require_http_methods(["GET", "POST"])
def suggest_for_standard(request: SignedInRequest, grade: int, standard: int) -> HttpResponse:
    """The same for a standard: counts that name it, or else those of its area."""
    return _suggest_for(request, gap_of_standard(request, grade, standard))


def _suggest_for(request: SignedInRequest, gap: Field) -> HttpResponse:
    if request.user.is_administrator:
        raise PermissionDenied
    return _suggest(request, counts_for(gap), gap.grade, gap)


def _suggest(
    request: SignedInRequest, counts: Sequence[Routine], grade: Grade, gap: Field | None = None
) -> HttpResponse:
    """gap: what is to be filled; None where the page is about the one count. Without any count there is nothing to send."""
    form = SuggestionForm(
        request.POST if request.method == "POST" else None,
        user=request.user,
        today=timezone.localdate(),
        offered=counts if gap else (),
        grade=grade,
    )

    def make() -> str:
        kept = form.cleaned_data
        routine = form.offered[kept["routine"]] if gap else counts[0]
        suggest(routine=routine, by=request.user, why=kept["why"], by_when=kept["by_when"], to=form.to_whom())
        messages.success(request, _("“%(title)s” is suggested.") % {"title": routine.title})
        return f"{reverse('suggestions')}#sent"

    if request.words_removed:
        form.add_error(None, what_went(request.words_removed))
    if request.method == "POST" and counts and form.is_valid():
        try:
            return keep_once(request, make)
        except SentBefore as before:
            form.add_error(None, before.sentence)
    said = small_counts([routine.pk for routine in counts], request.user)
    chosen = str(form["routine"].value()) if form.offered else ""
    context = {
        "section": "coverage" if gap else "bank",
        "routine": counts[0] if counts and not gap else None,
        "counts": [(routine, said.get(routine.pk), str(routine.pk) == chosen) for routine in counts],
        "grade": grade,
        "gap": gap,
        "form": form,
    }
    return render(request, "team/suggest.html", context, status=422 if form.errors else 200)


@require_POST
def answer(request: SignedInRequest, pk: int) -> HttpResponse:
    """`answer`: copy (a draft of one's own), keep, decline, or again, which brings back what was declined."""
    suggestion = _sent_to_me(request, pk)
    asked = request.POST.get("answer", "")
    if asked == "copy":
        return _take_as_copy(request, suggestion)
    if asked == "keep":
        suggestion.answer(request.user, Answer.KEPT)
        messages.success(request, _("Kept for later. Only you see this."))
    elif asked == "decline":
        suggestion.answer(request.user, Answer.DECLINED)
        messages.success(request, _("Declined. Nobody is told."))
    elif asked == "again":
        suggestion.answers.filter(person=request.user).delete()
        messages.success(request, _("It is in your list again."))
    return redirect("suggestions")


def _sent_to_me(request: SignedInRequest, pk: int) -> Suggestion:
    """Raises: Http404 where it is neither from nor for the user, PermissionDenied for its sender."""
    get_object_or_404(Suggestion.objects.visible_to(request.user), pk=pk)
    suggestion = Suggestion.objects.sent_to(request.user, SchoolYear.objects.now()).filter(pk=pk).first()
    if suggestion is None:
        raise PermissionDenied
    return suggestion


def _take_as_copy(request: SignedInRequest, suggestion: Suggestion) -> HttpResponse:
    seen = Routine.objects.visible_to(request.user).select_related("current_version")
    routine = seen.filter(pk=suggestion.routine_id).first()
    if routine is None:
        messages.error(request, _("This count is no longer in the bank, so it can’t be copied."))
        return redirect("suggestions")

    def make() -> str:
        made = copy_routine(routine=routine, by=request.user)
        take(suggestion=suggestion.pk, routine=routine, by=request.user)
        messages.success(request, _("This is your own copy. Change what you like; the original stays as it is."))
        return reverse("plan_edit", kwargs={"pk": made.pk})

    try:
        return keep_once(request, make)
    except SentBefore as before:  # its buttons carry no words that could be lost
        return redirect(before.address)


@require_http_methods(["GET", "POST"])
def withdraw(request: SignedInRequest, pk: int) -> HttpResponse:
    """Asks first: the words go with it."""
    mine = Suggestion.objects.visible_to(request.user).with_titles_for(request.user).in_words()
    suggestion = get_object_or_404(mine, pk=pk)
    if suggestion.by_id != request.user.pk:
        raise PermissionDenied
    if request.method == "POST":
        Suggestion.objects.filter(pk=pk).delete()
        messages.success(request, _("The suggestion is removed. What was taken from it stays."))
        return redirect("suggestions")
    return render(request, "team/withdraw.html", {"section": "plans", "suggestion": suggestion})
