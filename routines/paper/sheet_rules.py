"""What paper.css says of how tall a plan page and a substitute's page are, for `foreseeing.py`.

Where paper.css changes and this does not, sheets are laid out more often than they need be; `test_foreseeing.py` holds the two
together.
"""

from collections.abc import Iterable, Mapping
from typing import Any, NamedTuple


class Rule(NamedTuple):
    """Units: points; a size by its name is the look's. None leaves it as it is around.

    size, line, bold: of the letters; times: how much larger they are than around. above, below, border: what is added to the
    height; height: all of it; least: what it is at least. across: what is taken of the width, hanging: of all lines but the
    first. columns: how many and the gap between, balanced: filled one after the other; broken: its parts may stand in two.
    beside: the gap between a picture and what stands at its right. whole: not broken between lines, with a gap behind.
    """

    size: float | str | None = None
    line: float | None = None
    bold: bool | None = None
    times: float = 1
    above: float | str = 0
    below: float | str = 0
    border: float = 0
    height: float | str | None = None
    least: float = 0
    across: float = 0
    hanging: float = 0
    columns: tuple[int, float] | None = None
    balanced: bool = False
    broken: bool = False
    beside: float | None = None
    whole: float | None = None


RULED_OFF: Mapping[str, Any] = {"above": "row", "below": "row", "border": 0.6}
HIDDEN = frozenset({"square", "head-right", "step-time"})
"""What stands beside something that is taller."""

RULES: Mapping[str, Mapping[str, Any]] = {
    # Every sheet
    "b": {"bold": True},
    "h1": {"size": 20, "line": 1.15, "bold": True},
    "h2": {"size": 11.5, "line": 1.2, "bold": True},
    "h3": {"size": "small", "line": 1.2, "bold": True},
    **{name: {"size": "small"} for name in ("small", "because", "reply", "times", "also-list", "route", "as-written")},
    "head": {"across": 70, "least": 52.8},
    "count-line": {"size": 12, "above": 2},
    "story": {"above": 11.6, "below": 5.6, "across": 19.2},
    "part": {"above": "gap"},
    "ruled": {"height": "ruled", "border": 0.6},
    "row": RULED_OFF,
    # Plan page
    "desk": {"above": "gap"},
    "desk-beside": {"beside": 18},
    "legend": {"size": 8.5, "above": 4},
    "legend-item": {"whole": 8},
    "listen": {"above": "gap"},
    "desk-beside listen": {"above": 0},
    "desk-above listen-list": {"columns": (2, 20)},
    "desk-alone listen-list": {"columns": (2, 20)},
    "target": {**RULED_OFF, "across": 19},
    "listen h3": {"above": 7},
    "also-list li": {"above": 2, "hanging": 18},
    "stops": {"above": 4},
    "nexts": {"above": 4},
    "columns-2": {"columns": (2, 12)},
    "columns-3": {"columns": (3, 12)},
    "stop": {"above": 5.5},
    "stop-place": {"below": 1.3},
    "stop-question": {"times": 1.15, "line": 1.25, "above": 3, "below": 3},
    "stop-answer": {"bold": True},
    "next": {"above": 3.6},
    "two": {"columns": (2, 20)},
    "stacked rows": {"columns": (2, 20), "balanced": True},
    "lines li": {"above": 3, "hanging": 20},
    "notice": {"size": 7, "line": 1.2},
    # Substitute's page
    "for-whom": {"bold": True},
    "sheet-substitute h1": {"size": 17},
    "lead-words": {"above": 5},
    "desk-above how-to-say": {"above": 6},
    "how-said": {"size": "small", "line": 1.22, "above": 2},
    **{f"in-{number}": {"columns": (number, 0)} for number in range(1, 6)},
    "how-said li": {"hanging": 8},
    "step": {**RULED_OFF, "across": 62},
    "step-what stop-question": {"above": 1, "below": 1},
    # The room below what ends a column must be there, though nothing stands in it.
    "substitute-foot": {"below": 6, "columns": (2, 20), "balanced": True},
    "if-they": {"broken": True},
    "substitute-foot please-not": {"below": 6},
    "please-not li": {"size": "small", "above": 2, "across": 10},
    "to-fill": {"size": "small", "above": 4},
}
"""By the name of a tag or class, or of what it stands in and its own. What is said later stands; two names come last."""

WITHIN = [(name.split()[0], name.split()[1], rule) for name, rule in RULES.items() if " " in name]


def rule_of(names: Iterable[str], around: frozenset[str] = frozenset()) -> Rule:
    """All that is said of a part with these names. around: the names of all that it stands in."""
    said: dict[str, Any] = {}
    for name in names:
        said |= RULES.get(name, {})
    for outer, inner, rule in WITHIN:
        if outer in around and inner in names:
            said |= rule
    return Rule(**said)
