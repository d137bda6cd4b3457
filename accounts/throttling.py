"""Slowing down whoever guesses passphrases: by person and address together, never by address alone."""

import re
from ipaddress import ip_address

from axes.utils import reset
from django.conf import settings
from django.http import HttpRequest

from .models import User
from .requests import Request
from .same_text import sign_in_text

LONGEST_NAME = 254


def throttled_name(request: Request, credentials: dict[str, str] | None = None) -> str:
    """Whom a try is counted against: however her name or e-mail is typed, they share one counter."""
    typed = ((credentials or {}).get("username") or request.POST.get("name", ""))[:LONGEST_NAME]
    meant: dict[str, str] = getattr(request, "tries_meant", {})
    if typed not in meant:  # asked several times for one try
        person = User.objects.for_sign_in(typed).first() if "\0" not in typed else None
        meant[typed] = person.sign_in_name if person else sign_in_text(typed)[:LONGEST_NAME]
        request.tries_meant = meant
    return meant[typed]


def forget_tries(request: HttpRequest, person: User) -> None:
    """After the right passphrase was given somewhere else than at sign-in, which does this by itself."""
    reset(username=person.sign_in_name, ip=client_address(request))


def client_address(request: HttpRequest) -> str:
    """The address of the device. Only what our own proxy added last is believed, and only where there is one."""
    own: str = request.META.get("REMOTE_ADDR", "")
    if not settings.BEHIND_PROXY:
        return own
    return forwarded_address(request.META.get("HTTP_X_FORWARDED_FOR", "").rpartition(",")[2]) or own


def forwarded_address(entry: str) -> str:
    """The address in one entry of X-Forwarded-For, in its shortest form, or "".

    Some proxies add the port, which changes with every connection: counted with it, no two tries would be of one device.
    """
    entry = entry.strip()
    if found := re.fullmatch(r"\[([^\]]*)\](?::[0-9]+)?|([0-9.]+):[0-9]+", entry, re.ASCII):
        entry = found[1] or found[2] or ""
    try:
        address = ip_address(entry.partition("%")[0])
    except ValueError:
        return ""
    return str(getattr(address, "ipv4_mapped", None) or address)
