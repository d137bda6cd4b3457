"""The style sheet of everything printed: the tokens of the screen, print rules, and the school's paper size."""

from functools import cache
from pathlib import Path

from django.conf import settings

SIZES = {"letter": "Letter", "a4": "A4"}


@cache
def paper_css(paper: str) -> str:
    """`paper` is "letter" or "a4"."""
    folder = Path(settings.BASE_DIR) / "static" / "css"
    sheets = [(folder / name).read_text(encoding="utf-8") for name in ("tokens.css", "paper.css")]
    return "\n".join([*sheets, f"@page {{ size: {SIZES[paper]} }}"])
