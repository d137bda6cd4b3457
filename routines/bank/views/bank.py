"""The bank: every shared routine, filtered by what its grid shows."""

from django.core.paginator import Paginator
from django.db.models import prefetch_related_objects
from django.http import HttpResponse
from django.shortcuts import render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_GET
from django.views.decorators.vary import vary_on_headers

from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.requests import SignedInRequest
from grade_bands.models import Grade, SchoolYear
from routines.bank.cards import Card, UnreadableCard, cards_of
from routines.bank.forms.filters import BankFilter
from routines.models import Routine
from routines.models.routine import tell_times_taught

PAGE_SIZE = 24


@require_GET
@vary_on_headers("HX-Request", "HX-History-Restore-Request")
def bank(request: SignedInRequest) -> HttpResponse:
    grades = list(Grade.objects.order_by("order"))
    year = SchoolYear.objects.on(timezone.localdate())
    prefetch_related_objects([request.user], "class_groups")
    own = own_grades(request.user, grades, year)
    wanted = BankFilter.read(request.GET, grades, own)
    in_bank = Routine.objects.in_bank()
    found = wanted.apply(in_bank, request.user, year)
    page = Paginator(found.as_cards(), PAGE_SIZE).get_page(request.GET.get("page"))
    shown = list(page.object_list)
    tell_times_taught(shown, request.user, year)
    cards = cards_of(shown, reader=request.user, may_teach=bool(request.user.class_groups.all()))
    elsewhere = wanted.without_grades
    context = {
        "section": "bank",
        "wanted": wanted,
        "filters": [
            (_("Grade"), "grade", wanted.grade_choices(grades)),
            (_("Area"), "area", wanted.area_choices()),
            (_("Direction"), "direction", wanted.direction_choices()),
            (_("Step"), "step", wanted.step_choices()),
            (_("Shows"), "shows", wanted.shows_choices()),
            (_("Kind of number"), "kind", wanted.kind_choices()),
        ],
        "page": page,
        "cards": cards,
        "groups": by_nearness(cards, own) if wanted.own_come_first else [("", cards)],
        "all_query": wanted.query(sort="newest"),
        "elsewhere": 0 if cards or not wanted.grades else elsewhere.apply(in_bank, request.user, year).count(),
        "elsewhere_query": elsewhere.query(),
        "total": in_bank.count() if wanted.how_many_on() else page.paginator.count,
        "owners": User.objects.filter(owned_routines__status=Routine.Status.SHARED)
        .only("display_name")
        .distinct()
        .in_name_order(),
        "earlier": wanted.query(page=page.previous_page_number()) if page.has_previous() else None,
        "later": wanted.query(page=page.next_page_number()) if page.has_next() else None,
    }
    template = "bank/_cards.html" if wants_fragment(request) else "bank/bank.html"
    return render(request, template, context)


def own_grades(user: User, grades: list[Grade], year: SchoolYear | None) -> tuple[str, ...]:
    """The grades in which the reader has a class this year."""
    taught = {group.grade_id for group in user.class_groups.all() if year and group.year_id == year.pk}
    return tuple(grade.name for grade in grades if grade.pk in taught)


def by_nearness(
    cards: list[Card | UnreadableCard], own: tuple[str, ...]
) -> list[tuple[str, list[Card | UnreadableCard]]]:
    """The cards of one's own grades and those of others, each with its heading."""
    mine = [card for card in cards if card.routine.grade.name in own]
    others = [card for card in cards if card.routine.grade.name not in own]
    words = ngettext("For your grade %(grades)s", "For your grades %(grades)s", len(own)) % {"grades": ", ".join(own)}
    return [group for group in ((words, mine), (_("For other grades"), others)) if group[1]]
