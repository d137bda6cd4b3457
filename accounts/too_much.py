"""A form with more fields, or more bytes, than are taken: said in a plain sentence, with what was typed."""

from collections.abc import Callable
from urllib.parse import parse_qsl

from django.conf import settings
from django.core.exceptions import RequestDataTooBig, TooManyFieldsSent, TooManyFilesSent
from django.http import HttpRequest, HttpResponse, UnreadablePostError
from django.shortcuts import render
from django.utils.translation import gettext as _

from .kept_text import is_secret
from .requests import Request

FORM = "application/x-www-form-urlencoded"
# Shorter values are choices and numbers, which nobody wants to copy.
SHORTEST_TEXT = 12


class TooMuchMiddleware:
    """Reads each form before anything else does, so that one that is too large gets an answer about just that."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: Request) -> HttpResponse:
        try:
            request.POST  # noqa: B018 - reading it is what may fail
        except TooManyFilesSent:
            most = settings.DATA_UPLOAD_MAX_NUMBER_FILES
            return too_much(
                request,
                _("This page holds more than %(most)s files, the most that are taken at once.") % {"most": most},
            )
        except TooManyFieldsSent:
            most = settings.DATA_UPLOAD_MAX_NUMBER_FIELDS
            return too_much(
                request,
                _("This page holds more than %(most)s fields, the most that is taken at once.") % {"most": f"{most:,}"},
            )
        except UnreadablePostError:
            pass  # the sender is gone, so nobody waits for an answer
        except RequestDataTooBig:
            most = settings.DATA_UPLOAD_MAX_MEMORY_SIZE // 1024 // 1024
            return too_much(
                request,
                _("This page holds more than %(most)s MB of text, the most that is taken at once.") % {"most": most},
            )
        return self.get_response(request)


def too_much(request: Request, sentence: str) -> HttpResponse:
    if request.htmx:
        return HttpResponse(
            _("Not kept. %(sentence)s What you typed stays on this page.") % {"sentence": sentence}, status=413
        )
    return render(request, "too_much.html", {"sentence": sentence, "texts": texts_of(request)}, status=413)


def texts_of(request: HttpRequest) -> list[str]:
    """The longer texts of a form with too many fields, to be copied from the answer.

    Of one with too many bytes nothing was read, and what another site sends in someone's name is not shown to her.
    """
    from_us = request.headers.get("Origin") == f"{request.scheme}://{request.get_host()}"
    if not from_us or request.content_type != FORM or not hasattr(request, "_body"):
        return []
    fields = parse_qsl(request.body.decode("utf-8", "replace"))
    return [text for name, text in fields if len(text) >= SHORTEST_TEXT and not is_secret(name)]
