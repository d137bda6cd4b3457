"""What every language brings: its small grammar, its names, and its sentences by subject."""

from abc import ABC, abstractmethod
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from routines.counting.grid import Fill
from routines.counting.kinds.said import CoinName

from .numbers import series


@dataclass(frozen=True, slots=True)
class Noun:
    """A noun with its plural; `feminine` matters in Spanish only.

    `counts` is False where so many of them make no amount: 6 is not 3 even numbers. `among`: what the multiples are called
    where larger ones are among them, half meters and whole meters. `parts`: of several under one name, each, for those
    languages in which each takes an article of its own.
    """

    one: str
    many: str
    feminine: bool = False
    counts: bool = True
    among: "Noun | None" = None
    parts: "tuple[Noun, ...]" = ()


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


ByBand = tuple[str, ...]
"""One sentence for each level band: K-1, 2-3, 4-5, 6 and up."""


class Locating(NamedTuple):
    """Sentences about where a value is counted, the marks that tell a skipped one, and the ways to one that is.

    ways: the moves of a route, one of them and several. way: what a route starts from, its moves. make, lead: verbs after
    one jump and after several. above: a place past the end of a page that is filled from below, so many lines above its top
    line. forwards: the direction of a count that goes up, and of one that goes down.
    """

    sentences: Mapping[str, ByBand]
    marks: Mapping[str, str]
    parts_of_day: Mapping[str, str]
    ways: Mapping[str, tuple[str, str]]
    way: str
    known: str
    down_to_zero: str
    make: tuple[str, str]
    lead: tuple[str, str]
    above: tuple[str, str, str]
    forwards: tuple[str, str]


class SlipWords(NamedTuple):
    """Sentences about one slip.

    why: what happens, for the teacher. ask: a question that does not give the answer away; what sends children back
    to the grid is added to it. show: a shorter question for K-1, where the slip is met there.
    Between braces: {a} the count before, {b} the count that is due (in why only), {heard} what was said, {size} the size
    of a jump, {least} of the one that was made, {joined} whether it is added or taken away, {start} the first count; {made_up}
    hundreds that no Spanish class says; {small},
    {smalls} and {large} the units or coins of the count by name. A rule has several where it matters what is not
    counted ("C01 made"), where a full ten is due ("W19 landed"), which way we count
    ("J04 back"), or where what was heard may be another name ("T09 named").
    """

    why: str
    ask: str
    show: str | None = None


class Replies(NamedTuple):
    """What is said about a slip, and how a reply ends: about a jump, about how a number is written, or about two
    names of one; by level band.

    about_saying: about how a number is said, where it is said otherwise than its digits make one think.
    {line} is the line of the count before, {along} the same where enough is written in it to look along, {alike} where a
    jump of this sort was made in it too.
    jump: a jump with its size, forwards and back. jumps: several of them. joined: what a jump is when it goes up, and
    down. cent: small coins that have no name of their own. notes: one line for the teacher about anything that was
    heard. called: what the counts are called, numbers or times, where a language has holes for it; of_gender: endings
    that go by the gender of a unit, masculine and feminine. onward: what a count going up or back comes to, seen from the
    one before, of numbers and of times.
    """

    slips: Mapping[str, SlipWords]
    about_a_jump: tuple[tuple[str, ...], ...]
    about_writing: tuple[tuple[str, ...], ...]
    about_saying: tuple[tuple[str, ...], ...]
    about_names: tuple[tuple[str, ...], ...]
    jump: tuple[str, str]
    jumps: tuple[str, str]
    joined: tuple[str, str]
    cent: str
    notes: Mapping[str, str]
    called: tuple[Mapping[str, str], Mapping[str, str]]
    of_gender: tuple[Mapping[str, str], Mapping[str, str]]
    onward: tuple[tuple[str, str], tuple[str, str]]


class PastTheEnd(NamedTuple):
    """How a count past the end is found from the last one on the board in its line: by level band, the fullest first; and
    where it stands, seen from that one, a line on and several. rule: what is asked for in grade 6 and up, of any number, of a
    count that goes up and of one that goes down; no clock has one. by_jumps: from the last count, for those who do not add so
    much.
    """

    sentences: tuple[tuple[str, ...], ...]
    rule: tuple[str, str]
    by_jumps: str
    beyond: Mapping[Fill, tuple[str, str]]


class Stops(NamedTuple):
    """What is asked at a stop, by why it is there and by level band; what is answered, in several ways, with how it can be told
    where a jump is hard; and what makes it a good place.

    beside: where a count stands, seen from the one a line before it.
    parts: what changes in a jump, where numbers are read by their digits, and where they are not.
    """

    questions: Mapping[str, tuple[tuple[str, ...], ...]]
    answers: Mapping[str, tuple[str, ...]]
    hows: Mapping[str, str]
    reasons: Mapping[str, str]
    parts: tuple[str, str]
    past_the_end: PastTheEnd
    beside: Mapping[Fill, str]


class NextCounts(NamedTuple):
    """What changes in a next count, and why; what the class is asked, by level band; and both in one line."""

    changes: Mapping[str, tuple[str, str]]
    questions: Mapping[str, ByBand]
    why: str
    cut: str
    in_a_line: str
    empty: tuple[str, str, str]
    beside: Mapping[Fill, str]
    along: Mapping[str, str]
    called: Mapping[bool, Mapping[str, str]]
    """What the counts are called, by whether they are times of day, which are no numbers."""


class Folds(NamedTuple):
    """Clauses about what a fold does, the lines it has by its fill, one of them, and the name of the odd and even numbers."""

    clauses: Mapping[str, str]
    lines: Mapping[Fill, str]
    line: Mapping[Fill, str]
    parity: str


class Language(ABC):
    """One language: a subclass with its grammar, and its sentences, each subject in a file of its own."""

    code: str
    conjunction: str
    disjunction: str
    and_so_on: str
    none: str
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
    terms_of_fractions: Mapping[str, Feature]
    clock_parts: Mapping[str, Feature]
    digit_sum: Feature
    small_coins: Feature
    places: Mapping[int, Noun]
    clock_landmarks: Mapping[str, Noun]
    times_passed: Mapping[str, Noun]
    stretch_nouns: Mapping[tuple[str, str], Noun]
    decades: Sequence[str]
    lines: Mapping[str, Noun]
    directions: Mapping[str, str]
    going: Mapping[str, str]
    cell: str

    patterns: Mapping[str, tuple[str, ...]]
    locating: Locating
    probes: Mapping[str, str]
    rules: Mapping[str, str]
    replies: Replies
    stops: Stops
    next_counts: NextCounts
    folds: Folds
    standards: Mapping[str, str]
    worth_teaching: Mapping[str, str]
    answers: Mapping[str, tuple[str, ...]]
    asked_back: Mapping[str, tuple[str, ...]]
    paper: Mapping[str, str]
    past: str
    below: str
    ringed: Mapping[tuple[str, str], Mapping[Fraction, str]]
    ringed_coins: Mapping[str, Mapping[Fraction, str]]

    @abstractmethod
    def ordinal(self, n: int, *, feminine: bool = False, before_noun: bool = False) -> str:
        """Write the place `n` takes in a row, short."""

    def listing(self, items: Sequence[str]) -> str:
        """Write items as a list that ends in "and"."""
        return f"{series(items[:-1])} {self.conjunction} {items[-1]}" if len(items) > 1 else "".join(items)

    def first_of(self, items: Sequence[str]) -> str:
        """Write the first few of many, "25¢, 50¢, 75¢ and so on"."""
        return f"{series(items)} {self.and_so_on}"

    def compared(self, difference: Fraction | int, *, clock: bool) -> str:
        """Write "more" or "less", on a clock "later" or "earlier"."""
        if clock:
            return self.earlier if difference < 0 else self.later
        return self.less if difference < 0 else self.more

    def either(self, items: Sequence[str]) -> str:
        """Write items as a list that ends in "or"."""
        return f" {self.disjunction} ".join(items)

    @abstractmethod
    def many_jumps(self, times: int, step: str) -> str:
        """Write "11 jumps of 6"."""

    @abstractmethod
    def turn(self, turn: int) -> str:
        """Write which time round the clock."""

    @abstractmethod
    def units(self, symbol: str) -> str:
        """Name a unit of measure whose number is a part of a written value."""

    @abstractmethod
    def coins(self, name: str) -> str:
        """Name the small coins of a currency; name is empty where they have none."""

    @abstractmethod
    def line(self, along: str, number: int) -> str:
        """Write "column 3"."""

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
    def counted_by(self, text: str) -> Noun:
        """Name what is said when counting by a number from 0, before multiples are met."""

    @abstractmethod
    def ending_in(self, digits: Sequence[str]) -> Noun:
        """Name the numbers that end in one of some digits."""

    @abstractmethod
    def those_ending(self, digits: Sequence[str]) -> str:
        """Write "the ones ending in 0 or 5"."""

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
    def whole_number_of(self, unit: Noun) -> Feature:
        """Name the whole number in an amount that is written with a fraction beside it."""

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
    def another(self, noun: Noun) -> str:
        """Write the singular with "another"."""

    @abstractmethod
    def to_the_next(self, noun: Noun) -> str:
        """Write "to the next", after one of them."""

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
    def within(self, along: str) -> str:
        """Write "in each row", along the count "each time"."""

    @abstractmethod
    def per_line(self, along: str) -> str:
        """The same in as few words as can be, beside a name of many words."""

    @abstractmethod
    def in_line(self, along: str, number: int) -> str:
        """Say "in column 3"."""
