"""Counts worth teaching as cards, each with the address at which the plan page opens with all of it filled in."""

from dataclasses import dataclass
from urllib.parse import urlencode

from django.urls import reverse
from django.utils.translation import gettext as _

from routines.counting import Audience, counts_worth_teaching
from routines.counting.worth_teaching import LITTLE_ROOM, NOT_YET, TWO_COUNTS
from routines.models.facts import count_in_words
from routines.models.plan_document import TITLE_LIMIT
from routines.plans.forms.draft import claim_text
from routines.plans.forms.worth_teaching import WorthForm
from routines.plans.suggestions.taking import count_and_fold
from routines.words import SpokenPattern, SpokenWorth
from routines.words import counts_worth_teaching as spoken


@dataclass(frozen=True, slots=True)
class WorthCard:
    """A count worth teaching. `lit` is what its line speaks of; `plan` the address of the page."""

    worth: SpokenWorth
    in_words: str
    lit: tuple[SpokenPattern, ...]
    plan: str


def worth_cards(form: WorthForm) -> tuple[list[WorthCard], str]:
    """All that were found, best first, and a sentence where they are fewer than six. Raises CountError for features that
    cannot be read.
    """
    wanted = form.wanted()
    cards = [_card(one, form) for one in spoken(wanted, Audience(wanted.level, form.language_chosen))]
    return cards, _why_few(counts_worth_teaching(wanted).why_not, len(cards), form)


def _card(worth: SpokenWorth, form: WorthForm) -> WorthCard:
    targets = [one for one in (worth.lasting, worth.passing) if one is not None]
    fields = {
        **count_and_fold(worth.grid),
        "grade": form.chosen_grade.name,
        "area": form.area,
        "language": form.language_chosen,
        "title": worth.lasting.statement[:TITLE_LIMIT],
        "standards": form.standard.code if form.standard else "",
        "target": [claim_text(one.claim.as_dict()) for one in targets],
    }
    return WorthCard(
        worth,
        count_in_words(worth.grid),
        tuple(targets),
        f"{reverse('plan_new')}?{urlencode(fields, doseq=True)}",
    )


def _why_few(why: str, found: int, form: WorthForm) -> str:
    if why == TWO_COUNTS:
        return _("This takes two counts side by side. Plan each of the two by itself.")
    if why == NOT_YET:
        return _("Grade %(grade)s does not count with these numbers yet.") % {"grade": form.chosen_grade.name}
    if why == LITTLE_ROOM:
        if found:
            return _("These are all: what is asked leaves room for no others.")
        return _("What is asked leaves no room for a grid in which there is something to see.")
    return ""
