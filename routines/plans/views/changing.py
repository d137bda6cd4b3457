"""Buttons that change the typed plan: add and take out rows, take a suggestion, another fold, undo."""

from uuid import UUID

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.views.decorators.http import require_POST
from django.views.decorators.vary import vary_on_headers
from django_htmx.http import reswap, retarget, trigger_client_event

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from routines.plans.forms.changes import UnknownChange, apply_change
from routines.plans.forms.plan import PlanForm

from .keeping import not_kept
from .open_plan import TooLong, open_plan
from .page import page_context


@require_POST
@vary_on_headers("HX-Request")
def change(request: SignedInRequest, pk: int | None = None, key: UUID | None = None) -> HttpResponse:
    """Change the typed plan, keep it, and show the parts that changed; without scripts, the page."""
    opened = open_plan(request, pk, key)
    try:
        changed = apply_change(opened.read(request.POST), request.POST.get("change", ""), opened.steps)
    except UnknownChange as error:
        raise Http404 from error
    try:
        opened.keep(changed.typed, changed.step)
    except TooLong as error:
        answer = not_kept(request, opened, changed.typed, str(error))
        return reswap(retarget(answer, "#plan-kept"), "innerHTML") if wants_fragment(request) else answer
    if not wants_fragment(request):
        if changed.refused:
            messages.warning(request, changed.refused)
        anchor = changed.focus or (f"part-{changed.parts[0]}" if changed.parts else "")
        return redirect(opened.url("plan_edit") + (f"#{anchor}" if anchor else ""))
    form = PlanForm(changed.typed, grades=opened.grades)
    form.focus_on(changed.focus)
    context = {
        **page_context(opened, form),
        "parts": changed.parts,
        "focus": changed.focus,
        "refused": changed.refused,
        "arrived": changed.arrived,
        "kept_at": timezone.now(),
        "oob": True,
    }
    response = render(request, "plans/_changed.html", context)
    return trigger_client_event(response, "counted" if "count" in changed.parts else "taken", after="settle")
