"""The bank: every shared routine, filtered by what its grid shows."""

from collections.abc import Sequence

from django.db.models import QuerySet
from django.http import HttpResponse
from django.shortcuts import render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_GET
from django.views.decorators.vary import vary_on_headers

from accounts.compiled_once import compiled_once
from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.models.list_marks import known_by_mark
from accounts.requests import SignedInRequest
from grade_bands.models import Grade, SchoolYear, classes_of, hold_classes_of
from routines.bank.cards import Card, as_items, cards_of
from routines.bank.filter_column import filter_column
from routines.bank.forms.filters import BankFilter, in_bank_showing
from routines.bank.orders import newest_first
from routines.bank.paging import HowMany, Recipe, read_page, read_rows
from routines.models.routine import tell_times_taught

PAGE_SIZE = 24


@require_GET
@vary_on_headers("HX-Request", "HX-History-Restore-Request")
def bank(request: SignedInRequest) -> HttpResponse:
    grades = _grades()
    year = SchoolYear.objects.on(timezone.localdate())
    classes = hold_classes_of(request.user)
    own = own_grades(request.user, grades, year)
    wanted = BankFilter.read(request.GET, grades, tuple(grade.pk for grade in own))
    order = wanted.order(request.user, year)
    page = read_page(order, request.GET, reader=request.user, size=PAGE_SIZE)
    shown = read_rows(page)
    total = newest_first(Recipe(in_bank_showing, decided_by=(BankFilter(),))).how_many()
    found = page.how_many(order) if wanted.how_many_on() else total
    tell_times_taught(shown, request.user, year)
    cards = cards_of(shown, reader=request.user, may_teach=bool(classes))
    groups = by_nearness(cards, own) if wanted.own_come_first else [("", cards)]
    elsewhere = wanted.without_grades
    context = {
        "section": "bank",
        "wanted": wanted,
        "page": page,
        "cards": cards,
        "groups": [(words, as_items(some)) for words, some in groups],
        "all_query": wanted.query(sort="newest"),
        "elsewhere": None if cards or not wanted.grades else elsewhere.order(request.user, year).how_many(),
        "elsewhere_query": elsewhere.query(),
        "total": total,
        "how_many": how_many_words(found, total, wanted.grades),
        "earlier": wanted.query(**page.earlier) if page.earlier else None,
        "later": wanted.query(**page.later) if page.later else None,
    }
    if wants_fragment(request):
        return render(request, "bank/_cards.html", context)
    owners = known_by_mark(request.school, "owners", _owners)
    return render(request, "bank/bank.html", context | {"filter_column": filter_column(wanted, grades, owners)})


def own_grades(user: User, grades: list[Grade], year: SchoolYear | None) -> list[Grade]:
    """The grades in which the reader has a class this year."""
    taught = {group.grade_id for group in classes_of(user) if year and group.year_id == year.pk}
    return [grade for grade in grades if grade.pk in taught]


def by_nearness(cards: Sequence[Card], own: list[Grade]) -> list[tuple[str, list[Card]]]:
    """The cards of one's own grades and those of others, each with its heading."""
    keys = {grade.pk for grade in own}
    mine = [card for card in cards if card.routine.grade_id in keys]
    others = [card for card in cards if card.routine.grade_id not in keys]
    words = ngettext("For your grade %(grades)s", "For your grades %(grades)s", len(own))
    words %= {"grades": ", ".join(grade.name for grade in own)}
    return [group for group in ((words, mine), (_("For other grades"), others)) if group[1]]


@compiled_once
def _grades() -> QuerySet[Grade]:
    return Grade.objects.order_by("order")


@compiled_once
def _owners() -> QuerySet[User, tuple[int, str]]:
    """Who has a count in the bank."""
    return User.objects.filter(bank_owner__has_counts=True).in_name_order().values_list("pk", "display_name")


def how_many_words(found: HowMany, total: HowMany, grades: Sequence[str]) -> str:
    """How many counts there are: "3 of 40 counts for grade 2.", and beyond what is counted "More than 1,000 counts."."""
    if found.is_more:
        said = _("%(total)s counts") % {"total": str(found).capitalize()}
    else:
        said = ngettext("%(shown)s of %(total)s count", "%(shown)s of %(total)s counts", total.number)
        said %= {"shown": found, "total": total}
    if grades:
        listed = ", ".join(grades)
        said += " " + ngettext("for grade %(grades)s", "for grades %(grades)s", len(grades)) % {"grades": listed}
    return f"{said}."
