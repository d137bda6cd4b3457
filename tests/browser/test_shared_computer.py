"""A computer that several people use: after sign-out nothing of a lesson can be read, and nothing unsent is lost."""

from contextlib import suppress

import pytest
from playwright.sync_api import Error, Page, expect

from routines.models.plan_document import CountSection, Fold, Stop
from tests.browser.board_page import Board
from tests.browser.lectern_page import Lectern
from tests.browser.line import line_to
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

SECRETS = ("What stands under zork", "The planned answer quux", "noticed garply")
FORGOTTEN = "html[data-lessons-forgotten]"
KEPT = """() => new Promise((done) => {
  const opening = indexedDB.open("countfold-lessons");
  opening.onsuccess = () => {
    const stores = opening.result.transaction(["lessons", "events"]);
    const lessons = stores.objectStore("lessons").getAll(), events = stores.objectStore("events").getAll();
    stores.oncomplete = () => { opening.result.close(); done({ lessons: lessons.result, events: events.result }); };
  };
})"""


def content_of(page: Page) -> str:
    """All that a browser shows, its own page about a broken line too, which is there only a moment after the error."""
    for _ in range(50):
        with suppress(Error):
            return page.content()
        page.wait_for_timeout(100)
    return page.evaluate("document.documentElement.outerHTML")


@pytest.fixture
def lesson(owner):
    stops = (Stop(3, "What stands under zork", "The planned answer quux"),)
    count = CountSection("whole", "10", "6", 30)
    return open_lesson(owner, routine=make_routine(owner, count=count, fold=Fold(5), stops=stops, targets=()))


@pytest.mark.parametrize("cut", [False, True])
def test_after_sign_out_nothing_is_read_and_what_is_unsent_stays(open_as, owner, teammate, lesson, live_server, cut):
    with line_to(live_server.url) as line:
        page = open_as(owner, width=390, height=844)
        page.goto(f"{line.url}/lessons/{lesson.key}/lectern/")
        page.wait_for_selector("#lectern[data-ready]")
        page.evaluate("navigator.serviceWorker.ready")
        page.wait_for_function("async () => (await (await caches.open('countfold-lessons')).keys()).length > 15")
        lectern = Lectern(page, lesson)
        lectern.all_sent()
        cookies = page.context.cookies()
        page.context.clear_cookies()  # signed out in another tab
        lectern.write(3)
        lectern.notice("noticed garply")
        lectern.expect_status("sign in again to send")
        page.goto(f"{line.url}/sign-in/")
        page.wait_for_selector(FORGOTTEN)
        kept = page.evaluate(KEPT)
        assert not any("counts" in about for about in kept["lessons"])
        assert sum(record["seq"] is None for record in kept["events"]) >= 4
        assert not page.evaluate("caches.has('countfold-lessons')")
        if not cut:
            page.go_back(wait_until="commit")
            expect(page.get_by_role("heading", name="Sign in")).to_be_visible()
        else:
            line.cut()
            with pytest.raises(Exception, match="ERR_"):
                page.goto(f"{line.url}/lessons/{lesson.key}/lectern/")
        text = content_of(page)
        assert not [words for words in SECRETS if words in text]
        line.mend()
        page.context.add_cookies(cookies)
        page.goto(f"{line.url}/lessons/{lesson.key}/lectern/")
        page.wait_for_selector("#lectern[data-ready]")
        lectern.all_sent()
        page.goto("about:blank")
    assert Board(page, lesson).state.next == 4
    assert [notice["text"] for notice in Board(page, lesson).state.notices] == ["noticed garply"]
