"""Booklets: chosen, made beside everything else, watched, opened by their maker alone."""

import time

import pytest
from django.urls import reverse

from routines.paper import booklet_jobs
from routines.paper.booklet import AT_MOST, Booklet
from routines.paper.booklet_jobs import drop_all_booklets, find_booklet, start_booklet
from routines.paper.press import PaperError, booklet_printing, printing
from routines.paper.subject import Subject
from tests.routines.making import make_routine
from tests.routines.paper.conftest import Printed

pytestmark = pytest.mark.usefixtures("pango")


@pytest.fixture(autouse=True)
def data_folder(settings, tmp_path):
    settings.DATA_DIR = tmp_path


@pytest.fixture
def booklet(owner, school):
    def of(*titles, **how) -> Booklet:
        versions = [make_routine(owner, title=title).current_version for title in titles]
        return Booklet("Plums", [Subject(version, school) for version in versions], **how)

    return of


def finished(key, owner) -> booklet_jobs.BookletJob:
    for _ in range(600):
        job = find_booklet(key, owner=owner.pk)
        if job is None or job.finished:
            return job
        time.sleep(0.1)
    raise AssertionError("The booklet was never finished.")


def test_the_contents_give_the_page_of_each_count(booklet):
    document = Printed(booklet("First plums", "Second plums", contents=("plan", "recording")).document().booklet_pdf())
    text = document.text()
    assert document.pdf.docinfo["/Title"] == "Plums"
    assert len(document.pdf.pages) == 9  # contents, then twice a plan page and three sheets
    contents = Printed(document.content).text()
    assert contents.index("First plums") < contents.index("Second plums")
    assert "2 / 9" in text
    assert {str(link.Dest) for link in document.of_type("/Subtype", "/Link")} == {"count-1", "count-2"}
    outline = document.pdf.Root.Outlines
    assert str(outline.First.Title) == "Plums"


def test_it_is_one_tagged_document(booklet):
    document = Printed(booklet("First plums", "Second plums").document().booklet_pdf())
    assert document.pdf.Root.MarkInfo.Marked
    assert str(document.pdf.Root.Lang) == "en"
    assert len(document.of_type("/Type", "/StructTreeRoot")) == 1
    assert all(str(figure.get("/Alt", "")).strip() for figure in document.of_type("/S", "/Figure"))


def test_booklets_have_a_process_of_their_own():
    assert booklet_printing is not printing
    assert booklet_printing.turn is not printing.turn


def choose(client, *routines, **changes):
    fields = {"title": "Plums", "routine": [routine.pk for routine in routines], "contents": ["plan"], **changes}
    return client.post(reverse("booklet_choose"), fields)


def test_from_choosing_to_opening(owner, visit):
    client = visit(owner)
    answer = choose(client, make_routine(owner), make_routine(owner, title="Second"))
    assert answer.status_code == 302
    key = answer["Location"].rstrip("/").split("/")[-1]
    job = finished(key, owner)
    assert job.done, job.error
    assert job.pages == 3
    page = client.get(answer["Location"]).text
    assert "2 counts on 3 pages" in page
    opened = client.get(reverse("booklet_pdf", args=[key]))
    assert opened["Content-Type"] == "application/pdf"
    assert b"".join(opened.streaming_content).startswith(b"%PDF")


def test_somebody_elses_booklet_is_not_found(owner, teammate, visit, signed_out, booklet):
    job = start_booklet(booklet("Planted damson"), owner=owner.pk)
    assert finished(job.key, owner).done
    for name in ("booklet", "booklet_pdf"):
        assert visit(teammate).get(reverse(name, args=[job.key])).status_code == 404
        assert signed_out.get(reverse(name, args=[job.key])).status_code == 302


def test_drafts_of_others_are_neither_offered_nor_taken(owner, teammate, visit):
    draft = make_routine(owner, shared=False, title="Planted damson")
    shared = make_routine(owner, title="Open plum")
    client = visit(teammate)
    page = client.get(reverse("booklet_choose")).text
    assert "Open plum" in page
    assert "damson" not in page
    answer = choose(client, shared, draft)
    assert answer.status_code == 422
    assert "damson" not in answer.text


def test_the_banks_filter_and_my_plans_choose(owner, other_teacher, visit):
    twos, threes = make_routine(owner, title="In grade two"), make_routine(owner, title="A draft", shared=False)
    client = visit(owner)
    filtered = client.get(reverse("booklet_choose"), {"grade": "2"}).text
    assert f'value="{twos.pk}" checked' in filtered
    assert f'value="{threes.pk}"' not in filtered
    mine = client.get(reverse("booklet_choose"), {"from": "mine"}).text
    assert f'value="{threes.pk}" checked' in mine
    assert "In grade two" not in client.get(reverse("booklet_choose"), {"grade": "5"}).text


def test_too_many_none_and_nothing_to_print_are_said(owner, visit):
    client = visit(owner)
    routine = make_routine(owner)
    many = [make_routine(owner, title=f"Count {n}") for n in range(AT_MOST + 1)]
    assert f"{AT_MOST} counts at most" in choose(client, *many).text
    assert "Tick at least one count" in choose(client).text
    nothing = choose(client, routine, contents=[], title="Kept title")
    assert "Tick what goes into" in nothing.text
    assert 'value="Kept title"' in nothing.text
    assert f'value="{routine.pk}" checked' in nothing.text


def test_progress_is_a_fragment_for_htmx_and_refreshes_without_scripts(owner, visit, booklet, monkeypatch):
    monkeypatch.setattr(booklet_jobs, "_make", lambda job, booklet: None)
    job = start_booklet(booklet("Plums"), owner=owner.pk)
    client, address = visit(owner), reverse("booklet", args=[job.key])
    page = client.get(address).text
    assert '<meta http-equiv="refresh"' in page
    assert "<progress" in page
    fragment = client.get(address, headers={"HX-Request": "true"}).text
    assert "<html" not in fragment
    assert 'hx-trigger="every 1s"' in fragment
    assert client.get(reverse("booklet_pdf", args=[job.key])).status_code == 404


def test_pages_are_counted_while_it_is_made(owner, booklet, monkeypatch):
    seen = []
    write = booklet_jobs._write
    monkeypatch.setattr(booklet_jobs, "_write", lambda job: (seen.append(job.pages), write(job)))
    job = start_booklet(booklet("One", "Two"), owner=owner.pk)
    assert finished(job.key, owner).pages == 3
    assert seen[:4] == [0, 1, 2, 3]


def test_another_booklet_drops_the_one_before(owner, booklet, monkeypatch):
    monkeypatch.setattr(booklet_jobs, "_make", lambda job, booklet: None)
    first = start_booklet(booklet("One"), owner=owner.pk)
    second = start_booklet(booklet("Two"), owner=owner.pk)
    assert find_booklet(first.key, owner=owner.pk) is None
    assert find_booklet(second.key, owner=owner.pk) is not None


def test_a_dropped_booklet_does_not_come_back(owner, booklet, monkeypatch):
    made = []

    def drop_meanwhile(self, on_page=None, process=None) -> bytes:
        drop_all_booklets()
        made.append(self.title)
        return b"%PDF"

    monkeypatch.setattr("routines.paper.document.Document.booklet_pdf", drop_meanwhile)
    job = start_booklet(booklet("One"), owner=owner.pk)
    assert finished(job.key, owner) is None
    assert made == ["Plums"]
    assert not job.pdf_path.exists()


def test_old_booklets_go(owner, booklet, monkeypatch):
    monkeypatch.setattr(booklet_jobs, "_make", lambda job, booklet: None)
    job = start_booklet(booklet("One"), owner=owner.pk)
    later = time.time() + booklet_jobs.KEPT + 1
    monkeypatch.setattr(booklet_jobs.time, "time", lambda: later)
    assert find_booklet(job.key, owner=owner.pk) is None


def test_a_booklet_that_nobody_makes_any_more_says_so(owner, booklet, monkeypatch):
    monkeypatch.setattr(booklet_jobs, "_make", lambda job, booklet: None)
    job = start_booklet(booklet("One"), owner=owner.pk)
    later = time.time() + booklet_jobs.STOPPED_AFTER + 1
    monkeypatch.setattr(booklet_jobs.time, "time", lambda: later)
    assert "interrupted" in find_booklet(job.key, owner=owner.pk).error


def test_a_failure_is_said_plainly(owner, booklet, monkeypatch):
    def fail(self, on_page=None, process=None) -> bytes:
        raise PaperError("This page took too long to print.")

    monkeypatch.setattr("routines.paper.document.Document.booklet_pdf", fail)
    job = start_booklet(booklet("One"), owner=owner.pk)
    assert finished(job.key, owner).error == "This page took too long to print."
