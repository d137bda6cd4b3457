"""Which claim says again what another has said: two ways to one idea. Common practice, no source."""

from __future__ import annotations

from fractions import Fraction
from itertools import chain

from ..claims import (
    Claim,
    DigitClaim,
    DigitSumClaim,
    Direction,
    HowManyClaim,
    LandmarksClaim,
    NeighbourClaim,
    PlaceClaim,
    RemainderClaim,
    stated,
)
from ..count import Count
from ..kinds.names import Kind
from .friendly import LEARNED_WITH_THE_TABLES, never_hidden

ASLANT: tuple[Direction, ...] = ("down-right", "down-left")


def says_again(claim: Claim, said: Claim, count: Count) -> bool:
    """Whether a class that has said one claim of a grid says little new with another.

    One digit, or one part, is one idea, whichever way it is followed; so is a step aslant. What is left over is said by the
    multiples, where they have been found, and by the part that is written for it (3 in, 0 in, 9 in: inches 3, 0, 9).
    """
    match claim, said:
        case NeighbourClaim(), NeighbourClaim():
            return claim.direction in ASLANT and said.direction in ASLANT
        case LandmarksClaim(), LandmarksClaim():
            return _are_told_by(claim, said, count)
        case HowManyClaim(), HowManyClaim():
            return are_kin(stated(claim.multiple), stated(said.multiple))
        case RemainderClaim(), LandmarksClaim():
            return _is_told_by(claim, stated(said.multiple), count)
        case RemainderClaim(), RemainderClaim():
            return _is_told_by(claim, stated(said.modulus), count)
        case LandmarksClaim(), RemainderClaim():
            return claim.multiple == said.modulus
        case PlaceClaim(), PlaceClaim():
            return (claim.place, claim.part) == (said.place, said.part)
        case DigitSumClaim(), DigitSumClaim():
            return True
        case DigitClaim(), RemainderClaim():
            return _are_the_same_numbers(claim, said, count)
        case RemainderClaim(), DigitClaim():
            return _is_read_off(claim, said, count) or _are_the_same_numbers(said, claim, count)
    return False


def _are_told_by(claim: LandmarksClaim, said: LandmarksClaim, count: Count) -> bool:
    """Whether multiples come with friendlier ones, or lie where these do: with the tens the twenties cannot but lie, and
    who has seen the wholes fill a column has seen most of the halves in it.

    Of the numbers that are learned with the tables, one that is found is enough for a start. But even numbers, and wholes,
    are ideas of their own, and so is what a count goes by.
    """
    multiple, other = stated(claim.multiple), stated(said.multiple)
    if multiple == never_hidden(count):
        return False
    together = (claim.every, claim.first) == (said.every, said.first)
    within = bool(claim.lines) and claim.lines == said.lines and are_kin(multiple, other)
    tables = count.kind == Kind.WHOLE and {multiple, other} <= LEARNED_WITH_THE_TABLES and multiple != abs(count.step)
    return together or within or tables


def _is_told_by(claim: RemainderClaim, said: Fraction, count: Count) -> bool:
    """Whether what is left over is told by another number: this one, or one that goes into it or it into that one.

    That it is the same of every count, and what the kind reads by, is told by itself only.
    """
    modulus = stated(claim.modulus)
    apart = never_hidden(count) in (modulus, said) or (claim.along == "count" and claim.block_length == 1)
    return modulus == said or (not apart and are_kin(modulus, said))


def _is_read_off(claim: RemainderClaim, said: DigitClaim, count: Count) -> bool:
    """Whether what is left past a hundred, or a thousand, was read by the first of its digits, followed the same way."""
    if count.kind != Kind.WHOLE or not said.place:
        return False
    return claim.along == said.along and stated(claim.modulus) == 10 ** (said.place + 1)


def are_kin(one: Fraction, other: Fraction) -> bool:
    """Whether one of two numbers above 0 is a multiple of the other."""
    return one % other == 0 or other % one == 0


def _are_the_same_numbers(one: DigitClaim, other: RemainderClaim, count: Count) -> bool:
    """Whether a digit or a part is what is left over, but for the unit in which it is said.

    Of whole numbers F5 of EXACT 11 has seen to that.
    """
    if count.kind == Kind.WHOLE:
        return False
    ones, others = list(chain(*stated(one.blocks))), list(chain(*stated(other.blocks)))
    if len(ones) != len(others):
        return False
    at = max(range(len(ones)), key=lambda i: ones[i])
    alike = all(a * others[at] == b * ones[at] for a, b in zip(ones, others, strict=True))
    return alike and (len(set(ones)) > 1 or ones == others)
