"""What a page answers when the plan it is about cannot be read."""

from collections.abc import Callable

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render

from accounts.fragments import wants_fragment
from routines.models import Routine, UnreadablePlan


class UnreadablePlanMiddleware:
    """Instead of an error page: the title, why the plan cannot be read, and the way back to an older save of it."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        return self.get_response(request)

    def process_exception(self, request: HttpRequest, exception: Exception) -> HttpResponse | None:
        if not isinstance(exception, UnreadablePlan):
            return None
        seen = Routine.objects.visible_to(request.user).prefetch_related("co_authors")
        routine = seen.filter(pk=exception.routine_id).first()
        context = {
            "section": "bank",
            "routine": routine,
            "why": str(exception),
            "may_edit": routine is not None and routine.may_edit(request.user),
        }
        template = "bank/_unreadable_plan.html" if wants_fragment(request) else "bank/unreadable_plan.html"
        return render(request, template, context, status=422)
