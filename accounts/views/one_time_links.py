"""The pages behind an invitation and behind a link for a new passphrase."""

from django.contrib.auth import authenticate, login
from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods

from ..actions import LinkUsed, accept_invitation, take_new_passphrase
from ..forms import NewPersonForm, ResetForm
from ..models import OneTimeLink, User
from .sign_in import BACKEND


def usable_link(token: str, purpose: str) -> OneTimeLink | None:
    return OneTimeLink.objects.usable().for_token(token).filter(purpose=purpose).select_related("person").first()


def link_gone(request: HttpRequest) -> HttpResponse:
    return render(request, "accounts/link_gone.html", status=410)


def taken_already(request: HttpRequest, token: str) -> HttpResponse:
    """Lets in whoever sends the form of an invitation a second time: name and passphrase show that it is she."""
    made = User.objects.active().filter(one_time_links__in=OneTimeLink.objects.for_token(token))
    name = request.POST.get("sign_in_name", "").strip()
    if request.method == "POST" and made.filter(sign_in_name=name).exists():
        person = authenticate(request, username=name, password=request.POST.get("passphrase", ""))
        if person is not None:
            login(request, person, backend=BACKEND)
            return redirect("/")
    return link_gone(request)


@login_not_required
@never_cache
@sensitive_post_parameters("passphrase", "passphrase_again")
@require_http_methods(["GET", "POST"])
def invitation(request: HttpRequest, token: str) -> HttpResponse:
    link = usable_link(token, OneTimeLink.Purpose.INVITATION)
    if link is None:
        return taken_already(request, token)
    form = NewPersonForm(request.POST or None, initial={"display_name": link.display_name})
    if request.method == "POST" and form.is_valid():
        fields = {name: form.cleaned_data[name] for name in ("sign_in_name", "display_name", "email", "passphrase")}
        try:
            person = accept_invitation(link=link, **fields)
        except LinkUsed:
            return taken_already(request, token)
        login(request, person, backend=BACKEND)
        return redirect("/")
    if form.errors and usable_link(token, OneTimeLink.Purpose.INVITATION) is None:
        return taken_already(request, token)
    status = 422 if form.errors else 200
    return render(request, "accounts/invitation.html", {"form": form, "link": link}, status=status)


@login_not_required
@never_cache
@sensitive_post_parameters("passphrase", "passphrase_again")
@require_http_methods(["GET", "POST"])
def new_passphrase(request: HttpRequest, token: str) -> HttpResponse:
    link = usable_link(token, OneTimeLink.Purpose.RESET)
    if link is None or not link.reset_for.is_active:
        return link_gone(request)
    form = ResetForm(request.POST or None, person=link.reset_for)
    if request.method == "POST" and form.is_valid():
        try:
            person = take_new_passphrase(link=link, passphrase=form.cleaned_data["passphrase"])
        except LinkUsed:
            return link_gone(request)
        login(request, person, backend=BACKEND)
        return redirect("/")
    status = 422 if form.errors else 200
    return render(request, "accounts/new_passphrase.html", {"form": form, "link": link}, status=status)
