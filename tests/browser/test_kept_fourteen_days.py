"""What the browser keeps of lessons: acknowledged ones for fourteen days, others for as long as it takes."""

import pytest

from tests.browser.board_page import Board
from tests.routines.lessons.making import open_lesson

pytestmark = pytest.mark.django_db(transaction=True)

DAY = 24 * 3600 * 1000
PUT = """async ([name, days, seq, refused]) => {
  const database = await new Promise((done) => {
    const opening = indexedDB.open("countfold-lessons");
    opening.onsuccess = () => done(opening.result);
  });
  const writing = database.transaction(["lessons", "events"], "readwrite");
  writing.objectStore("lessons").put({ lesson: name, epoch: "e", last: 1, heard_at: Date.now() - days });
  writing.objectStore("events").put({ lesson: name, id: name, event: { id: name, t: 1 }, own: true, seq, refused });
  await new Promise((done) => { writing.oncomplete = done; });
  database.close();
}"""
LEFT = """() => new Promise((done) => {
  const opening = indexedDB.open("countfold-lessons");
  opening.onsuccess = () => {
    const reading = opening.result.transaction(["lessons", "events"]);
    const found = ["lessons", "events"].map((name) => reading.objectStore(name).getAll());
    reading.oncomplete = () => {
      opening.result.close();
      done(found.map(({ result }) => result.map(({ lesson }) => lesson).filter((name) => name.startsWith("old"))));
    };
  };
})"""


def test_old_lessons_go_once_they_are_acknowledged_and_only_then(open_as, owner):
    page = open_as(owner)
    board = Board(page, open_lesson(owner)).open()
    board.all_sent()
    rows = [
        ("old-acknowledged", 14 * DAY + 60_000, 1, ""),
        ("old-thirteen-days", 14 * DAY - 60_000, 1, ""),
        ("old-unsent", 400 * DAY, None, ""),
        ("old-refused", 400 * DAY, None, "It was refused."),
    ]
    for row in rows:
        page.evaluate(PUT, list(row))
    page.reload()
    board.wait_until_ready()
    left = ["old-refused", "old-thirteen-days", "old-unsent"]
    lessons, events = page.evaluate(LEFT)
    assert (sorted(lessons), sorted(events)) == (left, left)
    page.goto("about:blank")
