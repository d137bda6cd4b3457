"""Reading what was printed."""

import io

import pikepdf
import pytest

from config.checks import pango_is_there
from tests.absent import absent


class Printed:
    """A PDF and its questions."""

    def __init__(self, content: bytes) -> None:
        self.content = content
        self.pdf = pikepdf.open(io.BytesIO(content))

    def text(self, wanted: slice = slice(None)) -> str:
        """The words of all its pages, or of those wanted."""
        from pypdf import PdfReader

        pages = PdfReader(io.BytesIO(self.content)).pages[wanted]
        return " ".join(" ".join(page.extract_text() for page in pages).replace("\u00a0", " ").split())

    def heights(self) -> list[tuple[float, str]]:
        """The texts of the first page, each with how far it stands above the lower edge, in points."""
        from pypdf import PdfReader

        found: list[tuple[float, str]] = []

        def note(text: str, cm: list[float], tm: list[float], font: object, size: float) -> None:
            if text.strip():
                found.append((cm[1] * tm[4] + cm[3] * tm[5] + cm[5], " ".join(text.split())))

        PdfReader(io.BytesIO(self.content)).pages[0].extract_text(visitor_text=note)
        return found

    def of_type(self, key: str, value: str) -> list[pikepdf.Dictionary]:
        return [
            item for item in self.pdf.objects if isinstance(item, pikepdf.Dictionary) and str(item.get(key)) == value
        ]

    def sizes(self) -> set[tuple[float, float]]:
        """The widths and heights of its pages, in points."""
        return {(round(float(page.mediabox[2]), 2), round(float(page.mediabox[3]), 2)) for page in self.pdf.pages}


@pytest.fixture
def pango():
    """The library without which nothing is printed."""
    if not pango_is_there():
        absent("Pango")
