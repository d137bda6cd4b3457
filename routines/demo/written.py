"""A short way to write demo plans down, so that a plan reads like a page of a teacher's notebook."""

from dataclasses import dataclass, field
from typing import Any

from routines.counting import Claim, Fill
from routines.plan_document import CountTyped, ExpectedAnswer, Fold, NextCount, Plan, Stop, Story, Target


@dataclass(frozen=True, slots=True)
class DemoPlan:
    """A plan and its author; `key` lets other plans and lessons refer to it.

    `copy_of` names the plan it was copied from; `status` is "shared" or "draft"; `co_authors` are sign-in names.
    """

    key: str
    owner: str
    plan: Plan
    copy_of: str = ""
    status: str = "shared"
    co_authors: tuple[str, ...] = ()
    earlier: tuple[Plan, ...] = field(default_factory=tuple)


def target(family: str, words: str = "", **parameters: Any) -> Target:
    return Target(Claim.from_dict({"family": family, **parameters}).as_dict(), words)


def say(sort: str, words: str, reply: str, n: int = 0) -> ExpectedAnswer:
    return ExpectedAnswer(words=words, reply=reply, sort=sort, n=n)


def slip(n: int, heard: str, reply: str) -> ExpectedAnswer:
    """What will be heard at the n-th count instead of what should be."""
    return ExpectedAnswer(words=heard, reply=reply, sort="slip", n=n)


def stop(
    after: int, question: str, answer: str, *routes: str, think: int = 20, partner: int = 60, share: int = 90
) -> Stop:
    return Stop(after, question, answer, tuple(routes), think, partner, share)


def then(
    outcome: str,
    why: str,
    start: str,
    step: str,
    terms: int,
    line: int,
    *,
    kind: str = "whole",
    fill: str = Fill.ACROSS.value,
    **style: Any,
) -> NextCount:
    return NextCount(outcome, why, CountTyped(kind, start, step, terms, style), Fold(line, fill))


def written(
    title: str,
    *,
    grade: str,
    area: str,
    start: str,
    step: str,
    terms: int,
    line: int,
    kind: str = "whole",
    fill: str = Fill.ACROSS.value,
    lead: int = 0,
    style: dict[str, Any] | None = None,
    language: str = "en",
    story: Story | None = None,
    landmark: str = "",
    targets: tuple[Target, ...] = (),
    expected: tuple[ExpectedAnswer, ...] = (),
    stops: tuple[Stop, ...] = (),
    next_counts: tuple[NextCount, ...] = (),
    standards: tuple[str, ...] = (),
    notes: str = "",
) -> Plan:
    return Plan(
        title=title,
        grade=grade,
        area=area,
        count=CountTyped(kind, start, step, terms, style or {}),
        fold=Fold(line, fill, lead),
        language=language,
        story=story or Story(),
        landmark=landmark,
        targets=targets,
        expected=expected,
        stops=stops,
        next_counts=next_counts,
        standards=standards,
        notes=notes,
    )
