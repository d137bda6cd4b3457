"""Which ideas the timeline shows as over."""

from routines.counting import Audience, Count, Grid
from routines.models.shown_ideas import dying_ideas
from routines.words import ideas


def test_landmarks_that_come_to_lie_on_a_line_are_not_over() -> None:
    shelves = Grid(Count.parse(kind="length", start="1 ft 2 in", step="10 in", terms=12), 6, "across-up")
    overtaken = [one for one in ideas(shelves) if one.claim.parameters.get("lie") == "scattered" and one.dies_at]
    assert overtaken  # every 3rd count is half a foot, and at the 11th these make columns 2 and 5
    assert not [one for one in dying_ideas(shelves, Audience()) if one.claim.parameters.get("lie") == "scattered"]


def test_a_run_of_digits_is_over_where_it_stops() -> None:
    elevens = Grid(Count.parse(kind="whole", start="34", step="11", terms=12), 4)
    over = dying_ideas(elevens, Audience())
    assert {
        one.dies_at for one in over if one.claim.family == "digit-run" and one.claim.parameters.get("along") == "count"
    } == {7}
