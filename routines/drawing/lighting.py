"""Lit patterns: solid for what always holds, dashed for what holds for a while."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from .flags import Flag, draw_flag, plant
from .groups import drawn_groups
from .layout import Layout
from .numerals import Box
from .outlines import blocks, hatch, joined, outline
from .said import SaidPattern
from .svg import Pen, element, line_of, path_of
from .threads import Knot, Stretch, arrow_reach, knots, thread

LAST_STEP = 15  # the thread appears in at most so many steps of 80 ms


@dataclass(frozen=True)
class Light:
    """One pattern as it lies on one grid. Draw shapes below the numerals, marks above the shapes of all lights."""

    layout: Layout
    pattern: SaidPattern
    until: str  # the words of the flag
    taken: tuple[Box, ...] = ()  # places of flags already planted

    @property
    def always(self) -> bool:
        return self.pattern.holds == "always"

    @property
    def kind(self) -> str:
        return "always" if self.always else "while"

    @cached_property
    def groups(self) -> tuple[tuple[int, ...], ...]:
        """The groups as far as they are written: an unfilled cell of a growing grid lights nothing."""
        kept = (tuple(n for n in group if n in self.layout.numerals) for group in drawn_groups(self.pattern))
        return tuple(group for group in kept if group)

    @cached_property
    def knots(self) -> dict[int, Knot]:
        return knots(self.layout, [n for group in self.groups for n in group], self.pattern.claim)

    @cached_property
    def flag(self) -> Flag | None:
        dies = self.pattern.breaks_at
        if self.always or dies is None or dies > self.layout.grid.terms:
            return None
        return plant(self.layout, dies, self.until, list(self.taken))

    @cached_property
    def stretches(self) -> list[Stretch]:
        return [part for group in self.groups for part in thread(self.layout, group, self.knots, self.always)]

    @cached_property
    def outlines(self) -> list[tuple[list[tuple[int, int]], str]]:
        """Each shape of touching cells with the path around it."""
        layout = self.layout
        found = []
        for group in self.groups:
            places = [cell for n in group if (cell := layout.cell(n)) is not None]
            for shape in joined(places):
                found.append((shape, outline(shape, layout.width, layout.height, self._inset, layout.radius)))
        return found

    @property
    def _inset(self) -> float:
        height = self.layout.height
        return max(1.3, 0.035 * height) if self.always else max(2.4, 0.075 * height)

    def shapes(self, pen: Pen) -> str:
        """Wash of each shape; with its outline where it always holds, with its hatch where it holds for a while."""
        thick = self.layout.lit_line
        if self.always:
            drawn = [element("path", d=around) for _, around in self.outlines]
            return element("g", pen.look("g-always"), "".join(drawn), stroke_width=thick) if drawn else ""
        drawn = []
        for shape, around in self.outlines:
            drawn.append(element("path", pen.look("g-halo"), d=around))
            drawn.append(self._hatched(pen, shape))
        return "".join(drawn + [self._patch(pen, knot) for knot in self.knots.values()])

    def _dashed_line(self, pen: Pen) -> str:
        """The outline of what holds for a while lies above all washes: where both hold, both lines are seen."""
        if self.always or not self.outlines:
            return ""
        thick = self.layout.lit_line
        around = "".join(path for _, path in self.outlines)
        dashes = f"{2.4 * thick:.1f} {1.7 * thick:.1f}"
        return element("path", pen.look("g-while-line"), d=around, stroke_width=thick, stroke_dasharray=dashes)

    def _hatched(self, pen: Pen, shape: Sequence[tuple[int, int]]) -> str:
        layout, inside = self.layout, self._inset + self.layout.lit_line
        spacing = max(5.0, 0.11 * layout.height)
        lines = []
        for row, column, last_row, last_column in blocks(shape):
            box = Box(
                column * layout.width + inside,
                row * layout.height + inside,
                (last_column + 1) * layout.width - inside,
                (last_row + 1) * layout.height - inside,
            )
            lines.append(hatch(box, spacing, layout.radius))
        return element("path", pen.look("g-hatch"), d="".join(lines))

    def _patch(self, pen: Pen, knot: Knot) -> str:
        """The halo in the cell's own ground, so that no hatch runs under a numeral."""
        return knot.box.draw(pen, "g-halo", rx=0.2 * self.layout.numeral)

    def marks(self, pen: Pen, covered: frozenset[int] = frozenset(), animate: bool = False) -> str:
        """Dashed outline, thread, underlines and flag. The thread is left out where both its ends lie under an always shape."""
        layout = self.layout
        stretches = [s for s in self.stretches if not (s.start in covered and s.end in covered)]
        drawn = [self._dashed_line(pen), self._thread(pen, stretches, animate)]
        lines = [self._underline(knot) for knot in self.knots.values() if knot.digit]
        if lines:
            thick = max(0.075 * layout.numeral, 1.4)
            drawn.append(element("path", pen.look("g-underline"), d="".join(lines), stroke_width=thick))
        if self.flag:
            drawn.append(draw_flag(pen, self.flag, layout.lit_line))
        return "".join(drawn)

    def _thread(self, pen: Pen, stretches: Sequence[Stretch], animate: bool) -> str:
        """The stretches in one group that colours them, a path for all that appear together; then the arrowheads.

        A page holds dozens of lights that are not lit, and most of each is thread. Where a pattern holds for a while each
        stretch is a path of its own, with the counts that it joins: a script leaves out those that an always shape covers.
        """
        if not stretches:
            return ""
        lines: dict[tuple[object, ...], list[str]] = {}
        heads: dict[str | None, list[str]] = {}
        for index, part in enumerate(stretches):
            step = f"g-step-{1 + index * min(LAST_STEP, len(stretches)) // len(stretches)}" if animate else None
            joins = (None, None) if self.always or pen.flat else (part.start, part.end)
            lines.setdefault((step, *joins), []).append(line_of(part.points))
            if part.arrow:
                heads.setdefault(step, []).append(self._arrowhead(part))
        paths = [
            element("path", f'class="{step}"' if step else "", d="".join(parts), data_from=start, data_to=end)
            for (step, start, end), parts in lines.items()
        ]
        thread = element(
            "g",
            pen.look(f"g-thread-{self.kind}"),
            "".join(paths),
            stroke_width=0.8 * self.layout.lit_line,
            **self._thread_dashes(),
        )
        arrows = [
            element("path", pen.look("g-arrowhead", *([step] if step else [])), d="".join(parts))
            for step, parts in heads.items()
        ]
        return thread + "".join(arrows)

    def _thread_dashes(self) -> dict[str, str]:
        if self.always:
            return {}
        thick = self.layout.lit_line
        return {"stroke_dasharray": f"{1.9 * thick:.1f} {1.3 * thick:.1f}"}

    def _underline(self, knot: Knot) -> str:
        digit, size = knot.digit, self.layout.numeral
        assert digit is not None
        # A fraction's top is marked above it, where its bar is not: a second line by the bar would read as "equals".
        above = knot.digit is not None and digit.bottom < knot.at[1] - 0.1 * size
        y = digit.top - 0.1 * size if above else digit.bottom + 0.19 * size
        return path_of(((digit.left + 0.02 * size, y), (digit.right - 0.02 * size, y)))

    def _arrowhead(self, part: Stretch) -> str:
        (x0, y0), (x1, y1) = part.points
        length = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5 or 1
        ux, uy = (x1 - x0) / length, (y1 - y0) / length
        size = min(max(0.11 * self.layout.height, 5), 14)
        back = (x1 - ux * size, y1 - uy * size)
        half = 0.68 * size
        return path_of(
            ((x1, y1), (back[0] - uy * half, back[1] + ux * half), (back[0] + uy * half, back[1] - ux * half)),
            close=True,
        )

    @property
    def reach(self) -> list[Box]:
        """What this light draws outside the grid, to leave room for it."""
        boxes = [self.flag.box] if self.flag else []
        for part in self.stretches:
            if part.arrow:
                x, y = part.points[1]
                boxes.append(Box(x, y, x, y).grown(0.3 * arrow_reach(self.layout)))
        return boxes
