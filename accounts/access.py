"""Who may open a page of the school's own affairs."""

from collections.abc import Callable
from functools import wraps

from django.core.exceptions import PermissionDenied
from django.http import HttpRequest, HttpResponse


def administrators_only(view: Callable[..., HttpResponse]) -> Callable[..., HttpResponse]:
    """For signed-in people who are no administrators: 403. (The signed-out never get this far.)"""

    @wraps(view)
    def checked(request: HttpRequest, *args: object, **kwargs: object) -> HttpResponse:
        if not request.user.is_administrator:
            raise PermissionDenied
        return view(request, *args, **kwargs)

    return checked
