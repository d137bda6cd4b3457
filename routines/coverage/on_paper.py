"""A sheet of coverage as an answer: the PDF, or why there is none."""

from typing import Any

from django.http import HttpResponse
from django.shortcuts import render

from accounts.requests import SignedInRequest
from routines.coverage.forms import Window
from routines.paper.document import Document
from routines.paper.press import PaperError


def pdf_answer(request: SignedInRequest, document: Document, window: Window, name: str, **more: Any) -> HttpResponse:
    """name: of the file, without its ending. more: what the page needs that says why there is no paper."""
    try:
        pdf = document.pdf()
    except PaperError as error:
        context = {"section": "coverage", "window": window, "error": error, **more}
        return render(request, "coverage/no_paper.html", context, status=503)
    shown = f'inline; filename="{name}.pdf"'
    return HttpResponse(pdf, content_type="application/pdf", headers={"Content-Disposition": shown})
