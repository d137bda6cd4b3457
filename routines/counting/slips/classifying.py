"""What was heard at one count: right, another name, carried on, skipped, a known slip, or something else.

The order is settled: an equal name before all; then what was repeated or carried on, what was skipped, a slip of the
tables, something else. One decision of ours stands inside it: what lies more than `FEW` counts ahead is skipped only
where no slip of the tables sounds like it. "99, 100, 200" counting by ones is the slip of counting on in hundreds, not
ninety-nine counts left out; "1,025, 925" by -50 is one count left out, whatever else it may be.
"""

import re
from collections.abc import Iterable, Mapping
from fractions import Fraction
from typing import Any

from ..audience import Audience
from ..errors import CountError
from ..grid import Grid
from ..kinds.names import Kind
from ..languages import LANGUAGES
from .answer import Answer, is_of_one_value
from .checked import count_number, in_order, reader_of, said_text
from .foreseeing import heard_at, rules_for, slip_at
from .forms import form_slip
from .hearings import Carried, EqualName, Heard, Hearing, Other, Repeated, Right, SkippedAhead
from .jump import Jump
from .otherwise import what_it_takes
from .reading import is_renamed, offset, plain, same_offset, value_of
from .sayings import said_as, value_in_words
from .slip import Slip

# A class skips a count or a few; see the order above.
FEW = 3
FARTHEST = 10

_NUMERAL = re.compile(r"(?:[-+\u2212]|minus |negative |menos )?\d+(?:\D\d{3})*", re.IGNORECASE)

Earlier = Mapping[int, str] | Iterable[tuple[int, str] | Heard | Slip | str]


def classify(grid: Grid, n: int, said: str, earlier: Earlier = (), *, audience: Audience | None = None) -> Hearing:
    """Name what was said at the n-th count.

    earlier: what was said before, as {n: text}, as pairs, as earlier answers of this function, or as texts alone
    (those of the counts just before).
    Raises: CountError on `n`, `said`, `earlier`, `grid` or `audience`. What cannot be read is Other with no difference.
    """
    audience = reader_of(grid, None, audience)
    count_number(n)
    said_text(said)
    texts = {at: text for at, text in _in_pairs(n, earlier) if 1 <= at < n}
    count, correct = grid.count, grid.count.text(n)
    if _is_right(grid, n, said):
        return Right(n, said, correct)
    known = _known_slip(grid, n, said, audience)
    value = value_of(count, said)
    if value is None:
        value = value_in_words(count, said, n)
    if (known is not None and known.equal_name) or said_as(count, count.value(n), said):
        return EqualName(n, said, correct, is_renamed(count, said))
    if value is None:
        return known or _form_slip(grid, n, said) or Other(n, said, correct)
    away = offset(count, value, said, n)
    if away == 0:
        return EqualName(n, said, correct, is_renamed(count, said))
    before = _offsets(grid, texts)
    again = n > 1 and same_offset(count, away + count.step, before.get(n - 1, Fraction(0)))
    # 2/16 after 1/8 is of the same value, but it is no repeating: it is a slip of its own.
    if again and (known is None or _said_alike(grid, n - 1, texts.get(n - 1), said)):
        return Repeated(n, said, correct, known)
    since = _carried_since(before, away)
    if since is not None:
        return Carried(n, said, correct, since)
    ahead = _jumps_ahead(grid, n, value, said)
    if ahead is not None and (ahead <= FEW or known is None):
        return SkippedAhead(n, said, correct, ahead, known)
    known = known or _form_slip(grid, n, said)
    if known is not None:
        return known
    return Other(n, said, correct, away, *what_it_takes(grid, n, said, value, away))


def _is_right(grid: Grid, n: int, said: str) -> bool:
    count = grid.count
    text = count.text(n)
    forms = (text, *text.split(" = "), *(count.words(n, language) for language in LANGUAGES))
    if plain(count, said) in {plain(count, form) for form in forms}:
        return True
    # A whole number is the same number with a plus, or with other marks between its thousands.
    return (
        count.kind == Kind.WHOLE
        and _NUMERAL.fullmatch(said.strip()) is not None
        and value_of(count, said) == count.value(n)
    )


def _known_slip(grid: Grid, n: int, said: str, audience: Audience) -> Slip | None:
    """The slip of the rules that is heard like this here: of those of the audience first, as it is written first."""
    if n < 2:
        return None
    jump, language = Jump(grid, n), audience.language
    answer = Answer(jump, said)
    rules = [rule for rule in rules_for(grid) if language in rule.languages]
    heard = [(rule, Answer(jump, text)) for rule in rules if (text := heard_at(rule, jump, language))]
    for of_the_level in (True, False):
        among = [(rule, foreseen) for rule, foreseen in heard if rule.suits(audience.level) is of_the_level]
        alike = [rule_heard for rule_heard in among if rule_heard[1].plain == answer.plain]
        for rule, foreseen in alike or [entry for entry in among if is_of_one_value(*entry, answer)]:
            return slip_at(rule, jump, foreseen.text)
    return None


def _said_alike(grid: Grid, n: int, before: str | None, said: str) -> bool:
    """Whether a text is what was said at the n-th count (what was due there, where nothing else is known)."""
    count = grid.count
    if plain(count, said) == plain(count, before if before is not None else count.text(n)):
        return True
    return before is None and said_as(count, count.value(n), said)


def _form_slip(grid: Grid, n: int, said: str) -> Slip | None:
    return form_slip(Jump(grid, n), said) if n > 1 else None


def _offsets(grid: Grid, texts: Mapping[int, str]) -> dict[int, Fraction]:
    """How far off the readable ones of the counts before were, by count."""
    offsets = {}
    for at, text in texts.items():
        value = value_of(grid.count, text)
        if value is not None:
            offsets[at] = offset(grid.count, value, text, at)
    return offsets


def _in_pairs(n: int, earlier: Earlier) -> list[tuple[int, str]]:
    """What was said before as (count, text). Raises: CountError on `earlier`."""
    entries: list[Any] = list(earlier.items()) if isinstance(earlier, Mapping) else in_order(earlier, "earlier")
    pairs = []
    for at, entry in enumerate(entries, start=n - len(entries)):
        if isinstance(entry, str):
            pairs.append((at, entry))
        elif isinstance(entry, Heard):
            pairs.append((entry.n, entry.said))
        elif isinstance(entry, Slip):
            pairs.append((entry.n, entry.heard))
        elif isinstance(entry, (tuple, list)) and len(entry) == 2:
            pairs.append((count_number(entry[0], "earlier"), said_text(entry[1], "earlier")))
        else:
            raise CountError("earlier", "earlier-not-in-pairs")
    return pairs


def _carried_since(before: Mapping[int, Fraction], away: Fraction) -> int | None:
    """The first of the counts before that were off by as much, back to the last one that was right."""
    since = None
    for at in sorted(before, reverse=True):
        if before[at] == 0:
            break
        if before[at] == away:
            since = at
    return since


def _jumps_ahead(grid: Grid, n: int, value: Fraction, said: str) -> int | None:
    count = grid.count
    farthest = max(FARTHEST, grid.line_length)
    return next((k for k in range(1, farthest + 1) if offset(count, value, said, n + k) == 0), None)
