"""The school on every request, and what a signed-out person is answered."""

from collections.abc import Callable
from typing import Any

from django.contrib.auth.middleware import LoginRequiredMiddleware, get_user
from django.db.models import QuerySet
from django.http import HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.shortcuts import redirect
from django.urls import reverse
from django.utils import timezone

from .compiled_once import compiled_once
from .kept_text import KeptText
from .models import School
from .requests import Request
from .views.sign_in import FORM_TYPES, answer_signed_out_fragment, ask_to_sign_in


class SchoolMiddleware:
    """Sets `request.school` and its time zone; before there is a school, every page leads to set-up."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: Request) -> HttpResponse:
        request.school = next(iter(_school()), None)
        if request.school is None:
            set_up = reverse("grade_bands:set_up")
            return self.get_response(request) if request.path == set_up else redirect(set_up)
        with timezone.override(request.school.time_zone):
            return self.get_response(request)


@compiled_once
def _school() -> QuerySet[School]:
    """Asked for by every page."""
    return School.objects.order_by("pk")[:1]


class SignedInMiddleware(LoginRequiredMiddleware):
    """Every view needs a signed-in person unless it says otherwise; what a signed-out person typed is kept."""

    def process_view(
        self,
        request: HttpRequest,
        view_func: Callable[..., HttpResponseBase],
        view_args: tuple[Any, ...],
        view_kwargs: dict[str, Any],
    ) -> HttpResponseBase | None:
        """As Django's, which has to know who it is: from here on `user` is herself, not what looks her up at each question."""
        answer = super().process_view(request, view_func, view_args, view_kwargs)
        request.user = get_user(request)
        return answer

    # Django promises a redirect, for that is what its own answer is; whoever calls this takes any answer.
    def handle_no_permission(  # type: ignore[override]
        self, request: Request, view_func: Callable[..., HttpResponse]
    ) -> HttpResponse:
        if request.htmx or (request.method == "POST" and request.content_type not in FORM_TYPES):
            return answer_signed_out_fragment(request)
        if request.method == "POST":
            return ask_to_sign_in(request, address=request.get_full_path(), kept=KeptText.from_post(request))
        return super().handle_no_permission(request, view_func)
