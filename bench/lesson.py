"""Thirty boards and thirty lecterns against one server: how long an answer takes and how much of a core it costs.

Every device asks once a second, every board writes a count every five seconds. The bare view goes through the same server
and middleware in the same seconds; its times are what the ratios are taken of.
"""

from __future__ import annotations

import asyncio
import json
import os
import sys
import uuid
from collections.abc import Awaitable, Callable
from dataclasses import dataclass, field
from functools import partial
from time import monotonic, perf_counter
from typing import Any

from bench._served_school import served_school

LESSONS = 30
SECONDS = float(os.environ.get("BENCH_SECONDS", "12"))
WRITES_EVERY = 5.0
BARE_EVERY = 0.1
TOKEN = "t" * 32


class Line:
    """One kept connection, as a browser has it."""

    def __init__(self, port: int, cookies: str = "") -> None:
        self.port, self.cookies = port, cookies
        self.reader: asyncio.StreamReader | None = None
        self.writer: asyncio.StreamWriter | None = None

    async def ask(self, path: str, body: bytes | None = None, kind: str = "application/json") -> tuple[int, bytes]:
        if self.writer is None or self.writer.is_closing():
            self.reader, self.writer = await asyncio.open_connection("127.0.0.1", self.port)
        assert self.reader is not None
        head = [f"{'GET' if body is None else 'POST'} {path} HTTP/1.1", f"Host: 127.0.0.1:{self.port}"]
        if self.cookies:
            head.append(f"Cookie: {self.cookies}; countfold_csrf={TOKEN}")
        if body is not None:
            head += [f"X-CSRFToken: {TOKEN}", f"Content-Type: {kind}", f"Content-Length: {len(body)}"]
        self.writer.write("\r\n".join([*head, "", ""]).encode() + (body or b""))
        answer = (await self.reader.readuntil(b"\r\n\r\n")).decode("latin-1")
        length = next(int(row[15:]) for row in answer.split("\r\n") if row.lower().startswith("content-length:"))
        return int(answer[9:12]), await self.reader.readexactly(length)


@dataclass(slots=True)
class Times:
    """Milliseconds of each answer."""

    polls: list[float] = field(default_factory=list)
    writes: list[float] = field(default_factory=list)
    bare: list[float] = field(default_factory=list)
    cpu: float = 0.0


async def timed(into: list[float], line: Line, path: str, body: bytes | None = None) -> Any:
    began = perf_counter()
    status, answer = await line.ask(path, body)
    into.append(1000 * (perf_counter() - began))
    if status != 200:
        raise SystemExit(f"{path} answered {status}: {answer[:200]!r}")
    return answer


async def every(seconds: float, offset: float, until: float, work: Callable[[], Awaitable[None]]) -> None:
    """At its own moments, as if answers took no time; what comes late does not push the others back."""
    due = monotonic() + offset
    while due < until:
        await asyncio.sleep(max(0.0, due - monotonic()))
        await work()
        due += seconds


async def device(port: int, lesson: dict[str, Any], times: Times, until: float, *, board: bool, offset: float) -> None:
    cookies = f"countfold_pass={lesson['secret']}" if board else f"countfold_session={lesson['session']}"
    asking, writing = Line(port, cookies), Line(port, cookies)
    address = f"/lessons/{lesson['key']}/events/"
    name = "last" if board else "heard"
    lesson.setdefault(name, lesson["last"])

    async def poll() -> None:
        told = json.loads(await timed(times.polls, asking, f"{address}?after={lesson[name]}"))
        lesson[name] = told["last"]

    async def write() -> None:
        lesson["n"] = lesson.get("n", 0) % 20 + 1
        lesson["t"] = lesson.get("t", 20) + 1
        one = {
            "v": 1, "id": str(uuid.uuid4()), "t": lesson["t"], "device": "bench-board", "at": "2026-11-03T14:05:09.250Z",
            "ms": 1, "kind": "cover", "data": {"n": lesson["n"]},
        }  # fmt: skip
        body = json.dumps({"epoch": None, "events": [one]}).encode()
        told = json.loads(await timed(times.writes, writing, address, body))
        if told["rejected"]:
            raise SystemExit(f"refused: {told['rejected']}")

    jobs = [every(1.0, offset, until, poll)]
    if board:
        jobs.append(every(WRITES_EVERY, offset * WRITES_EVERY, until, write))
    await asyncio.gather(*jobs)


async def phase(port: int, lessons: list[dict[str, Any]], *, polling: bool) -> Times:
    """So many seconds of a school's lessons, or of as many bare views."""
    times, until = Times(), monotonic() + SECONDS
    asking = Line(port)
    before, began = float((await asking.ask("/used/"))[1]), monotonic()

    async def bare(line: Line) -> None:
        await timed(times.bare, line, "/bare/")

    if polling:
        lone = Line(port)
        jobs = [every(BARE_EVERY, 0, until, lambda: bare(lone))]
        for number, lesson in enumerate(lessons):
            jobs.append(device(port, lesson, times, until, board=True, offset=number / len(lessons)))
            jobs.append(device(port, lesson, times, until, board=False, offset=(number + 0.5) / len(lessons)))
    else:
        count = 2 * len(lessons)
        lines = [Line(port) for _ in range(count)]
        jobs = [every(1.0, n / count, until, partial(bare, line)) for n, line in enumerate(lines)]
    await asyncio.gather(*jobs)
    times.cpu = (float((await asking.ask("/used/"))[1]) - before) / (monotonic() - began)
    return times


async def start_a_booklet(port: int, school: dict[str, Any]) -> None:
    line = Line(port, f"countfold_session={school['devices'][0]['session']}")
    chosen = "&".join(f"routine={pk}" for pk in school["routines"][:30])
    body = f"title=Bench&contents=plan&contents=poster&{chosen}&csrfmiddlewaretoken={TOKEN}".encode()
    status, _ = await line.ask("/booklet/", body, "application/x-www-form-urlencoded")
    if status != 302:
        raise SystemExit(f"no booklet: {status}")


async def measure(port: int, school: dict[str, Any]) -> None:
    lessons = school["devices"]
    await phase_once(port, lessons)
    plain = await phase(port, lessons, polling=False)
    write(f"{'':<34}{'p50 ms':>8}{'p95 ms':>8}{'most':>8}{'p95 / bare':>12}{'of a core':>11}")
    told("60 bare views a second", plain.bare, plain.bare, plain.cpu)
    calm = await phase(port, lessons, polling=True)
    report("30 boards, 30 lecterns", calm)
    await start_a_booklet(port, school)
    busy = await phase(port, lessons, polling=True)
    report("the same while a booklet renders", busy)
    write(f"Polling costs {calm.cpu / plain.cpu:.1f} times the bare views' share of a core.")


async def phase_once(port: int, lessons: list[dict[str, Any]]) -> None:
    """Every device once, so that nothing is loaded while it is measured."""
    until = monotonic() + 1.2
    await asyncio.gather(*(device(port, one, Times(), until, board=True, offset=0.5) for one in lessons[:8]))
    line = Line(port)
    for _ in range(40):
        await line.ask("/bare/")


def report(name: str, times: Times) -> None:
    told(name, times.polls, times.bare, times.cpu)
    told("  a count written", times.writes, times.bare)
    told("  a bare view beside them", times.bare, times.bare)


def told(name: str, times: list[float], bare: list[float], cpu: float | None = None) -> None:
    share = "" if cpu is None else f"{100 * cpu:>9.1f} %"
    ratio = at(0.95, times) / at(0.95, bare)
    write(f"{name:<34}{at(0.5, times):>8.1f}{at(0.95, times):>8.1f}{max(times):>8.1f}{ratio:>12.2f}{share:>11}")


def at(part: float, times: list[float]) -> float:
    return sorted(times)[min(len(times) - 1, int(part * len(times)))]


def write(text: str) -> None:
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()


def main() -> int:
    """Print times, ratios and shares."""
    with served_school(str(LESSONS), server="bench._lesson_server") as (port, school):
        asyncio.run(measure(port, school))
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
