"""The printing process: reads pages as HTML on standard input, writes PDFs to standard output, one after another.

Run as `python -m routines.paper.worker FOLDER_OF_FONTS`. It keeps one font configuration and its parsed
CSS for as long as it lives. While it renders it can read nothing: the fetcher opens only `data:` addresses, follows no
redirects, and pages have no base address.

A message is a line of JSON with the lengths of the HTML, the CSS and the looks and what is known of how they fit (or null),
then these texts. The answer is a line of JSON, {"file": length, "error": ""}, and the PDF.
"""

import base64
import json
import logging
import re
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from hashlib import sha256
from pathlib import Path
from typing import Any, BinaryIO

from routines.paper.fitting import Fit, LaidOut, find_look

REMEMBERED = 2_000  # pages, by their hash
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
    progress.setLevel(logging.INFO)
    progress.addHandler(counter)
    try:
        yield
    finally:
        progress.removeHandler(counter)
        progress.setLevel(logging.WARNING)


def measured(document: Any) -> LaidOut:
    """How tall the content of a document is that should be one page; its picture is the tallest box that is replaced.

    WeasyPrint (70.0) tells of a page only its size; its boxes are private.
    """
    from weasyprint.formatting_structure.boxes import ReplacedBox

    height = picture = 0.0
    for page in document.pages:
        root = page._page_box.children[0]
        ends = [box for box in root.descendants() if not getattr(box, "children", None)]
        room = page._page_box.height
        height += max((box.position_y + box.margin_height() - root.position_y for box in ends), default=0) / room
        picture = max([picture, *(box.height / room for box in ends if isinstance(box, ReplacedBox))])
    return LaidOut(len(document.pages) == 1, height, picture)


class Press:
    """WeasyPrint with its fonts loaded once."""

    def __init__(self, fonts: Path) -> None:
        from weasyprint import CSS
        from weasyprint.text.fonts import FontConfiguration
        from weasyprint.urls import URLFetcher

        tag_languages()
        logging.getLogger("weasyprint").propagate = False  # what it says of rules for the screen tells a school nothing
        self.configuration = FontConfiguration()
        self.css = CSS(string=font_css(fonts), font_config=self.configuration)
        self.parsed: dict[str, Any] = {}
        self.found: dict[bytes, int] = {}
        self.fetcher = URLFetcher(allowed_protocols=("data",), allow_redirects=False)

    def pdf(
        self,
        html: str,
        css: str,
        looks: Sequence[str] = ("",),
        fit: Fit | None = None,
        on_page: Callable[[int], None] | None = None,
    ) -> tuple[bytes, int]:
        """The PDF and its number of pages; `on_page` hears of each that is laid out.

        Looks go from roomy to tight: the roomiest with which it all fits one page is taken; where none does, a middle one,
        and the text flows on. Without a `fit` it is the first.
        """
        page = self._page(html)
        documents: dict[int, Any] = {}
        name = sha256("\0".join([html, css, *looks]).encode()).digest()

        def lay_out(look: int) -> LaidOut:
            documents[look] = self._laid_out(page, css, looks[look])
            return measured(documents[look])

        with pages_told(on_page):
            chosen = self._remembered(name, lambda: find_look(len(looks), fit, lay_out)) if fit else 0
            document = documents[chosen] if chosen in documents else self._laid_out(page, css, looks[chosen])
        documents.clear()
        return document.write_pdf(pdf_variant="pdf/ua-1"), len(document.pages)

    def _remembered(self, name: bytes, find: Callable[[], int]) -> int:
        """The look that was found before for the same page: it is printed again before most lessons."""
        if name not in self.found:
            if len(self.found) == REMEMBERED:
                del self.found[next(iter(self.found))]
            self.found[name] = find()
        return self.found[name]

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
        fit = message["fit"] and Fit(**message["fit"])
        try:
            (pdf, _), error = press.pdf(html, css, looks, fit), ""
        except Exception as failure:  # whatever fails is told to the app; the process goes on
            pdf, error = b"", f"{type(failure).__name__}: {failure}"
        answer({"file": len(pdf), "error": error}, pdf)


if __name__ == "__main__":
    # Pages go out on the real standard output; anything a library prints goes to the log instead.
    answers = sys.stdout.buffer
    sys.stdout = sys.stderr
    serve(sys.stdin.buffer, answers, Path(sys.argv[1]))
