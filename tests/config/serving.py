"""A school's server as a process of its own, and a plain browser to ask it with."""

import http.client
import json
import socket
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import urlencode

import pytest

from tests.config.commands import ROOT, environment

TOKEN = "a" * 32


@contextmanager
def served(
    folder: Path,
    *words: str,
    around: dict[str, str] | None = None,
    started: Callable[[int], None] = lambda process: None,
) -> Iterator[tuple[int, list[str]]]:
    """Gives the port, and what the server said until it was open; `started` hears its process id. Its log is beside the
    data folder."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    log = folder.parent / "log"
    with log.open("a") as written:
        server = subprocess.Popen(
            [sys.executable, "-m", "config.serving", "serve", "--port", str(port), *words],
            cwd=ROOT,
            env=around or environment(folder),
            stdout=subprocess.PIPE,
            stderr=written,
            text=True,
        )
    started(server.pid)
    said = []
    for line in server.stdout:
        said.append(line)
        if "Countfold is open" in line:
            break
    else:
        pytest.fail("".join(said) + log.read_text())
    try:
        yield port, said
    finally:
        server.terminate()
        server.communicate(timeout=20)


class Browser:
    """One connection that is kept open, and the cookies of one person."""

    def __init__(self, port: int, session: str = "") -> None:
        self.connection = http.client.HTTPConnection("127.0.0.1", port, timeout=30)
        self.session = session

    def send(self, path: str, sent: object) -> tuple[int, str]:
        """JSON, as a script sends it. The status and the answer."""
        headers = {
            "Cookie": f"countfold_csrf={TOKEN}; countfold_session={self.session}",
            "X-CSRFToken": TOKEN,
            "Content-Type": "application/json",
        }
        self.connection.request("POST", path, json.dumps(sent), headers)
        response = self.connection.getresponse()
        return response.status, response.read().decode()

    def ask(
        self, method: str, path: str, /, headers: dict[str, str] | None = None, **fields: str | list[str]
    ) -> tuple[int, str, str]:
        """The status, where it leads to, and the page."""
        body = urlencode({**fields, "csrfmiddlewaretoken": TOKEN}, doseq=True) if method == "POST" else None
        sent = {"Cookie": f"countfold_csrf={TOKEN}; countfold_session={self.session}", **(headers or {})}
        if body:
            sent["Content-Type"] = "application/x-www-form-urlencoded"
        self.connection.request(method, path, body, sent)
        response = self.connection.getresponse()
        page = response.read().decode()
        for cookie in response.headers.get_all("Set-Cookie") or []:
            if cookie.startswith("countfold_session="):
                self.session = cookie.partition("=")[2].partition(";")[0]
        return response.status, response.headers.get("Location", ""), page
