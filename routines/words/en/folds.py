"""English clauses about what a fold does."""

from routines.counting.grid import Fill

from ..language import Folds

PARITY = "the odd and even numbers"

LINES = {Fill.ACROSS: "rows", Fill.ACROSS_UP: "rows", Fill.DOWN: "columns"}
LINE = {Fill.ACROSS: "row", Fill.ACROSS_UP: "row", Fill.DOWN: "column"}

CLAUSES = {
    "here": "in {lines} of {length}",
    "against": "{lines} of {length} instead of {before}:",
    "nothing": "nothing lines up",
    "still nothing": "still nothing lines up",
    "line up": "{names} line up",
    "slide": "{names} slide",
    "now line up": "{names} now line up",
    "now slide": "{names} slide",
    "no longer": "{names} no longer line up or slide",
    "within": "{names} stay the same within each {line}",
    "in one line": "{names} all lie in one {line}",
    "shared": "only what all counts share lines up",
    "stay": "{names} still line up",
    "slide on": "{names} still slide",
}

FOLDS = Folds(CLAUSES, LINES, LINE, PARITY)
