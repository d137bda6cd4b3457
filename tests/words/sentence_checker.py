"""Reads generated sentences back and recomputes every number in them.

A rule is a phrase with holes, in English and in Spanish, and a check of the numbers found in the holes. A sentence is
right when every rule that fits is right, and when no number is left that no rule has looked at. The phrases are a
grammar of the tests' own: nothing of the sentences under test is imported.

Holes: `<a:V>` a count as written, `<a:D>` a difference, `<a:N>` a plain whole number, `<a:O>` an ordinal,
`<a:S>` a series, `<a:L>` a list of bare numbers, `<a:M>` the name of a multiple, `<a:P>` the name of a place,
`<a:W>` words without digits.
"""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache

from routines.counting.claims import Claim
from routines.counting.grid import Grid
from tests.brute_force.board import Board
from tests.words.mentions import is_of, wrong_mentions
from tests.words.number_names import ENDING, MONEY, MULTIPLES, PLACES, multiple_named
from tests.words.readings_back import Readings
from tests.words.written_values import Notation, as_written

HOLE = re.compile(r"<(\w+):([VDNOSLWMP])>")
BARE = r"-?\d+(?:/\d+)?(?!\d|[:/.,]\d)"
ORDINAL = r"\d+(?:st|nd|rd|th)|\d+\.(?:º|ª|er)"


@dataclass(frozen=True)
class Context:
    """What a sentence is about."""

    grid: Grid
    claim: Claim | None = None
    breaks_at: int | None = None
    true_from: int | None = None
    extra: dict[str, object] = field(default_factory=dict, hash=False, compare=False)
    printed: Grid | None = None
    """The grid as it stands on paper, where `grid` is only its first counts: its rows are the ones that are named."""

    @property
    def notation(self) -> Notation:
        return notation_of(self.grid)

    def place(self, n: int, upto: int | None = None) -> tuple[int, int]:
        """Row and column of the n-th count on a page written by hand, of so many terms or just enough."""
        grid = self.grid
        board = Board("", Fraction(0), Fraction(1), grid.terms, grid.line_length, grid.fill, grid.lead)
        return board.page_place(n, upto or max(n, (self.printed or grid).terms))

    def terms_apart(self, down: int, right: int) -> int:
        """How many counts on (or back, below 0) a cell so many rows down and columns to the right is."""
        length = self.grid.line_length
        rows, columns = {"across": (length, 1), "down": (1, length), "across-up": (-length, 1)}[self.grid.fill]
        return down * rows + right * columns

    @property
    def readings(self) -> Readings:
        return Readings(self.grid, self.claim, self.place)

    def page_line(self, number: int, along: str) -> int:
        """A line of the counts in view by its number on the page."""
        at = 0 if along == "row" else 1
        return next(self.place(n)[at] for n in self.terms if self.grid.place(n)[at] == number)

    def value(self, n: int) -> Fraction:
        count = self.grid.count
        return Fraction(count.start) + (n - 1) * Fraction(count.step)

    @property
    def terms(self) -> range:
        return range(1, self.grid.terms + 1)

    def same(self, a: Fraction, b: Fraction) -> bool:
        """Whether two values are the same, on a clock the same time."""
        wrap = self.grid.count.wrap
        return (a - b) % wrap == 0 if wrap else a == b

    def is_term(self, value: Fraction, upto: int | None = None) -> bool:
        """Whether a value is counted, among the terms in view or up to a later one."""
        return any(self.same(value, self.value(n)) for n in range(1, (upto or self.grid.terms) + 1))


Check = Callable[[Context, dict[str, object]], bool]


@dataclass(frozen=True)
class Rule:
    """Phrases that mean the same in both languages, and when what they say is so."""

    en: tuple[str, ...]
    es: tuple[str, ...]
    check: Check
    family: str = ""


def notation_of(grid: Grid) -> Notation:
    """How the values of a grid are written."""
    count = grid.count
    style = count.style
    symbols: dict[str, object] = {}
    if count.kind == "money":
        currency = count.form.currency  # type: ignore[attr-defined]
        symbols = {"symbol": currency.symbol, "small_symbol": currency.small_symbol, "digits": currency.digits}
        symbols["in_small_coins"] = style.units == "one"
    return Notation(count.kind, style.decimal_mark, style.thousands, **symbols)  # type: ignore[arg-type]


@lru_cache(maxsize=20_000)
def compiled(phrase: str, notation: Notation) -> re.Pattern[str]:
    """A phrase with its holes as a regular expression; `aN` names the hole's kind in the group."""
    words = "even|odd|pares|impares|par|impar|none|ninguno"
    either = "|".join(dict.fromkeys((notation.value, notation.difference)))
    item = rf"(?:{either}|-?\d+(?!\d|[:/.,]\d)|{words}|-(?= |,|;|\.|$))"
    holes = {
        "V": notation.value,
        "D": notation.difference,
        "N": r"-?\d+(?!\d|[:/.,]\d)",
        "O": ORDINAL,
        "S": rf"(?:\.\.\.[,;] )?{item}(?:(?:, then |, luego |[,;] | and | y | o | u ){item})*(?:[,;] \.\.\.)?",
        "L": rf"{BARE}(?:(?:[,;] | and | y ){BARE})*",
        "M": rf"(?:{MONEY if notation.kind == 'money' else MULTIPLES}"
        rf"|(?:multiples? of|múltiplos? de|counts? by|stretch(?:es)? of|tramos? de) {notation.difference}"
        rf"|números? de {notation.difference} en {notation.difference}"
        rf"|{ENDING})",
        "P": PLACES,
        "W": r"[^\d.,:;()]+?",
    }
    pattern = HOLE.sub(lambda hole: f"(?P<{hole[1]}_{hole[2]}>{holes[hole[2]]})", phrase)
    return re.compile(rf"(?<![\w-])(?:{pattern})(?!\w)", re.IGNORECASE)


@lru_cache(maxsize=20_000)
def landmark_word(phrase: str) -> str:
    """The longest stretch of plain letters that a text must hold for the phrase to fit: a quick look before the slow."""
    bare = HOLE.sub("#", phrase)
    while (without := re.sub(r"\([^()]*\)\??", "#", bare)) != bare:
        bare = without
    stretches = re.findall(r"[a-záéíóúüñ ]+", re.sub(r"\[[^]]*\][+*?]?|\\?.\?", "#", bare))
    return max(stretches, key=len, default="").strip()


class SentenceChecker:
    """Checks sentences about one grid in one language."""

    def __init__(self, rules: Sequence[Rule], language: str, unclaimed: str = "") -> None:
        """unclaimed: what a text says of rows and columns beside its claim, as a pattern."""
        self.rules = rules
        self.language = language
        self.unclaimed = re.compile(unclaimed, re.IGNORECASE) if unclaimed else None

    def problems(self, text: str, context: Context) -> list[str]:
        """What is wrong with a text: false phrases, and numbers that no phrase accounts for."""
        notation = notation_of(context.grid)
        found: list[str] = []
        if self.language == "es":
            text = without_articles(text, notation)
        # Below zero an amount stands in brackets after + and ×: 14 + (-40).
        whole = left = re.sub(r"(?<=[+×] )\((-[^()]+)\)", r"\1", text)
        for rule in self.rules:
            if rule.family and (context.claim is None or context.claim.family != rule.family):
                continue
            for phrase in rule.en if self.language == "en" else rule.es:
                if landmark_word(phrase) not in left.lower():
                    continue
                pattern = compiled(phrase, notation)
                while match := pattern.search(left):
                    if not self._is_so(rule, match, context):
                        found.append(f"not so: “{match[0]}” in “{text}”")
                    if context.claim is not None and "f_W" in match.groupdict():
                        words = whole[match.start("f_W") : match.end("f_W")]
                        if not is_of(context.claim, words, context.grid, notation):
                            found.append(f"another feature: “{words}” in “{text}”")
                    read = re.sub(r"[\d.,:;()/×]", "~", match[0])
                    if read == match[0]:
                        break
                    left = left[: match.start()] + read + left[match.end() :]
        if re.search(r"\d", left):
            found.append(f"unread: “{left}” of “{text}”")
        if context.claim is not None:
            said = self.unclaimed.sub("~", text) if self.unclaimed else text
            wrong = wrong_mentions(said, context.grid, context.claim, notation)
            found.extend(f"{name} in “{text}”" for name in wrong)
        return found

    def _is_so(self, rule: Rule, match: re.Match[str], context: Context) -> bool:
        """Whether the rule's check passes; numbers with which it cannot even be made are not so either."""
        try:
            return rule.check(context, self._holes(match, context.notation))
        except (ArithmeticError, AssertionError, LookupError, StopIteration, TypeError, ValueError):
            return False

    @staticmethod
    def _holes(match: re.Match[str], notation: Notation) -> dict[str, object]:
        holes: dict[str, object] = {}
        for name, text in match.groupdict().items():
            if text is None:
                continue
            hole, kind = name.rsplit("_", 1)
            if kind in "VD":
                holes[hole] = notation.read(text)
            elif kind == "N":
                holes[hole] = int(text)
            elif kind == "O":
                number = re.match(r"\d+", text)
                assert number is not None
                holes[hole] = int(number[0])
            elif kind == "M":
                size = multiple_named(text.lower(), notation)
                if size is None:  # "números de 5 en 5" says its number twice
                    sizes = {notation.read(said) for said in re.findall(notation.difference, text)}
                    (size,) = sizes
                holes[hole] = size
            elif kind == "P":
                holes[hole] = multiple_named(text.lower(), notation)
            elif kind in "SL":
                holes[hole] = [as_written(item) for item in re.split(r", then |, luego |[,;] | and | y | o | u ", text)]
            else:
                holes[hole] = text
        return holes


def without_articles(text: str, notation: Notation) -> str:
    """A Spanish text whose bare numbers stand without their article: "del 19 al 30" is "de 19 a 30"; amounts have none."""
    if notation.kind not in ("whole", "decimal", "fraction"):
        return text
    number = rf"(?={notation.value}(?!\.?[ºª\d]|\.er))"
    for written, bare in (("del ", "de "), ("al ", "a "), ("el ", "")):
        text = re.sub(rf"\b{written}{number}", bare, text, flags=re.IGNORECASE)
    return text


def ordinal_is_spelled(text: str) -> bool:
    """Whether every English ordinal in the text has the ending its number asks for."""
    endings = {1: "st", 2: "nd", 3: "rd"}
    return all(
        ending == ("th" if int(number) % 100 in (11, 12, 13) else endings.get(int(number) % 10, "th"))
        for number, ending in re.findall(r"\b(\d+)(st|nd|rd|th)\b", text)
    )
