"""What may line up when a count is folded: digits, parts, landmarks, remainders, read once for the whole strip."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from operator import attrgetter

from ..claims import DigitClaim, LandmarksClaim, RemainderClaim
from ..count import Count
from ..designing.wheels import part_of
from ..kinds.names import Kind
from ..named_multiples import has_a_name
from ..patterns.friendly import friendliness
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

    def agrees(self, terms: Iterable[int], distance: int) -> bool:
        """Say whether each of these terms reads as the one so far on does; landmarks: whether both are, or neither."""
        if self.first is not None:
            return all((n - self.first) % self.period and (n + distance - self.first) % self.period for n in terms) or (
                distance % self.period == 0
            )
        if self.read is None:
            return distance % self.period == 0
        return all(self.read[n - 1] == self.read[n - 1 + distance] for n in terms)


def features(count: Count) -> list[Feature]:
    """Give what changes along the count and may line up, most noticeable first.

    What is the same in every term lines up in every fold and tells no two apart.
    """
    found = [*_landmarks(count), *_read_off(count)]
    return sorted((feature for feature in found if not feature.stays(1)), key=attrgetter("rank"))


def something_is_shared(count: Count) -> bool:
    """Say whether a digit, a part or a remainder is the same in every term."""
    return any(feature.stays(1) for feature in _read_off(count))


def _read_off(count: Count) -> Iterator[Feature]:
    yield from _digits(count)
    yield from _parts(count)
    yield from _remainders(count)


def _landmarks(count: Count) -> Iterator[Feature]:
    rhythms: set[tuple[int, int]] = set()
    for multiple in _as_met(count):
        rhythm = landmark_rhythm(count, multiple)
        # Of those that stand at the very same terms the one is named that children meet first.
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
    for multiple in _as_met(count):
        period = (multiple / count.step).numerator
        parity = count.kind == Kind.WHOLE and multiple == 2
        plain = parity or (count.kind == Kind.FRACTION and multiple == 1)
        rank = DIGIT if plain else REMAINDER
        yield Feature(RemainderClaim(multiple), period=period, covers=multiple, rank=rank)


def _as_met(count: Count) -> list[Fraction]:
    """The friendly multiples in the order in which children meet them (EXACT 29)."""
    return sorted(count.friendly_multiples(), key=lambda multiple: friendliness(multiple, count))


def _read(reading: Reading, count: Count) -> list[int | None]:
    return reading.upto(count.terms)[1:]
