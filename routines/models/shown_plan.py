"""What a plan shows, ready to be placed on a card, a page or paper: the grid, its patterns, the targets among them."""

from dataclasses import dataclass
from functools import cached_property

from routines.counting import Audience, Claim, CountError, Grid, proposed_landmarks
from routines.counting.claims import RemainderClaim, StepClaim
from routines.models.plan_document import Plan
from routines.words import SpokenPattern, find_patterns, show_claim

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
        found = {pattern.claim: pattern for pattern in find_patterns(self.grid, audience=self.audience)}
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
    def best_two(self) -> list[ShownPattern]:
        """Two patterns worth showing on a card: targets first, then the most telling of what says something new."""
        telling = [shown for shown in self.patterns if shown.target]
        telling += [shown for shown in self.patterns if not shown.target and not _says_nothing_new(shown.pattern.claim)]
        return telling[:2]

    @cached_property
    def lit_at_first(self) -> list[ShownPattern]:
        """What is lit before anybody chose: the best two, but of those that fill the whole grid one alone, and only by itself."""
        some = [shown for shown in self.best_two if len(shown.pattern.cells) < self.grid.terms]
        return some or self.best_two[:1]

    @cached_property
    def landmarks(self) -> tuple[int, ...]:
        """Terms to draw as landmarks: multiples of the plan's chosen landmark, or what the engine proposes."""
        return landmark_terms(self.grid, self.plan.landmark)


def _says_nothing_new(claim: Claim) -> bool:
    """Whether a claim only says what the count is: its step, or that whole inches are whole."""
    if isinstance(claim, RemainderClaim):
        return claim.modulus == 1 and claim.block_length == 1
    return isinstance(claim, StepClaim)


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
