"""The administrator hands a leaver's counts and classes on to a colleague."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.utils.translation import gettext as _
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
    left = handing_on.left_by(leaver, timezone.localdate())
    form = HandOnForm(request.POST if request.method == "POST" else None, leaver=leaver, left=left)
    if request.method == "POST" and left and form.is_valid():
        _hand_on(request, form, leaver)
        return redirect("accounts:people")
    context = {"section": "school", "leaver": leaver, "left": left, "form": form}
    return render(request, "team/hand_on.html", context, status=422 if form.errors else 200)


def _hand_on(request: SignedInRequest, form: HandOnForm, leaver: User) -> None:
    """As it was ticked, and say so."""
    to = form.cleaned_data["to"]
    classes = list(form.left.classes) if form.cleaned_data["classes"] else []
    number = handing_on.hand_on(leaver=leaver, to=to, with_drafts=form.cleaned_data["drafts"], classes=classes)
    if number:
        words = ngettext("%(number)s count is now %(name)s’s.", "%(number)s counts are now %(name)s’s.", number)
        messages.success(request, words % {"number": number, "name": to.display_name})
    if classes:
        names = ", ".join(group.name for group in classes)
        messages.success(request, _("%(name)s now teaches %(classes)s.") % {"name": to.display_name, "classes": names})
