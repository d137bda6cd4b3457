"""Signing in and out, and keeping what was typed when a session had ended."""

from django.contrib import messages
from django.contrib.auth import authenticate, login, logout
from django.contrib.auth.decorators import login_not_required
from django.http import Http404, HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.http import url_has_allowed_host_and_scheme
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods, require_POST

from ..demo import one_click_sign_in_is_open
from ..forms import SignInForm
from ..kept_text import KeptText, is_secret
from ..models import User
from ..requests import Request, SignedInRequest, is_signed_in
from ..typed_numbers import typed_id
from .own_account import show_account
from .recovery import show_recovery_code

BACKEND = "accounts.backends.NameOrEmailBackend"
SIGN_IN_PAGE = "accounts/sign_in.html"
FORM_TYPES = ("application/x-www-form-urlencoded", "multipart/form-data")


def safe_address(request: HttpRequest, address: str) -> str:
    """`address` if it leads to a page of ours, else the front page."""
    ours = address.startswith("/") and url_has_allowed_host_and_scheme(
        address, allowed_hosts={request.get_host()}, require_https=request.is_secure()
    )
    return address if ours else "/"


def sign_in_context(
    request: HttpRequest, *, form: SignInForm, address: str, kept: KeptText | None
) -> dict[str, object]:
    demo_people = User.objects.active().in_name_order() if one_click_sign_in_is_open(request) else ()
    return {"form": form, "next": address, "kept": kept, "demo_people": demo_people}


def ask_to_sign_in(request: HttpRequest, *, address: str, kept: KeptText | None) -> HttpResponse:
    """The sign-in page in answer to a form that was sent by someone signed out, with what the form held."""
    context = sign_in_context(request, form=SignInForm(), address=address, kept=kept)
    too_long = kept is None and not all(is_secret(name) for name in request.POST)
    return render(request, SIGN_IN_PAGE, {**context, "too_long": too_long}, status=401)


def answer_signed_out_meanwhile(request: Request) -> HttpResponse:
    """For whoever was somebody when the view answered and is nobody now: the sign-in page, with what was typed."""
    is_form = request.method == "POST"
    if request.htmx or (is_form and request.content_type not in FORM_TYPES):
        return answer_signed_out_fragment(request)
    at = request.resolver_match
    if is_form and at and at.view_name == "accounts:sign_in":
        address, kept = (
            safe_address(request, request.POST.get("next", "")),
            KeptText.from_json(request.POST.get("kept", "")),
        )
    elif is_form and at and getattr(at.func, "login_required", True):
        address, kept = request.get_full_path(), KeptText.from_post(request)
    else:
        address, kept = "/" if is_form else request.get_full_path(), None
    context = sign_in_context(request, form=SignInForm(), address=address, kept=kept)
    return render(request, SIGN_IN_PAGE, {**context, "signed_out_meanwhile": True}, status=401)


def answer_signed_out_fragment(request: HttpRequest) -> HttpResponse:
    """For scripts: the page stays as it is, with what was typed, and says what to do at its top."""
    response = render(request, "accounts/_signed_out.html", status=401)
    response["HX-Retarget"] = "#main"
    response["HX-Reswap"] = "afterbegin show:window:top"
    return response


def csrf_failure(request: Request, reason: str = "") -> HttpResponse:
    """A stale form token, for instance after signing in again in another tab.

    A form that came from a page of ours is kept and may be sent again with one press. A form from anywhere else is
    refused, and nothing of it is kept.
    """
    if request.content_type == "application/json":  # a script asks for a fresh token and sends again
        return JsonResponse({"reason": "token"}, status=403)
    from_us = request.headers.get("Origin") == f"{request.scheme}://{request.get_host()}"
    kept = KeptText.from_post(request) if from_us else None
    if request.htmx or kept is None:
        too_long = from_us and not all(is_secret(name) for name in request.POST)
        response = render(request, "403.html", {"stale_form": True, "too_long": too_long}, status=403)
        response["X-Stale-Form"] = "1"  # so that autosave can tell it from a plan that is not hers
        return response
    if not request.user.is_authenticated:
        return ask_to_sign_in(request, address=request.get_full_path(), kept=kept)
    # With the cookie's own token: an answer that is under way beside this one sends the same cookie, and spoils nothing.
    return render(request, "accounts/send_again.html", {"address": request.get_full_path(), "kept": kept}, status=403)


@login_not_required
@never_cache
@sensitive_post_parameters("passphrase")
@require_http_methods(["GET", "POST"])
def sign_in(request: HttpRequest) -> HttpResponse:
    address = safe_address(request, request.POST.get("next") or request.GET.get("next", ""))
    if request.method == "GET":
        if request.user.is_authenticated:
            return redirect(address)
        context = sign_in_context(request, form=SignInForm(), address=address, kept=None)
        return render(request, SIGN_IN_PAGE, context)

    kept = KeptText.from_json(request.POST.get("kept", ""))
    form = SignInForm(request.POST)
    if "demo_person" in request.POST:
        person: User | None = find_demo_person(request, request.POST["demo_person"])
    elif form.is_valid():
        person = authenticate(request, username=form.cleaned_data["name"], password=form.cleaned_data["passphrase"])
        if person is None:
            form.add_error("passphrase", _("Name and passphrase don't go together. Try again, or ask for a new one."))
    else:
        person = None
    if person is None:
        context = sign_in_context(request, form=form, address=address, kept=kept)
        return render(request, SIGN_IN_PAGE, context, status=422)

    login(request, person, backend=BACKEND)
    if kept:
        return render(request, "accounts/send_again.html", {"address": address, "kept": kept, "signed_in": True})
    return redirect(address)


def find_demo_person(request: HttpRequest, key: str) -> User:
    if not one_click_sign_in_is_open(request):
        raise Http404
    return get_object_or_404(User.objects.active(), pk=typed_id(key))


def locked_out(request: HttpRequest, response: HttpResponse | None, credentials: dict[str, str] | None) -> HttpResponse:
    """Too many wrong passphrases for this person from this address, at sign-in or on her own page."""
    if is_signed_in(request) and "name" not in request.POST:
        asked_at = request.resolver_match.view_name if request.resolver_match else ""
        show = show_recovery_code if asked_at == "accounts:recovery_code" else show_account
        return show(request, locked=True)
    form = SignInForm(request.POST)
    form.full_clean()
    form.add_error(None, _("Too many tries with this name. Wait a quarter of an hour, or ask for a new passphrase."))
    address = safe_address(request, request.POST.get("next", ""))
    kept = KeptText.from_json(request.POST.get("kept", ""))
    return render(request, SIGN_IN_PAGE, sign_in_context(request, form=form, address=address, kept=kept), status=429)


def leave(request: HttpRequest) -> None:
    """End the session, and with it what waits to be said to her: the next page on this computer may be somebody else's."""
    for _said in messages.get_messages(request):
        pass
    logout(request)


@login_not_required
@require_POST
def sign_out(request: HttpRequest) -> HttpResponse:
    leave(request)
    return redirect("accounts:sign_in")


@require_POST
def sign_out_everywhere(request: SignedInRequest) -> HttpResponse:
    request.user.sign_out_everywhere()
    leave(request)
    messages.success(request, _("You are signed out on every device."))
    return redirect("accounts:sign_in")
