"""The administrator hands a leaver's counts on to a colleague."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods

from accounts.access import administrators_only
from accounts.models import User
from accounts.requests import SignedInRequest
from routines.team import handing_on
from routines.team.forms.hand_on import HandOnForm


@administrators_only
@require_http_methods(["GET", "POST"])
def hand_on(request: SignedInRequest, pk: int) -> HttpResponse:
    """Of somebody whose account is closed; who still works here keeps her own."""
    leaver = get_object_or_404(User, pk=pk, is_active=False)
    form = HandOnForm(request.POST if request.method == "POST" else None, leaver=leaver)
    if request.method == "POST" and form.is_valid():
        to = form.cleaned_data["to"]
        number = handing_on.hand_on(leaver=leaver, to=to, with_drafts=form.cleaned_data["drafts"])
        words = ngettext("%(number)s count is now %(name)s’s.", "%(number)s counts are now %(name)s’s.", number)
        messages.success(request, words % {"number": number, "name": to.display_name})
        return redirect("accounts:people")
    context = {"section": "school", "leaver": leaver, "left": handing_on.left_by(leaver), "form": form}
    return render(request, "team/hand_on.html", context, status=422 if form.errors else 200)
