"""The server killed fifteen times (kill -9) while four boards write: what was sent is stored once, without a gap."""

import contextlib
import http.client
import json
import os
import random
import signal
import socket
import sqlite3
import subprocess
import sys
import threading
import time
from pathlib import Path

import pytest

from tests.absent import absent
from tests.routines.lessons.making import event

ROOT = Path(__file__).resolve().parents[3]
KILLS = 15
SCRIPT = [sys.executable, "-m", "tests.routines.lessons.killed_server"]
TOKEN = "t" * 32
LONGEST = 50.0


class Board(threading.Thread):
    """Sends batch after batch, each until it has an answer, as a board does that cannot reach its server."""

    def __init__(self, *, port: int, key: str, secret: str, device: str, stop: threading.Event) -> None:
        super().__init__(daemon=True)
        self.port, self.key, self.secret, self.device, self.stop = port, key, secret, device, stop
        self.accepted: dict[str, int] = {}
        self.sent: list[str] = []
        self.lost = 0
        self.refused: list[dict] = []

    def run(self) -> None:
        t = 1
        while not self.stop.is_set():
            batch = [event(t + k, device=self.device) for k in range(2)]
            t += 2
            self.sent += [one["id"] for one in batch]
            answer = None
            while answer is None:
                answer = self._post(batch)
            self.accepted |= answer["accepted"]
            self.refused += answer["rejected"].values()
            time.sleep(0.05)  # a lesson holds three thousand events

    def _post(self, batch: list[dict]) -> dict | None:
        headers = {
            "Cookie": f"countfold_pass={self.secret}; countfold_csrf={TOKEN}",
            "X-CSRFToken": TOKEN,
            "Content-Type": "application/json",
        }
        line = http.client.HTTPConnection("127.0.0.1", self.port, timeout=20)
        try:
            line.request("POST", f"/lessons/{self.key}/events/", json.dumps({"epoch": None, "events": batch}), headers)
            answer = line.getresponse()
            body = answer.read()
            if answer.status >= 500:
                return None
            assert answer.status == 200, (answer.status, body[:300])
            return json.loads(body)
        except (OSError, http.client.HTTPException):
            self.lost += 1
            time.sleep(0.02)
            return None
        finally:
            line.close()


def test_killed_fifteen_times_what_was_sent_is_stored(tmp_path):
    if not hasattr(os, "fork"):
        absent("fork")
    environment = {**os.environ, "COUNTFOLD_DATA": str(tmp_path), "DATABASE_URL": "", "PYTHONPATH": str(ROOT)}
    made = subprocess.run([*SCRIPT, "prepare"], cwd=ROOT, env=environment, capture_output=True, text=True, check=False)
    assert made.returncode == 0, made.stderr
    lesson = json.loads(made.stdout)
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    nursery = subprocess.Popen(
        [*SCRIPT, "serve", str(port)],
        cwd=ROOT,
        env=environment,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    )
    stop, deadline = threading.Event(), time.monotonic() + LONGEST
    boards = [
        Board(port=port, key=lesson["key"], secret=secret, device=f"board{k}", stop=stop)
        for k, secret in enumerate(lesson["secrets"])
    ]
    moments = random.Random(15)
    killed = 0
    try:
        server = int(nursery.stdout.readline())
        for board in boards:
            board.start()
        while killed < KILLS:
            wait_until_serving(port, deadline)
            before = min(len(board.accepted) for board in boards)
            while min(len(board.accepted) for board in boards) <= before:  # every board got through once more
                assert time.monotonic() < deadline
                time.sleep(0.005)
            time.sleep(moments.uniform(0, 0.15))
            os.kill(server, signal.SIGKILL)
            killed += 1
            server = int(nursery.stdout.readline())
        stop.set()
        for board in boards:
            board.join(timeout=max(1.0, deadline - time.monotonic()))
            assert not board.is_alive()
    finally:
        stop.set()
        with contextlib.suppress(OSError):
            nursery.stdin.close()
        nursery.wait(timeout=10)
    assert sum(board.lost for board in boards) >= KILLS  # answers were lost indeed
    assert [board.refused for board in boards] == [[]] * 4
    with contextlib.closing(sqlite3.connect(tmp_path / "countfold.sqlite3")) as database:
        rows = database.execute(
            "SELECT id, seq FROM routines_lessonevent WHERE lesson_id = ?", [lesson["pk"]]
        ).fetchall()
        (last,) = database.execute("SELECT last_seq FROM routines_lesson WHERE id = ?", [lesson["pk"]]).fetchone()
        assert database.execute("PRAGMA integrity_check").fetchone() == ("ok",)
    kept = dict(rows)
    assert sorted(kept.values()) == list(range(1, len(rows) + 1))
    assert last == len(rows)
    for board in boards:
        for name, seq in board.accepted.items():
            assert kept[name.replace("-", "")] == seq
    sent = {name.replace("-", "") for board in boards for name in board.sent}
    assert len(rows) == len(sent) + 1  # and the event that opened the lesson
    assert sent < set(kept)


def wait_until_serving(port: int, deadline: float) -> None:
    while time.monotonic() < deadline:
        with socket.socket() as line:
            if line.connect_ex(("127.0.0.1", port)) == 0:
                return
        time.sleep(0.01)
    pytest.fail("the server did not come back")
