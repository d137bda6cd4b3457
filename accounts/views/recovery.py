"""The recovery code: made and printed by an administrator, used by one whom nobody else can let in."""

from django.contrib import messages
from django.contrib.auth import login
from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods

from ..access import administrators_only
from ..forms import ProveItIsYouForm, RecoveryForm
from ..models import RecoveryCode, User
from ..recovery import CodeRefused, make_recovery_code
from ..recovery import recover as set_new_passphrase
from ..requests import SignedInRequest
from ..throttling import client_address, forget_tries

BACKEND = "accounts.backends.NameOrEmailBackend"


def show_recovery_code(
    request: SignedInRequest, *, form: ProveItIsYouForm | None = None, locked: bool = False
) -> HttpResponse:
    """The page that says whether there is a code, and makes one. The code itself can't be shown again."""
    context = {
        "section": "school",
        "form": form or ProveItIsYouForm(request=request),
        "locked": locked,
        "usable": RecoveryCode.objects.usable().select_related("made_by").first(),
        "used": RecoveryCode.objects.last_used(),
        "administrators": User.objects.administrators().count(),
    }
    status = 429 if locked else 422 if form else 200
    return render(request, "accounts/recovery_code.html", context, status=status)


@administrators_only
@never_cache
@sensitive_post_parameters("current")
@require_http_methods(["GET", "POST"])
def recovery_code(request: SignedInRequest) -> HttpResponse:
    if request.method == "GET":
        return show_recovery_code(request)
    form = ProveItIsYouForm(request.POST, request=request)
    if not form.is_valid():
        return show_recovery_code(request, form=form)
    forget_tries(request, request.user)
    context = {
        "section": "school",
        "code": make_recovery_code(by=request.user),
        "made_at": timezone.now(),
        "address": request.build_absolute_uri(reverse("accounts:recover")),
        "administrators": User.objects.administrators().in_name_order(),
    }
    return render(request, "accounts/recovery_code_on_paper.html", context)


@login_not_required
@never_cache
@sensitive_post_parameters("pass_code", "passphrase", "passphrase_again")
@require_http_methods(["GET", "POST"])
def recover(request: HttpRequest) -> HttpResponse:
    form = RecoveryForm(request.POST or None, address=client_address(request))
    if request.method == "POST" and form.is_valid() and form.person:
        try:
            set_new_passphrase(
                person=form.person, code=form.cleaned_data["pass_code"], passphrase=form.cleaned_data["passphrase"]
            )
        except CodeRefused:  # used a moment earlier
            form.refuse()
        else:
            login(request, form.person, backend=BACKEND)
            messages.success(request, _("Your new passphrase is set. The code is used up: make the next one now."))
            return redirect("accounts:recovery_code")
    status = 429 if form.locked else 422 if request.method == "POST" else 200
    return render(request, "accounts/recover.html", {"form": form}, status=status)
