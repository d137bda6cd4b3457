"""A person's own page: name, e-mail, passphrase, and signing out on every device."""

from django.contrib import messages
from django.contrib.auth import update_session_auth_hash
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods, require_POST

from ..forms import ChangePassphraseForm, PersonDetails
from ..models import OneTimeLink, User
from ..requests import SignedInRequest
from ..throttling import forget_tries


def show_account(
    request: SignedInRequest,
    *,
    details: PersonDetails | None = None,
    passphrase: ChangePassphraseForm | None = None,
    locked: bool = False,
) -> HttpResponse:
    # A ModelForm writes what was typed onto its instance even when it refuses it, so the form gets one of its own.
    person = User.objects.get(pk=request.user.pk)
    context = {
        "details": details or PersonDetails(instance=person),
        "passphrase": passphrase or ChangePassphraseForm(request=request),
        "locked": locked,
        "last_reset": OneTimeLink.objects.last_reset_of(person),
    }
    status = 429 if locked else 422 if details or passphrase else 200
    return render(request, "accounts/own_account.html", context, status=status)


@require_http_methods(["GET", "POST"])
def own_account(request: SignedInRequest) -> HttpResponse:
    if request.method == "GET":
        return show_account(request)
    form = PersonDetails(request.POST, instance=User.objects.get(pk=request.user.pk))
    if not form.is_valid():
        return show_account(request, details=form)
    form.save()
    messages.success(request, _("Saved."))
    return redirect("accounts:own_account")


@sensitive_post_parameters("current", "passphrase", "passphrase_again")
@require_POST
def change_passphrase(request: SignedInRequest) -> HttpResponse:
    form = ChangePassphraseForm(request.POST, request=request)
    if not form.is_valid():
        return show_account(request, passphrase=form)
    request.user.set_password(form.cleaned_data["passphrase"])
    request.user.save(update_fields=["password"])
    update_session_auth_hash(request, request.user)
    forget_tries(request, request.user)
    messages.success(request, _("Your new passphrase is set. Other devices are signed out."))
    return redirect("accounts:own_account")
