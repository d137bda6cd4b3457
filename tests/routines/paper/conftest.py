"""Printing a routine, and reading its words."""

import re
from html import unescape

import pytest
from django.urls import reverse

from tests.routines.printed import Printed, pango

__all__ = ["pango"]


@pytest.fixture
def printed(owner, visit, pango):
    """Prints one routine by the name of the print, as its owner."""

    def made(routine, name="plan", **wishes) -> Printed:
        answer = visit(owner).get(reverse("print_pdf", args=[routine.pk, name]), wishes)
        assert answer["Content-Type"] == "application/pdf", answer.text
        return Printed(answer.content)

    return made


@pytest.fixture
def words():
    """The words of an HTML sheet, without its tags."""

    def of(html: str) -> str:
        plain = unescape(re.sub(r"<[^>]+>", " ", html)).replace("\u00a0", " ")
        return " ".join(plain.split())

    return of
