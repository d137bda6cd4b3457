"""A short way to write demo plans down, so that a plan reads like a page of a teacher's notebook."""

from dataclasses import dataclass, field
from typing import Any

from routines.counting import Claim, Fill, Outcome
from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, NextCount, Plan, Sort, Stop, Target


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


def say(sort: Sort, words: str, reply: str, n: int = 0) -> ExpectedAnswer:
    return ExpectedAnswer(words=words, reply=reply, sort=sort, n=n)


def slip(n: int, heard: str, reply: str) -> ExpectedAnswer:
    """What will be heard at the n-th count instead of what should be."""
    return ExpectedAnswer(words=heard, reply=reply, sort="slip", n=n)


def stop(after: int, question: str, answer: str, *routes: str, **times: int) -> Stop:
    return Stop(after, question, answer, tuple(routes), **times)


def then(
    outcome: str,
    why: str,
    start: str,
    step: str,
    terms: int,
    line: int,
    *,
    kind: str = "whole",
    fill: str = Fill.ACROSS,
    **style: Any,
) -> NextCount:
    return NextCount(Outcome(outcome), why, CountSection(kind, start, step, terms, style), Fold(line, Fill(fill)))


def written(
    title: str,
    *,
    start: str,
    step: str,
    terms: int,
    line: int,
    kind: str = "whole",
    fill: str = Fill.ACROSS,
    lead: int = 0,
    style: dict[str, Any] | None = None,
    **parts: Any,
) -> Plan:
    """A plan with its count in a few words; `parts` are the other parts of the document by their names."""
    count, fold = CountSection(kind, start, step, terms, style or {}), Fold(line, Fill(fill), lead)
    return Plan(title=title, count=count, fold=fold, **parts)
