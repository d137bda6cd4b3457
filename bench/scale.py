"""A large bank beside a small one, in turns: how many times as long each page takes.

Two servers with a school each (bench/_many_counts.py): 1,000 counts with 5,000 lessons, and as many counts as `--counts` says
(100,000, which have 500,000 lessons). The small one is asked twice in each turn; how far its two halves are apart is the noise.
The queries are then asked by themselves, for the whole page and, of the bank, for the cards alone, as a changed filter asks.
A large school has more people too, and its menus name them all; so the same is told of 1,000 counts with as many people.
With DATABASE_URL, the address of a PostgreSQL that may make databases, both are made there for as long as this runs.
`--keep FOLDER` (BENCH_KEEP) leaves both banks for the next run, which then begins at once; others are made where the generator
has changed.
"""

from __future__ import annotations

import asyncio
import os
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from hashlib import sha256
from pathlib import Path
from typing import Any

from bench._served_school import prepared_school, served_school
from bench.lesson import at, write
from bench.pages import Measured, Reader

TURNS = int(os.environ.get("BENCH_TURNS", "40"))
SMALL = 1000
LARGE = int(os.environ.get("BENCH_COUNTS") or 100_000)
KEEP = os.environ.get("BENCH_KEEP", "")
GOALS = {"bank, filtered": 1.5, "bank, searched": 3.0, "bank, page 200": 1.5, "bank, team": 1.5, "coverage": 1.5}


@contextmanager
def database(counts: int, people: int) -> Iterator[str]:
    """A database of its own on the server of DATABASE_URL; "" where there is none, for SQLite."""
    server = os.environ.get("DATABASE_URL", "")
    if not server:
        yield ""
        return
    import psycopg

    name = f"countfold_bench_{named(counts, people)}"
    with psycopg.connect(server.replace("postgres://", "postgresql://"), autocommit=True) as connection:
        there = connection.execute("SELECT 1 FROM pg_database WHERE datname = %s", [name]).fetchone()
        if there and not KEEP:
            connection.execute(f'DROP DATABASE "{name}" WITH (FORCE)')
        if not (there and KEEP):
            connection.execute(f'CREATE DATABASE "{name}"')
        try:
            yield f"{server.rsplit('/', 1)[0]}/{name}"
        finally:
            if not KEEP:
                connection.execute(f'DROP DATABASE "{name}" WITH (FORCE)')


def named(counts: int, people: int) -> str:
    """A bank of so many counts and people, as this generator makes it."""
    generator = Path(__file__).with_name("_many_counts.py").read_bytes()
    return f"{counts}_{people}_{sha256(generator).hexdigest()[:8]}"


def people_of(counts: int) -> int:
    return max(20, counts // 250)


async def measure(
    small: tuple[int, dict[str, Any]], large: tuple[int, dict[str, Any]], name: str
) -> tuple[Measured, str]:
    """The same page of both, in turns: small, large, small again."""
    readers = [Reader(port, school["pages"][name][0]) for port, school in (small, large)]
    addresses = [school["pages"][name][1] for _, school in (small, large)]
    found = Measured()
    for number in range(TURNS + 3):
        if number == 3:  # the first ones load what they need
            found = Measured()
        found.bare.append((await readers[0].ask(addresses[0]))[0])
        found.times.append((await readers[1].ask(addresses[1]))[0])
        found.bare_again.append((await readers[0].ask(addresses[0]))[0])
    return found, name


def told(
    found: Measured, name: str, small: dict[str, Any], large: dict[str, Any], as_many_people: dict[str, Any]
) -> None:
    before = at(0.5, found.bare + found.bare_again)
    halves = sorted((at(0.5, found.bare), at(0.5, found.bare_again)))
    (queries, few), (more_queries, many) = small["queries"][name], large["queries"][name]
    of_many = as_many_people["queries"][name][1]
    goal = f"{GOALS[name]:.1f}" if name in GOALS else ""
    asked = str(queries) if queries == more_queries else f"{queries}/{more_queries}"
    part = "".join(f"{school['part'][name][1]:>8.2f}" if name in school["part"] else "" for school in (small, large))
    write(
        f"{name:<28}{before:>8.1f}{at(0.5, found.times):>8.1f}{at(0.5, found.times) / before:>7.2f}"
        f"{halves[1] / halves[0] - 1:>7.0%}{few:>9.2f}{many:>8.2f}{many / few:>7.2f}{goal:>6}"
        f"{of_many:>9.2f}{many / of_many:>7.2f}{asked:>9}{part}"
    )


def main() -> int:
    """Print a line for each page."""
    with ExitStack() as stack:

        def school(counts: int, people: int, made: Any) -> Any:
            address = stack.enter_context(database(counts, people))
            kept = Path(KEEP) / named(counts, people) if KEEP else None
            words = (str(counts), str(people))
            return stack.enter_context(made(*words, server="bench._scale_server", database=address, kept=kept))

        people = people_of(LARGE)
        small, large = (school(counts, people_of(counts), served_school) for counts in (SMALL, LARGE))
        as_many_people = school(SMALL, people, prepared_school).told if people != people_of(SMALL) else small[1]
        write(
            f"{large[1]['counts']:,} counts and {large[1]['lessons']:,} lessons beside {small[1]['counts']:,} and "
            f"{small[1]['lessons']:,}, on {small[1]['database']}; milliseconds of the whole page, of its queries alone, of "
            f"these in a small school with {people} people like the large one, and of those for the cards alone"
        )
        write(
            f"{'':<28}{'small':>8}{'large':>8}{'ratio':>7}{'noise':>7}{'in SQL':>9}{'large':>8}{'ratio':>7}{'goal':>6}"
            f"{'people':>9}{'ratio':>7}{'queries':>9}{'cards':>8}{'large':>8}"
        )
        for name in small[1]["pages"]:
            told(*asyncio.run(measure(small, large, name)), small[1], large[1], as_many_people)
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
