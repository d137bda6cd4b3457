"""Tables as CSV, for a spreadsheet. Nothing in them is run as a formula."""

import csv
import io
import re
from collections.abc import Iterable

from django.http import HttpResponse

PLAIN_NUMBER = re.compile(r"-?[0-9][0-9.,\u00a0\u202f ]*")
DANGEROUS = ("=", "+", "-", "@", "\t", "\r")


def table_csv(rows: Iterable[Iterable[object]]) -> str:
    """Its rows, each cell made harmless; None is an empty cell."""
    target = io.StringIO()
    writer = csv.writer(target)
    for row in rows:
        writer.writerow(["" if cell is None else neutral(str(cell)) for cell in row])
    return target.getvalue()


def csv_download(text: str, name: str) -> HttpResponse:
    """As a file of this name. The mark in front tells spreadsheets that the text is UTF-8."""
    return HttpResponse(
        ("\ufeff" + text).encode(),
        content_type="text/csv; charset=utf-8",
        headers={"Content-Disposition": f'attachment; filename="{name}"'},
    )


def neutral(text: str) -> str:
    """A text that no spreadsheet takes for a formula. Plain numbers, also below zero, stay numbers.

    >>> neutral("-7"), neutral("=1+1"), neutral("-3/4")
    ('-7', "'=1+1", "'-3/4")
    """
    if text.startswith(DANGEROUS) and not PLAIN_NUMBER.fullmatch(text):
        return f"'{text}"
    return text
