"""Each page beside a bare view of 15 KB, in turns, for one reader and for ten: how many times as long it takes.

Both go through the same server and middleware in the same seconds, so that what else the machine does meets both. The bare
view is asked for twice in each turn; how far its two halves are apart is the noise, under which no difference says anything.
BENCH_TURNS sets how many turns.
"""

from __future__ import annotations

import asyncio
import os
from collections.abc import Callable
from dataclasses import dataclass, field
from itertools import count
from time import perf_counter
from typing import Any

from bench._page_server import NEW_COUNT, SAME_COUNT
from bench._served_school import served_school
from bench.lesson import TOKEN, at, write

TURNS = int(os.environ.get("BENCH_TURNS", "40"))
READERS = (1, 10)
BARE = ("bare", "/bare/")
STARTS = count(21)  # of the counts that nobody asked for before


class Reader:
    """One kept connection of a signed-in teacher, as a browser has it. Raises: SystemExit for any answer but 200."""

    def __init__(self, port: int, session: str) -> None:
        self.port = port
        self.cookies = f"countfold_session={session}; countfold_csrf={TOKEN}"
        self.reader: asyncio.StreamReader | None = None
        self.writer: asyncio.StreamWriter | None = None

    async def ask(self, address: str, body: bytes | None = None) -> tuple[float, int]:
        """Milliseconds until the whole answer is there, and how many bytes it has as sent."""
        if self.writer is None or self.writer.is_closing():
            self.reader, self.writer = await asyncio.open_connection("127.0.0.1", self.port)
        assert self.reader is not None
        head = [
            f"{'GET' if body is None else 'POST'} {address} HTTP/1.1",
            f"Host: 127.0.0.1:{self.port}",
            f"Cookie: {self.cookies}",
            "Accept-Encoding: gzip",
        ]
        if body is not None:
            head += [f"X-CSRFToken: {TOKEN}", "HX-Request: true", f"Content-Length: {len(body)}"]
            head.append("Content-Type: application/x-www-form-urlencoded")
        began = perf_counter()
        self.writer.write("\r\n".join([*head, "", ""]).encode() + (body or b""))
        answer = (await self.reader.readuntil(b"\r\n\r\n")).decode("latin-1")
        length = next(int(row[15:]) for row in answer.split("\r\n") if row.lower().startswith("content-length:"))
        await self.reader.readexactly(length)
        if int(answer[9:12]) != 200:
            raise SystemExit(f"{address} answered {answer[9:12]}")
        return 1000 * (perf_counter() - began), length


@dataclass(slots=True)
class Measured:
    times: list[float] = field(default_factory=list)
    bare: list[float] = field(default_factory=list)
    bare_again: list[float] = field(default_factory=list)
    size: int = 0


async def measure(readers: list[Reader], name: str, address: str, previewed: str) -> Measured:
    """All readers ask at the same moment: for the bare view, for the page, for the bare view again."""
    found = Measured()

    async def turn(into: list[float], address: str, body: Callable[[], bytes | None] = lambda: None) -> None:
        answers = await asyncio.gather(*(reader.ask(address, body()) for reader in readers))
        into += [time for time, _ in answers]
        found.size = answers[0][1] if address != BARE[1] else found.size

    for number in range(TURNS + 2):
        if number == 2:  # the first ones load what they need
            found = Measured()
        await turn(found.bare, BARE[1])
        await turn(found.times, address, lambda: body_of(name, previewed))
        await turn(found.bare_again, BARE[1])
    return found


async def all_pages(port: int, school: dict[str, Any]) -> None:
    write(f"{school['counts']} counts in the bank; milliseconds, and times the bare view in the same turns")
    write(
        f"{'':<26}{'readers':>8}{'p50':>8}{'p95':>8}{'bare':>8}{'p50 /':>8}{'p95 /':>8}{'noise':>8}{'bytes':>9}{'queries':>9}"
    )
    for many in READERS:
        readers = [Reader(port, school["session"]) for _ in range(many)]
        for name, address in school["pages"].items():
            told(name, many, await measure(readers, name, address, school["previewed"]), school["queries"][name])


def body_of(name: str, previewed: str) -> bytes | None:
    """What a page is sent by one reader, a new count by each; None where nothing is sent."""
    if name not in (SAME_COUNT, NEW_COUNT):
        return None
    return (previewed.replace("start=20", f"start={next(STARTS)}") if name == NEW_COUNT else previewed).encode()


def told(name: str, readers: int, found: Measured, queries: int) -> None:
    bare = found.bare + found.bare_again
    halves = sorted((at(0.5, found.bare), at(0.5, found.bare_again)))
    write(
        f"{name:<26}{readers:>8}{at(0.5, found.times):>8.1f}{at(0.95, found.times):>8.1f}{at(0.5, bare):>8.1f}"
        f"{at(0.5, found.times) / at(0.5, bare):>8.2f}{at(0.95, found.times) / at(0.95, bare):>8.2f}"
        f"{halves[1] / halves[0] - 1:>7.0%} {found.size:>9}{queries:>9}"
    )


def main() -> int:
    """Print a line for each page and number of readers."""
    with served_school(server="bench._page_server") as (port, school):
        asyncio.run(all_pages(port, school))
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
