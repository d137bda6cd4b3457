"""The printing process: reads pages as HTML on standard input, writes PDFs to standard output, one after another.

Run as `python -m routines.paper.worker FOLDER_OF_FONTS`. It keeps one font configuration and its parsed
CSS for as long as it lives. While it renders it can read nothing: the fetcher opens only `data:` addresses, follows no
redirects, and pages have no base address.

A message is a line of JSON with the lengths of the HTML, the CSS and the looks, then these texts. The answer is a line of
JSON, {"file": length, "error": ""}, and the PDF.
"""

import base64
import json
import logging
import re
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any, BinaryIO

FACES = (("regular", 400), ("bold", 700))
PAGE_LAID_OUT = re.compile(r"Step 5 - Creating layout - Page (\d+)")


def font_css(folder: Path) -> str:
    """The app's own font as data addresses, so that no file is read while a page is rendered."""
    rules = []
    for name, weight in FACES:
        face = base64.b64encode((folder / f"countfold-hand-{name}.ttf").read_bytes()).decode()
        rules.append(
            f'@font-face {{ font-family: "Countfold Hand"; font-weight: {weight}; src: url(data:font/ttf;base64,{face}) }}'
        )
    return "\n".join(rules)


def tag_languages() -> None:
    """Let the tags of a PDF say where the language changes, as the HTML's `lang` attributes do.

    WeasyPrint (70.0) writes only the language of the whole document. The tag tree is built by one recursive function of
    its module, so wrapping it there reaches every box.
    """
    import pydyf
    from weasyprint.pdf import tags

    build: Callable[..., Iterator[Any]] = tags._build_box_tree

    def build_with_language(box: Any, *others: Any) -> Iterator[Any]:
        element = getattr(getattr(box, "_box", box), "element", None)
        language = element.get("lang") if element is not None and element.tag != "html" else None
        for built in build(box, *others):
            if language:
                built["Lang"] = pydyf.String(language)
            yield built

    tags._build_box_tree = build_with_language


class PageCounter(logging.Handler):
    """Tells how many pages are laid out, from what WeasyPrint logs of its progress."""

    def __init__(self, tell: Callable[[int], None]) -> None:
        super().__init__()
        self.tell = tell

    def emit(self, record: logging.LogRecord) -> None:
        match = PAGE_LAID_OUT.match(record.getMessage())
        if match:
            self.tell(int(match[1]))


@contextmanager
def pages_told(tell: Callable[[int], None] | None) -> Iterator[None]:
    """Hear of every page that is laid out inside; what is raised there ends the layout."""
    if tell is None:
        yield
        return
    progress, counter = logging.getLogger("weasyprint.progress"), PageCounter(tell)
    progress.propagate = False  # nobody reads it in the log
    progress.setLevel(logging.INFO)
    progress.addHandler(counter)
    try:
        yield
    finally:
        progress.removeHandler(counter)
        progress.setLevel(logging.WARNING)


class Press:
    """WeasyPrint with its fonts loaded once."""

    def __init__(self, fonts: Path) -> None:
        from weasyprint import CSS
        from weasyprint.text.fonts import FontConfiguration
        from weasyprint.urls import URLFetcher

        tag_languages()
        self.configuration = FontConfiguration()
        self.css = CSS(string=font_css(fonts), font_config=self.configuration)
        self.parsed: dict[str, Any] = {}
        self.fetcher = URLFetcher(allowed_protocols=("data",), allow_redirects=False)

    def pdf(
        self, html: str, css: str, looks: Sequence[str] = (), on_page: Callable[[int], None] | None = None
    ) -> tuple[bytes, int]:
        """The PDF and its number of pages; `on_page` hears of each that is laid out.

        Looks go from roomy to tight: the roomiest with which it all fits one page is taken; where none does, a middle one,
        and the text flows on.
        """
        with pages_told(on_page):
            document = self._fitted(self._page(html), css, looks)
        return document.write_pdf(pdf_variant="pdf/ua-1"), len(document.pages)

    def _fitted(self, page: Any, css: str, looks: Sequence[str]) -> Any:
        tried = {}

        def laid_out(look: int) -> Any:
            if look not in tried:
                tried[look] = self._laid_out(page, css, looks[look] if looks else "")
            return tried[look]

        middle = max(len(looks) - 1, 0) // 2
        roomy, tight = 0, max(len(looks), 1)  # the first that fits is in this half-open range, if any
        chosen = middle
        while roomy < tight and len(laid_out(middle).pages) <= 2:  # what takes three pages will never be one
            look = (roomy + tight - 1) // 2
            if len(laid_out(look).pages) == 1:
                chosen, tight = look, look
            else:
                roomy = look + 1
        return laid_out(chosen)

    def _page(self, html: str) -> Any:
        from weasyprint import HTML

        return HTML(string=html, base_url=None, url_fetcher=self.fetcher)

    def _laid_out(self, page: Any, *sheets: str) -> Any:
        return page.render(
            stylesheets=[self.css, *(self._parse(css) for css in sheets if css)],
            font_config=self.configuration,
            pdf_variant="pdf/ua-1",
        )

    def _parse(self, css: str) -> Any:
        from weasyprint import CSS

        if css not in self.parsed:
            self.parsed[css] = CSS(string=css, font_config=self.configuration, url_fetcher=self.fetcher)
        return self.parsed[css]


def serve(source: BinaryIO, target: BinaryIO, fonts: Path) -> None:
    def answer(content: dict[str, Any], rest: bytes = b"") -> None:
        target.write(json.dumps(content).encode() + b"\n" + rest)
        target.flush()

    press = Press(fonts)
    while line := source.readline():
        message = json.loads(line)
        html = source.read(message["html"]).decode()
        css = source.read(message["css"]).decode()
        looks = [source.read(length).decode() for length in message["looks"]]
        try:
            (pdf, _), error = press.pdf(html, css, looks), ""
        except Exception as failure:  # whatever fails is told to the app; the process goes on
            pdf, error = b"", f"{type(failure).__name__}: {failure}"
        answer({"file": len(pdf), "error": error}, pdf)


if __name__ == "__main__":
    # Pages go out on the real standard output; anything a library prints goes to the log instead.
    answers = sys.stdout.buffer
    sys.stdout = sys.stderr
    serve(sys.stdin.buffer, answers, Path(sys.argv[1]))
