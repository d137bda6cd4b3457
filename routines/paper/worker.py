"""The printing process: reads pages as HTML on standard input, writes PDFs to standard output, one after another.

Run as `python -m routines.paper.worker FOLDER_OF_FONTS`. It keeps one font configuration and its parsed CSS for as long as
it lives. While it renders it can read nothing: the fetcher opens only `data:` addresses, follows no redirects, and pages
have no base address. Each message is a line of JSON with the length of the HTML, then the HTML; each answer is a line
of JSON with the length of the PDF or the error, then the PDF.
"""

import base64
import json
import sys
from pathlib import Path
from typing import Any, BinaryIO

FACES = (("regular", 400), ("bold", 700))


def font_css(folder: Path) -> str:
    """The app's own font as data addresses, so that no file is read while a page is rendered."""
    rules = []
    for name, weight in FACES:
        face = base64.b64encode((folder / f"countfold-hand-{name}.ttf").read_bytes()).decode()
        rules.append(
            f'@font-face {{ font-family: "Countfold Hand"; font-weight: {weight}; src: url(data:font/ttf;base64,{face}) }}'
        )
    return "\n".join(rules)


class Press:
    """WeasyPrint with its fonts loaded once."""

    def __init__(self, fonts: Path) -> None:
        from weasyprint import CSS
        from weasyprint.text.fonts import FontConfiguration
        from weasyprint.urls import URLFetcher

        self.configuration = FontConfiguration()
        self.css = CSS(string=font_css(fonts), font_config=self.configuration)
        self.parsed: dict[str, Any] = {}
        self.fetcher = URLFetcher(allowed_protocols=("data",), allow_redirects=False)

    def pdf(self, html: str, css: str) -> bytes:
        from weasyprint import CSS, HTML

        if css not in self.parsed:
            self.parsed[css] = CSS(string=css, font_config=self.configuration, url_fetcher=self.fetcher)
        page = HTML(string=html, base_url=None, url_fetcher=self.fetcher)
        return page.write_pdf(
            stylesheets=[self.css, self.parsed[css]], font_config=self.configuration, pdf_variant="pdf/ua-1"
        )


def serve(source: BinaryIO, target: BinaryIO, fonts: Path) -> None:
    press = Press(fonts)
    while line := source.readline():
        message = json.loads(line)
        html = source.read(message["html"]).decode()
        css = source.read(message["css"]).decode()
        try:
            pdf, error = press.pdf(html, css), ""
        except Exception as failure:  # whatever fails is told to the app; the process goes on
            pdf, error = b"", f"{type(failure).__name__}: {failure}"
        target.write(json.dumps({"pdf": len(pdf), "error": error}).encode() + b"\n" + pdf)
        target.flush()


if __name__ == "__main__":
    # Pages go out on the real standard output; anything a library prints goes to the log instead.
    answers = sys.stdout.buffer
    sys.stdout = sys.stderr
    serve(sys.stdin.buffer, answers, Path(sys.argv[1]))
