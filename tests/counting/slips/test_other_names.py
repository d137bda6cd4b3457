"""Another name that is certain to be said is foreseen, marked as the same number, and heard as such; EXACT.

Source of the slip 6/8 cup: as for bare fractions, see ADD_ACROSS in routines/counting/slips/sources.py.
"""

import pytest

from routines.counting import Audience, Count, EqualName, Grid, Slip, Style, classify, likely_slips

NAMES = [
    ("fraction", "1/4", "1/4", 3, "2/4", "1/2"),
    ("fraction", "1/4", "1/4", 3, "1 1/4", "5/4"),
    ("length", "75 cm", "25 cm", 2, "100 cm", "1 m"),
    ("mass", "250 g", "250 g", 3, "1,000 g", "1 kg"),
    ("capacity", "3/4 cup", "3/4 cup", 5, "1 2/4 cups", "6/4 cups"),
    ("capacity", "3/4 cup", "3/4 cup", 5, "1 2/4 cups", "1 1/2 cups"),
]


def grid_of(kind: str, start: str, step: str, language: str = "en") -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=12, style=Style(language=language)), 4)


@pytest.mark.parametrize(("kind", "start", "step", "level", "due", "name"), NAMES)
def test_it_is_foreseen_and_heard_as_the_same(
    kind: str, start: str, step: str, level: int, due: str, name: str
) -> None:
    grid = grid_of(kind, start, step)
    slip = next(slip for slip in likely_slips(grid, level) if (slip.correct, slip.heard) == (due, name))
    assert slip.equal_name
    assert isinstance(classify(grid, slip.n, name, audience=Audience(level)), EqualName)


def test_parts_that_are_not_in_lowest_terms_come_before_a_whole_left_in_parts() -> None:
    count = Count.parse(kind="fraction", start="5/6", step="5/6", terms=18, style=Style(fractions="simplified"))
    names = [slip.heard for slip in likely_slips(Grid(count, 6), 6) if slip.equal_name]
    assert {"1 4/6", "2 3/6", "4 6/6"} <= set(names)
    assert names.index("1 4/6") < names.index("4 6/6")


@pytest.mark.parametrize(("language", "heard"), [("en", "6/8 cup"), ("es", "6/8 de taza")])
def test_tops_and_bottoms_are_added_with_a_unit_too(language: str, heard: str) -> None:
    grid = grid_of("capacity", "3/4 cup", "3/4 cup", language)
    slip = next(
        slip for slip in likely_slips(grid, audience=Audience(5, language)) if slip.rule == "F19" and slip.n == 2
    )
    assert (slip.heard, slip.equal_name) == (heard, False)
    named = classify(grid, 2, heard, audience=Audience(5, language))
    assert (getattr(named, "slip", None) if not isinstance(named, Slip) else named).rule == "F19"
