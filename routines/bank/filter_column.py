"""The column of filters beside the bank's cards."""

from collections.abc import Iterable

from django.utils.safestring import SafeString
from django.utils.translation import gettext as _

from accounts.translated import Translated
from accounts.written_once import Later, write, written_once
from grade_bands.models import Grade
from routines.bank.forms.filters import BankFilter, Choice

Owners = tuple[tuple[int, str], ...]


def filter_column(wanted: BankFilter, grades: Iterable[Grade], owners: Later[Owners]) -> SafeString:
    """grades, owners: those to choose from, in their order; of an owner the key and the name.

    The same choices of the same filters are the same to the letter.
    """
    names = tuple(grade.name for grade in grades)
    written = write if wanted.text or wanted.standard else written_once
    return written(
        "bank/_filters.html",
        wanted=wanted,
        filters=Later(names, lambda: _filters(wanted, names)),
        # Written once for all columns, for those of a search are not remembered.
        owners=Later(
            (owners.mark, wanted.owner),
            lambda: written_once("bank/_owner_options.html", owners=owners, chosen=wanted.owner),
        ),
    )


def _filters(wanted: BankFilter, grades: tuple[str, ...]) -> list[tuple[Translated, str, list[Choice]]]:
    return [
        (_("Grade"), "grade", wanted.grade_choices(grades)),
        (_("Area"), "area", wanted.area_choices()),
        (_("Direction"), "direction", wanted.direction_choices()),
        (_("Step"), "step", wanted.step_choices()),
        (_("Shows"), "shows", wanted.shows_choices()),
        (_("Kind of number"), "kind", wanted.kind_choices()),
    ]
