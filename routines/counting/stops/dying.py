"""Ideas that die while a count is written, and are worth a stop just before."""

from ..claims import Claim, DigitClaim, DigitRunClaim, DigitSumClaim
from ..grid import Grid
from ..ideas import ideas
from ..patterns.ranking import rank
from ..results import Idea

# An idea that lives for fewer counts after it is first seen is no idea yet.
LIVES = 3
# Ideas are looked for among so many counts; what dies later is no news to a class.
FARTHEST = 60


def dying_ideas(grid: Grid) -> list[Idea]:
    """The ideas that children find by themselves and that die in view, most noticeable first."""
    view = grid if grid.terms <= FARTHEST else grid.cut(FARTHEST)
    found = [idea for idea in ideas(view) if _dies_in_view(idea, view) and _is_found_by_children(idea, view)]
    return sorted(found, key=lambda idea: (rank(idea.claim, grid), idea.dies_at))


def _dies_in_view(idea: Idea, grid: Grid) -> bool:
    return idea.dies_at is not None and idea.seen_at + LIVES <= idea.dies_at <= grid.terms


def _is_found_by_children(idea: Idea, grid: Grid) -> bool:
    """Runs of digits, digit sums that stay, and digits that stay in their line.

    As many counts in each whole is not among them: a count on the border of two wholes is taken for one of either, and so
    nobody can say with which count it ends.
    """
    claim = idea.claim
    match claim:
        case DigitRunClaim():
            return claim.along == "count" or _in_two_lines(idea, grid)
        case DigitClaim():
            # Along the count, a digit that stays until a new ten is news of the ten: a hard spot.
            return claim.block_length == 1 and claim.along != "count" and _in_two_lines(idea, grid)
        case DigitSumClaim():
            return claim.block_length == 1 and claim.along == "count"
    return False


def _in_two_lines(idea: Idea, grid: Grid) -> bool:
    return idea.dies_at is not None and idea.dies_at > 2 * grid.line_length - grid.lead


def claim_of_idea(idea: Idea) -> Claim:
    """The idea as it stands on the board just before it dies."""
    return idea.pattern.claim
