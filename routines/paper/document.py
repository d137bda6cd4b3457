"""A document to print: one or more sheets, as HTML and as PDF."""

from collections.abc import Sequence
from dataclasses import dataclass

from django.template.loader import render_to_string
from django.utils.safestring import SafeString

from routines.paper.fitting import Fit
from routines.paper.press import printing
from routines.paper.styles import LOOKS, USUAL_LOOK, paper_css


@dataclass(frozen=True, slots=True)
class Document:
    """`language` is the main language, `paper` the school's; `sheets` are HTML, each begins a page.

    Of one sheet the look is taken with which it keeps to one page, by its `fit`; without one, and of several, it is the usual.
    """

    title: str
    author: str
    language: str
    paper: str
    sheets: Sequence[SafeString]
    fit: Fit | None = None

    def html(self, *, for_browser: bool = False) -> str:
        """For a browser the page brings its own style sheets; the printing process gets them beside it."""
        return render_to_string("paper/sheets/document.html", {"document": self, "for_browser": for_browser})

    def pdf(self) -> bytes:
        """Raises PaperError when it cannot be printed."""
        fit = self.fit if len(self.sheets) == 1 else None
        return printing.pdf(self.html(), paper_css(self.paper), looks=LOOKS if fit else [USUAL_LOOK], fit=fit)
