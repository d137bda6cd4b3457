"""Backwards design: sound and complete against trying everything, for every family; best first."""

from fractions import Fraction
from functools import cache
from itertools import product
from typing import Any

import pytest
from hypothesis import Phase, assume, given, settings
from hypothesis import strategies as st

from routines.counting.claims import FAMILIES, Claim
from routines.counting.count import Count
from routines.counting.designing import Limits, design_grids
from routines.counting.errors import CountError
from routines.counting.grid import Fill, Grid
from routines.counting.patterns import find_patterns
from routines.counting.style import Style
from tests.brute_force.designing import Page, designs, no_parts, shows
from tests.counting.claims import a_claim

FEET = Style(units="two", small="in", large="ft")

# The multiples that are tried at least, as settled for this app (EXACT 8).
READ = {
    "whole": {"friendly": [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 20, 25, 50, 100, 1000], "finest": 0},
    "decimal": {"friendly": [Fraction(1, 10), Fraction(1, 2), 1, 2, 5, 10, 100], "finest": -1},
    "fraction": {"friendly": [Fraction(1, 2), 1, 2, 5, 10]},
    "money": {"friendly": [5, 10, 25, 50, 100, 500, 1000], "finest": 0},
    "length": {"friendly": [1, 6, 12, 36]},
    "clock": {"friendly": [15, 30, 60, 720]},
}


def whole_and_fraction(value: Fraction) -> dict[str, int]:
    whole, rest = divmod(abs(value), 1)
    return {"whole": int(whole), "top": rest.numerator} | ({"bottom": rest.denominator} if rest else {})


def written_in_thirds(value: Fraction) -> set[str]:
    whole, rest = divmod(abs(value), 1)
    return ({"top", "bottom"} if rest else set()) | ({"whole"} if whole or not rest else set())


PARTS = {
    "fraction": whole_and_fraction,
    "money": lambda cents: {"dollars": int(cents) // 100, "cents": int(cents) % 100},
    "length": lambda inches: {"feet": int(inches) // 12, "inches": int(inches) % 12},
    "clock": lambda minutes: {"hours": (int(minutes) // 60 - 1) % 12 + 1, "minutes": int(minutes) % 60},
}
# EXACT 20: a part that no count in view writes is no part of these numbers; a whole or top that is 0 is not written.
WRITTEN = {
    "fraction": written_in_thirds,
    "length": lambda inches: {name for name, n in PARTS["length"](inches).items() if n} or {"inches"},
}


def pages(limits: Limits, **reading) -> list[Page]:
    """Every page within the limits, by trying them all."""
    grain = Fraction(limits.grain)
    starts = [n * grain for n in range(-400, 1500) if limits.starts[0] <= n * grain <= limits.starts[1]]
    steps = [n * grain for n in range(-400, 400) if n and limits.steps[0] <= n * grain <= limits.steps[1]]
    found = []
    for start, step, terms in product(starts, steps, range(limits.terms[0], limits.terms[1] + 1)):
        values = (start, start + (terms - 1) * step)
        below_zero = limits.kind not in ("whole", "decimal", "fraction", "clock") and min(values) < 0
        off = (start / step).denominator != 1
        if max(map(abs, values)) > limits.largest or below_zero or limits.off_multiple not in (None, off):
            continue
        for length in range(limits.line_lengths[0], min(limits.line_lengths[1], terms) + 1):
            found += [Page(start, step, terms, length, fill, **reading) for fill in limits.fills]
    return found


def keys(grids) -> list[tuple]:
    return [(g.count.start, g.count.step, g.count.terms, g.line_length, g.fill) for g in grids]


def agree(wanted: list[Claim], limits: Limits, tried: list[Page]) -> int:
    found = design_grids(wanted, limits)
    assert found.complete
    listed = keys(found.grids)
    assert len(listed) == len(set(listed))
    assert set(listed) == designs([claim.as_dict() for claim in wanted], tried)
    return len(listed)


SMALL = {
    # Few enough to try them all: both signs, small numbers, numbers that pass a hundred.
    "both signs": Limits(
        starts=(-6, 6), steps=(-3, 4), terms=(7, 8), line_lengths=(2, 4), fills=tuple(Fill), largest=20, at_most=None
    ),
    "small": Limits(starts=(0, 12), steps=(1, 6), terms=(9, 10), line_lengths=(3, 4), fills=tuple(Fill), at_most=None),
    "past a hundred": Limits(
        starts=(84, 104), steps=(-11, -8), terms=(8, 9), line_lengths=(4, 5), fills=("across", "down"), at_most=None
    ),
    "tens": Limits(
        grain=5, starts=(5, 60), steps=(5, 20), terms=(12, 12), line_lengths=(3, 6), off_multiple=True, at_most=None
    ),
    "thirds": Limits(
        kind="fraction",
        grain=Fraction(1, 3),
        starts=(Fraction(-2, 3), 2),
        steps=(Fraction(-2, 3), Fraction(4, 3)),
        terms=(8, 9),
        line_lengths=(3, 4),
        at_most=None,
    ),
    "tenths": Limits(
        kind="decimal",
        grain=Fraction(1, 10),
        starts=(Fraction(2, 10), Fraction(14, 10)),
        steps=(Fraction(1, 10), Fraction(5, 10)),
        terms=(9, 10),
        line_lengths=(4, 5),
        at_most=None,
    ),
    "feet and inches": Limits(
        kind="length",
        grain=3,
        starts=(0, 27),
        steps=(-3, 12),
        terms=(8, 8),
        line_lengths=(2, 4),
        style=FEET,
        at_most=None,
    ),
    "dollars": Limits(
        kind="money", grain=25, starts=(0, 200), steps=(25, 100), terms=(8, 8), line_lengths=(2, 4), at_most=None
    ),
    "clock": Limits(
        kind="clock", grain=10, starts=(630, 720), steps=(-30, 60), terms=(8, 8), line_lengths=(3, 4), at_most=None
    ),
}

CAN_SHOW = {
    "opposites": ["both signs", "thirds"],
    "digit-sum": ["both signs", "small", "past a hundred", "tens"],
    "how-many": sorted(set(SMALL) - {"clock"}),
    "sums": sorted(set(SMALL) - {"clock"}),
    "table": sorted(set(SMALL) - {"past a hundred", "tens", "clock"}),
}


@cache
def all_pages(name: str) -> list[Page]:
    limits = SMALL[name]
    parts, written = PARTS.get(limits.kind, no_parts), WRITTEN.get(limits.kind)
    asked_unwritten = limits.kind != "fraction"  # 0 inches can be asked about where only feet are written, tops cannot
    return pages(limits, parts=parts, written=written, asked_unwritten=asked_unwritten, **READ[limits.kind])


@cache
def pages_with(name: str, family: str) -> list[Page]:
    return [page for page in all_pages(name) if shows({"family": family}, page)]


def thinned(draw: st.DrawFn, claim: Claim) -> Claim:
    """Leave out some parameters, or say a block's length in its place."""
    given = claim.as_dict()
    for name in list(given):
        if name != "family" and draw(st.booleans()):
            value = given.pop(name)
            if name == "blocks" and draw(st.booleans()):
                given["length"] = max(map(len, value))
    return Claim.from_dict(given)


@st.composite
def claims_seen(draw: st.DrawFn, name: str, family: str) -> Claim:
    """A claim that is so on some page within the limits, with some parameters left out."""
    page = draw(st.sampled_from(pages_with(name, family)))
    count = Count(SMALL[name].kind, page.start, page.step, page.terms, SMALL[name].style)
    found = find_patterns(Grid(count, page.line_length, page.fill), implied=True)
    seen = [fact.claim for fact in found if fact.claim.family == family]
    assume(seen)
    return thinned(draw, draw(st.sampled_from(seen)))


@pytest.mark.parametrize("family", FAMILIES)
@settings(max_examples=20, phases=[Phase.generate])
@given(st.data())
def test_designs_agree_with_trying_everything(family, data):
    name = data.draw(st.sampled_from(CAN_SHOW.get(family, sorted(SMALL))))
    claim = data.draw(claims_seen(name, family))
    assert agree([claim], SMALL[name], all_pages(name)) >= 1


@settings(max_examples=20, phases=[Phase.generate])
@given(st.data(), st.sampled_from(["small", "tens", "dollars"]))
def test_two_wanted_patterns_agree_with_trying_everything(data, name):
    families = data.draw(
        st.lists(st.sampled_from(["digit", "remainder", "landmarks", "neighbour"]), min_size=2, max_size=2)
    )
    wanted = [data.draw(claims_seen(name, family)) for family in families]
    agree(wanted, SMALL[name], all_pages(name))


@pytest.mark.parametrize(
    ("name", "wanted"),
    [
        ("small", {"family": "digit", "place": 0, "along": "column", "length": 1, "lines": [2, 3]}),
        ("small", {"family": "remainder", "modulus": "3", "along": "row", "blocks": [["0"], ["2"]], "lines": [1, 3]}),
        (
            "both signs",
            {"family": "remainder", "modulus": "3", "along": "row", "blocks": [["0"], ["2"]], "lines": [1, 3]},
        ),
    ],
)
def test_claims_limited_to_some_lines_agree_with_trying_everything(name, wanted):
    assert agree([Claim.from_dict(wanted)], SMALL[name], all_pages(name)) >= 1


def test_off_multiple_starts_leave_out_the_table():
    wanted = [a_claim("landmarks", multiple=10, lie="column")]
    limits = {"starts": (1, 40), "steps": (5, 6), "line_lengths": (5, 5), "terms": (15, 15), "at_most": None}
    off = design_grids(wanted, Limits(off_multiple=True, **limits)).grids
    on = design_grids(wanted, Limits(off_multiple=False, **limits)).grids
    both = design_grids(wanted, Limits(off_multiple=None, **limits)).grids
    assert all(grid.count.start % grid.count.step for grid in off)
    assert not any(grid.count.start % grid.count.step for grid in on)
    assert len(off) + len(on) == len(both) > len(on) > 0


def test_at_most_cuts_and_says_so():
    wanted = [a_claim("step", difference=6)]
    limits = {"starts": (1, 5), "steps": (1, 9), "line_lengths": (5, 5), "terms": (20, 20), "fills": ("across",)}
    all_five = design_grids(wanted, Limits(at_most=5, **limits))
    assert (len(all_five.grids), all_five.complete) == (5, True)
    cut = design_grids(wanted, Limits(at_most=4, **limits))
    assert (cut.grids, cut.complete) == (all_five.grids[:4], False)


def test_nothing_wanted_gives_every_grid_within_the_limits():
    limits = SMALL["tens"]
    assert set(keys(design_grids([], limits).grids)) == {page.key for page in all_pages("tens")}


def test_a_pattern_that_no_grid_shows_gives_none():
    found = design_grids([a_claim("remainder", modulus=10, along="count", length=1)], Limits(steps=(1, 9)))
    assert (found.grids, found.complete) == ((), True)


class TestOrder:
    def test_grids_that_fit_a_board_come_first(self):
        limits = Limits(starts=(6, 6), steps=(6, 6), line_lengths=(5, 5), terms=(50, 70), at_most=None)
        grids = design_grids([a_claim("step", difference=6)], limits).grids
        fits = [grid.rows * grid.columns <= 60 for grid in grids]
        assert fits == sorted(fits, reverse=True)
        assert {True, False} == set(fits)

    def test_then_fewest_other_constant_blocks(self):
        # Steps of 7 keep nothing but what is wanted; steps of 6 keep even and odd and the remainders by 3 and 6 too.
        limits = Limits(starts=(3, 3), steps=(6, 7), line_lengths=(5, 5), terms=(20, 20), fills=("across",))
        assert [int(grid.count.step) for grid in design_grids([], limits).grids] == [7, 6]

    def test_what_is_wanted_is_no_other_constant_block(self):
        # In rows of 5, steps of 6 and of 2 keep the ones digit down the columns; that one is asked for.
        limits = Limits(starts=(3, 3), steps=(2, 7), line_lengths=(5, 5), terms=(20, 20), fills=("across",))
        grids = design_grids([a_claim("digit", place=0, along="column", length=1)], limits).grids
        assert [int(grid.count.step) for grid in grids] == [2, 4, 6]

    def test_then_the_start_nearest_the_middle_then_the_smallest_values(self):
        limits = Limits(starts=(10, 20), steps=(7, 7), line_lengths=(5, 5), terms=(20, 20), fills=("across",))
        starts = [int(grid.count.start) for grid in design_grids([], limits).grids]
        assert starts == [15, 14, 16, 13, 17, 12, 18, 11, 19, 10, 20]


class TestBadLimits:
    @pytest.mark.parametrize(
        ("changed", "field"),
        [
            ({"kind": "roman"}, "kind"),
            ({"grain": 0}, "step"),
            ({"grain": 0.5}, "step"),
            ({"starts": (1,)}, "start"),
            ({"starts": (0.5, 1)}, "start"),
            ({"steps": ("1", 2)}, "step"),
            ({"line_lengths": (0, 5)}, "line_length"),
            ({"terms": (1, 20)}, "terms"),
            ({"terms": (10, 201)}, "terms"),
            ({"fills": ()}, "fill"),
            ({"fills": ("round",)}, "fill"),
            ({"largest": -1}, "value"),
            ({"at_most": 0}, "value"),
        ],
    )
    def test_each_is_refused_at_its_field(self, changed, field):
        with pytest.raises(CountError) as refused:
            Limits(**changed)
        assert refused.value.field == field

    def test_typed_limits_are_read_in_their_kind(self):
        limits = Limits.parse(
            kind="length", grain="3 in", starts=("0 in", "2 ft"), steps=("3 in", "1 ft"), terms=(8, 8)
        )
        grids = design_grids([a_claim("digit", part="inches", along="column", length=1)], limits).grids
        assert grids
        assert all("inches" in grid.count.part_names() for grid in grids)

    def test_a_part_that_these_numbers_do_not_have_is_refused(self):
        with pytest.raises(CountError) as refused:
            design_grids([a_claim("digit", part="inches", along="column", length=1)], Limits())
        assert refused.value.field == "part"


@pytest.mark.parametrize("multiple", [1000, 10**6, 10**9])
def test_stretches_longer_than_any_count_are_seen_in_none(multiple: int) -> None:
    limits = Limits(starts=(0, 5), steps=(1, 4), terms=(6, 8), line_lengths=(2, 3))
    found = design_grids([a_claim("how-many", multiple=multiple)], limits)
    assert (found.grids, found.complete) == ((), True)


def test_few_starts_are_tried_where_a_long_stretch_has_many_remainders() -> None:
    steps, stretch = (16_000_000, 16_000_000), 40_000_000
    limits = Limits(starts=(0, 2), steps=steps, terms=(11, 11), line_lengths=(2, 2), fills=("across",))
    for block, starts in (([3, 2], {0}), ([2, 3], set()), (None, {0})):  # 0 16 32 | 48 64 | 80 96 112 | 128 144 | 160
        found = design_grids([a_claim("how-many", multiple=stretch, **({"block": block} if block else {}))], limits)
        assert {int(grid.count.start) for grid in found.grids} == starts


@pytest.mark.parametrize(
    ("field", "keywords"),
    [
        ("kind", {"kind": "weights"}),
        ("start", {"starts": ()}),
        ("start", {"starts": 5}),
        ("start", {"starts": (0, None)}),
        ("start", {"starts": (0, "many")}),
        ("start", {"starts": (0, 1.5)}),
        ("start", {"off_multiple": "yes"}),
        ("step", {"steps": (1,)}),
        ("step", {"steps": (1, True)}),
        ("step", {"steps": ("2 ft", 3)}),
        ("step", {"grain": None}),
        ("step", {"grain": 0}),
        ("step", {"grain": "-1"}),
        ("value", {"largest": float("nan")}),
        ("value", {"largest": -1}),
        ("value", {"at_most": 0}),
        ("line_length", {"line_lengths": (0, 5)}),
        ("line_length", {"line_lengths": ("2", "5")}),
        ("terms", {"terms": (1, 12)}),
        ("terms", {"terms": (12, 201)}),
        ("fill", {"fills": 5}),
        ("fill", {"fills": ()}),
        ("fill", {"fills": ("sideways",)}),
        ("style", {"style": "plain"}),
    ],
)
def test_malformed_limits_are_refused_at_their_field(field: str, keywords: dict[str, Any]) -> None:
    with pytest.raises(CountError) as refused:
        Limits.parse(**keywords)
    assert refused.value.field == field


@pytest.mark.parametrize("wanted", [[1], ["landmarks"], None, 5, [{"family": "step"}], [None]])
def test_what_is_no_claim_is_refused(wanted: Any) -> None:
    with pytest.raises(CountError) as refused:
        design_grids(wanted, Limits(at_most=1))
    assert refused.value.field == "family"
    with pytest.raises(CountError):
        design_grids([], 5)  # type: ignore[arg-type]
