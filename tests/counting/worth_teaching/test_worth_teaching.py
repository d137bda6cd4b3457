"""Counts worth teaching: what is said to be good about each is so, and they differ, fit the board, the standard and the level."""

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import (
    Audience,
    Count,
    Kind,
    Style,
    Wanted,
    check,
    counts_worth_teaching,
    find_patterns,
    suggest_standards,
)
from routines.counting.claims import Claim
from routines.counting.grid import Grid
from routines.counting.patterns.first_to_say import first_to_say
from routines.counting.patterns.ranking import FIRST_SIX
from routines.counting.standards.features import read_features
from routines.counting.standards.fitting import takes_two_counts
from routines.counting.worth_teaching import (
    MOST_CANDIDATES,
    MOST_SHOWN,
    MOST_TRIED,
    SHOWN_AT_ONCE,
    WorthTeaching,
)
from routines.counting.worth_teaching.ways import MOST_CELLS, Way
from tests.brute_force.lasting import first_break, two_turns
from tests.brute_force.locating import first_meeting, first_meeting_on_clock
from tests.counting.comparing import board_of
from tests.counting.worth_teaching.every_wish import areas, standards

STANDARDS, AREAS = dict(standards()), dict(areas())
WISHES = {**STANDARDS, **AREAS}
STYLES = [Style(), Style(thousands="", currency="MXN", clock=24)]
# Standards of each grade, the narrowest among them, and each area of grades 2 and 6.
SAMPLE = (
    "K.CC.A.1", "K.NBT.A.1", "1.NBT.B.2.c", "1.NBT.C.5", "1.NBT.C.6", "1.MD.A.2", "1.MD.B.3", "2.OA.C.4", "2.NBT.B.6", "2.MD.C.7",
    "3.OA.C.7", "3.NBT.A.3", "3.NF.A.2.a", "3.MD.B.4", "4.NBT.A.1", "4.NF.B.3.c", "4.MD.A.2", "5.NBT.A.3", "5.NF.A.1", "6.NS.C.5",
    "6.RP.A.3.b", "whole at level 5", *(name for name, wanted in AREAS.items() if wanted.level in (2, 6)),
)  # fmt: skip
TWO_COUNTS = {"4.NBT.A.1", "6.RP.A.3.b"} | {name for name in AREAS if name.startswith("ratios")}


def is_so(claim: Claim, grid: Grid) -> bool:
    verdict = check(claim, grid)
    return verdict.true and verdict.seen


def wrong_in(one: WorthTeaching) -> list[str]:
    """What is not so of the grid: asked of `check`, and of a listing that goes on past the view."""
    grid, good = one.grid, one.good_for
    count, board, found = grid.count, board_of(grid), list[str]()
    lasting = good.lasting.claim
    if not is_so(lasting, grid) or check(lasting, grid).holds != "always":
        found.append(f"does not last: {lasting}")
    if first_break(board, lasting.as_dict(), min(two_turns(board, lasting.as_dict()), 400)):
        found.append(f"breaks when listed: {lasting}")
    if good.passing is not None:
        passing, end = good.passing.claim, good.passing.breaks_at
        view = grid.cut(good.passing_upto)
        if end is None or 2 * end > 3 * grid.terms:
            found.append(f"its end is not near: {end}")
        elif not is_so(passing, view) or first_break(board_of(view), passing.as_dict(), end) != end:
            found.append(f"does not pass at {end}: {passing}")
    if good.crossing is not None:
        n, mark = good.crossing.n, good.crossing.landmark
        before, here = count.value(n - 1), count.value(n)
        on_the_way = before < mark <= here if count.step > 0 else here < mark <= before or here == mark == 0
        if not on_the_way:
            found.append(f"does not cross {mark} at {n}")
    meeting = first_meeting if count.wrap is None else first_meeting_on_clock
    wrap = () if count.wrap is None else (count.wrap,)
    met = meeting(Fraction(count.start), Fraction(count.step), good.ask.value, *wrap)
    if met != good.ask.n or (met is not None and met <= grid.terms):
        found.append(f"{good.ask.text} comes as {met}, not {good.ask.n}")
    return found


def serves(grid: Grid, features: str) -> bool:
    """Whether a count serves a standard as it can: what it names is done, but where it takes two counts."""
    row = {"code": "", "grade": "", "area": "", "summary": "", "count_features": features}
    fits = suggest_standards(grid, [row])
    return bool(fits) and fits[0].fit == ("direct" if fits[0].features.is_served_directly else "support")


def typed(grid: Grid, style: Style) -> Count:
    """The count that a teacher gets who types this grid's start and step."""
    count = grid.count
    step = ("-" if count.step < 0 else "") + count.difference_text(count.step)
    return Count.parse(kind=count.kind, start=count.text(1), step=step, terms=count.terms, style=style)


@settings(max_examples=max(settings().max_examples // 8, 8), deadline=None)
@given(st.sampled_from(list(WISHES.values())), st.sampled_from(STYLES))
def test_all_that_is_said_of_a_count_is_so(wanted: Wanted, style: Style) -> None:
    """Of each: what it is good for, that it serves a standard, that it fits the board, and that typing it gives the same."""
    found = counts_worth_teaching(Wanted(wanted.level, wanted.features, wanted.area, style))
    assert len(found.counts) <= MOST_SHOWN
    assert found.tried <= MOST_TRIED
    asked = [
        features for features in wanted.features if not (wanted.area and takes_two_counts(read_features(features)))
    ]
    folds = {(one.grid.count.step, one.grid.line_length, one.grid.fill) for one in found.counts}
    assert len(folds) == len(found.counts)
    for one in found.counts:
        assert wrong_in(one) == [], one.grid
        assert not asked or any(serves(one.grid, features) for features in asked)
        assert one.grid.rows * one.grid.columns <= MOST_CELLS
        assert one.grid.rows >= 2 <= one.grid.columns
        assert typed(one.grid, style) == one.grid.count


@pytest.mark.parametrize("name", ["2.MD.C.8", "4.NF.C.6", "4.MD.A.2", "4.NBT.A.2"])
def test_marks_of_the_place_are_typed_as_they_are_written(name: str) -> None:
    wanted, style = WISHES[name], Style(decimal_mark=",", thousands=" ", currency="EUR")
    found = counts_worth_teaching(Wanted(wanted.level, wanted.features, wanted.area, style)).counts
    assert len(found) >= SHOWN_AT_ONCE
    assert all(typed(one.grid, style) == one.grid.count for one in found)


@pytest.mark.parametrize("name", SAMPLE)
def test_six_for_each_standard_and_area_or_why_not(name: str) -> None:
    found = counts_worth_teaching(WISHES[name])
    if name in TWO_COUNTS:
        assert (found.counts, found.why_not) == ((), "two-counts")
    else:
        assert len(found.counts) >= SHOWN_AT_ONCE
        assert found.why_not == ""


def test_the_first_six_differ_to_the_eye() -> None:
    """Where a standard leaves room, in start, in step, in direction and in fill."""
    for code in ("2.NBT.B.7", "3.OA.D.9", "4.OA.C.5", "6.NS.C.5"):
        grids = [one.grid for one in counts_worth_teaching(WISHES[code]).counts[:SHOWN_AT_ONCE]]
        assert len({grid.count.start for grid in grids}) >= 5
        assert len({abs(grid.count.step) for grid in grids}) >= 4
        assert {grid.count.step > 0 for grid in grids} == {True, False}
        assert len({grid.fill for grid in grids}) == 2


@pytest.mark.parametrize("name", [name for name in WISHES if name.startswith(("3.NF", "4.NF.B", "fractions"))])
def test_fractions_begin_with_fourths_and_come_to_twelfths_last(name: str) -> None:
    """Fourths, thirds, eighths and halves before the others: common practice, no source."""
    wanted = WISHES[name]
    if any("start=n/10" in features for features in wanted.features) and not wanted.area:
        return
    bottoms = [one.grid.count.step.denominator for one in counts_worth_teaching(wanted).counts[:SHOWN_AT_ONCE]]
    assert bottoms[0] == 4
    assert sum(bottom in (4, 3, 8, 2) for bottom in bottoms) >= 4
    assert 100 not in bottoms


def test_lines_are_as_long_as_it_takes_to_come_round_to_a_landmark() -> None:
    """Tens come round after five sixes, an hour after four quarters, a whole after four fourths."""
    for name, step, length in (("3.OA.D.9", 6, 5), ("3.MD.A.1", 15, 4), ("4.NF.A.2", Fraction(3, 4), 4)):
        first = counts_worth_teaching(WISHES[name]).counts[0].grid
        assert (first.count.step, first.line_length) == (step, length)


def test_a_start_that_the_standard_prefers_is_taken() -> None:
    found = counts_worth_teaching(WISHES["2.NBT.A.2"]).counts
    by_fives = [one.grid.count.start for one in found if one.grid.count.step in (5, 10, 100)]
    assert by_fives
    assert all(start % 5 == 0 for start in by_fives)


@pytest.mark.parametrize(("level", "largest"), [(0, 100), (1, 120), (2, 1000), (3, 1000), (4, 10**6)])
def test_whole_numbers_stay_within_what_the_level_counts(level: int, largest: int) -> None:
    for one in counts_worth_teaching(Wanted(level, (), "whole")).counts:
        values = [one.grid.count.value(n) for n in (1, one.grid.terms)] + [one.good_for.ask.value]
        assert all(0 <= value <= largest for value in values)
        assert level > 0 or one.grid.count.step > 0


@pytest.mark.parametrize(
    ("level", "area"), [(0, "money"), (1, "fractions"), (2, "decimals"), (3, "decimals"), (5, "integers")]
)
def test_an_area_that_a_level_does_not_count_yet_says_so(level: int, area: str) -> None:
    assert counts_worth_teaching(Wanted(level, (), area)).why_not == "not-yet"


@pytest.mark.parametrize("area", ["decimals", "fractions", "money", "time", "measurement", "integers"])
def test_an_area_is_counted_in_its_own_numbers(area: str) -> None:
    kinds = {
        "decimals": {Kind.DECIMAL},
        "fractions": {Kind.FRACTION},
        "money": {Kind.MONEY},
        "time": {Kind.CLOCK, Kind.ELAPSED},
        "measurement": {Kind.LENGTH, Kind.MASS, Kind.CAPACITY},
        "integers": {Kind.WHOLE},
    }
    counts = [one.grid.count for one in counts_worth_teaching(Wanted(6, (), area)).counts]
    assert {count.kind for count in counts} <= kinds[area]
    assert area != "integers" or all(min(count.start, count.value(count.terms)) < 0 for count in counts)


def test_an_area_whose_standards_take_two_counts_is_counted_by_itself() -> None:
    assert counts_worth_teaching(WISHES["whole at level 5"]) == counts_worth_teaching(Wanted(5, (), "whole"))


@pytest.mark.parametrize("name", ["whole at level 0, without standards", "3.OA.D.9", "4.NF.B.4", "6.NS.C.5"])
def test_what_lasts_is_among_the_first_six_to_say(name: str) -> None:
    """Whoever plans it finds the idea of its line at the top of the page's list of patterns."""
    level = WISHES[name].level
    for one in counts_worth_teaching(WISHES[name]).counts:
        said = first_to_say(find_patterns(one.grid, audience=Audience(level)), one.grid, level)
        assert one.good_for.lasting.claim in [pattern.claim for pattern in said[:FIRST_SIX]]


def test_a_step_that_is_hard_to_count_by_stays_near_zero() -> None:
    """Nines from 866 on are long numbers to say; fives, tens and hundreds are counted there."""
    for level in (2, 3, 4):
        for one in counts_worth_teaching(Wanted(level, (), "whole")).counts[:SHOWN_AT_ONCE]:
            count = one.grid.count
            least, step = min(count.start, count.value(count.terms)), abs(count.step)
            assert least <= 40 * step or 1000 % step == 0, count


def test_kindergarten_counts_by_tens_and_fives_from_tens_and_fives() -> None:
    counts = [one.grid.count for one in counts_worth_teaching(Wanted(0, (), "whole")).counts]
    assert {count.step for count in counts} == {1, 5, 10}
    assert all(count.start % count.step == 0 for count in counts)


def test_a_stop_comes_once_the_step_is_found_and_before_what_is_rare() -> None:
    """Counting by 5 from 0 every second count is a ten, so the hundred is worth waiting for; not the one it starts at."""
    for name in (
        "whole at level 0, without standards",
        "whole at level 2",
        "measurement at level 2",
        "whole at level 4",
    ):
        for one in counts_worth_teaching(WISHES[name]).counts[:SHOWN_AT_ONCE]:
            crossing = one.good_for.crossing
            assert crossing is None or crossing.n > 3
            if crossing is not None and (one.grid.count.kind, abs(one.grid.count.step)) == (Kind.WHOLE, 5):
                assert crossing.landmark % 100 == 0


def test_no_smaller_landmark_is_crossed_than_the_standard_names() -> None:
    """4.NBT.A.2 reads numbers to a million: at a thousand or more, not at a hundred."""
    for one in counts_worth_teaching(WISHES["4.NBT.A.2"]).counts[:SHOWN_AT_ONCE]:
        assert one.good_for.crossing is not None
        assert one.good_for.crossing.landmark >= 1000


def test_a_standard_that_leaves_little_room_says_so() -> None:
    found = counts_worth_teaching(Wanted(2, ("fit=direct; step=37; start=2; terms<=4",), "whole"))
    assert len(found.counts) < SHOWN_AT_ONCE
    assert found.why_not == "little-room"


def test_a_step_that_only_the_standard_names_is_counted_by() -> None:
    found = counts_worth_teaching(Wanted(3, ("fit=direct; step=37; max=1000",), "whole"))
    assert len(found.counts) >= SHOWN_AT_ONCE
    assert {abs(one.grid.count.step) for one in found.counts} == {37}


def test_metric_schools_measure_in_their_own_units_first() -> None:
    customary, metric = (
        counts_worth_teaching(Wanted(3, (), "measurement", system=system)).counts for system in ("customary", "metric")
    )
    systems = [[one.grid.count.system for one in found[:SHOWN_AT_ONCE]] for found in (customary, metric)]
    assert systems[1].count("metric") >= systems[0].count("metric")


def test_a_wide_open_wish_makes_no_more_grids_than_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    made = []
    count = Way.counted

    def counting(*given: Any) -> Count | None:
        made.append(given)
        return count(*given)

    monkeypatch.setattr(Way, "counted", counting)
    counts_worth_teaching.cache_clear()
    counts_worth_teaching(Wanted(4, ("fit=direct; kind=whole|decimal|fraction|length|money; cross=unit; start=any>1",)))
    assert len(made) <= MOST_CANDIDATES
