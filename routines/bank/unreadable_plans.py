"""What a page answers when the plan it is about cannot be read."""

from collections.abc import Callable

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render

from accounts.fragments import wants_fragment
from accounts.requests import Request, is_signed_in
from routines.models import Routine, UnreadablePlan


class UnreadablePlanMiddleware:
    """Instead of an error page: the title, why the plan cannot be read, and the way back to an older save of it."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        return self.get_response(request)

    def process_exception(self, request: Request, exception: Exception) -> HttpResponse | None:
        if not isinstance(exception, UnreadablePlan):
            return None
        routine, may_edit = None, False
        if is_signed_in(request):  # a board with a pass shows a plan too, and nobody's name is on it
            seen = Routine.objects.visible_to(request.user).prefetch_related("co_authors")
            routine = seen.filter(pk=exception.routine_id).first()
            may_edit = routine is not None and routine.may_edit(request.user)
        context = {
            "section": "bank",
            "routine": routine,
            "why": str(exception),
            "may_edit": may_edit,
        }
        template = "bank/_unreadable_plan.html" if wants_fragment(request) else "bank/unreadable_plan.html"
        return render(request, template, context, status=422)
