"""A real backup put back by the real command under the running server, in the middle of a lesson: nothing is lost."""

import json
import subprocess
import sys

import pytest
from playwright.sync_api import expect

from tests.config.commands import ROOT, environment, manage
from tests.config.serving import served

SIGN_IN = """
from django.test import Client
from accounts.models import User
client = Client()
client.force_login(User.objects.get(sign_in_name="teacher"), backend="accounts.backends.NameOrEmailBackend")
print(client.cookies["countfold_session"].value)
"""
KEPT = """
import json
from accounts.models import School
from routines.models import LessonEvent
print(json.dumps([str(School.objects.get().epoch), [event.as_dict() for event in LessonEvent.objects.order_by("seq")]]))
"""
SHOWN = ".b-cell.is-written"
NAMES = "all => all.map(one => [one.dataset.n, one.getAttribute('aria-label')])"


def run(folder, words: str) -> str:
    done = manage(folder, "shell", "--verbosity", "0", "-c", words)
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


@pytest.fixture
def folder(tmp_path):
    folder = tmp_path / "data"
    folder.mkdir()
    return folder


def test_board_and_lectern_go_on_and_every_event_is_there_once(browser, folder):
    prepared = subprocess.run(
        [sys.executable, "-m", "tests.routines.lessons.killed_server", "prepare"],
        cwd=ROOT, env=environment(folder), capture_output=True, text=True, check=True,
    )  # fmt: skip
    about = json.loads(prepared.stdout)
    with served(folder) as (port, _said):
        base = f"http://localhost:{port}"
        contexts = []

        def opened(page_name: str, cookie: str, value: str):
            contexts.append(browser.new_context(base_url=base, viewport={"width": 1000, "height": 900}))
            contexts[-1].add_cookies([{"name": cookie, "value": value, "url": base}])
            page = contexts[-1].new_page()
            page.goto(f"/lessons/{about['key']}/{page_name}/")
            page.wait_for_selector(f"#{page_name}[data-ready]")
            return page

        lectern = opened("lectern", "countfold_session", run(folder, SIGN_IN))
        board = opened("board", "countfold_pass", about["secrets"][0])

        def next_is(n: int, *pages) -> None:
            for page in pages:
                expect(page.locator(".is-next")).to_have_attribute("data-n", str(n), timeout=30_000)

        def on_board(times: int) -> None:
            for _ in range(times):
                board.keyboard.press("PageDown")

        on_board(3)
        next_is(4, board, lectern)
        made = manage(folder, "backup")
        assert made.returncode == 0, made.stderr
        backup = max((folder / "backups").glob("countfold-*.zip"))
        on_board(2)
        next_is(6, board, lectern)
        lectern.locator('[data-does="next"]').first.click()
        next_is(7, board, lectern)
        epoch, before = json.loads(run(folder, KEPT))
        done = manage(folder, "restore", backup)
        assert done.returncode == 0, done.stderr
        on_board(1)
        next_is(8, board)
        words = lectern.locator('[data-part="status"] p')
        expect(words).to_contain_text("sign in again to send", timeout=40_000)
        contexts[0].add_cookies([{"name": "countfold_session", "value": run(folder, SIGN_IN), "url": base}])
        next_is(8, lectern)
        expect(words).to_contain_text("all sent", timeout=40_000)
        lectern.locator('[data-does="next"]').first.click()
        next_is(9, lectern, board)
        for page in (board, lectern):
            expect(page.locator('[data-part="status"] p')).to_contain_text("all sent", timeout=40_000)
        shown = [page.eval_on_selector_all(SHOWN, NAMES) for page in (board, lectern)]
        for context in contexts:
            context.close()
    epoch_now, after = json.loads(run(folder, KEPT))
    assert epoch_now != epoch
    assert [event["seq"] for event in after] == list(range(1, len(after) + 1))
    ids = [event["id"] for event in after]
    assert len(set(ids)) == len(ids)
    assert {event["id"] for event in before} <= set(ids), "what the backup did not hold came back from the devices"
    assert [event["data"]["n"] for event in sorted(after, key=lambda one: one["t"]) if event["kind"] == "term.write"] == [
        1, 2, 3, 4, 5, 6, 7, 8,
    ]  # fmt: skip
    assert shown[0] == shown[1]
    assert len(shown[0]) == 8
