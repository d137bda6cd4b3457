"""The column of filters beside the bank's cards."""

from collections.abc import Iterable

from django.utils.safestring import SafeString
from django.utils.translation import gettext as _

from accounts.translated import Translated
from accounts.written_once import Later, write, written_once
from grade_bands.models import Grade
from routines.bank.forms.filters import BankFilter, Choice


def filter_column(wanted: BankFilter, grades: Iterable[Grade], owners: Iterable[tuple[int, str]]) -> SafeString:
    """grades, owners: those to choose from, in their order; of an owner the key and the name.

    The same choices of the same filters are the same to the letter.
    """
    names = tuple(grade.name for grade in grades)
    written = write if wanted.text or wanted.standard else written_once
    return written(
        "bank/_filters.html",
        wanted=wanted,
        filters=Later(names, lambda: _filters(wanted, names)),
        owners=tuple(owners),
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
