"""How many counts worth teaching each standard and area has, and what they took: `python -m tests.counting.worth_teaching`."""

from itertools import chain
from statistics import mean, median
from time import process_time

from routines.counting import counts_worth_teaching
from routines.counting.worth_teaching import SHOWN_AT_ONCE

from .every_wish import areas, standards


def main() -> None:
    for name, wishes in (("standards", list(standards())), ("areas", list(areas()))):
        took, few = [], []
        for wish, wanted in wishes:
            counts_worth_teaching.cache_clear()
            begun = process_time()
            found = counts_worth_teaching(wanted)
            took.append(1000 * (process_time() - begun))
            if len(found.counts) < SHOWN_AT_ONCE:
                few.append(f"{wish}: {len(found.counts)}, {found.why_not}")
        print(f"{name}: {len(wishes)}, with six or more: {len(wishes) - len(few)}")
        print(f"  processor time: mean {mean(took):.0f} ms, median {median(took):.0f}, most {max(took):.0f}")
        print(*(f"  {line}" for line in few), sep="\n")
    uncrossed = [
        wish
        for wish, wanted in chain(standards(), areas())
        if any(one.good_for.crossing is None for one in counts_worth_teaching(wanted).counts[:SHOWN_AT_ONCE])
    ]
    print("counts that cross nothing:", ", ".join(uncrossed) or "none")
    wishes = [wanted for _, wanted in chain(standards(), areas())]
    first = {
        (one.grid, one.good_for, wanted.level): one
        for wanted in wishes
        for one in counts_worth_teaching(wanted).counts[:SHOWN_AT_ONCE]
    }.values()
    print(f"different ones among the first six: {len(first)}")
    print(f"  with an idea that ends: {sum(one.good_for.passing is not None for one in first)}")
    print(f"  with a number to ask about that never comes: {sum(one.good_for.ask.n is None for one in first)}")


if __name__ == "__main__":
    main()
