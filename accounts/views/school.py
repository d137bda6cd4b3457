"""The school's page for administrators: its settings, its people, the links that let them in."""

from urllib.parse import urlencode

from django.contrib import messages
from django.core.paginator import Paginator
from django.http import HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from ..access import administrators_only
from ..actions import InvitedBefore, LastAdministrator, change_role, close_account, invite, offer_new_passphrase
from ..finding_people import found_people
from ..forms import InviteForm, RoleForm, SchoolForm
from ..models import OneTimeLink, School, User
from ..requests import SignedInRequest, names_this_machine
from ..sent_once import key_of

PEOPLE_ON_A_PAGE = 50
INVITATIONS_SHOWN = 50
LONGEST_NAME_LOOKED_FOR = 80


@administrators_only
@require_http_methods(["GET", "POST"])
def settings(request: SignedInRequest) -> HttpResponse:
    form = SchoolForm(request.POST or None, instance=School.objects.current())
    if request.method == "POST" and form.is_valid():
        form.save()
        messages.success(request, _("Saved."))
        return redirect("accounts:school")
    status = 422 if form.errors else 200
    return render(request, "accounts/school.html", {"section": "school", "form": form}, status=status)


def people_context(request: SignedInRequest, form: InviteForm) -> dict[str, object]:
    typed = request.GET.get("q", "")[:LONGEST_NAME_LOOKED_FOR].strip()
    invitations = list(OneTimeLink.objects.open_invitations()[: INVITATIONS_SHOWN + 1])
    return {
        "section": "school",
        "form": form,
        "typed": typed,
        "page": Paginator(found_people(typed), PEOPLE_ON_A_PAGE).get_page(request.GET.get("page")),
        "administrators": User.objects.administrators().count(),
        "roles": User.Role.choices,
        "invitations": invitations[:INVITATIONS_SHOWN],
        "more_invitations": len(invitations) > INVITATIONS_SHOWN,
    }


def back_to_people(request: SignedInRequest) -> HttpResponse:
    """To the page of the list from which something was done."""
    query = {name: request.GET[name] for name in ("q", "page") if request.GET.get(name)}
    address = reverse("accounts:people")
    return redirect(f"{address}?{urlencode(query)}" if query else address)


@administrators_only
@require_GET
def people(request: SignedInRequest) -> HttpResponse:
    return render(request, "accounts/people.html", people_context(request, InviteForm()))


@administrators_only
@never_cache
@require_POST
def invite_person(request: SignedInRequest) -> HttpResponse:
    """Answers with the link itself, once: only its hash is kept, so it can't be shown again."""
    form = InviteForm(request.POST)
    token = ""
    if form.is_valid():
        try:
            token = invite(by=request.user, key=key_of(request), **form.cleaned_data)
        except InvitedBefore:
            form.add_error(
                None,
                _("This page made a link before, which is not this one. Press the button again to make a new link."),
            )
    if not token:
        return render(request, "accounts/people.html", people_context(request, form), status=422)
    return show_link(request, "accounts:invitation", token, whom=form.cleaned_data["display_name"])


@administrators_only
@never_cache
@require_POST
def reset_passphrase(request: SignedInRequest, pk: int) -> HttpResponse:
    person = get_object_or_404(User.objects.active(), pk=pk)
    token = offer_new_passphrase(by=request.user, person=person)
    return show_link(request, "accounts:new_passphrase", token, whom=person.display_name)


def show_link(request: HttpRequest, view: str, token: str, *, whom: str) -> HttpResponse:
    address = request.build_absolute_uri(reverse(view, args=[token]))
    context = {"section": "school", "address": address, "whom": whom, "only_here": names_this_machine(request)}
    return render(request, "accounts/link.html", context)


@administrators_only
@require_POST
def set_role(request: SignedInRequest, pk: int) -> HttpResponse:
    person = get_object_or_404(User.objects.active(), pk=pk)
    form = RoleForm(request.POST)
    if not form.is_valid():
        messages.error(request, str(form.errors["role"][0]))
        return back_to_people(request)
    try:
        change_role(person=person, role=form.cleaned_data["role"])
    except LastAdministrator:
        messages.error(request, _("A school needs one administrator. Make someone else one first."))
    else:
        messages.success(
            request,
            _("%(name)s is now: %(role)s.") % {"name": person.display_name, "role": person.get_role_display()},
        )
    return back_to_people(request)


@administrators_only
@require_POST
def close(request: SignedInRequest, pk: int) -> HttpResponse:
    person = get_object_or_404(User.objects.active(), pk=pk)
    try:
        close_account(person=person)
    except LastAdministrator:
        messages.error(request, _("A school needs one administrator. Make someone else one first."))
    else:
        messages.success(
            request,
            _("%(name)s can't sign in any more. What they made stays.") % {"name": person.display_name},
        )
    return back_to_people(request)


@administrators_only
@require_POST
def reopen(request: SignedInRequest, pk: int) -> HttpResponse:
    person = get_object_or_404(User, pk=pk, is_active=False)
    person.come_back()
    messages.success(request, _("%(name)s can sign in again.") % {"name": person.display_name})
    return back_to_people(request)


@administrators_only
@require_POST
def withdraw_invitation(request: SignedInRequest, pk: int) -> HttpResponse:
    get_object_or_404(OneTimeLink.objects.open_invitations(), pk=pk).withdraw()
    messages.success(request, _("The invitation no longer works."))
    return back_to_people(request)
