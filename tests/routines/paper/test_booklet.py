"""Booklets: chosen, made beside everything else, watched, opened by their maker alone."""

import json
import subprocess
from datetime import timedelta

import pytest
from django.db import connection
from django.urls import reverse
from django.utils import timezone

from routines.jobs.claim import FILE_LIMIT
from routines.jobs.queue import WAITING_AT_MOST, drop_files_of_words
from routines.jobs.runner import do_next
from routines.models import Job, JobFile
from routines.models.job import KEPT
from routines.paper import booklet_jobs
from routines.paper.booklet import AT_MOST
from routines.paper.booklet_jobs import find_booklet, start_booklet
from routines.paper.press import printing
from routines.paper.process import TookTooLong
from routines.plans.actions import save_version
from tests.factories import UserFactory
from tests.routines.making import make_routine
from tests.routines.printed import Printed

pytestmark = pytest.mark.usefixtures("pango")


# What another process writes it must be able to read, and so must the thread that renews the lease while it writes.
written = pytest.mark.django_db(transaction=True)


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


def laid_out(job: Job) -> Printed:
    job = made(job)
    assert job.is_done, job.said
    return Printed(bytes(job.file.content))


@pytest.fixture
def writing(monkeypatch):
    """Puts a function of the test in the place of the process that writes."""

    def by(function) -> None:
        def ask(message, *, time_limit, on_answer):
            return {"said": "", "refused": ""}, function(on_answer)

        monkeypatch.setattr(booklet_jobs.writing, "ask", ask)

    return by


@pytest.fixture
def no_paper(writing):
    writing(lambda on_answer: b"%PDF")


@written
def test_the_contents_give_the_page_of_each_count(ask):
    document = laid_out(ask("First plums", "Second plums", contents=("plan", "recording")))
    text = document.text()
    assert document.pdf.docinfo["/Title"] == "Plums"
    assert len(document.pdf.pages) == 9  # contents, then twice a plan page and three sheets
    contents = Printed(document.content).text()
    assert contents.index("First plums") < contents.index("Second plums")
    assert "2 / 9" in text
    assert {str(link.Dest) for link in document.of_type("/Subtype", "/Link")} == {"count-1", "count-2"}
    outline = document.pdf.Root.Outlines
    assert str(outline.First.Title) == "Plums"


@written
def test_it_is_one_tagged_document(ask):
    document = laid_out(ask("First plums", "Second plums"))
    assert document.pdf.Root.MarkInfo.Marked
    assert str(document.pdf.Root.Lang) == "en"
    assert len(document.of_type("/Type", "/StructTreeRoot")) == 1
    assert all(str(figure.get("/Alt", "")).strip() for figure in document.of_type("/S", "/Figure"))


def test_booklets_have_a_process_of_their_own():
    assert booklet_jobs.writing is not printing.process


def choose(client, *routines, **changes):
    fields = {"title": "Plums", "routine": [routine.pk for routine in routines], "contents": ["plan"], **changes}
    return client.post(reverse("booklet_choose"), fields)


@written
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


@written
def test_counts_and_then_pages_are_told_while_it_is_made(owner, ask, monkeypatch):
    seen = []
    monkeypatch.setattr("routines.jobs.claim.PROGRESS_EVERY", 0)
    monkeypatch.setattr("routines.jobs.claim.Claim._write", _noting(seen))
    assert made(ask("One", "Two")).done == 3
    counts = [("counts", done, 2) for done in (0, 1, 2)]
    pages = [("pages", done, 3) for done in (0, 1, 2, 3)]
    assert [how_far for how_far in dict.fromkeys(seen) if how_far[0]] == [*counts, *pages]


def _noting(seen):
    from routines.jobs.claim import Claim

    write = Claim._write

    def noted(self, **values) -> None:
        write(self, **values)
        job = Job.objects.get(pk=self.job.pk)
        seen.append((job.payload.get("part"), job.done, job.total))

    return noted


def test_another_booklet_drops_the_one_before(owner, ask):
    first, second = ask("One"), ask("Two")
    assert find_booklet(first.key, owner=owner) is None
    assert find_booklet(second.key, owner=owner) is not None


@pytest.mark.parametrize("drop", ["another", "erased", "dropped by hand"])
def test_a_dropped_booklet_does_not_come_back(owner, visit, ask, writing, drop):
    job = ask("One")

    def drop_meanwhile(on_answer) -> bytes:
        if drop == "another":
            ask("Two")
        elif drop == "erased":
            drop_files_of_words()
        else:
            visit(owner).post(reverse("booklet_drop", args=[job.key]))
        return b"%PDF"

    writing(drop_meanwhile)
    assert made(job) is None
    assert not JobFile.objects.exists()
    assert Job.objects.count() == (drop == "another")


def test_a_dropped_booklet_stops_at_its_next_page(owner, ask, monkeypatch, writing):
    monkeypatch.setattr("routines.jobs.claim.PROGRESS_EVERY", 0)
    pages = []

    def drop_meanwhile(on_answer) -> bytes:
        for page in (1, 2, 3):
            pages.append(page)
            on_answer({"part": "pages", "done": page, "total": 3})
            drop_files_of_words()
        return b"%PDF"

    writing(drop_meanwhile)
    assert made(ask("One")) is None
    assert pages == [1, 2]


@written
def test_after_a_booklet_was_dropped_the_next_is_whole(owner, ask, monkeypatch):
    """What its process would still have answered belongs to nobody, and the process is gone."""
    monkeypatch.setattr("routines.jobs.claim.PROGRESS_EVERY", 0)
    job = ask("One", "Two")
    with monkeypatch.context() as patch:
        patch.setattr("routines.jobs.claim.Claim.progress", lambda self, done: (drop_files_of_words(), self.renew()))
        assert made(job) is None
    assert booklet_jobs.writing.process is None
    assert made(ask("Three")).said == "1 count on 2 pages."
    assert booklet_jobs.writing.process is None


@written
def test_what_is_given_up_while_its_process_starts_ends_it(owner, ask, monkeypatch):
    """The lease is looked at from outside: no page has to be laid out for that."""
    monkeypatch.setattr("routines.jobs.runner.RENEW_EVERY", 0.5)
    job = ask("One")
    monkeypatch.setattr("routines.jobs.runner._renew", lambda claim: (drop_files_of_words(), claim.renew()))
    assert made(job) is None


@written
def test_one_that_is_dropped_before_its_process_reads_it_is_not_written(owner, ask):
    job = ask("One")
    order = json.dumps({"database": str(connection.settings_dict["NAME"]), "job": job.pk}).encode() + b"\n"
    Job.objects.all().delete()
    last, pdf = booklet_jobs.writing.ask(order, time_limit=60)
    booklet_jobs.writing.stop()
    assert (last["refused"], pdf) == ("This booklet was removed.", b"")


@written
def test_its_process_ends_where_nobody_listens_any_more(owner, ask):
    job = ask(*map(str, range(8)))
    order = json.dumps({"database": str(connection.settings_dict["NAME"]), "job": job.pk}).encode() + b"\n"
    process = subprocess.Popen(booklet_jobs.writing.command, stdin=subprocess.PIPE, stdout=subprocess.PIPE)
    process.stdin.write(order)
    process.stdin.flush()
    assert json.loads(process.stdout.readline()) == {"part": "counts", "done": 1, "total": 8}
    process.stdout.close()
    assert process.wait(60) == 1
    process.stdin.close()


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


def test_one_that_takes_too_long_says_so(owner, ask, writing):
    def take_long(on_answer) -> bytes:
        raise TookTooLong

    writing(take_long)
    job = made(ask("One"))
    assert job.has_failed
    assert job.said == "This booklet took too long to make. Try it with fewer counts."


@written
def test_what_nobody_foresaw_is_said_too(owner, visit, ask):
    job = ask("One")
    Job.objects.update(payload={**job.payload, "contents": ["no such print"]})
    assert made(job).has_failed
    assert "Try it with fewer counts" in visit(owner).get(reverse("booklet", args=[job.key])).text


def test_a_booklet_too_large_to_keep_says_so(owner, ask, writing):
    writing(lambda on_answer: bytes(FILE_LIMIT + 1))
    assert "32 MB" in made(ask("One")).said
    assert not JobFile.objects.exists()


@written
def test_what_its_owner_may_not_see_any_more_is_left_out_and_said(owner, teammate, ask, pango):
    job = ask("Kept plum", "Planted damson", by=teammate)
    owner.owned_routines.get(title="Planted damson").retire()
    job = made(job)
    assert "1 count on 2 pages. 1 count was left out" in job.said
    text = Printed(bytes(job.file.content)).text()
    assert "Kept plum" in text
    assert "damson" not in text


@written
def test_where_nothing_is_left_to_print_it_says_so(owner, teammate, ask):
    job = ask("Planted damson", by=teammate)
    owner.owned_routines.get().retire()
    assert "None of these counts can be printed" in made(job).said


@written
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
