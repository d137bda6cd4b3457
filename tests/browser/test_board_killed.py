"""The browser is killed in the middle of a lesson: whatever was painted is there when it is opened again."""

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from django.test import Client
from playwright.sync_api import Browser, BrowserType

from routines.models.plan_document import CountSection, Fold
from tests.browser.board_page import Board
from tests.browser.chromium import find_chromium
from tests.browser.line import line_to
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine

pytestmark = [
    pytest.mark.django_db(transaction=True),
    pytest.mark.skipif(sys.platform == "win32", reason="a process is killed with a signal"),
]


class Chromium:
    """A browser of its own with a folder of its own, so that it can be killed and started again."""

    def __init__(self, kind: BrowserType, folder: Path) -> None:
        port_file = folder / "DevToolsActivePort"
        port_file.unlink(missing_ok=True)
        as_root = ["--no-sandbox"] if os.geteuid() == 0 else []
        arguments = [
            f"--user-data-dir={folder}",
            "--remote-debugging-port=0",
            "--headless=new",
            "--disable-gpu",
            "--no-first-run",
            "--disable-background-networking",
            *as_root,
        ]
        self._process = subprocess.Popen(
            [str(find_chromium()), *arguments, "about:blank"],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            start_new_session=True,
        )
        until = time.monotonic() + 30
        while not port_file.exists() or not port_file.read_text():
            assert time.monotonic() < until, "Chromium did not start"
            time.sleep(0.1)
        self.browser = kind.connect_over_cdp(f"http://127.0.0.1:{port_file.read_text().split()[0]}")
        self.context = self.browser.contexts[0]

    def kill(self) -> None:
        os.killpg(self._process.pid, signal.SIGKILL)
        self._process.wait()


def test_all_that_was_painted_survives_a_killed_browser(browser: Browser, live_server, owner, tmp_path):
    count = CountSection("whole", "10", "6", 30)
    lesson = open_lesson(owner, routine=make_routine(owner, count=count, fold=Fold(5), stops=(), targets=()))
    client = Client()
    client.force_login(owner, backend="accounts.backends.NameOrEmailBackend")
    cookie = client.cookies["countfold_session"]
    with line_to(live_server.url) as line:
        for time_killed in range(3):
            first = Chromium(browser.browser_type, tmp_path)
            first.context.add_cookies([{"name": cookie.key, "value": cookie.value, "url": line.url}])
            board = Board(first.context.new_page(), lesson).open(line.url)
            board.all_sent() if time_killed == 0 else None
            line.cut()
            board.write(5)
            board.expect_next(5 * time_killed + 6)
            first.kill()
            line.mend()
            again = Chromium(browser.browser_type, tmp_path)
            again.context.add_cookies([{"name": cookie.key, "value": cookie.value, "url": line.url}])
            page = again.context.new_page()
            page.route("**/events/**", lambda route: route.abort())  # what is shown comes from the browser alone
            board = Board(page, lesson).open(line.url)
            assert list(board.shown()) == list(range(1, 5 * time_killed + 6))
            again.kill()
        last = Chromium(browser.browser_type, tmp_path)
        last.context.add_cookies([{"name": cookie.key, "value": cookie.value, "url": line.url}])
        board = Board(last.context.new_page(), lesson).open(line.url)
        board.all_sent()
        last.kill()
    assert [event["data"]["n"] for event in board.events if event["kind"] == "term.write"] == list(range(1, 16))
