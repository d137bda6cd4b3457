"""One grid as an audience reads it: its written counts, names and directions, worked out once and kept."""

from collections.abc import Sequence
from fractions import Fraction
from functools import lru_cache

from routines.counting.audience import Audience, band_of
from routines.counting.grid import Fill, Grid
from routines.counting.kinds.currency import currency_named
from routines.counting.kinds.names import Kind
from routines.counting.kinds.numerals import write_whole
from routines.counting.kinds.unit_names import NAMES
from routines.counting.kinds.units import UNITS
from routines.counting.written_units import in_larger_unit, larger_unit_size

from .language import Feature, Noun
from .languages import LANGUAGES

# Bands of levels whose children say "the leftovers" for the remainders by 3.
YOUNGER = 1
TIMES_FROM = 3
NUMERATORS_FROM = 4
# Spaces in a name beside which a child of K to 2 has few words left: "las cifras de las decenas de millar".
LONG_NAME = 6


class Page:
    """A grid with the language and the level of its reader."""

    def __init__(self, grid: Grid, audience: Audience, printed: Grid | None = None) -> None:
        """printed: the grid as it stands on paper, where `grid` is only its first counts: its rows are the ones named."""
        self.grid = grid
        self.audience = audience
        self.printed = printed or grid
        self.count = grid.count
        self.language = LANGUAGES[audience.language]
        self.level = audience.level
        self.band = band_of(audience.level)
        self.on_clock = self.count.wrap is not None
        # "3/3 = 1" would read as a second equation inside a sentence.
        self._two_names = self.count.kind == Kind.FRACTION and self.count.style.wholes == "both"
        self._differences: dict[tuple[int, int], str] = {}
        self._texts: dict[int, str] = {}
        self._values: dict[int, str] = {}
        self._moves: dict[int, str] = {}
        self._parts: dict[int, dict[str, int]] = {}
        self._features: dict[str, dict[str, object]] = {}
        self._lines: dict[str, dict[str, object]] = {}
        self._marks: dict[tuple[int, int], tuple[Noun, bool]] = {}
        self.jump = self.difference(self.count.step)
        self.seed = f"{self.count.start}{self.count.step}{grid.line_length}{grid.fill}"

    def place(self, n: int) -> tuple[int, int]:
        """Row and column of the n-th count as the page shows them, the top row first."""
        grid = self.printed if n <= self.printed.terms else self.printed.grown(n)
        return grid.place(n)

    def line_number(self, number: int, along: str) -> int:
        """A line's number in the counts in view as its number on the page: filled from below, rows above it are to come."""
        ahead = self.printed.rows - self.grid.rows if self.grid.fill is Fill.ACROSS_UP else 0
        return number + ahead if along.startswith("row") else number

    def text(self, n: int) -> str:
        """The n-th count as written."""
        text = self._texts.get(n)
        if text is None:
            text = self._texts[n] = self._short(self.count.value(n)) if self._two_names else self.count.text(n)
        return text

    def in_full(self, n: int) -> str:
        """The n-th count as it stands in a sentence, with both its names where it has two."""
        return self.language.value(self.count.text(n), clock=self.on_clock)

    def value(self, n: int) -> str:
        """The n-th count as it stands in a sentence."""
        value = self._values.get(n)
        if value is None:
            value = self._values[n] = self.language.value(self.text(n), clock=self.on_clock)
        return value

    def difference(self, value: Fraction) -> str:
        """A difference as written, without sign."""
        key = (value.numerator, value.denominator)
        text = self._differences.get(key)
        if text is None:
            text = self._differences[key] = self.count.difference_text(value)
        return text

    def whole_difference(self, value: Fraction) -> str:
        """A difference as it is told of: in the larger unit where it fills it evenly, 100 cm as 1 m and 100¢ as $1."""
        count, size = self.count, abs(value)
        larger = larger_unit_size(count)
        if larger and size and size % larger == 0:
            return in_larger_unit(count, size)
        if count.kind == Kind.MONEY and count.style.units == "one":
            currency = currency_named(count.style.currency, self.language.code)
            many, rest = divmod(size, 10**currency.digits)
            if many and not rest:
                written = write_whole(int(many), count.style)
                symbol = currency.symbol
                return (
                    f"{symbol}{written}"
                    if currency.symbol_first and not symbol[-1].isalpha()
                    else f"{written} {symbol}"
                )
        return self.difference(value)

    def move(self, k: int) -> str:
        """What `k` jumps make, as written."""
        text = self._moves.get(k)
        if text is None:
            text = self._moves[k] = self.count.difference_text(Fraction(k * self.count.scaled_step, self.count.scale))
        return text

    def how_many_in(self, k: int, multiple: Fraction) -> int | None:
        """How many of a multiple `k` jumps make; None where that is no whole number."""
        many, rest = divmod(
            k * abs(self.count.scaled_step) * multiple.denominator, self.count.scale * multiple.numerator
        )
        return None if rest else many

    def counts_in(self, multiple: Fraction, many: int) -> bool:
        """Whether so many of a multiple would be written with that number alone: 3.0 says no more than 3 wholes."""
        count = self.count
        if count.kind == Kind.MONEY:
            return count.style.units != "one" and multiple != 1
        return count.kind in (Kind.WHOLE, Kind.DECIMAL, Kind.FRACTION) and (many == 1 or multiple == 1)

    def amount(self, value: Fraction) -> str:
        """A sum or product as written, with its sign; on a clock it is a length of time."""
        return self._short(value) if self.on_clock or self._two_names else self.count.text_of(value)

    def _short(self, value: Fraction) -> str:
        return ("-" if value < 0 else "") + self.difference(value)

    def spot(self, value: Fraction) -> str:
        """A value that need not be a count, as it stands in a sentence."""
        return self.language.value(self._one_name(value), clock=self.on_clock)

    def _one_name(self, value: Fraction) -> str:
        """A value as written, with one name where counts have two."""
        return self._short(value) if self._two_names else self.count.text_of(value)

    def parts(self, n: int) -> dict[str, int]:
        """The n-th count's parts as written."""
        found = self._parts.get(n)
        if found is None:
            found = self._parts[n] = self.count.parts(n)
        return found

    def listing(self, items: Sequence[str]) -> str:
        """Items as a list that ends in "and"."""
        return self.language.listing(items)

    def jumps(self, k: int) -> str:
        """`k` jumps of the step and what they make."""
        return self.language.jumps(k, self.jump, self.move(k))

    def more(self, difference: Fraction | int) -> str:
        """Write "more" or "less", on a clock "later" or "earlier"."""
        return self.language.compared(difference, clock=self.on_clock)

    def after(self, difference: Fraction | int) -> str:
        """Write "after" or "before", as it stands before a time."""
        return self.language.before if difference < 0 else self.language.after

    def up(self, difference: Fraction | int) -> str:
        """Write "up" or "down"."""
        return self.language.down if difference < 0 else self.language.up

    @property
    def before_place_value(self) -> bool:
        """Whether the class speaks of tens and ones, and not of digits yet. Source: Common Core State Standards 1.NBT.B.2."""
        return self.level == 0 and self.count.kind == Kind.WHOLE

    def named_mark(self, multiple: Fraction) -> Noun | None:
        """The multiples of `multiple` under a name of their own (tens, whole feet), or None."""
        noun, named = self._mark(multiple)
        return noun if named else None

    def named_stretch(self, multiple: Fraction) -> Noun | None:
        """A stretch from one multiple to the next under a name of its own, or None."""
        unit = self.count.base_unit or self.count.kind
        return self.language.stretch_nouns.get((unit, str(multiple))) or self.named_mark(multiple)

    def mark(self, multiple: Fraction) -> Noun:
        """The multiples of `multiple`, named."""
        return self._mark(multiple)[0]

    def landmark(self, multiple: Fraction) -> Noun:
        """The multiples of `multiple` as landmarks: on a clock they are times of day."""
        on_clock = self.language.clock_landmarks.get(str(multiple)) if self.on_clock else None
        return on_clock or self.mark(multiple)

    def child_mark(self, multiple: Fraction, *, by_ending: bool = True) -> Noun:
        """The multiples of `multiple` as a class names them that has not met the word, by how they end: "counts by 7"."""
        noun = self.mark(multiple)
        ending = self.child_ending(multiple)
        if ending and by_ending:
            return self.language.ending_in(ending)
        return noun if self.knows_a_name(multiple) else self.language.counted_by(self.difference(multiple))

    def knows_a_name(self, multiple: Fraction) -> bool:
        """Whether a class of the level has a word for the multiples of a number, "multiples" too."""
        return self.band > YOUNGER or self.named_mark(multiple) is not None

    def child_ending(self, multiple: Fraction) -> tuple[str, ...]:
        """The last digits by which a class that has not met the word knows the multiples; () where there are none."""
        in_ones = self.count.kind == Kind.WHOLE or (self.count.kind == Kind.MONEY and self.count.style.units == "one")
        if not in_ones or self.band > YOUNGER or self.named_mark(multiple):
            return ()
        return {Fraction(5): ("0", "5"), Fraction(10): ("0",)}.get(multiple, ())

    def _mark(self, multiple: Fraction) -> tuple[Noun, bool]:
        key = (multiple.numerator, multiple.denominator)
        found = self._marks.get(key)
        if found is None:
            own = self._own_mark(multiple)
            found = (own, True) if own else (self.language.multiple(self.difference(multiple)), False)
            self._marks[key] = found
        return found

    def _own_mark(self, multiple: Fraction) -> Noun | None:
        if self.count.kind == Kind.MONEY:
            currency = currency_named(self.count.style.currency, self.language.code)
            return self.language.whole_units(currency.main) if multiple == 10**currency.digits else None
        if self.on_clock and str(multiple) in self.language.times_passed:
            return self.language.times_passed[str(multiple)]
        unit = self.count.base_unit or self.count.kind
        return self.language.landmark_nouns.get((unit, str(multiple)))

    def pure(self, value: Fraction, multiple: Fraction) -> str:
        """Write a multiple as so many of them, "3 tens" or "3 × 7"; empty where that says nothing new."""
        many = value / multiple
        return self._pure(many.numerator, self.difference(value), multiple) if many.denominator == 1 else ""

    def pure_move(self, k: int, multiple: Fraction) -> str:
        """Write what `k` jumps make as so many of a multiple; empty where they don't, or where that is nothing new."""
        many = self.how_many_in(k, multiple)
        return "" if many is None else self._pure(many, self.move(k), multiple)

    def _pure(self, many: int, written: str, multiple: Fraction) -> str:
        noun = self.named_mark(multiple)
        if many == 0 or (noun is not None and self.counts_in(multiple, 0)):
            return ""
        if noun is None or not noun.counts:
            # The sign is met in grade 3 (3.OA.A.1).
            return "" if abs(many) == 1 or self.level < TIMES_FROM else f"{many} × {self.difference(multiple)}"
        if written.startswith(f"{many} ") and written.count(" ") == 1 and "/" not in written:
            return ""
        return f"{many} {noun.one if abs(many) == 1 else noun.many}"

    def about(self, feature: Feature) -> dict[str, object]:
        """The fields of phrases that name what is read off a count."""
        found = self._features.get(feature.noun.many)
        if found is None:
            noun, plural = feature.noun, feature.plural
            short = feature.short if self.band <= YOUNGER else noun
            found = self._features[noun.many] = {
                "feat": noun.one,
                "feats": noun.many,
                "the_feat": self.language.the_one(noun),
                "the_feats": self.language.the_many(noun),
                "short": short.many,
                "the_short_one": self.language.the_one(short),
                "the_short": self.language.the_many(short),
                "be": self.language.be(plural=plural),
                "stay": self.language.stay(plural=plural),
                "restart": self.language.restart(plural=plural),
            }
        return found

    def about_place(self, place: int) -> dict[str, object]:
        """The fields of phrases that name a place as those do who speak of tens and ones, and not of digits."""
        return self.about(Feature(self.language.places[place], plural=True))

    def about_lines(self, along: str) -> dict[str, object]:
        """The fields of phrases that name the lines."""
        found = self._lines.get(along)
        if found is None:
            line = self.language.lines[along]
            upwards = self.grid.fill is Fill.ACROSS_UP
            way = self.language.each_way(along, upwards=upwards)
            found = self._lines[along] = {
                "line": line.one,
                "lines": line.many,
                "each_way": way,
                # Filled from below a column is followed upwards, which has to be said.
                "in_each": self.language.within(along),
                "within": way if along == "column" and upwards else self.language.within(along),
            }
        return found

    def about_all(self, feature: Feature, along: str) -> dict[str, object]:
        """The fields of phrases that name what is read off the counts of lines, the lines briefly beside a long name."""
        found = {**self.about(feature), **self.about_lines(along)}
        if str(found["the_short"]).count(" ") >= LONG_NAME:
            brief = self.language.per_line(along)
            found |= {"in_each": brief, "within": brief}
        return found

    def digit(self, place: int) -> Feature:
        """The digit at a place of the base unit, named."""
        if self.count.kind != Kind.MONEY:
            return self.language.place_digit(place)
        currency = currency_named(self.count.style.currency, self.language.code)
        if currency.digits == 0 or self.count.style.units == "one":
            return self.language.place_digit(place)
        if place >= currency.digits:
            return self.language.large_coin_digit(place - currency.digits, currency.main)
        if currency.digits == 2 and place >= 0 and currency.small.several:
            return self.language.small_coin_digit(place, currency.small)
        return self.language.place_digit(max(place - currency.digits, -3))

    def part(self, part: str) -> Feature:
        """A part of the written counts, named."""
        feature = (self.language.clock_parts if self.on_clock else self.language.part_features).get(part)
        if self.level >= NUMERATORS_FROM:
            feature = self.language.terms_of_fractions.get(part, feature)
        if feature is not None:
            return feature
        unit = next((unit.symbol for unit in UNITS.values() if unit.part == part), None)
        if unit is not None:
            name = NAMES[unit, self.language.code]
            if "top" in self.count.part_names():  # 2 1/4 cups are no 2 cups
                return self.language.whole_number_of(Noun(name.one, name.several, name.form == "feminine"))
            return Feature(Noun(name.several, name.several, name.form == "feminine"), plural=True)
        own = currency_named(self.count.style.currency, self.language.code)
        english = currency_named(self.count.style.currency, "en")
        coin = own.main if part == english.main.several else own.small
        if not coin.several:
            return self.language.small_coins
        return Feature(Noun(coin.several, coin.several, coin.gender == "feminine"), plural=True)


@lru_cache(maxsize=64)
def page_of(grid: Grid, audience: Audience, printed: Grid | None = None) -> Page:
    """The page of a grid, kept while its patterns are described one by one."""
    return Page(grid, audience, printed)
