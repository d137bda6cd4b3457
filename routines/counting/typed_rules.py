"""A rule as it is typed, such as "20 - 6n" or "6 times the place, plus 4": read by a grammar, never evaluated as text.

    sum    = term { ("+" | "-") term }
    term   = signed { "×" signed | "÷" signed | n | "(" sum ")" }      what stands side by side is multiplied
    signed = [ "-" ] ( number | n | "(" sum ")" )

Division is by numbers only, so that every rule is a polynomial in n, the number of the place.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from .errors import CountError
from .kinds.numerals import LONGEST_TEXT, read_numeral, tidy
from .style import Style

FIELD = "rule"
MOST_NESTED = 4
MOST_DEGREE = 3
MOST_DIGITS = 12

Polynomial = tuple[Fraction, ...]
"""The coefficients, that of n to the power 0 first; none for 0."""

_PLACES = (
    "n",
    "place",
    "place number",
    "number of the place",
    "position",
    "count number",
    "lugar",
    "número de lugar",
    "número del lugar",
    "posición",
)
_OPERATIONS = {
    "*": ("times", "multiplied by", "of", "por", "multiplicado por", "veces", "de", "x"),
    "/": ("divided by", "dividido por", "dividido entre", "entre"),
    "+": ("plus", "más", "mas"),
    "-": ("minus", "take away", "menos"),
}
_ARTICLES = ("", "the ", "el ", "la ")
_MEANINGS = {
    **{article + place: "n" for place in _PLACES for article in _ARTICLES},
    **{wording: operation for operation, wordings in _OPERATIONS.items() for wording in wordings},
    **dict.fromkeys("×*·⋅", "*"),
    **dict.fromkeys("÷:/", "/"),
    **{sign: sign for sign in "+-()"},
}
_WORDINGS = "|".join(sorted((re.escape(said) for said in _MEANINGS if said[0].isalpha()), key=len, reverse=True))
_TOKEN = re.compile(
    r"(?P<number>[0-9]+(?: and | y | )[0-9]+ ?/ ?[0-9]+"  # 2 1/3
    r"|(?<!/)[0-9]+/[0-9]+"  # 3/4 is one number: 6 ÷ 3/4 is not 6 ÷ 3 ÷ 4
    r"|[1-9][0-9]{0,2}(?: [0-9]{3})+(?![0-9])"
    r"|[0-9]+(?:[.,'][0-9]+)*|[.,][0-9]+)"
    rf"|(?P<wording>(?:{_WORDINGS})(?![^\W\d_]))"
    r"|(?P<letters>[nx]+(?![^\W\d_]))"  # 6xn
    r"|(?P<word>[^\W\d_]+)|(?P<pause>,)|(?P<sign>\S)"
)


class Token(NamedTuple):
    """One of n * / + - ( ) and a comma, "number" with its value, or "end"; and how it was typed."""

    means: str
    typed: str
    value: Fraction = Fraction(0)


END = Token("end", "")


def read_rule(text: str, style: Style) -> Polynomial:
    """Read a rule for the n-th count, with n counted from 1. Numbers may be typed with either decimal mark.

    Raises: CountError on `rule` for what is no such rule, or goes past the bounds above.

    >>> read_rule("6 times the place, plus 4", Style())
    (Fraction(4, 1), Fraction(6, 1))
    """
    if isinstance(text, str) and len(text) > LONGEST_TEXT:
        raise CountError(FIELD, "rule-too-long", most=LONGEST_TEXT)
    if isinstance(text, str) and not text.strip():
        raise CountError(FIELD, "rule-without-place")
    tokens = _without_pauses(tuple(_tokens(tidy(text, FIELD).lower(), style)))
    if all(token.means != "n" for token in tokens):
        raise CountError(FIELD, "rule-without-place")
    return _Reader(tokens).rule()


def _tokens(text: str, style: Style) -> Iterator[Token]:
    for found in _TOKEN.finditer(text):
        typed = found[0]
        match found.lastgroup:
            case "number":
                yield Token("number", typed, _number(typed, style))
            case "letters":
                yield from (Token(_MEANINGS[letter], letter) for letter in typed)
            case "wording" | "sign" if typed in _MEANINGS:
                yield Token(_MEANINGS[typed], typed)
            case "pause":
                yield Token(",", typed)
            case "word":
                raise CountError(FIELD, "rule-unknown-word", typed=typed)
            case "sign":
                raise CountError(FIELD, "rule-unknown-sign", typed=typed)


def _without_pauses(tokens: tuple[Token, ...]) -> tuple[Token, ...]:
    """Without commas before an operation: "6 times the place, plus 4"."""
    following = (*tokens[1:], END)
    return tuple(
        token for token, after in zip(tokens, following, strict=True) if token.means != "," or after.means not in "*/+-"
    )


def _number(typed: str, style: Style) -> Fraction:
    if sum(sign.isdigit() for sign in typed) > MOST_DIGITS:
        raise CountError(FIELD, "rule-number-too-long", most=MOST_DIGITS)
    try:
        return read_numeral(typed, style, FIELD).value
    except CountError as error:
        if error.code not in ("not-a-decimal-point", "not-a-decimal-comma"):
            raise
        return read_numeral(str(error.values["instead"]), style, FIELD).value


class _Reader:
    """Goes through the tokens once, from left to right."""

    def __init__(self, tokens: tuple[Token, ...]) -> None:
        self._tokens = (*tokens, END)
        self._at = 0
        self._nested = 0

    def rule(self) -> Polynomial:
        whole = self._sum()
        if self._next.means != "end":
            raise self._unexpected()
        return whole

    @property
    def _next(self) -> Token:
        return self._tokens[self._at]

    def _take(self) -> Token:
        token = self._next
        self._at += 1
        return token

    def _sum(self) -> Polynomial:
        total = self._term()
        while self._next.means in ("+", "-"):
            sign = 1 if self._take().means == "+" else -1
            total = _added(total, _times(self._term(), (Fraction(sign),)))
        return total

    def _term(self) -> Polynomial:
        product = self._signed()
        while self._next.means in ("*", "/", "n", "("):
            if self._next.means in ("*", "/"):
                means = self._take().means
                factor = self._signed()
            else:
                means, factor = "*", self._one()
            product = _times(product, factor if means == "*" else _reciprocal(factor))
            if len(product) - 1 > MOST_DEGREE:
                raise CountError(FIELD, "rule-degree-too-high", most=MOST_DEGREE)
        return product

    def _signed(self) -> Polynomial:
        if self._next.means != "-":
            return self._one()
        self._take()
        return _times(self._one(), (Fraction(-1),))

    def _one(self) -> Polynomial:
        token = self._next
        if token.means == "number":
            self._take()
            return _settled((token.value,))
        if token.means == "n":
            self._take()
            return (Fraction(0), Fraction(1))
        if token.means != "(":
            raise self._unexpected()
        self._take()
        self._nested += 1
        if self._nested > MOST_NESTED:
            raise CountError(FIELD, "rule-nested-too-deep", most=MOST_NESTED)
        inside = self._sum()
        if self._next.means != ")":
            raise CountError(FIELD, "rule-bracket-open") if self._next.means == "end" else self._unexpected()
        self._take()
        self._nested -= 1
        return inside

    def _unexpected(self) -> CountError:
        """What cannot stand where it stands. The commonest: x written for the place, where it is read as times."""
        around = self._tokens[max(0, self._at - 1) : self._at + 1]
        if any(token.typed == "x" for token in around):
            return CountError(FIELD, "rule-x-is-times")
        if self._next.means == "end":
            return CountError(FIELD, "rule-unfinished")
        return CountError(FIELD, "rule-unexpected", typed=self._next.typed)


def _settled(coefficients: Polynomial) -> Polynomial:
    """Without zeros for the highest powers."""
    highest = max((power for power, value in enumerate(coefficients) if value), default=-1)
    return coefficients[: highest + 1]


def _added(one: Polynomial, other: Polynomial) -> Polynomial:
    long, short = (one, other) if len(one) >= len(other) else (other, one)
    return _settled((*(a + b for a, b in zip(long, short, strict=False)), *long[len(short) :]))


def _times(one: Polynomial, other: Polynomial) -> Polynomial:
    product = [Fraction(0)] * max(0, len(one) + len(other) - 1)
    for i, a in enumerate(one):
        for j, b in enumerate(other):
            product[i + j] += a * b
    return _settled(tuple(product))


def _reciprocal(divisor: Polynomial) -> Polynomial:
    if not divisor:
        raise CountError(FIELD, "rule-divides-by-zero")
    if len(divisor) > 1:
        raise CountError(FIELD, "rule-divides-by-place")
    return (1 / divisor[0],)
