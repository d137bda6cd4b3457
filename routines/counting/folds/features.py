"""What may line up when a count is folded: digits, parts, landmarks, remainders, read once for the whole strip."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from operator import attrgetter

from ..claims import DigitClaim, LandmarksClaim, RemainderClaim
from ..count import Count
from ..designing.wheels import part_of
from ..kinds.names import Kind
from ..named_multiples import has_a_name
from ..patterns.landmarks import landmark_rhythm
from ..patterns.readings import Part, PlaceDigit, Reading, is_written, places

NAMED_LANDMARK, DIGIT, LANDMARK, REMAINDER = range(4)


@dataclass(frozen=True, slots=True)
class Feature:
    """Something that can be read off every term, with the claim that names it, all else left out.

    read: what the terms read, in counting order; or period: after how many terms it comes again, whatever the view.
    first: for landmarks the first one, else None. covers: a modulus whose remainder stays wherever this one does.
    rank: the more noticeable, the smaller.
    """

    claim: DigitClaim | RemainderClaim | LandmarksClaim
    read: Sequence[int | None] | None = None
    period: int = 0
    first: int | None = None
    covers: Fraction | None = None
    rank: int = 0

    @property
    def plain(self) -> bool:
        """Whether children read it off at a glance: all but most remainders."""
        return self.rank < REMAINDER

    def stays(self, distance: int) -> bool:
        """Say whether any two terms in view so far apart read the same."""
        if self.read is None:
            return distance % self.period == 0
        return self.read[distance:] == self.read[:-distance]


def features(count: Count) -> list[Feature]:
    """Give what changes along the count and may line up, most noticeable first.

    What is the same in every term lines up in every fold and tells no two apart.
    """
    found = [*_landmarks(count), *_digits(count), *_parts(count), *_remainders(count)]
    return sorted((feature for feature in found if not feature.stays(1)), key=attrgetter("rank"))


def _landmarks(count: Count) -> Iterator[Feature]:
    rhythms: set[tuple[int, int]] = set()
    for multiple in sorted(count.friendly_multiples(), reverse=True):
        rhythm = landmark_rhythm(count, multiple)
        # A divisor whose multiples stand at the very same terms says nothing new.
        if rhythm is None or rhythm in rhythms or rhythm[0] < 2 or sum(rhythm) > count.terms:
            continue
        rhythms.add(rhythm)
        every, first = rhythm
        rank = NAMED_LANDMARK if has_a_name(count, multiple) else LANDMARK
        claim = LandmarksClaim(multiple, every, first)
        yield Feature(claim, period=every, first=first, covers=multiple, rank=rank)


def _digits(count: Count) -> Iterator[Feature]:
    above_zero = count.start >= 0 and count.value(count.terms) >= 0
    shown = places(count, count.terms)
    for place in shown:
        covers = Fraction(10) ** (place + 1) if above_zero and place == shown[-1] else None
        read = _read(PlaceDigit(count, place), count)
        yield Feature(DigitClaim(place=place), read, covers=covers, rank=DIGIT)


def _parts(count: Count) -> Iterator[Feature]:
    for name in count.part_names():
        read = _read(Part(count, name, count.terms), count)
        if None not in read and is_written(count, name, count.terms):
            wheel = part_of(count.form, name)
            says_all = wheel is not None and wheel.unit == 1 == count.scale
            covers = wheel.unit * wheel.numbers if wheel and wheel.numbers and says_all else None
            yield Feature(DigitClaim(part=name), read, covers=covers, rank=DIGIT)


def _remainders(count: Count) -> Iterator[Feature]:
    for multiple in sorted(count.friendly_multiples(), reverse=True):
        period = (multiple / count.step).numerator
        parity = count.kind == Kind.WHOLE and multiple == 2
        plain = parity or (count.kind == Kind.FRACTION and multiple == 1)
        rank = DIGIT if plain else REMAINDER
        yield Feature(RemainderClaim(multiple), period=period, covers=multiple, rank=rank)


def _read(reading: Reading, count: Count) -> list[int | None]:
    return reading.upto(count.terms)[1:]
