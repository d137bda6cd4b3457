"""Outlines of touching cells, held to facts of geometry: areas, corners, holes."""

import re

from hypothesis import given
from hypothesis import strategies as st

from routines.drawing.numerals import Box
from routines.drawing.outlines import blocks, hatch, joined, loops, outline

cell_sets = st.sets(st.tuples(st.integers(0, 6), st.integers(0, 6)), min_size=1)


def area(loop: list[tuple[int, int]]) -> float:
    """The shoelace formula; clockwise on a page (y down) counts as positive."""
    return sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(loop, loop[1:] + loop[:1], strict=True)) / 2


@given(cell_sets)
def test_the_loops_of_a_shape_enclose_exactly_its_cells(cells) -> None:
    for shape in joined(cells):
        assert sum(area(loop) for loop in loops(shape)) == len(shape)


@given(cell_sets)
def test_joining_splits_the_cells_and_no_two_shapes_touch(cells) -> None:
    shapes = joined(cells)
    assert sorted(cell for shape in shapes for cell in shape) == sorted(cells)
    for shape in shapes:
        near = {(r + dr, c + dc) for r, c in shape for dr, dc in ((0, 1), (1, 0), (0, -1), (-1, 0))}
        assert not any(cell in near for other in shapes if other is not shape for cell in other)


@given(cell_sets)
def test_blocks_cover_each_cell_once(cells) -> None:
    covered = [
        (row, column)
        for top, left, bottom, right in blocks(cells)
        for row in range(top, bottom + 1)
        for column in range(left, right + 1)
    ]
    assert sorted(covered) == sorted(cells)


def test_a_column_has_four_corners_an_angle_six_and_a_ring_two_loops() -> None:
    assert [len(loop) for loop in loops([(0, 0), (1, 0), (2, 0)])] == [4]
    assert [len(loop) for loop in loops([(0, 0), (1, 0), (1, 1)])] == [6]
    ring = [(r, c) for r in range(3) for c in range(3) if (r, c) != (1, 1)]
    assert sorted(len(loop) for loop in loops(ring)) == [4, 4]


def points_of(path: str) -> list[tuple[float, float]]:
    """Every point that path data names, corners' handles too, as SVG 1.1 reads M, H, V and q."""
    x = y = 0.0
    found = []
    for letter, written in re.findall(r"([MHVqZ])([^MHVqZ]*)", path):
        numbers = [float(number) for number in written.split()]
        if letter == "q":
            found += [(x + numbers[0], y + numbers[1])]
            x, y = x + numbers[2], y + numbers[3]
        elif letter != "Z":
            x = numbers[0] if letter in "MH" else x
            y = numbers[-1] if letter in "MV" else y
        found.append((x, y))
    return found


@given(cell_sets)
def test_an_outline_stays_inside_the_cells_it_goes_around(cells) -> None:
    for shape in joined(cells):
        path = outline(shape, 40, 30, inset=3, radius=6)
        assert set(re.findall("[A-Za-z]", path)) <= set("MHVqZ")
        points = points_of(path)
        rows, columns = [row for row, _ in shape], [column for _, column in shape]
        assert min(columns) * 40 + 3 <= min(x for x, _ in points)
        assert max(x for x, _ in points) <= (max(columns) + 1) * 40 - 3
        assert min(rows) * 30 + 3 <= min(y for _, y in points)
        assert max(y for _, y in points) <= (max(rows) + 1) * 30 - 3


def test_hatch_rises_to_the_right_and_stays_in_its_rounded_box() -> None:
    box, radius = Box(10, 20, 110, 80), 12
    lines = re.findall(r"M([\d.-]+) ([\d.-]+)l([\d.-]+) ([\d.-]+)", hatch(box, 8, radius))
    assert len(lines) > 10
    for x, y, dx, dy in (map(float, line) for line in lines):
        assert dx > 0 > dy
        for px, py in ((x, y), (x + dx, y + dy)):
            assert box.left - 0.1 <= px <= box.right + 0.1
            assert box.top - 0.1 <= py <= box.bottom + 0.1
            for cx, cy, out in (
                (box.left + radius, box.top + radius, -1),
                (box.right - radius, box.bottom - radius, 1),
            ):
                beyond_x, beyond_y = (px - cx) * out, (py - cy) * out
                if beyond_x > 0 and beyond_y > 0:
                    assert (beyond_x**2 + beyond_y**2) ** 0.5 <= radius + 0.2


@given(cell_sets)
def test_an_outline_goes_along_level_and_upright_edges_back_to_where_it_began(cells) -> None:
    for shape in joined(cells):
        for path in outline(shape, 40, 30, inset=3, radius=6).split("Z")[:-1]:
            points = points_of(path)
            (x0, y0), (x1, y1) = points[0], points[-1]
            assert x0 == x1 or y0 == y1  # the edge that Z closes
