"""What holds for every answer, whoever made it: HEAD as GET without the body, and who may keep a copy."""

from collections.abc import Callable

from django.http import HttpRequest, HttpResponse, StreamingHttpResponse
from django.http.response import HttpResponseBase


class HeadMiddleware:
    """Answers HEAD on every address that answers GET, with the headers GET would send and no body (RFC 9110 9.3.2).

    Here rather than at each view, so that a view may go on asking whether the method is GET.
    """

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        if request.method != "HEAD":
            return self.get_response(request)
        request.method = "GET"
        response = self.get_response(request)
        request.method = "HEAD"
        return without_body(response)


def without_body(response: HttpResponseBase) -> HttpResponseBase:
    if isinstance(response, StreamingHttpResponse):
        response.streaming_content = ()  # its file is closed with the answer, as ever
    elif isinstance(response, HttpResponse):
        response.headers.setdefault("Content-Length", str(len(response.content)))
        response.content = b""
    return response


class KeepPrivateMiddleware:
    """No shared cache keeps what one person was shown; what says otherwise (static files, one-time links) keeps its own.

    Pages may be gone back to, with what was typed there; files that were made for one person are not kept at all.
    """

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        response = self.get_response(request)
        is_page = response.headers.get("Content-Type", "").startswith("text/html") or 300 <= response.status_code < 400
        response.headers.setdefault("Cache-Control", "private, no-cache" if is_page else "private, no-store")
        return response
