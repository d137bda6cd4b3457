"""How much a plan holds, and the sentences that say so. Nothing typed is cut: a plan with too much is kept, and not saved."""

from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.kept_text import MOST_CHARACTERS
from routines.models.plan_document import LIST_LIMIT
from routines.plans.forms.draft import DraftFields, row_numbers

ROW_WORDS = {
    "stops": gettext_lazy("stops"),
    "expected": gettext_lazy("answers and slips"),
    "next": gettext_lazy("next counts"),
}


def rows_left(typed: DraftFields, section: str) -> int:
    """How many more rows there is room for."""
    return max(0, LIST_LIMIT - len(row_numbers(typed, section)))


def section_is_full(section: str) -> str:
    return _("%(most)s %(rows)s are the most a plan holds. Take one out to add another.") % {
        "most": LIST_LIMIT,
        "rows": ROW_WORDS[section],
    }


def too_many(typed: DraftFields) -> dict[str, str]:
    """A sentence for each part of the plan with more in it than can be saved."""
    wrong = {}
    for section, words in ROW_WORDS.items():
        there = len(row_numbers(typed, section))
        if there > LIST_LIMIT:
            wrong[section] = _("A plan holds %(most)s %(rows)s at most; this one has %(there)s. Remove %(over)s.") % {
                "most": LIST_LIMIT,
                "rows": words,
                "there": there,
                "over": there - LIST_LIMIT,
            }
    ticked = len(set(typed.get("target", [])))
    if ticked > LIST_LIMIT:
        wrong["target"] = _("A plan holds %(most)s ticked patterns at most; %(ticked)s are ticked.") % {
            "most": LIST_LIMIT,
            "ticked": ticked,
        }
    return wrong


def too_long(typed: DraftFields) -> str:
    """A sentence when the plan as typed is longer than autosave can keep, else nothing."""
    characters = sum(len(name) + len(text) for name, texts in typed.items() for text in texts)
    if characters <= MOST_CHARACTERS:
        return ""
    return _(
        "This plan is %(characters)s characters long; %(most)s are the most that can be kept. "
        "Shorten it: what you typed stays on this page."
    ) % {"characters": f"{characters:,}", "most": f"{MOST_CHARACTERS:,}"}
