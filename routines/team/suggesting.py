"""Suggesting a count to colleagues, and what is read of it on either side."""

from datetime import date

from django.db.models import F, QuerySet
from django.db.models.functions import Abs

from accounts.compiled_once import compiled_once
from accounts.models import User
from grade_bands.models import Grade, SchoolYear, Standard
from routines.coverage.behind import Field
from routines.models import Routine, Suggestion, SuggestionAnswer

OFFERED_FOR_A_GAP = 6

Answer = SuggestionAnswer.Answer


def suggest(*, routine: Routine, by: User, why: str, by_when: date | None, to: dict[str, int]) -> Suggestion:
    """`to` names the column that says to whom, and its value."""
    return Suggestion.objects.create(routine=routine, by=by, why=why, by_when=by_when, **to)


def counts_for_a_gap(grade: Grade, area: str) -> list[Routine]:
    """Counts of the bank that could fill it: of this area, those planned for the nearest grades first."""
    near = Routine.objects.in_bank().for_areas([area]).annotate(away=Abs(F("grade__order") - grade.order))
    return list(near.as_cards().order_by("away", "-shared_at", "-pk")[:OFFERED_FOR_A_GAP])


def counts_for_a_standard(grade: Grade, standard: Standard) -> list[Routine]:
    """Counts of the bank that name it, those planned for the nearest grades first; where none does, those of its area."""
    bank = Routine.objects.in_bank()
    naming = bank.filter(standards=standard).annotate(away=Abs(F("grade__order") - grade.order))
    found = list(naming.as_cards().order_by("away", "-shared_at", "-pk")[:OFFERED_FOR_A_GAP])
    return found or counts_for_a_gap(grade, standard.area)


def counts_for(gap: Field) -> list[Routine]:
    return counts_for_a_standard(gap.grade, gap.standard) if gap.standard else counts_for_a_gap(gap.grade, gap.area)


def waiting_for(user: User, at_most: int, year: SchoolYear | None = None) -> list[Suggestion]:
    """What she was sent and has not answered, or kept for later; the newest first. year: this year, where it was read."""
    return _waiting_for(user, year or SchoolYear.objects.now(), at_most=at_most)


@compiled_once
def _waiting_for(user: User, year: SchoolYear | None, *, at_most: int) -> QuerySet[Suggestion]:
    waiting = Suggestion.objects.sent_to(user, year).waiting_for(user)
    return waiting.with_titles_for(user).select_related("by")[:at_most]


def declined_by(user: User, at_most: int) -> list[Suggestion]:
    declined = Suggestion.objects.sent_to(user, SchoolYear.objects.now()).answered_by(user, Answer.DECLINED)
    return list(declined.with_titles_for(user).select_related("by")[:at_most])


def take(*, suggestion: int, routine: Routine, by: User) -> None:
    """The count of a suggestion was taken, as a copy or for a day. What is no suggestion of this count to her is let be."""
    sent = Suggestion.objects.sent_to(by, SchoolYear.objects.now()).filter(pk=suggestion, routine=routine).first()
    if sent:
        sent.answer(by, Answer.TAKEN)
