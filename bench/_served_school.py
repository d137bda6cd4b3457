"""A school of its own, on a server of its own, for as long as it is measured."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass
from pathlib import Path
from socket import socket
from time import monotonic, sleep
from typing import Any

HERE = Path(__file__).resolve().parent.parent


@dataclass(frozen=True, slots=True)
class Prepared:
    """A school in a folder of its own: the module that serves it, and what that told of it."""

    server: str
    environment: dict[str, str]
    told: dict[str, Any]


@contextmanager
def prepared_school(*prepared: str, server: str, database: str = "", kept: Path | None = None) -> Iterator[Prepared]:
    """A school that the server's module prepares from these words, which says on stderr how far it is.

    database: the address of one of PostgreSQL, else SQLite in the folder. kept: a folder that stays, with what was prepared
    in it; without one it is gone afterwards. Raises: SystemExit where it cannot.
    """
    if kept:
        kept.mkdir(parents=True, exist_ok=True)
    with nullcontext(str(kept)) if kept else tempfile.TemporaryDirectory() as folder:
        environment = {**os.environ, "COUNTFOLD_DATA": folder, "DATABASE_URL": database}
        made = subprocess.run(  # noqa: S603 - our own module
            [sys.executable, "-m", server, "prepare", *prepared],
            cwd=HERE, env=environment, stdout=subprocess.PIPE, text=True, check=False,
        )  # fmt: skip
        if made.returncode:
            raise SystemExit("The school could not be prepared.")
        yield Prepared(server, environment, json.loads(made.stdout))


@contextmanager
def serving(school: Prepared) -> Iterator[tuple[int, int, float]]:
    """Its port, the number of its process, and the seconds until it listened. Raises: SystemExit where it does not."""
    with socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    began = monotonic()
    server = subprocess.Popen(  # noqa: S603
        [sys.executable, "-m", school.server, "serve", str(port)],
        cwd=HERE, env=school.environment, stderr=subprocess.DEVNULL,
    )  # fmt: skip
    try:
        _wait_until_serving(port, server)
        yield port, server.pid, monotonic() - began
    finally:
        server.terminate()
        server.wait(timeout=20)


@contextmanager
def served_school(
    *prepared: str, server: str, database: str = "", kept: Path | None = None
) -> Iterator[tuple[int, dict[str, Any]]]:
    """The port, and what the server tells of the school that it prepares from these words."""
    with (
        prepared_school(*prepared, server=server, database=database, kept=kept) as school,
        serving(school) as (port, _, _),
    ):
        yield port, school.told


def _wait_until_serving(port: int, server: subprocess.Popen[bytes]) -> None:
    until = monotonic() + 30
    while monotonic() < until and server.poll() is None:
        with socket() as line:
            if line.connect_ex(("127.0.0.1", port)) == 0:
                return
        sleep(0.01)
    raise SystemExit("The server did not start.")
