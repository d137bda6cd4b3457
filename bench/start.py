"""How long it takes until the server listens, beside a bare Django server, in turns."""

from __future__ import annotations

from bench._served_school import prepared_school, serving
from bench.lesson import at, write

TURNS = 7


def main() -> int:
    """Print both, how many times the bare one ours is, and how far the quickest and slowest bare start are apart."""
    with prepared_school(server="bench._bare_server") as bare, prepared_school(server="bench._page_server") as ours:
        times: dict[str, list[float]] = {bare.server: [], ours.server: []}
        for _ in range(TURNS):
            for school in (bare, ours):
                with serving(school) as (_, _, seconds):
                    times[school.server].append(seconds)
    one, other = at(0.5, times[bare.server]), at(0.5, times[ours.server])
    noise = max(times[bare.server]) / min(times[bare.server]) - 1
    write(
        f"until it listens: bare Django {one:.2f} s, Countfold {other:.2f} s, ratio {other / one:.2f} (noise {noise:.0%})"
    )
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
