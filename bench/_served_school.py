"""A school of its own, on a server of its own, for as long as it is measured."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from socket import socket
from time import monotonic
from typing import Any

HERE = Path(__file__).resolve().parent.parent


@contextmanager
def served_school(*prepared: str, server: str, database: str = "") -> Iterator[tuple[int, dict[str, Any]]]:
    """The port, and what the server tells of the school that it prepares from these words. database: an empty one of
    PostgreSQL by its address, else SQLite.

    Raises: SystemExit where it does not start.
    """
    command = [sys.executable, "-m", server]
    with tempfile.TemporaryDirectory() as folder, socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
        free.close()
        environment = {**os.environ, "COUNTFOLD_DATA": folder, "DATABASE_URL": database}
        made = subprocess.run(  # noqa: S603 - our own module
            [*command, "prepare", *prepared], cwd=HERE, env=environment, stdout=subprocess.PIPE, text=True, check=False
        )
        if made.returncode:
            raise SystemExit("The school could not be prepared.")
        serving = subprocess.Popen(  # noqa: S603
            [*command, "serve", str(port)], cwd=HERE, env=environment, stderr=subprocess.DEVNULL
        )
        try:
            _wait_until_serving(port, serving)
            yield port, json.loads(made.stdout)
        finally:
            serving.terminate()
            serving.wait(timeout=20)


def _wait_until_serving(port: int, server: subprocess.Popen[bytes]) -> None:
    until = monotonic() + 30
    while monotonic() < until and server.poll() is None:
        with socket() as line:
            if line.connect_ex(("127.0.0.1", port)) == 0:
                return
    raise SystemExit("The server did not start.")
