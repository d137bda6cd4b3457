"""What a plan shows, ready to be placed on a card, a page or paper: the grid, its patterns, the targets among them."""

from dataclasses import dataclass
from functools import cached_property

from routines.counting import Audience, Claim, CountError, Grid, proposed_landmarks
from routines.models.lit import lit_by_itself
from routines.models.plan_document import Plan
from routines.words import SpokenPattern, patterns_to_say, show_claim

# Expressions with a letter for a number: from grade 5 on classes write what a pattern does as a rule.
LEVEL_OF_RULES = 5


@dataclass(frozen=True, slots=True)
class ShownPattern:
    """A pattern with the key by which pages light it up, and whether the plan has it as a target."""

    key: str
    pattern: SpokenPattern
    target: bool


@dataclass(frozen=True, slots=True)
class ReachedGoal:
    """The goal as written, the count and the group at which it is reached, and by how much it is passed ("" when met)."""

    n: int
    goal: str
    label: str
    by: str


class ShownPlan:
    """Reads a plan once; everything computed is computed when first asked for."""

    def __init__(self, plan: Plan, level: int) -> None:
        self.plan = plan
        self.audience: Audience = plan.audience(level)

    @cached_property
    def grid(self) -> Grid:
        return self.plan.grid()

    @property
    def rule(self) -> str:
        """The n-th count as an expression, "6 × n + 52", with a minus sign; "" for classes that do not write such rules yet."""
        if self.audience.level < LEVEL_OF_RULES:
            return ""
        return self.grid.count.rule().text.replace(" - ", " \u2212 ")  # read, not typed: a minus sign

    @cached_property
    def target_claims(self) -> list[Claim]:
        return self.plan.claims()

    @cached_property
    def patterns(self) -> list[ShownPattern]:
        """The targets in the teacher's order, then what else is found, most noticeable first."""
        found = {pattern.claim: pattern for pattern in patterns_to_say(self.grid, audience=self.audience)}
        targets = []
        for claim in self.target_claims:
            pattern = found.pop(claim, None) or self._shown(claim)
            if pattern is not None:
                targets.append(pattern)
        listed = [(pattern, True) for pattern in targets] + [(pattern, False) for pattern in found.values()]
        return [ShownPattern(f"p{i}", pattern, target) for i, (pattern, target) in enumerate(listed)]

    def _shown(self, claim: Claim) -> SpokenPattern | None:
        """The pattern of a claim that is not listed; None for one that means nothing for this count."""
        try:
            return show_claim(claim, self.grid, audience=self.audience)
        except CountError:
            return None

    @cached_property
    def goal(self) -> ReachedGoal | None:
        """Where the story's goal is met or passed; None without a goal, or with one that cannot be read in this count."""
        count, story = self.grid.count, self.plan.story
        try:
            reached = count.reaching(story.goal) if story.goal.strip() else None
        except CountError:
            return None
        if reached is None:
            return None
        label = f"{story.group.strip() or 'count'} {reached.n}"
        return ReachedGoal(
            reached.n, count.text_of(reached.value), label, "" if reached.met else count.difference_text(reached.by)
        )

    @cached_property
    def lit(self) -> list[ShownPattern]:
        """What lights up before anybody chose, two at most; all of it is among `listed`."""
        targets = [shown.pattern for shown in self.patterns if shown.target]
        found = [shown.pattern for shown in self.patterns if not shown.target]
        chosen = lit_by_itself(self.grid, targets, found, self.landmarks)
        known = {shown.pattern.claim: shown for shown in self.patterns}
        return [known.get(pattern.claim) or ShownPattern(f"e{i}", pattern, False) for i, pattern in enumerate(chosen)]

    @cached_property
    def listed(self) -> list[ShownPattern]:
        """The targets, what lights up by itself, which may be over before the grid ends, then what else is found."""
        first = [*(shown for shown in self.patterns if shown.target), *self.lit]
        return list({shown.key: shown for shown in [*first, *self.patterns]}.values())

    @cached_property
    def landmarks(self) -> tuple[int, ...]:
        """Terms to draw as landmarks: multiples of the plan's chosen landmark, or what the engine proposes."""
        return landmark_terms(self.grid, self.plan.landmark)


def landmark_terms(grid: Grid, chosen: str) -> tuple[int, ...]:
    """The terms of the grid at multiples of `chosen` (as typed in the count's kind); the engine's proposal when empty."""
    count = grid.count
    if not chosen:
        proposed = proposed_landmarks(grid)
        return tuple(proposed[0].terms) if proposed else ()
    try:
        multiple = count.read(chosen)
    except CountError:
        return ()
    if multiple <= 0:
        return ()
    return tuple(n for n in range(1, count.terms + 1) if count.value(n) % multiple == 0)
