"""Questions that every view asks of a request."""

from .requests import Request


def wants_fragment(request: Request) -> bool:
    """True when htmx asks for a part of the page; a restored history entry needs the whole page."""
    return bool(request.htmx) and not request.htmx.history_restore_request
