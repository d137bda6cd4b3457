"""The column of filters beside the bank's cards."""

from collections.abc import Iterable
from functools import lru_cache

from django.template.loader import render_to_string
from django.utils.safestring import SafeString
from django.utils.translation import get_language
from django.utils.translation import gettext as _

from accounts.models import User
from grade_bands.models import Grade
from routines.bank.forms.filters import BankFilter

COLUMNS_REMEMBERED = 50  # of about 10 KB each


def filter_column(wanted: BankFilter, grades: Iterable[Grade], owners: Iterable[User]) -> SafeString:
    """grades, owners: those to choose from, in their order."""
    names = tuple(grade.name for grade in grades)
    return drawn_column(wanted, names, tuple((owner.pk, owner.display_name) for owner in owners), get_language())


@lru_cache(maxsize=COLUMNS_REMEMBERED)
def drawn_column(
    wanted: BankFilter, grades: tuple[str, ...], owners: tuple[tuple[int, str], ...], language: str | None
) -> SafeString:
    """The same choices of the same filters are the same to the letter, whoever looks at them."""
    filters = [
        (_("Grade"), "grade", wanted.grade_choices(grades)),
        (_("Area"), "area", wanted.area_choices()),
        (_("Direction"), "direction", wanted.direction_choices()),
        (_("Step"), "step", wanted.step_choices()),
        (_("Shows"), "shows", wanted.shows_choices()),
        (_("Kind of number"), "kind", wanted.kind_choices()),
    ]
    return render_to_string("bank/_filters.html", {"wanted": wanted, "filters": filters, "owners": owners})
