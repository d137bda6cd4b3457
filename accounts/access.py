"""Who may open a page of the school's own affairs."""

from collections.abc import Callable
from functools import wraps
from typing import Concatenate, ParamSpec

from django.core.exceptions import PermissionDenied
from django.http import HttpResponse

from .requests import SignedInRequest

P = ParamSpec("P")


def administrators_only(
    view: Callable[Concatenate[SignedInRequest, P], HttpResponse],
) -> Callable[Concatenate[SignedInRequest, P], HttpResponse]:
    """For signed-in people who are no administrators: 403. (The signed-out never get this far.)"""

    @wraps(view)
    def checked(request: SignedInRequest, /, *args: P.args, **kwargs: P.kwargs) -> HttpResponse:
        if not request.user.is_administrator:
            raise PermissionDenied
        return view(request, *args, **kwargs)

    return checked
