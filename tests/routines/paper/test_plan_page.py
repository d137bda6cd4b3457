"""The plan on paper: its numbers, its tags, its own font, and nothing read from outside while it is made."""

import io

import pikepdf
import pytest
from django.urls import reverse

from routines.paper.press import PaperError, PrintingProcess
from tests.routines.making import make_routine


@pytest.fixture
def pdf(owner, visit):
    def made(**changes) -> pikepdf.Pdf:
        routine = make_routine(owner, **changes)
        answer = visit(owner).get(reverse("plan_pdf", args=[routine.pk]))
        assert answer["Content-Type"] == "application/pdf"
        return pikepdf.open(io.BytesIO(answer.content))

    return made


def text_of(document: pikepdf.Pdf) -> str:
    from pypdf import PdfReader

    kept = io.BytesIO()
    document.save(kept)
    return " ".join(" ".join(page.extract_text() for page in PdfReader(kept).pages).split())


def test_the_pdf_holds_the_plans_numbers_and_words(pdf):
    text = text_of(pdf())
    for words in (
        "Sevens from four",
        "What is under 11?",
        "5 jumps of 7 make 35",
        "137",
        "write the idea, not who said it",
    ):
        assert words in text


def test_the_pdf_is_tagged_titled_and_has_a_language(pdf):
    document = pdf()
    assert document.Root.MarkInfo.Marked
    assert str(document.Root.Lang) == "en"
    assert document.docinfo["/Title"] == "Sevens from four"
    assert "/StructTreeRoot" in document.Root


def test_every_picture_has_words_in_its_place(pdf):
    document = pdf()
    figures = [
        item for item in document.objects if isinstance(item, pikepdf.Dictionary) and item.get("/S") == "/Figure"
    ]
    assert figures
    assert all(str(figure.get("/Alt", "")).strip() for figure in figures)


def test_only_our_own_font_is_used_and_it_is_inside(pdf):
    document = pdf()
    fonts = [
        item
        for item in document.objects
        if isinstance(item, pikepdf.Dictionary) and item.get("/Type") == "/FontDescriptor"
    ]
    assert fonts
    for font in fonts:
        assert "Countfold-Hand" in str(font.FontName) or "CountfoldHand" in str(font.FontName)
        assert "/FontFile2" in font or "/FontFile3" in font


def test_a_page_that_fits_is_one_page(pdf):
    assert len(pdf().pages) == 1


def test_hostile_words_fetch_nothing(pdf, tmp_path):
    secret = tmp_path / "secret.txt"
    secret.write_text("planted damson")
    document = pdf(notes=f'<img src="file://{secret}">', title='<link rel="attachment" href="file:///etc/hostname">')
    assert "damson" not in text_of(document)
    assert "/EmbeddedFiles" not in document.Root.get("/Names", {})


def test_the_printing_process_reads_no_file_and_no_address(tmp_path):
    secret = tmp_path / "secret.css"
    secret.write_text("body::before { content: 'planted damson' }")
    page = (
        f'<html lang="en"><head><title>t</title><link rel="stylesheet" href="file://{secret}"></head>'
        f'<body><img src="http://127.0.0.1:9/x.png" alt="x">plain words</body></html>'
    )
    printing = PrintingProcess()
    try:
        document = pikepdf.open(io.BytesIO(printing.pdf(page, f'@import "file://{secret}";')))
    finally:
        printing.stop()
    assert "damson" not in text_of(document)
    assert "plain words" in text_of(document)


def test_a_page_that_takes_too_long_is_given_up_and_the_next_one_prints():
    printing = PrintingProcess()
    long = "<html lang='en'><head><title>t</title></head><body>" + "<p>word</p>" * 200_000 + "</body></html>"
    try:
        with pytest.raises(PaperError, match="too long"):
            printing.pdf(long, "", time_limit=0.5)
        assert printing.pdf("<html lang='en'><head><title>t</title></head><body>short</body></html>", "").startswith(
            b"%PDF"
        )
    finally:
        printing.stop()


def test_someone_elses_draft_is_not_printed(owner, teammate, visit):
    routine = make_routine(owner, shared=False)
    assert visit(teammate).get(reverse("plan_pdf", args=[routine.pk])).status_code == 404


def test_a_printing_process_that_fails_is_said_plainly(owner, visit, monkeypatch):
    def fail(self, *args, **kwargs):
        raise PaperError("The PDF could not be made. Print from the browser instead.")

    monkeypatch.setattr(PrintingProcess, "pdf", fail)
    answer = visit(owner).get(reverse("plan_pdf", args=[make_routine(owner).pk]))
    assert answer.status_code == 503
    assert "Print from the browser instead" in answer.text
