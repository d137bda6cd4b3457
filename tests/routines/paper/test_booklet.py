"""Booklets: chosen, made beside everything else, watched, opened by their maker alone."""

from datetime import timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from routines.jobs.claim import FILE_LIMIT
from routines.jobs.queue import WAITING_AT_MOST
from routines.jobs.runner import do_next
from routines.models import Job, JobFile
from routines.models.job import KEPT
from routines.paper.booklet import AT_MOST, Booklet
from routines.paper.booklet_jobs import drop_all_booklets, find_booklet, start_booklet
from routines.paper.press import PaperError, booklet_printing, printing
from routines.paper.subject import Subject
from routines.plans.actions import save_version
from tests.factories import UserFactory
from tests.routines.making import make_routine
from tests.routines.paper.conftest import Printed

pytestmark = pytest.mark.usefixtures("pango")


@pytest.fixture
def booklet(owner, school):
    def of(*titles, **how) -> Booklet:
        versions = [make_routine(owner, title=title).current_version for title in titles]
        return Booklet("Plums", [Subject(version, school) for version in versions], **how)

    return of


@pytest.fixture
def ask(owner):
    """Asks for a booklet of new counts with these titles, as their owner."""

    def asked(*titles, by=owner, contents=("plan",)) -> Job:
        versions = [make_routine(owner, title=title).current_version for title in titles]
        return start_booklet(owner=by, title="Plums", versions=versions, contents=contents)

    return asked


def made(job: Job) -> Job | None:
    """The booklet after its turn came."""
    assert do_next(Job.Kind.BOOKLET)
    return find_booklet(job.key, owner=job.owner)


@pytest.fixture
def no_paper(monkeypatch):
    monkeypatch.setattr(
        "routines.paper.document.Document.booklet_pdf", lambda self, on_page=None, process=None: b"%PDF"
    )


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
    assert booklet_printing.process is not printing.process


def choose(client, *routines, **changes):
    fields = {"title": "Plums", "routine": [routine.pk for routine in routines], "contents": ["plan"], **changes}
    return client.post(reverse("booklet_choose"), fields)


def test_from_choosing_to_opening(owner, visit):
    client = visit(owner)
    answer = choose(client, make_routine(owner), make_routine(owner, title="Second"))
    assert answer.status_code == 302
    assert do_next(Job.Kind.BOOKLET)
    page = client.get(answer["Location"]).text
    assert "2 counts on 3 pages" in page
    opened = client.get(answer["Location"] + "booklet.pdf")
    assert opened["Content-Type"] == "application/pdf"
    assert Printed(opened.content).text().count("Second") >= 2


def test_somebody_elses_booklet_is_not_found(owner, teammate, visit, signed_out, ask, no_paper):
    job = made(ask("Planted damson"))
    for name in ("booklet", "booklet_pdf"):
        assert visit(owner).get(reverse(name, args=[job.key])).status_code == 200
        assert visit(teammate).get(reverse(name, args=[job.key])).status_code == 404
        assert signed_out.get(reverse(name, args=[job.key])).status_code == 302
    assert visit(teammate).post(reverse("booklet_drop", args=[job.key])).status_code == 404
    assert find_booklet(job.key, owner=owner) is not None


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


def test_progress_is_a_fragment_for_htmx_and_refreshes_without_scripts(owner, visit, ask):
    job = ask("Plums")
    Job.objects.update(state="running", claim=job.key, claimed_until=timezone.now() + timedelta(minutes=1))
    client, address = visit(owner), reverse("booklet", args=[job.key])
    page = client.get(address).text
    assert '<meta http-equiv="refresh"' in page
    assert "<progress" in page
    fragment = client.get(address, headers={"HX-Request": "true"}).text
    assert "<html" not in fragment
    assert 'hx-trigger="every 1s"' in fragment
    assert client.get(reverse("booklet_pdf", args=[job.key])).status_code == 404


def test_who_waits_is_told_how_many_come_before(owner, teammate, coach, visit, ask):
    first, _, last = ask("One"), ask("Two", by=teammate), ask("Three", by=coach)
    assert "2 booklets before yours" in visit(coach).get(reverse("booklet", args=[last.key])).text
    assert "It begins in a moment" in visit(owner).get(reverse("booklet", args=[first.key])).text


def test_pages_are_counted_while_it_is_made(owner, ask, monkeypatch):
    seen = []
    monkeypatch.setattr("routines.jobs.claim.PROGRESS_EVERY", 0)
    monkeypatch.setattr("routines.jobs.claim.Claim._write", _noting(seen))
    assert made(ask("One", "Two")).done == 3
    assert seen[:3] == [1, 2, 3]


def _noting(seen):
    from routines.jobs.claim import Claim

    write = Claim._write

    def noted(self, **values) -> None:
        write(self, **values)
        seen.append(Job.objects.get(pk=self.job.pk).done)

    return noted


def test_another_booklet_drops_the_one_before(owner, ask):
    first, second = ask("One"), ask("Two")
    assert find_booklet(first.key, owner=owner) is None
    assert find_booklet(second.key, owner=owner) is not None


@pytest.mark.parametrize("drop", ["another", "erased", "dropped by hand"])
def test_a_dropped_booklet_does_not_come_back(owner, visit, ask, monkeypatch, drop):
    job = ask("One")

    def drop_meanwhile(self, on_page=None, process=None) -> bytes:
        if drop == "another":
            ask("Two")
        elif drop == "erased":
            drop_all_booklets()
        else:
            visit(owner).post(reverse("booklet_drop", args=[job.key]))
        return b"%PDF"

    monkeypatch.setattr("routines.paper.document.Document.booklet_pdf", drop_meanwhile)
    assert made(job) is None
    assert not JobFile.objects.exists()
    assert Job.objects.count() == (drop == "another")


def test_a_dropped_booklet_stops_at_its_next_page(owner, ask, monkeypatch):
    monkeypatch.setattr("routines.jobs.claim.PROGRESS_EVERY", 0)
    pages = []

    def drop_meanwhile(self, on_page=None, process=None) -> bytes:
        for page in (1, 2, 3):
            pages.append(page)
            on_page(page)
            drop_all_booklets()
        return b"%PDF"

    monkeypatch.setattr("routines.paper.document.Document.booklet_pdf", drop_meanwhile)
    assert made(ask("One")) is None
    assert pages == [1, 2]


def test_after_a_booklet_was_dropped_the_next_is_whole(owner, ask, monkeypatch):
    """What the printing process would still have answered belongs to nobody."""
    monkeypatch.setattr("routines.jobs.claim.PROGRESS_EVERY", 0)
    job = ask("One", "Two")
    progress = "routines.jobs.claim.Claim.progress"
    with monkeypatch.context() as patch:
        patch.setattr(progress, lambda self, page: (drop_all_booklets(), self.renew()))
        assert made(job) is None
    assert made(ask("Three")).said == "1 count on 2 pages."


def test_old_booklets_go(owner, ask, no_paper):
    job = made(ask("One"))
    Job.objects.update(ended_at=timezone.now() - KEPT - timedelta(seconds=1))
    assert find_booklet(job.key, owner=owner) is None
    Job.objects.remove_outdated()
    assert not JobFile.objects.exists()


def test_a_booklet_that_waits_is_not_old(owner, ask):
    job = ask("One")
    Job.objects.update(asked_at=timezone.now() - 2 * KEPT)
    Job.objects.remove_outdated()
    assert find_booklet(job.key, owner=owner) is not None


def test_a_failure_is_said_plainly(owner, ask, monkeypatch):
    def fail(self, on_page=None, process=None) -> bytes:
        raise PaperError("This page took too long to print.")

    monkeypatch.setattr("routines.paper.document.Document.booklet_pdf", fail)
    job = made(ask("One"))
    assert job.has_failed
    assert job.said == "This page took too long to print."


def test_what_nobody_foresaw_is_said_too(owner, visit, ask, monkeypatch):
    def fail(self, on_page=None, process=None) -> bytes:
        raise ZeroDivisionError

    monkeypatch.setattr("routines.paper.document.Document.booklet_pdf", fail)
    job = made(ask("One"))
    assert "Try it with fewer counts" in visit(owner).get(reverse("booklet", args=[job.key])).text


def test_a_booklet_too_large_to_keep_says_so(owner, ask, monkeypatch):
    monkeypatch.setattr(
        "routines.paper.document.Document.booklet_pdf", lambda self, on_page=None, process=None: bytes(FILE_LIMIT + 1)
    )
    assert "32 MB" in made(ask("One")).said
    assert not JobFile.objects.exists()


def test_what_its_owner_may_not_see_any_more_is_left_out_and_said(owner, teammate, ask, pango):
    job = ask("Kept plum", "Planted damson", by=teammate)
    owner.owned_routines.get(title="Planted damson").retire()
    job = made(job)
    assert "1 count on 2 pages. 1 count was left out" in job.said
    text = Printed(bytes(job.file.content)).text()
    assert "Kept plum" in text
    assert "damson" not in text


def test_where_nothing_is_left_to_print_it_says_so(owner, teammate, ask):
    job = ask("Planted damson", by=teammate)
    owner.owned_routines.get().retire()
    assert "None of these counts can be printed" in made(job).said


def test_the_version_that_was_chosen_is_printed(owner, ask):
    job = ask("First words")
    routine = owner.owned_routines.get()
    save_version(
        routine=routine, plan=routine.plan.changed(title="Later words"), based_on=routine.current_version, by=owner
    )
    text = Printed(bytes(made(job).file.content)).text()
    assert "First words" in text
    assert "Later words" not in text


def test_a_row_that_waits_holds_no_words_but_its_title(owner, ask):
    job = ask("Planted damson")
    assert "damson" not in str(list(Job.objects.filter(pk=job.pk).values()))


def test_a_full_queue_is_said_and_loses_nothing(owner, visit, ask):
    before = ask("One")
    Job.objects.bulk_create(
        Job(kind="booklet", owner=person, title="Another") for person in UserFactory.create_batch(WAITING_AT_MOST - 1)
    )
    assert ask("Mine again takes my own place").key != before.key
    Job.objects.create(kind="booklet", owner=UserFactory(), title="One more")
    answer = choose(visit(owner), make_routine(owner), title="Kept title")
    assert answer.status_code == 422
    assert f"{WAITING_AT_MOST} booklets are waiting already" in answer.text
    assert 'value="Kept title"' in answer.text
    assert Job.objects.of(owner).count() == 1


def test_the_booklet_one_has_is_found_again(owner, visit, ask):
    job = ask("One")
    page = visit(owner).get(reverse("booklet_choose")).text
    assert reverse("booklet", args=[job.key]) in page
    assert "is being made" in page
