"""Putting a count into the week, moving it, taking it out, and back again."""

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.http import urlencode
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, keep_once
from accounts.templatetags.dates import full_day
from accounts.typed_numbers import typed_id
from routines.coverage.behind import Field
from routines.models import Planned, Routine
from routines.team import planning
from routines.team.forms.planned import PlannedForm
from routines.team.small_counts import small_counts
from routines.team.suggesting import counts_for, take
from routines.team.views.gaps import gap_of_area, gap_of_standard


def week_of(planned: Planned, **more: str) -> str:
    """The address of the week in which it stands."""
    return f"{reverse('week')}?{urlencode({'day': planned.on.isoformat(), **more})}"


@require_http_methods(["GET", "POST"])
def put_in(request: SignedInRequest, pk: int) -> HttpResponse:
    """Plan a count for a class of one's own and a day. `suggestion` is the one that is taken by that, if any."""
    routine = get_object_or_404(Routine.objects.visible_to(request.user).for_cards(), pk=pk)
    sent = request.POST if request.method == "POST" else None
    suggestion = typed_id((request.POST if sent else request.GET).get("suggestion", ""))
    form = PlannedForm(sent, user=request.user, grade=routine.grade_id, today=timezone.localdate())

    def make() -> str:
        address = _put(request, form, routine)
        if suggestion:
            take(suggestion=suggestion, routine=routine, by=request.user)
        return address

    if sent is not None and form.is_valid():
        try:
            return keep_once(request, make)
        except SentBefore as before:
            form.add_error(None, before.sentence)
    said = small_counts([pk], request.user).get(pk)
    context = {
        "section": "week",
        "routine": routine,
        "count": said.count if said else "",
        "picture": said.picture if said else "",
        "suggestion": suggestion,
        "form": form,
    }
    return render(request, "team/put_in_the_week.html", context, status=422 if form.errors else 200)


def _put(request: SignedInRequest, form: PlannedForm, routine: Routine) -> str:
    """Put it there, say so, and hand back the address of its week."""
    group, on = form.cleaned_data["class_group"], form.cleaned_data["on"]
    planned, new = planning.put_in_the_week(routine=routine, class_group=group, on=on, by=request.user)
    said = {"title": routine.title, "class": group.name, "day": full_day(on)}
    if new:
        messages.success(request, _("“%(title)s” is in the week: %(class)s, %(day)s.") % said)
    else:
        messages.info(request, _("“%(title)s” was in the week already: %(class)s, %(day)s.") % said)
    return week_of(planned)


@require_http_methods(["GET", "POST"])
def put_in_for_gap(request: SignedInRequest, grade: int, area: str) -> HttpResponse:
    """From a gap in the coverage: one of the counts that could fill it, for a class of one's own and a day."""
    return _for_gap(request, gap_of_area(request, grade, area))


@require_http_methods(["GET", "POST"])
def put_in_for_standard(request: SignedInRequest, grade: int, standard: int) -> HttpResponse:
    return _for_gap(request, gap_of_standard(request, grade, standard))


def _for_gap(request: SignedInRequest, gap: Field) -> HttpResponse:
    counts = counts_for(gap)
    sent = request.POST if request.method == "POST" else None
    form = PlannedForm(sent, user=request.user, grade=gap.grade.pk, today=timezone.localdate(), offered=counts)
    if sent is not None and counts and form.is_valid():
        try:
            return keep_once(request, lambda: _put(request, form, form.offered[form.cleaned_data["routine"]]))
        except SentBefore as before:
            form.add_error(None, before.sentence)
    said = small_counts([routine.pk for routine in counts], request.user)
    chosen = str(form["routine"].value()) if counts else ""
    context = {
        "section": "week",
        "gap": gap,
        "grade": gap.grade,
        "counts": [(routine, said.get(routine.pk), str(routine.pk) == chosen) for routine in counts],
        "form": form,
    }
    return render(request, "team/put_in_the_week_for_gap.html", context, status=422 if form.errors else 200)


def _changeable(request: SignedInRequest, pk: int) -> Planned:
    """A planned count that the user may move. Raises: Http404 where she may not see it, PermissionDenied."""
    seen = Planned.objects.visible_to(request.user).with_titles_for(request.user)
    planned = get_object_or_404(seen.select_related("class_group", "routine"), pk=pk)
    if not Planned.objects.changeable_by(request.user).filter(pk=pk).exists():
        raise PermissionDenied
    return planned


@require_http_methods(["GET", "POST"])
def move(request: SignedInRequest, pk: int) -> HttpResponse:
    planned = _changeable(request, pk)
    sent = request.POST if request.method == "POST" else None
    form = PlannedForm(
        sent,
        user=request.user,
        grade=planned.routine.grade_id,
        today=timezone.localdate(),
        initial={"class_group": planned.class_group_id, "on": planned.on},
    )
    if sent is not None and form.is_valid():
        undo = planning.way_back(planned, request.user, moved_to=planned.pk)
        moved = planning.move_in_the_week(
            planned=planned, class_group=form.cleaned_data["class_group"], on=form.cleaned_data["on"]
        )
        said = {"title": planned.title, "class": moved.class_group.name, "day": full_day(moved.on)}
        messages.success(request, _("“%(title)s” is now planned for %(class)s, %(day)s.") % said)
        return redirect(week_of(moved, undo=undo))
    context = {"section": "week", "planned": planned, "form": form}
    return render(request, "team/move_in_the_week.html", context, status=422 if form.errors else 200)


@require_POST
def remove(request: SignedInRequest, pk: int) -> HttpResponse:
    planned = _changeable(request, pk)
    undo = planning.way_back(planned, request.user)
    Planned.objects.filter(pk=pk).delete()
    messages.success(request, _("“%(title)s” is out of the week. The count itself stays.") % {"title": planned.title})
    return redirect(week_of(planned, undo=undo))


@require_POST
def put_back(request: SignedInRequest) -> HttpResponse:
    """Undo a move or a removal, with the token that its answer carried."""
    place = planning.read_way_back(request.POST.get("undo", ""), request.user)
    planned = planning.put_back(place=place, by=request.user) if place else None
    if planned is None:
        messages.error(request, _("That can’t be put back any more. Plan it again from the count’s page."))
        return redirect("week")
    messages.success(request, _("It is back where it was."))
    return redirect(week_of(planned))
