"""English."""

from collections.abc import Sequence

from routines.counting.kinds.said import CoinName
from routines.counting.kinds.unit_names import NAMES

from ..language import Feature, Language, Noun
from . import names
from .answers import ANSWERS
from .folds import FOLDS
from .locating import LOCATING
from .next_counts import NEXT_COUNTS
from .paper import PAPER
from .patterns import ASKED_BACK, PATTERNS
from .probes import PROBES
from .replies import REPLIES
from .ringed import COINS, RINGED
from .rules import RULES
from .standards import STANDARDS
from .stops import STOPS
from .worth_teaching import WORTH_TEACHING


class English(Language):
    """English as US classrooms speak it."""

    code = "en"
    conjunction, disjunction = "and", "or"
    and_so_on, none = "and so on", "none"
    more, less, up, down = "more", "less", "up", "down"
    later, earlier, after, before = "later", "earlier", "after", "before"
    landmark_nouns = names.LANDMARKS
    clock_landmarks = names.CLOCK_LANDMARKS
    times_passed = names.TIMES_PASSED
    stretch_nouns = names.STRETCHES
    decades = names.DECADES
    places = names.PLACES
    part_features = names.PARTS
    terms_of_fractions = names.TERMS_OF_FRACTIONS
    clock_parts = names.CLOCK_PARTS
    digit_sum = names.DIGIT_SUM
    small_coins = names.SMALL_COINS
    cell = "row {row}, column {column}"
    answers = ANSWERS
    asked_back = ASKED_BACK
    paper = PAPER
    patterns = PATTERNS
    locating = LOCATING
    probes = PROBES
    rules = RULES
    replies = REPLIES
    stops = STOPS
    next_counts = NEXT_COUNTS
    folds = FOLDS
    standards = STANDARDS
    worth_teaching = WORTH_TEACHING
    past, below = "the first past each {amount}", "the first below each {amount}"
    ringed = RINGED
    ringed_coins = COINS
    lines = {"row": Noun("row", "rows"), "column": Noun("column", "columns"), "count": Noun("count", "counts")}
    directions = {
        "right": "across a row",
        "down": "down a column",
        "down-right": "down and right",
        "down-left": "down and left",
        "up": "up a column",
        "up-left": "up and left",
        "up-right": "up and right",
    }

    going = {
        "right": "when I go one to the right",
        "down": "when I go down one",
        "down-right": "when I go down and right",
        "down-left": "when I go down and left",
        "up": "when I go up one",
        "up-left": "when I go up and left",
        "up-right": "when I go up and right",
    }

    def value(self, text: str, *, clock: bool) -> str:
        return text

    def ordinal(self, n: int, *, feminine: bool = False, before_noun: bool = False) -> str:
        if n % 100 in (11, 12, 13):
            return f"{n}th"
        return f"{n}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(n % 10, 'th') }"

    def nth(self, n: int) -> str:
        return self.ordinal(n)

    def many_jumps(self, times: int, step: str) -> str:
        return f"{times} {'jump' if times == 1 else 'jumps'} of {step}"

    def turn(self, turn: int) -> str:
        return f"the {self.ordinal(turn)}"

    def units(self, symbol: str) -> str:
        return NAMES[symbol, "en"].several

    def coins(self, name: str) -> str:
        return name or "small coins"

    def line(self, along: str, number: int) -> str:
        return f"{along} {number}"

    def jumps(self, k: int, step: str, total: str) -> str:
        return f"each jump is {step}" if k == 1 else f"{k} jumps of {step} make {total}"

    def multiple(self, text: str) -> Noun:
        return Noun(f"multiple of {text}", f"multiples of {text}")

    def counted_by(self, text: str) -> Noun:
        return Noun(f"count by {text}", f"counts by {text}")

    def ending_in(self, digits: Sequence[str]) -> Noun:
        ending = self.either(digits)
        return Noun(f"number ending in {ending}", f"numbers ending in {ending}")

    def those_ending(self, digits: Sequence[str]) -> str:
        return f"the ones ending in {self.either(digits)}"

    def stretch(self, text: str) -> Noun:
        return Noun(f"stretch of {text}", f"stretches of {text}")

    def rises(self, *, downwards: bool, plural: bool) -> str:
        return f"{'go' if plural else 'goes'} {'down' if downwards else 'up'}"

    def parity(self, *, odd: bool, plural: bool) -> str:
        return "odd" if odd else "even"

    def place_digit(self, place: int) -> Feature:
        name = names.PLACES[place].many
        return Feature(Noun(f"{name} digit", f"{name} digits"))

    def place_amount(self, many: int, place: int) -> str:
        name = names.PLACES[place]
        return f"{many} {name.one if many == 1 else name.many}"

    def small_coin_digit(self, place: int, coin: CoinName) -> Feature:
        name = f"{('last', 'first')[place]} {coin.several} digit"
        return Feature(Noun(name, f"{name}s"))

    def large_coin_digit(self, place: int, coin: CoinName) -> Feature:
        if place == 0:
            return Feature(Noun(f"{coin.several} digit", f"{coin.several} digits"))
        of_place = self.place_digit(place).noun
        name = f"{names.PLACES[place].many} of {coin.several}"
        return Feature(Noun(f"{name} digit", f"{name} digits"), brief=of_place)

    def whole_number_of(self, unit: Noun) -> Feature:
        brief = Noun(f"whole {unit.one}", f"whole {unit.many}")
        return Feature(Noun(f"number of {brief.many}", f"numbers of {brief.many}"), brief=brief)

    def whole_units(self, unit: CoinName) -> Noun:
        return Noun(f"whole {unit.one}", f"whole {unit.several}")

    def remainder(self, modulus: str, mark: Noun | None) -> Feature:
        brief = Noun("leftover", "leftovers")
        if mark is None:
            return Feature(
                Noun(f"remainder past a multiple of {modulus}", f"remainders past a multiple of {modulus}"), brief=brief
            )
        return Feature(Noun(f"part past {self.a(mark)}", f"parts past {self.a(mark)}"), brief=brief)

    def a(self, noun: Noun) -> str:
        return f"{'an' if noun.one[0] in 'aeiou' else 'a'} {noun.one}"

    def another(self, noun: Noun) -> str:
        return f"another {noun.one}"

    def to_the_next(self, noun: Noun) -> str:
        return "to the next"

    def the_one(self, noun: Noun) -> str:
        return f"the {noun.one}"

    def the_many(self, noun: Noun) -> str:
        return f"the {noun.many}"

    def be(self, *, plural: bool) -> str:
        return "are" if plural else "is"

    def stay(self, *, plural: bool) -> str:
        return "stay at" if plural else "stays at"

    def restart(self, *, plural: bool) -> str:
        return "start again at" if plural else "starts again at"

    def each_way(self, along: str, *, upwards: bool) -> str:
        if along == "count":
            return "each time"
        if along == "row":
            return "along each row"
        return f"{'up' if upwards else 'down'} each column"

    def within(self, along: str) -> str:
        return "each time" if along == "count" else f"in each {along}"

    def per_line(self, along: str) -> str:
        return self.within(along)

    def in_line(self, along: str, number: int) -> str:
        return f"in {self.line(along, number)}"


ENGLISH = English()
