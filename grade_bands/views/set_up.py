"""The first visit to an empty server."""

from django.contrib.auth import authenticate, login
from django.contrib.auth.decorators import login_not_required
from django.db import IntegrityError
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods

from accounts.forms import NewPersonForm, SchoolForm
from accounts.models import School
from accounts.requests import Request
from accounts.throttling import client_address
from accounts.views.sign_in import BACKEND

from ..actions import set_up_school
from ..forms import SetUpCodeForm, SetUpForm


def set_up_already(request: HttpRequest) -> HttpResponse:
    """Lets in whoever sends the set-up form a second time: the passphrase shows that it is the same person."""
    typed = {name: request.POST.get(f"administrator-{name}", "") for name in ("sign_in_name", "passphrase")}
    if request.method == "POST" and all(typed.values()):
        person = authenticate(request, username=typed["sign_in_name"], password=typed["passphrase"])
        if person is not None:
            login(request, person, backend=BACKEND)
            return redirect("accounts:school")
    return redirect("/")


@login_not_required
@never_cache
@sensitive_post_parameters("administrator-passphrase", "administrator-passphrase_again", "code")
@require_http_methods(["GET", "POST"])
def set_up(request: Request) -> HttpResponse:
    if request.school is not None:
        return set_up_already(request)
    typed = request.POST or None
    code = SetUpCodeForm(typed, address=client_address(request))
    school, administrator, rest = (
        SchoolForm(typed, prefix="school"),
        NewPersonForm(typed, prefix="administrator"),
        SetUpForm(typed, prefix="grades"),
    )
    if typed and all(form.is_valid() for form in (code, school, administrator, rest)):
        try:
            set_up_school(
                school=school.save(commit=False),
                administrator=administrator.save(commit=False),
                passphrase=administrator.cleaned_data["passphrase"],
                day=timezone.localdate(),
                **rest.cleaned_data,
            )
        except IntegrityError:  # a school was set up a moment earlier
            return set_up_already(request)
        login(request, administrator.instance, backend=BACKEND)
        return redirect("accounts:school")
    if typed and School.objects.exists():
        return set_up_already(request)
    context = {"code": code, "school_form": school, "administrator": administrator, "rest": rest}
    status = 429 if code.locked else 422 if typed else 200
    return render(request, "grade_bands/set_up.html", context, status=status)
