"""What the lectern and the log offer to tap at a count: few enough for a thumb, the teacher's own among them."""

from collections import Counter

from routines.lessons.shown_count import MOST_FORESEEN, coming
from routines.models.plan_document import ExpectedAnswer
from routines.models.shown_plan import ShownPlan
from routines.words import likely_slips
from tests.routines.making import SEVENS


def test_the_likeliest_are_offered_and_no_more_than_a_thumb_finds():
    shown = ShownPlan(SEVENS, 2)
    foreseen = [slip for slip in likely_slips(shown.grid, audience=shown.audience) if not slip.equal_name]
    assert max(Counter(slip.n for slip in foreseen).values()) > MOST_FORESEEN  # else nothing is shown here
    offered = coming(shown)
    for n in {slip.n for slip in foreseen}:
        likely = list(dict.fromkeys(slip.heard for slip in foreseen if slip.n == n))
        assert [row["heard"] for row in offered[str(n)] if not row["equal"]] == likely[:MOST_FORESEEN]


def test_what_the_teacher_foresaw_comes_first_and_is_never_left_out():
    shown = ShownPlan(SEVENS, 2)
    n = next(slip.n for slip in likely_slips(shown.grid, audience=shown.audience) if not slip.equal_name)
    own = tuple(ExpectedAnswer(words=f"garply {k}", sort="slip", n=n) for k in range(6))
    offered = coming(ShownPlan(SEVENS.changed(expected=own), 2))[str(n)]
    assert [row["heard"] for row in offered][:6] == [answer.words for answer in own]
    assert len(offered) > len(own)
