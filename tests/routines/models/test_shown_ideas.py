"""Which ideas the timeline shows as over."""

from routines.counting import Audience, Count, Grid, find_patterns
from routines.models.shown_ideas import dying_ideas, ideas_to_show
from routines.words import ideas


def test_landmarks_that_come_to_lie_on_a_line_are_not_over() -> None:
    # Every 3rd count is half a foot: the first two stand in one row, and at the 11th all make columns 2 and 5.
    shelves = Grid(Count.parse(kind="length", start="1 ft 2 in", step="10 in", terms=12), 6, "across-up")
    halves = [one for one in ideas(shelves) if one.claim.parameters.get("multiple") == 6]
    assert [(one.seen_at, one.dies_at, one.claim.parameters.get("lie")) for one in halves] == [
        (5, None, None),
        (7, 8, "row"),
        (11, None, "columns"),
    ]
    assert not [one for one in dying_ideas(shelves, Audience()) if one.claim in {half.claim for half in halves}]


def test_landmarks_that_lie_in_no_line_are_shown_as_the_idea_that_they_come_every_so_many_counts() -> None:
    sevens = Grid(Count.parse(kind="whole", start="7", step="7", terms=24), 4)
    landmarks = [one.claim for one in find_patterns(sevens) if one.claim.family == "landmarks"]
    tens = next(claim for claim in landmarks if claim.parameters["multiple"] == 10)
    assert tens.parameters["lie"] == "scattered"
    families = [one for one in ideas_to_show(sevens, Audience(), [tens]) if one.claim.family == "landmarks"]
    shown = next(one for one in families if one.claim.parameters["multiple"] == 10)
    assert (shown.claim.parameters.get("lie"), shown.seen_at, shown.dies_at) == (None, 20, None)


def test_a_run_of_digits_is_over_where_it_stops() -> None:
    elevens = Grid(Count.parse(kind="whole", start="34", step="11", terms=12), 4)
    over = dying_ideas(elevens, Audience())
    assert {
        one.dies_at for one in over if one.claim.family == "digit-run" and one.claim.parameters.get("along") == "count"
    } == {7}
