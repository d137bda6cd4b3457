"""What the server holds in memory beside a bare Django server, before and after its pages were read. Linux only.

Resident memory of each process; no page here needs algebra or print, which load what they need when they are first used.
"""

from __future__ import annotations

import asyncio
from pathlib import Path
from typing import Any

from bench._served_school import prepared_school, serving
from bench.lesson import write
from bench.pages import BARE, Reader

ROUNDS = 25


def resident(pid: int) -> float:
    """Megabytes of a process. Raises: SystemExit where the machine does not tell."""
    try:
        rows = Path(f"/proc/{pid}/status").read_text(encoding="utf-8").splitlines()
    except OSError:
        raise SystemExit("Only Linux tells what a process holds.") from None
    return next(int(row.split()[1]) for row in rows if row.startswith("VmRSS")) / 1024


async def read_pages(port: int, school: dict[str, Any], addresses: list[str]) -> None:
    reader = Reader(port, school.get("session", ""))
    for _ in range(ROUNDS):
        for address in addresses:
            await reader.ask(address)


def held(server: str) -> tuple[float, float]:
    """Megabytes when it listens, and after its pages were read."""
    with prepared_school(server=server) as school, serving(school) as (port, process, _):
        at_first = resident(process)
        addresses = [page for name, page in school.told.get("pages", {}).items() if "preview" not in name] or [BARE[1]]
        asyncio.run(read_pages(port, school.told, addresses))
        return at_first, resident(process)


def main() -> int:
    """Print both servers and how many times the bare one ours is."""
    bare, ours = held("bench._bare_server"), held("bench._page_server")
    write(f"{'MB':<28}{'bare Django':>14}{'Countfold':>12}{'ratio':>8}")
    for name, one, other in zip(("when it listens", f"after {ROUNDS} rounds of pages"), bare, ours, strict=True):
        write(f"{name:<28}{one:>14.1f}{other:>12.1f}{other / one:>8.2f}")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
