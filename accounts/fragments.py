"""Questions that every view asks of a request."""

from django.http import HttpRequest


def wants_fragment(request: HttpRequest) -> bool:
    """True when htmx asks for a part of the page; a restored history entry needs the whole page."""
    return bool(request.htmx) and not request.htmx.history_restore_request
