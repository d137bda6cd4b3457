"""What every language brings: nouns, places, directions, its small grammar and its sentences."""

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass

from ..kinds.currency import CoinName


@dataclass(frozen=True, slots=True)
class Noun:
    """A noun with its plural; `feminine` matters in Spanish only.

    `counts` is False where so many of them make no amount: 6 is not 3 even numbers.
    """

    one: str
    many: str
    feminine: bool = False
    counts: bool = True


@dataclass(frozen=True, slots=True)
class Feature:
    """What is read off a count in a block claim: a digit, a part, a remainder.

    `plural` is true where even one reading is plural ("the minutes are 10"); `brief` is what small children say.
    """

    noun: Noun
    plural: bool = False
    brief: Noun | None = None

    @property
    def short(self) -> Noun:
        """The shortest name."""
        return self.brief or self.noun


class Tongue(ABC):
    """One language."""

    language: str
    more: str
    less: str
    later: str
    earlier: str
    after: str
    before: str
    up: str
    down: str
    landmark_nouns: Mapping[tuple[str, str], Noun]
    part_features: Mapping[str, Feature]
    clock_parts: Mapping[str, Feature]
    digit_sum: Feature
    small_coins: Feature
    sentences: Mapping[str, tuple[str, ...]]
    lines: Mapping[str, Noun]
    directions: Mapping[str, str]

    @abstractmethod
    def value(self, text: str, *, clock: bool) -> str:
        """Write a count inside a sentence; clock times take an article in Spanish."""

    @abstractmethod
    def nth(self, n: int) -> str:
        """Write the ordinal as it stands before "count"."""

    @abstractmethod
    def jumps(self, k: int, step: str, total: str) -> str:
        """Write "5 jumps of 6 make 30"; one jump is "each jump is 6"."""

    @abstractmethod
    def multiple(self, text: str) -> Noun:
        """Name the multiples of a number that has no name of its own."""

    @abstractmethod
    def stretch(self, text: str) -> Noun:
        """Name a stretch from one multiple to the next that has no name of its own."""

    @abstractmethod
    def rises(self, *, downwards: bool, plural: bool) -> str:
        """Write "goes up" or "goes down", or their plurals."""

    @abstractmethod
    def parity(self, *, odd: bool, plural: bool) -> str:
        """Write "even" or "odd" of one count or of several."""

    @abstractmethod
    def place_digit(self, place: int) -> Feature:
        """Name the digit at a place: 0 the ones."""

    @abstractmethod
    def place_amount(self, many: int, place: int) -> str:
        """Write so many of a place: "3 tens", "1 hundredth"."""

    @abstractmethod
    def small_coin_digit(self, place: int, coin: CoinName) -> Feature:
        """Name a digit of the two digits of cents (pence, ...): 0 the last, 1 the first."""

    @abstractmethod
    def large_coin_digit(self, place: int, coin: CoinName) -> Feature:
        """Name a digit of the whole dollars (pesos, ...) of an amount: 0 their ones."""

    @abstractmethod
    def whole_units(self, unit: CoinName) -> Noun:
        """Name whole amounts: "whole dollars"."""

    @abstractmethod
    def remainder(self, modulus: str, mark: Noun | None) -> Feature:
        """Name what is left over past the multiples of a modulus; `mark` is their name where they have one."""

    @abstractmethod
    def a(self, noun: Noun) -> str:
        """Write the singular with "a"."""

    @abstractmethod
    def the_one(self, noun: Noun) -> str:
        """Write the singular with "the"."""

    @abstractmethod
    def the_many(self, noun: Noun) -> str:
        """Write the plural with "the"."""

    @abstractmethod
    def be(self, *, plural: bool) -> str:
        """Write "is" or "are"."""

    @abstractmethod
    def stay(self, *, plural: bool) -> str:
        """Write "stays at" or "stay at"."""

    @abstractmethod
    def restart(self, *, plural: bool) -> str:
        """Write "starts again at" or "start again at"."""

    @abstractmethod
    def each_way(self, along: str, *, upwards: bool) -> str:
        """Say the way through every line: "down each column"; along the count "each time"."""

    @abstractmethod
    def in_line(self, along: str, number: int) -> str:
        """Say "in column 3"."""
