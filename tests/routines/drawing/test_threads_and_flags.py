"""Threads and flags never touch a numeral; a thread leaves the grid only where the pattern goes on."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Grid
from routines.drawing.flags import plant
from routines.drawing.layout import Layout, lay_out
from routines.drawing.lighting import Light
from routines.drawing.numerals import Box
from routines.drawing.sizes import SIZES
from tests.routines.drawing.grids import drawn_grids, first_column, grid, groups_of, pattern, tens_of_each_column


def ink(layout: Layout) -> list[Box]:
    return [layout.numerals[n].box.moved(*layout.middle(n)) for n in layout.shown()]


def along(points, steps=24):
    (x0, y0), (x1, y1) = points
    return [(x0 + (x1 - x0) * i / steps, y0 + (y1 - y0) * i / steps) for i in range(steps + 1)]


def inside(box: Box, x: float, y: float) -> bool:
    return box.left < x < box.right and box.top < y < box.bottom


@given(st.data(), st.sampled_from(["card", "plan", "print"]), st.sampled_from(["always", "shown"]))
def test_no_thread_crosses_a_numeral(data, size: str, holds: str) -> None:
    of = data.draw(drawn_grids())
    layout = lay_out(of, SIZES[size], landmarks=())
    light = Light(layout, pattern(data.draw(groups_of(of)), holds), "")
    boxes = ink(layout)
    for stretch in light.stretches:
        for x, y in along(stretch.points):
            assert not any(inside(box, x, y) for box in boxes), (stretch, x, y)


@given(drawn_grids())
def test_a_thread_runs_in_counting_order(of: Grid) -> None:
    light = Light(lay_out(of, SIZES["plan"], ()), pattern([of.lines("column")[0]]), "")
    starts = [stretch.start for stretch in light.stretches]
    assert starts == sorted(starts)


@given(st.data(), st.sampled_from(["card", "plan", "print"]))
def test_no_flag_touches_a_numeral(data, size: str) -> None:
    of = data.draw(drawn_grids())
    layout = lay_out(of, SIZES[size], landmarks=())
    flag = plant(layout, data.draw(st.integers(1, of.terms)), "until 1,204", [])
    if flag is None:
        return
    boxes = ink(layout)
    xs, ys = zip(*flag.banner, strict=True)
    banner = Box(min(xs), min(ys), max(xs), max(ys))
    assert not banner.meets(layout.frame)
    for line in (flag.pole, *zip(flag.leader, flag.leader[1:], strict=False)):
        for x, y in along(line):
            assert not any(inside(box, x, y) for box in boxes)


def test_two_flags_keep_clear_of_each_other() -> None:
    layout = lay_out(grid(), SIZES["plan"], ())
    first = plant(layout, 16, "until 100", [])
    second = plant(layout, 16, "until 100", [first.box])
    assert not first.box.meets(second.box)


def test_a_flag_stands_only_where_the_idea_dies_in_the_grid() -> None:
    of = grid()
    layout = lay_out(of, SIZES["plan"], ())
    assert Light(layout, tens_of_each_column(of, 16), "until 100").flag is not None
    assert Light(layout, tens_of_each_column(of, 26), "until 160").flag is None
    assert Light(layout, first_column(of), "").flag is None


def arrows(of: Grid, groups, holds="always"):
    light = Light(lay_out(of, SIZES["plan"], ()), pattern(groups, holds), "")
    return [stretch for stretch in light.stretches if stretch.arrow]


@pytest.mark.parametrize(
    ("fill", "along_", "count"),
    [("across", "column", 5), ("across", "row", 0), ("down", "row", 5), ("down", "column", 0)],
)
def test_a_thread_leaves_the_grid_where_its_line_goes_on(fill: str, along_: str, count: int) -> None:
    of = grid(fill=fill)
    assert len(arrows(of, of.lines(along_))) == count


def test_across_up_goes_on_upwards() -> None:
    of = grid(fill="across-up")
    (x0, y0), (x1, y1) = arrows(of, [of.lines("column")[0]])[0].points
    assert x0 == pytest.approx(x1)
    assert y1 < 0 < y0


def test_what_holds_for_a_while_never_leaves_the_grid() -> None:
    of = grid()
    layout = lay_out(of, SIZES["plan"], ())
    light = Light(layout, pattern(of.lines("column"), "shown", 40), "")
    ends = [point for stretch in light.stretches for point in stretch.points]
    assert all(0 <= x <= layout.frame.right and 0 <= y <= layout.frame.bottom for x, y in ends)


def test_a_digit_pattern_runs_through_its_digit_and_underlines_it() -> None:
    of = grid()
    light = Light(lay_out(of, SIZES["plan"], ()), tens_of_each_column(of), "")
    tens, whole = light.knots[2].digit, light.layout.numerals[2].box.moved(*light.layout.middle(2))
    assert whole.left == pytest.approx(tens.left)  # the 1 of 16
    assert tens.right == pytest.approx((whole.left + whole.right) / 2)
    assert light.knots[2].at[0] == pytest.approx((tens.left + tens.right) / 2)
