"""The outline of touching cells as one shape, and the hatch inside it."""

from collections.abc import Iterable, Sequence
from math import sqrt

from .numerals import Box
from .svg import plain

Cell = tuple[int, int]  # row, column
Corner = tuple[int, int]  # column line, row line


def joined(cells: Iterable[Cell]) -> list[list[Cell]]:
    """Split cells into shapes: those that touch along an edge belong together. Order of first cells is kept."""
    left = dict.fromkeys(cells)
    shapes = []
    while left:
        shape, edge = [], [next(iter(left))]
        del left[edge[0]]
        while edge:
            row, column = edge.pop()
            shape.append((row, column))
            for near in ((row, column + 1), (row, column - 1), (row + 1, column), (row - 1, column)):
                if near in left:
                    del left[near]
                    edge.append(near)
        shapes.append(shape)
    return shapes


def loops(shape: Iterable[Cell]) -> list[list[Corner]]:
    """Corners of the shape's border, clockwise around it and the other way around holes."""
    cells = set(shape)
    leaving: dict[Corner, list[Corner]] = {}
    for row, column in sorted(cells):
        corners = ((column, row), (column + 1, row), (column + 1, row + 1), (column, row + 1))
        beside = ((row - 1, column), (row, column + 1), (row + 1, column), (row, column - 1))
        for side, other in enumerate(beside):
            if other not in cells:
                leaving.setdefault(corners[side], []).append(corners[(side + 1) % 4])

    def following(a: Corner, b: Corner) -> Corner:
        """Where the border goes on from b: to the right first, so that cells meeting at a corner stay apart."""
        right = (b[0] - (b[1] - a[1]), b[1] + (b[0] - a[0]))
        return right if right in leaving[b] else leaving[b][0]

    edges = dict.fromkeys((a, b) for a, ends in leaving.items() for b in ends)
    found = []
    while edges:
        a, b = next(iter(edges))
        loop: list[Corner] = []
        while (a, b) in edges:
            del edges[a, b]
            a, b, before = b, following(a, b), a
            if _direction(before, a) != _direction(a, b):
                loop.append(a)
        found.append(loop)
    return found


def outline(shape: Iterable[Cell], width: float, height: float, inset: float, radius: float) -> str:
    """Path data around the shape, `inset` inside its cells' edges, with rounded corners. The first cell is (0, 0)."""
    parts = []
    for corners in loops(shape):
        count = len(corners)
        points: list[tuple[float, float]] = []
        for index, (x, y) in enumerate(corners):
            into = _direction(corners[index - 1], (x, y))
            out = _direction((x, y), corners[(index + 1) % count])
            # Each edge moves inwards (to its right); a corner moves with both of its edges.
            points.append((x * width - (into[1] + out[1]) * inset, y * height + (into[0] + out[0]) * inset))
        parts.append(_rounded(points, radius))
    return "".join(parts)


def _direction(a: tuple[int, int], b: tuple[int, int]) -> tuple[int, int]:
    return (b[0] > a[0]) - (b[0] < a[0]), (b[1] > a[1]) - (b[1] < a[1])


def _rounded(points: Sequence[tuple[float, float]], radius: float) -> str:
    """A closed path along level and upright edges, its corners rounded."""
    data: list[str] = []
    for index, (x, y) in enumerate(points):
        previous, following = points[index - 1], points[(index + 1) % len(points)]
        before, after = _length(previous, (x, y)), _length((x, y), following)
        r = min(radius, before / 2, after / 2)
        ax, ay = x + (previous[0] - x) * r / before, y + (previous[1] - y) * r / before
        bx, by = x + (following[0] - x) * r / after, y + (following[1] - y) * r / after
        edge = f"M{plain(ax)} {plain(ay)}" if not data else f"H{plain(ax)}" if previous[1] == y else f"V{plain(ay)}"
        data.append(f"{edge}q{plain(x - ax)} {plain(y - ay)} {plain(bx - ax)} {plain(by - ay)}")
    return "".join(data) + "Z"


def _length(a: tuple[float, float], b: tuple[float, float]) -> float:
    return abs(a[0] - b[0]) + abs(a[1] - b[1]) or 1.0


def blocks(shape: Iterable[Cell]) -> list[tuple[int, int, int, int]]:
    """Cut a shape into few rectangles (row, column, last row, last column): runs of a row, joined where they are alike."""
    runs: list[tuple[int, int, int]] = []
    for row, column in sorted(shape):
        if runs and runs[-1][0] == row and runs[-1][2] == column - 1:
            runs[-1] = (row, runs[-1][1], column)
        else:
            runs.append((row, column, column))
    made: list[tuple[int, int, int, int]] = []
    open_blocks: dict[tuple[int, int], int] = {}
    for row, first, last in runs:
        at = open_blocks.get((first, last))
        if at is not None and made[at][2] == row - 1:
            made[at] = (made[at][0], first, row, last)
        else:
            open_blocks[(first, last)] = len(made)
            made.append((row, first, row, last))
    return made


def hatch(box: Box, spacing: float, radius: float) -> str:
    """Path data of fine lines rising to the right inside a box with rounded corners."""
    data = []
    width, height = box.right - box.left, box.bottom - box.top
    # A line is x + y = k; k on a common raster, so that neighbouring boxes continue each other's lines.
    first = int((box.left + box.top) / spacing) + 1
    for step in range(first, int((box.right + box.bottom) / spacing) + 1):
        k = step * spacing - box.left - box.top
        low, high = max(0.0, k - height), min(width, k)
        for corner in (k, width + height - k):  # cut back where the line runs off over a rounded corner
            if corner < radius:
                half = radius * radius - (2 * radius - corner) ** 2 / 2
                reach = sqrt(half / 2) if half > 0 else -1.0
                middle = (low + high) / 2
                low, high = max(low, middle - reach), min(high, middle + reach)
        if high - low > spacing / 4:
            x, y = box.left + low, box.top + k - low
            data.append(f"M{plain(x)} {plain(y)}l{plain(high - low)} {plain(low - high)}")
    return "".join(data)
