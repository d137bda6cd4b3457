"""The printing process: it reads nothing from outside, gives up what takes too long, and takes the roomiest look that fits."""

import io

import pikepdf
import pytest
from django.urls import reverse

from routines.paper.fitting import Fit
from routines.paper.press import PaperError, PrintingProcess
from tests.routines.making import make_routine
from tests.routines.printed import Printed

pytestmark = pytest.mark.usefixtures("pango")


@pytest.fixture
def process():
    printing = PrintingProcess()
    yield printing
    printing.stop()


def page(body: str, head: str = "") -> str:
    return f'<html lang="en"><head><title>t</title>{head}</head><body>{body}</body></html>'


def test_hostile_words_fetch_nothing(owner, printed, tmp_path):
    secret = tmp_path / "secret.txt"
    secret.write_text("planted damson")
    routine = make_routine(
        owner,
        notes=f'<img src="file://{secret}"> </section><style>@import "file://{secret}"</style>',
        title='<link rel="attachment" href="file:///etc/hostname">',
    )
    for name in ("plan", "substitute"):
        document = printed(routine, name)
        assert "damson" not in document.text()
        assert "/EmbeddedFiles" not in document.pdf.Root.get("/Names", {})
    assert '<link rel="attachment"' in document.text()


def test_it_reads_no_file_and_no_address(process, tmp_path):
    secret = tmp_path / "secret.css"
    secret.write_text("body::before { content: 'planted damson' }")
    html = page(
        '<img src="http://127.0.0.1:9/x.png" alt="x">plain words', f'<link rel="stylesheet" href="file://{secret}">'
    )
    text = Printed(process.pdf(html, f'@import "file://{secret}";')).text()
    assert "damson" not in text
    assert "plain words" in text


def test_what_takes_too_long_is_given_up_and_the_next_page_prints(process):
    with pytest.raises(PaperError, match="too long"):
        process.pdf(page("<p>word</p>" * 200_000), "", time_limit=0.5)
    assert process.pdf(page("short"), "").startswith(b"%PDF")


@pytest.mark.parametrize("first", [0, 1, 2, 3])
def test_the_roomiest_look_with_which_all_fits_one_page_is_taken(process, first):
    # The looks can be told by the width of their page; 2, 3, 4 and 6 paragraphs fit one page of each.
    looks = [
        f"@page {{ size: {width}pt 200pt; margin: 0 }} p {{ height: {height}pt; margin: 0 }}"
        for width, height in ((301, 90), (302, 60), (303, 45), (304, 30))
    ]

    def printed(paragraphs: int) -> tuple[int, int]:
        """The width of its pages, and how many they are."""
        html = page("".join(f"<p>{n}</p>" for n in range(paragraphs)))
        pages = pikepdf.open(
            io.BytesIO(process.pdf(html, "", looks=looks, fit=Fit.alike(first=first, least=1.3, most=1.6)))
        ).pages
        return round(float(pages[0].mediabox[2])), len(pages)

    assert [printed(2), printed(3), printed(4), printed(6)] == [(301, 1), (302, 1), (303, 1), (304, 1)]
    assert printed(8) == (302, 3)  # none fits: the middle one, three to a page


def test_a_page_printed_again_gets_the_same_look(process):
    looks = [
        f"@page {{ size: {width}pt 200pt; margin: 0 }} p {{ margin: 0 0 {80 - 20 * n}pt }}"
        for n, width in enumerate((301, 302, 303))
    ]
    html = page("".join(f"<p>{n}</p>" for n in range(3)))
    first, again, other = (
        process.pdf(given, "", looks=looks, fit=Fit.alike(first=0, least=1.0, most=2.0))
        for given in (html, html, page("<p>0</p>"))
    )
    assert first == again
    assert [round(width) for pdf in (first, other) for width, _ in Printed(pdf).sizes()] == [302, 301]


def test_parts_in_another_language_are_tagged_with_it(process):
    document = Printed(process.pdf(page('<p>Stops <span lang="es">Paradas</span></p>'), ""))
    spans = [item for item in document.of_type("/Lang", "es") if str(item.get("/S")) == "/Span"]
    assert spans


def test_a_failure_is_said_plainly_and_leads_to_the_browsers_printing(owner, visit, monkeypatch):
    def fail(self, *args, **kwargs):
        raise PaperError("The PDF could not be made. Print from the browser instead.")

    monkeypatch.setattr(PrintingProcess, "pdf", fail)
    routine = make_routine(owner)
    answer = visit(owner).get(reverse("print_pdf", args=[routine.pk, "poster"]), {"show": "lit"})
    assert answer.status_code == 503
    assert "Print from the browser instead" in answer.text
    assert reverse("print_html", args=[routine.pk, "poster"]) + "?show=lit" in answer.text
