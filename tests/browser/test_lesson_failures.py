"""What goes wrong in the middle of a lesson: nothing written is lost, and board and lectern say what happens."""

import errno
from datetime import timedelta
from typing import Any

import pytest
from django.db import connection, transaction
from django.utils import timezone
from playwright.sync_api import Page, expect

from accounts.models import User
from routines.erasing.doing import begin, finish
from routines.erasing.places import CALLED
from routines.lessons.events import append_events
from routines.lessons.kinds import KINDS
from routines.lessons.passes import COOKIE, tie_by_code
from routines.lessons.recording import delete_lesson, end_lesson, reopen_lesson
from routines.models import Lesson, LessonEvent, LessonPass
from routines.models.plan_document import CountSection, Fold
from routines.words_erased.matching import mark_of
from tests.browser.board_page import Board
from tests.browser.lectern_page import Lectern
from tests.factories import UserFactory
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

EVENTS = "**/events/**"
PASSPHRASE = "otter violin sandwich moon"
KEPT_UNSENT = """() => new Promise((done) => {
  const opening = indexedDB.open("countfold-lessons");
  opening.onsuccess = () => {
    const events = opening.result.transaction("events").objectStore("events").getAll();
    events.onsuccess = () => { opening.result.close(); done(events.result.filter(({ seq }) => seq === null).length); };
  };
})"""

ASK_FOR_MORE = """(size) => new Promise((done) => {
  const opening = indexedDB.open("hog", 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("everything", { autoIncrement: true });
  opening.onsuccess = () => {
    const writing = opening.result.transaction("everything", "readwrite");
    writing.objectStore("everything").add(new Uint8Array(size));
    writing.oncomplete = () => done("kept");
    writing.onabort = () => done(writing.error.name);
  };
})"""


@pytest.fixture
def lesson(owner: User) -> Lesson:
    sixes = CountSection("whole", "10", "6", 30)
    return open_lesson(owner, routine=make_routine(owner, count=sixes, fold=Fold(5), stops=(), targets=()))


@pytest.fixture
def board(opened, owner, lesson) -> Board:
    return Board(opened(owner), lesson).open()


@pytest.fixture
def lectern(opened, owner, lesson) -> Lectern:
    return Lectern(opened(owner, width=360, height=780), lesson).open()


@pytest.fixture
def paired_board(opened, owner, lesson, live_server) -> Board:
    """On a device where nobody is signed in."""
    page = opened(None)
    held, secret = LessonPass.objects.wait(address="127.0.0.1")
    held.tie(lesson=lesson, role="board", by=owner)
    page.context.add_cookies([{"name": COOKIE, "value": secret, "url": live_server.url}])
    return Board(page, lesson).open()


def cut(*pages: Page) -> None:
    for page in pages:
        page.route(EVENTS, lambda route: route.abort())


def mend(*pages: Page) -> None:
    for page in pages:
        page.unroute(EVENTS)
        look_again(page)


def look_again(page: Page) -> None:
    """As a browser says that the network is back: the page does not wait for its next try."""
    page.evaluate("window.dispatchEvent(new Event('online'))")


def status_is(shown: Board | Lectern, *sentences: str) -> None:
    """The whole status, and all of it to be seen on the screen."""
    status = shown.page.locator('[data-part="status"] p')
    expect(status).to_have_text(" · ".join(sentences), timeout=10_000)
    expect(status).to_be_in_viewport(ratio=1)


def counts_kept(lesson: Lesson) -> list[int]:
    """The counts written, in the order in which the server has them; each event is there once and no number is left out."""
    kept = [one.as_dict() for one in lesson.events.order_by("seq")]
    assert [one["seq"] for one in kept] == list(range(1, len(kept) + 1))
    return [one["data"]["n"] for one in kept if one["kind"] == "term.write"]


# The server keeps nothing


def database_full(**given: Any) -> None:
    """Stores as ever, and then finds no room left, before anything is final."""
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            # Its disk cannot be filled from here; the server itself answers as it does then (disk_full, 53100).
            with transaction.atomic():
                append_events(**given)
                cursor.execute("DO $$ BEGIN RAISE EXCEPTION 'no space left on device' USING ERRCODE = '53100'; END $$")
        [pages] = cursor.execute("PRAGMA page_count").fetchone()
        cursor.execute(f"PRAGMA max_page_count = {pages}")
        try:
            with transaction.atomic():
                append_events(**given)
                cursor.execute("CREATE TABLE hog AS SELECT zeroblob(500000000) AS everything")
        finally:
            cursor.execute("PRAGMA max_page_count = 4294967294")


def disk_full(**given: Any) -> None:
    raise OSError(errno.ENOSPC, "No space left on device")


def broken(**given: Any) -> None:
    raise RuntimeError("broken on purpose")


@pytest.mark.parametrize(
    ("storing", "status"), [(database_full, 503), (disk_full, 507), (broken, 500), (None, 502)],
    ids=["database full", "disk full", "server broken", "nothing behind the proxy"],
)  # fmt: skip
def test_a_server_that_keeps_nothing(monkeypatch, board, lectern, storing, status):
    pages, answers = (board.page, lectern.page), []
    board.all_sent()
    lectern.all_sent()
    if storing is not None:
        monkeypatch.setattr("routines.lessons.views.exchange.append_events", storing)
    for page in pages:
        if storing is None:
            page.route(EVENTS, lambda route: route.fulfill(status=502, body="<h1>Bad Gateway</h1>"))
        page.on("response", lambda told: answers.append(told.status) if told.request.method == "POST" else None)
    board.write(2)
    lectern.write(3)
    lectern.notice("the ones repeat")
    status_is(board, "2 counts are on this device only", "the server cannot save right now, trying again")
    status_is(lectern, "3 counts are on this device only", "the server cannot save right now, trying again")
    assert set(answers) == {status}
    assert (list(board.shown()), list(lectern.shown())) == ([1, 2], [1, 2, 3])
    assert counts_kept(board.lesson) == []

    monkeypatch.undo()
    for page in pages:
        page.unroute_all()
        look_again(page)
    board.expect_next(4)
    lectern.expect_next(4)
    status_is(board, "all sent")
    status_is(lectern, "all sent")
    assert board.shown() == lectern.shown() == {1: "10", 2: "16", 3: "22"}
    assert sorted(counts_kept(board.lesson)) == [1, 1, 2, 2, 3]
    for device in board.lesson.events.exclude(kind="lesson.open").values_list("device", flat=True).distinct():
        written = board.lesson.events.filter(device=device, kind="term.write").order_by("seq")
        assert [one.data["n"] for one in written] in ([1, 2], [1, 2, 3])
    assert [notice["text"] for notice in board.state.notices] == ["the ones repeat"]
    assert [len(entries) for entries in board.state.entries.values()] == [1, 1, 1]


# The lesson is gone


def test_a_lesson_deleted_on_another_device(board, lesson):
    board.write(1)
    board.all_sent()
    cut(board.page)
    board.write(2)
    delete_lesson(lesson=lesson)
    mend(board.page)
    status_is(board, "2 counts are on this device only", "this lesson was removed")
    board.write(1)
    status_is(board, "3 counts are on this device only", "this lesson was removed")
    assert list(board.shown()) == [1, 2, 3, 4]
    assert board.page.evaluate(KEPT_UNSENT) == 3


def test_a_board_that_is_no_longer_paired_sends_once_it_is_paired_again(paired_board, owner, lesson):
    board = paired_board
    board.write(1)
    board.all_sent()
    cut(board.page)
    board.write(2)
    LessonPass.objects.all().delete()
    mend(board.page)
    status_is(
        board, "2 counts are on this device only", "this device is not in the lesson any more: pair it again to send"
    )
    assert list(board.shown()) == [1, 2, 3]
    board.page.goto("/board/")
    code = board.page.locator(".waiting-code").inner_text()
    tie_by_code(code=code, lesson=lesson, role="board", by=owner)
    board.page.wait_for_url(f"**/lessons/{lesson.key}/board/", timeout=15_000)
    board.wait_until_ready()
    status_is(board, "all sent")
    assert counts_kept(lesson) == list(board.shown()) == [1, 2, 3]


def test_what_comes_long_after_the_end_is_sent_once_the_lesson_is_open_again(paired_board, lesson):
    board = paired_board
    board.write(1)
    board.all_sent()
    cut(board.page)
    board.write(2)
    end_lesson(lesson=lesson)
    lesson.events.filter(kind="lesson.end").update(received_at=timezone.now() - timedelta(minutes=20))
    mend(board.page)
    status_is(board, "2 were not taken:")
    expect(board.page.locator('[data-part="status"] li')).to_have_text(
        ["The lesson has ended; its teacher can open it again."]  # said once for both
    )
    assert list(board.shown()) == [1, 2, 3]
    reopen_lesson(lesson=lesson)
    status_is(board, "all sent")
    expect(board.page.locator('[data-part="status"] li')).to_have_count(0)
    assert counts_kept(lesson) == [1, 2, 3]


# Someone else at the same browser


def sign_in(page: Page, person: User) -> None:
    page.goto("/sign-in/")
    page.get_by_label("Name or e-mail").fill(person.sign_in_name)
    page.get_by_label("Passphrase").fill(PASSPHRASE)
    page.get_by_role("button", name="Sign in").click()
    page.get_by_role("link", name="Bank", exact=True).wait_for()


def sign_out(page: Page) -> None:
    page.goto("/me/")
    page.locator("details:has(.person-menu) > summary").first.click()
    page.get_by_role("button", name="Sign out", exact=True).first.click()
    page.get_by_role("heading", name="Sign in").wait_for()


@pytest.mark.parametrize("same_class", [True, False])
def test_another_teacher_signs_in_beside_an_open_board(opened, owner, board, lesson, same_class):
    owner.set_password(PASSPHRASE)
    owner.save()
    other = UserFactory(sign_in_name="moreno", display_name="Ana", passphrase=PASSPHRASE)
    if same_class:
        lesson.class_group.teachers.add(other)
    tab = board.page.context.new_page()
    sign_in(tab, owner)
    board.write(1)
    board.all_sent()
    cut(board.page)
    board.write(2)
    sign_out(tab)
    sign_in(tab, other)
    mend(board.page)
    board.page.bring_to_front()
    status_is(board, "2 counts are on this device only", "someone else has signed in here: sign in yourself to send")
    board.write(1)
    status_is(board, "3 counts are on this device only", "someone else has signed in here: sign in yourself to send")
    assert list(board.shown()) == [1, 2, 3, 4]
    if same_class:  # nor when she opens the board herself
        hers = Board(tab, lesson).open()
        status_is(hers, "3 wait here until whoever wrote them signs in")
        assert hers.shown() == board.shown()
    assert counts_kept(lesson) == [1]
    sign_out(tab)
    sign_in(tab, owner)
    look_again(board.page)
    status_is(board, "all sent")
    assert counts_kept(lesson) == [1, 2, 3, 4]
    assert set(lesson.events.filter(kind="term.write").values_list("user", flat=True)) == {owner.pk}


# An old page and a new server


def test_what_an_old_page_does_not_know_is_passed_over_and_said(board, lectern, lesson):
    board.all_sent()
    lectern.all_sent()
    append(lesson, event(5, "sparkle", {"n": 1}), event(6, data={"n": 1, "text": "10", "over": None}))
    behind = "another device does more than this page shows: load it again after the lesson"
    for page in (board, lectern):
        page.expect_next(2)
        status_is(page, "all sent", behind)
    board.write(1)
    lectern.expect_next(3)
    status_is(board, "all sent", behind)
    assert board.shown() == lectern.shown() == {1: "10", 2: "16"}


def test_what_the_server_takes_no_more_is_said_and_nothing_else_is_lost(monkeypatch, paired_board, lesson):
    board = paired_board
    monkeypatch.delitem(KINDS, "predict")
    cut(board.page)
    board.write(1)
    board.say(9, "58")  # a guess, in an empty cell
    board.write(1)
    mend(board.page)
    status_is(board, "1 was not taken:")
    expect(board.page.locator('[data-part="status"] li')).to_have_text(
        "This page and the server no longer match (predict). Load it again after the lesson."
    )
    expect(board.cell(9)).to_contain_text("58")
    assert counts_kept(lesson) == [1, 2]
    assert not lesson.events.filter(kind="predict").exists()


# A browser that keeps nothing more


def test_a_store_that_fills_up_is_said_and_the_page_is_not_closed_unasked(opened, owner, lesson, live_server):
    page = opened(owner)
    devtools = page.context.new_cdp_session(page)

    def leave_room(size: int) -> None:
        devtools.send("Storage.overrideQuotaForOrigin", {"origin": live_server.url, "quotaSize": size})

    leave_room(1_000_000)
    board = Board(page, lesson).open()
    board.write(1)
    board.all_sent()
    cut(page)
    leave_room(1)
    assert page.evaluate(ASK_FOR_MORE, 50_000_000) == "QuotaExceededError"  # Chromium now looks at what is left
    board.write(2)
    status_is(
        board,
        "2 counts are on this page only: leave it open",
        "no connection, trying again",
    )
    assert list(board.shown()) == [1, 2, 3]
    asked = []

    def stay(dialog):
        asked.append(dialog.type)
        dialog.dismiss()

    board.page.once("dialog", stay)
    board.page.close(run_before_unload=True)
    board.page.wait_for_timeout(300)
    assert asked == ["beforeunload"]
    assert list(board.shown()) == [1, 2, 3]
    mend(board.page)
    status_is(board, "kept on this page only", "all sent")
    assert counts_kept(board.lesson) == [1, 2, 3]


# Words that were removed everywhere before they reached the server


def test_a_noticing_that_comes_after_its_words_were_removed(monkeypatch, settings, tmp_path, administrator, lectern):
    settings.DATA_DIR = tmp_path  # the list of what was removed is a file
    monkeypatch.setattr("routines.erasing.doing.rewrite_pages", lambda: None)
    lectern.all_sent()
    cut(lectern.page)
    lectern.notice("garply skips a ten")
    lectern.write(1)
    begin(*mark_of("garply"), by=administrator, places=tuple(CALLED), whose=None)
    finish()
    mend(lectern.page)
    status_is(lectern, "all sent", "1 text is gone: words in it were removed everywhere")
    expect(lectern.part("noticed")).not_to_contain_text("garply")
    assert counts_kept(lectern.lesson) == [1]
    stub = LessonEvent.objects.get(kind="notice.add")
    assert (stub.erased, stub.data) == (True, {})
