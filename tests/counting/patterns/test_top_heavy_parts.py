"""Parts of amounts written top-heavy beside a larger unit: what is found by number theory is what looking finds."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, Grid, Style, find_patterns
from routines.counting.patterns.going_on import crossing
from routines.counting.patterns.lines import Progression
from routines.counting.patterns.readings import TopHeavyPart, part_reading

UNITS = [("length", "in", "ft"), ("mass", "oz", "lb"), ("capacity", "fl oz", "cup"), ("elapsed", "min", "h")]


def amounts(kind: str, small: str, large: str, start: Fraction, step: Fraction, **style: str) -> Count:
    return Count.parse(
        kind=kind,
        start=f"{start} {small}",
        step=f"{step} {small}",
        terms=20,
        style=Style(small=small, large=large, units="two", shape="top-heavy", decimals=False, **style),
    )


@given(
    st.sampled_from(UNITS),
    st.sampled_from(["kept", "simplified"]),
    st.sampled_from([2, 3, 4, 6, 7]),
    st.integers(0, 300),
    st.integers(1, 200),
    st.booleans(),
    st.integers(1, 6),
    st.integers(0, 8),
    st.integers(-30, 30),
    st.data(),
)
def test_the_first_and_the_last_miss_are_those_that_looking_finds(
    units, fractions, parts, start, step, back, by, gap, change, data
) -> None:
    steps = Fraction(-step if back else step, parts)
    # None of the counts in view lies below zero; those that follow may.
    count = amounts(*units, Fraction(start + 20 * step * back, parts), steps, fractions=fractions)
    zero = crossing(count)
    names = [name for name in count.part_names() if name != count.form.large.part]
    reading = part_reading(count, data.draw(st.sampled_from(names)), 20)
    if not isinstance(reading, TopHeavyPart):
        assert count.form.places is not None  # nothing of it is a fraction
        return
    first = data.draw(st.integers(gap + 1, gap + 20))
    end = min(zero or 4_000, 4_000)
    terms = Progression(first, by, end)
    misses = [n for n in range(first, end, by) if reading.differs(n, gap, change)]
    if not range(first, end, by):
        return
    assert reading.first_miss(terms, gap, change) == min(misses, default=None)
    assert reading.last_miss(terms, gap, change) == max(misses, default=0)


@given(st.sampled_from(UNITS), st.sampled_from([2, 3, 4]), st.integers(0, 60), st.integers(1, 60), st.integers(1, 12))
def test_a_difference_that_is_right_at_first_is_followed_to_its_end(units, parts, start, step, gap) -> None:
    count = amounts(*units, Fraction(start, parts), Fraction(step, parts))
    for name in count.part_names():
        reading = part_reading(count, name, 20)
        now, before = reading.at(gap + 1), reading.at(1)
        if now is None or before is None:
            continue
        misses = (n for n in range(gap + 1, 4_000) if reading.differs(n, gap, now - before))
        assert reading.first_miss(Progression(gap + 1, 1, None), gap, now - before) == next(misses, None)


@pytest.mark.parametrize(
    ("kind", "start", "step", "small", "large"),
    [
        ("mass", "11 9/10", "2/5", "oz", "ton"),
        ("length", "3 5/7", "1/7", "in", "mi"),
        ("mass", "11 9/10", "15 9/10", "oz", "ton"),
    ],
)
def test_a_unit_thousands_of_times_as_large_is_not_walked_to(monkeypatch, kind, start, step, small, large) -> None:
    looked = 0
    differs = TopHeavyPart.differs

    def counted(self, n: int, gap: int, change: int) -> bool:
        nonlocal looked
        looked += 1
        return differs(self, n, gap, change)

    monkeypatch.setattr(TopHeavyPart, "differs", counted)
    style = Style(small=small, large=large, units="two", shape="top-heavy", decimals=False)
    count = Count.parse(kind=kind, start=f"{start} {small}", step=f"{step} {small}", terms=15, style=style)
    grid = Grid(count, 14, "down")
    assert find_patterns(grid)
    assert 0 < looked < 20_000
