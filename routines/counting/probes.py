"""Good numbers to ask about: some that come past the end, and near misses that look as if they might."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from .audience import Audience
from .count import Count
from .grid import Grid
from .kinds.measure import Measure
from .kinds.names import Kind
from .locate import locate
from .locate.routes import landmark_multiples
from .locate.tongues import tongue
from .locate.wording import filled
from .texts.numbers import ordinal

MOST_OF_A_SORT = 3
FAR_TERMS = (25, 50, 100, 200, 500)

# The multiple whose remainder children read off the written value: the ones digit, the cents, the minutes, the inches.
READ_OFF = {
    Kind.WHOLE: 10,
    Kind.DECIMAL: 1,
    Kind.FRACTION: 1,
    Kind.MONEY: 100,
    Kind.CLOCK: 60,
    "min": 60,
    "in": 12,
    "cm": 100,
    "oz": 16,
    "g": 1000,
    "fl oz": 8,
    "mL": 1000,
}

SENTENCES = {
    "en": {
        "landmark": "It comes past the end, the {nth} count, and it is a landmark: a multiple of {multiple}.",
        "zero": "It comes past the end, the {nth} count: how many jumps does it take to come to zero?",
        "lines": "It comes past the end, the {nth} count: {lines} lines on from {like}.",
        "next": "It comes past the end, the {nth} count: one jump on from {like}.",
        "far": "It comes much later, as the {nth} count; too far to say them all.",
        "ends alike": "It ends in {ending}, as {like} does, but it is jumped over.",
        "even": "It is even, as every count here is, but it is jumped over.",
        "odd": "It is odd, as every count here is, but it is jumped over.",
        "every": "Like every count here, it is {rest} more than a multiple of {multiple}, but it is jumped over.",
        "every multiple": "Like every count here, it is a multiple of {multiple}, but it is jumped over.",
        "alike": "Like {like}, it is {rest} more than a multiple of {multiple}, but it is jumped over.",
        "multiple": "Like {like}, it is a multiple of {multiple}, but it is jumped over.",
        "behind": "It is one jump of {step} the other way from the start, so the count goes away from it.",
    },
    "es": {
        "landmark": "Llega más allá del final, es el {nth} número y un punto de referencia: un múltiplo de {multiple}.",
        "zero": "Llega más allá del final, es el {nth} número: ¿cuántos saltos hacen falta para llegar a cero?",
        "lines": "Llega más allá del final, es el {nth} número: {lines} líneas después de {like}.",
        "next": "Llega más allá del final, es el {nth} número: un salto después de {like}.",
        "far": "Llega mucho después, es el {nth} número; queda demasiado lejos para decirlos todos.",
        "ends alike": "Termina en {ending}, igual que {like}, pero lo saltamos.",
        "even": "Es par, como todos los números de este conteo, pero lo saltamos.",
        "odd": "Es impar, como todos los números de este conteo, pero lo saltamos.",
        "every": "Como todos los de este conteo, es un múltiplo de {multiple} y {rest} más, pero lo saltamos.",
        "every multiple": "Como todos los de este conteo, es un múltiplo de {multiple}, pero lo saltamos.",
        "alike": "Igual que {like}, es un múltiplo de {multiple} y {rest} más, pero lo saltamos.",
        "multiple": "Igual que {like}, es un múltiplo de {multiple}, pero lo saltamos.",
        "behind": "Está a un salto de {step} del comienzo, pero hacia el otro lado: el conteo se aleja de él.",
    },
}


@dataclass(frozen=True, slots=True)
class Probe:
    """A value to ask about ("will it be counted?"), whether it is, as which count, and what makes it a good question.

    Units: `value` is in the base unit.
    """

    value: Fraction
    text: str
    appears: bool
    n: int | None
    why: str


def probes(grid: Grid, audience: Audience | None = None) -> list[Probe]:
    """Give up to three values that come past the end and up to three near misses.

    A near miss shares a surface feature with a count: the same last digit, or the same remainder by a friendlier
    number than the step.
    """
    language = (audience or Audience()).language
    coming = _distinct(grid, _said_first(grid, _coming(grid, language)), appears=True)
    missing = _distinct(grid, _near_misses(grid, language), appears=False)
    return coming + (missing or _distinct(grid, _behind(grid, language), appears=False))


def _distinct(grid: Grid, found: Iterator[tuple[Fraction, str]], *, appears: bool) -> list[Probe]:
    chosen: list[Probe] = []
    for value, why in found:
        if value < 0 and not grid.count.form.goes_below_zero:
            continue
        location = locate(grid, value)
        # On a clock the same time may already have been said on an earlier turn.
        fits = location.appears == appears and (location.n is None or location.n > grid.terms)
        text = grid.count.text_of(value)
        if fits and text not in {probe.text for probe in chosen}:
            chosen.append(Probe(value, text, appears, location.n, why))
        if len(chosen) == MOST_OF_A_SORT:
            break
    return chosen


def _said_first(grid: Grid, found: Iterator[tuple[int, str]]) -> Iterator[tuple[Fraction, str]]:
    """Only those that are not said sooner: on a clock the same time may come on an earlier turn."""
    for n, why in found:
        value = grid.count.value(n)
        if grid.count.wrap is None or locate(grid, value).n == n:
            yield value, why


def _coming(grid: Grid, language: str) -> Iterator[tuple[int, str]]:
    count, end, sentences = grid.count, grid.terms, SENTENCES[language]
    for multiple in landmark_multiples(count):
        landmark = next(
            (n for n in range(end + 1, end + 3 * grid.line_length + 1) if count.value(n) % multiple == 0), 0
        )
        if landmark:
            facts = {"nth": _nth(landmark, language), "multiple": count.difference_text(multiple)}
            name = "landmark" if count.value(landmark) else "zero"
            yield landmark, filled(sentences[name], facts)
            break
    on = end + 2 * grid.line_length
    facts = {"nth": _nth(on, language), "lines": "2", "like": _written(grid, end, language)}
    yield on, filled(sentences["lines"], facts)
    far = next((n for n in FAR_TERMS if n > on), on + FAR_TERMS[-1])
    yield far, filled(sentences["far"], {"nth": _nth(far, language)})
    yield end + 1, filled(sentences["next"], facts | {"nth": _nth(end + 1, language)})


def _near_misses(grid: Grid, language: str) -> Iterator[tuple[Fraction, str]]:
    count = grid.count
    read_off = Fraction(READ_OFF[count.base_unit if count.base_unit in READ_OFF else count.kind])
    finest = _finest_written(count)
    # Every amount written is a multiple of the finest: that is nothing to share.
    written = [multiple for multiple in sorted(count.friendly_multiples()) if multiple % finest == 0]
    written = [multiple for multiple in written if multiple != finest]
    shared = [multiple for multiple in reversed(written) if count.step % multiple == 0]
    first = [multiple for multiple in written if multiple == read_off]
    on = 1 if count.step > 0 else -1
    for multiple in dict.fromkeys([*first, *shared, *written]):
        if multiple % count.step == 0:
            continue
        like = _landmark_in_view(grid, multiple)
        if multiple not in (read_off, *shared) and count.value(like) % multiple:
            continue  # Nobody sees that 5 6/8 and 15 6/8 are as much past a multiple of 10.
        to_the_end = abs(count.value(grid.terms) - count.value(like))
        value = count.value(like) + on * multiple * (to_the_end // multiple + 1)
        if _said(grid, value):  # the next is not, or the multiple would be so many jumps
            value += on * multiple
        yield value, _alike(grid, value, like, multiple, language)


def _finest_written(count: Count) -> Fraction:
    """Give the smallest amount that this count writes, in the base unit: what every number asked about is made of."""
    form = count.form
    if isinstance(form, Measure):
        return form.small.size / (form.over if form.places is None else 10**form.places)
    return Fraction(1, count.scale)


def _landmark_in_view(grid: Grid, multiple: Fraction) -> int:
    """Give the last term in view at the multiple, or else the last term."""
    for n in range(grid.terms, 0, -1):
        if grid.count.value(n) % multiple == 0:
            return n
    return grid.terms


def _said(grid: Grid, value: Fraction) -> bool:
    return ((value - grid.count.start) / grid.count.step).denominator == 1


def _alike(grid: Grid, value: Fraction, like: int, multiple: Fraction, language: str) -> str:
    count, sentences = grid.count, SENTENCES[language]
    rest = value % multiple
    facts = {
        "like": _written(grid, like, language),
        "rest": count.difference_text(rest),
        "multiple": count.difference_text(multiple),
        "ending": str(rest),
    }
    every = count.step % multiple == 0
    if every and count.kind == Kind.WHOLE and multiple == 2:
        name = "odd" if rest else "even"
    elif count.kind == Kind.WHOLE and multiple == 10 and min(value, count.value(like)) >= 0:
        name = "ends alike"
    elif every:
        name = "every" if rest else "every multiple"
    else:
        name = "alike" if rest else "multiple"
    return filled(sentences[name], facts)


def _behind(grid: Grid, language: str) -> Iterator[tuple[Fraction, str]]:
    count = grid.count
    facts = {"step": count.difference_text(count.step)}
    yield count.start - count.step, filled(SENTENCES[language]["behind"], facts)


def _written(grid: Grid, n: int, language: str) -> str:
    """A count inside a sentence."""
    return tongue(language).value(grid.count.text(n), clock=grid.count.wrap is not None)


def _nth(n: int, language: str) -> str:
    return ordinal(n, language, before_noun=True)
