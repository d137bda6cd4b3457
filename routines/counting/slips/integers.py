"""Slips in counts of whole numbers that go below zero."""

from ..grid import Grid
from .jump import Jump
from .rule import Area, Rule
from .sources import BOFFERDING_2014


def serves(grid: Grid) -> bool:
    count = grid.count
    return count.kind == "whole" and min(count.value(1), count.value(grid.terms)) < 0


def _without_sign(jump: Jump, language: str) -> str:
    return jump.text(-jump.b)


RULES = (
    Rule("N01", (6, 6), lambda j: j.s < 0 and j.a == 0, lambda j, _: j.said, source=BOFFERDING_2014),
    Rule("N02", (6, 6), lambda j: j.b == 0 and j.a != 0, lambda j, _: j.text(j.b + j.s)),
    Rule("N03", (6, 6), lambda j: j.a * j.b < 0, lambda j, _: j.text(j.s), 3),
    Rule("N04", (6, 6), lambda j: j.s > 0 and j.a < 0, lambda j, _: j.text(j.a - j.s), 3, source=BOFFERDING_2014),
    Rule("N05", (6, 6), lambda j: j.s < 0 and j.b < 0, _without_sign),
    Rule("N06", (6, 6), lambda j: j.s == 1 and j.a < 0 and j.a % 10 == 0, lambda j, _: j.text(j.a - 9), 3),
    Rule("N07", (6, 6), lambda j: j.s == -1 and j.a < 0 and -j.a % 10 == 9, lambda j, _: j.text(j.a + 9), 3),
)

AREA = Area("integers", serves, RULES)
