"""Slowing down whoever guesses passphrases: by sign-in name and address together, never by address alone."""

from django.conf import settings
from django.http import HttpRequest


def throttled_name(request: HttpRequest, credentials: dict | None = None) -> str:
    """The typed name as it is counted: in one case, so that `Ada` and `ada` share their tries."""
    typed = (credentials or {}).get("username") or request.POST.get("name", "")
    return typed.strip().lower()[:255]


def client_address(request: HttpRequest) -> str:
    """The address of the device. Only what our own proxy added last is believed, and only where there is one."""
    if settings.BEHIND_PROXY:
        forwarded = request.META.get("HTTP_X_FORWARDED_FOR", "").rpartition(",")[2].strip()
        if forwarded:
            return forwarded
    return request.META.get("REMOTE_ADDR", "")
