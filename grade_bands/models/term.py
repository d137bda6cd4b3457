"""Terms: the parts of a school year that coverage looks at by themselves. A year may have none."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise

from django.core.exceptions import ValidationError
from django.utils.translation import gettext

FEWEST_TERMS, MOST_TERMS = 2, 6


@dataclass(frozen=True, slots=True)
class Term:
    """The `number`th of its year, from 1; both days included."""

    number: int
    first: date
    last: date


def terms_from(first_days: Sequence[str], year_ends_on: date) -> list[Term]:
    """Each ends the day before the next begins, the last with its year. `first_days`: as YYYY-MM-DD, in order.

    >>> [(str(term.first), str(term.last)) for term in terms_from(["2026-08-17", "2027-01-11"], date(2027, 6, 18))]
    [('2026-08-17', '2027-01-10'), ('2027-01-11', '2027-06-18')]
    """
    if not first_days:  # a year that is being written may have no last day yet
        return []
    days = [date.fromisoformat(day) for day in first_days]
    after = [*days[1:], year_ends_on + timedelta(days=1)]
    return [
        Term(i, first, then - timedelta(days=1)) for i, (first, then) in enumerate(zip(days, after, strict=False), 1)
    ]


def require_first_days(first_days: list[str]) -> None:
    """None, or two to six days as YYYY-MM-DD, each after the one before."""
    try:
        days = [date.fromisoformat(day) for day in first_days]
    except (TypeError, ValueError):
        days = []
    if len(days) != len(first_days) or (days and not FEWEST_TERMS <= len(days) <= MOST_TERMS):
        raise ValidationError(
            gettext("Give the first days of %(fewest)s to %(most)s terms, or none.")
            % {"fewest": FEWEST_TERMS, "most": MOST_TERMS}
        )
    if any(later <= earlier for earlier, later in pairwise(days)):
        raise ValidationError(gettext("Each term begins after the one before."))
