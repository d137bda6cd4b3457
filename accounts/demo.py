"""When one click signs in as an invented person: three locks, all of them open."""

from django.conf import settings
from django.http import HttpRequest

from .requests import LOOPBACK, names_this_machine


def is_loopback(request: HttpRequest) -> bool:
    """Both ends on this machine: the address asked for, and the address it was asked from."""
    return names_this_machine(request) and request.META.get("REMOTE_ADDR") in LOOPBACK


def one_click_sign_in_is_open(request: HttpRequest) -> bool:
    school = getattr(request, "school", None)
    return (
        settings.DEMO and not settings.BEHIND_PROXY and school is not None and school.is_demo and is_loopback(request)
    )
