"""Words that come late: on a page that was opened, or in an event that was made, before they were removed everywhere.

A form that may hold people's words carries when its page was asked for ({% opened %}). Before any view reads it, words
that were removed since are taken out of its fields, so that no save can bring them back; the view then shows the rest as it
was typed and says which words went. Whoever types them again on a page opened afterwards means them, and they are kept.
"""

from collections.abc import Callable, Iterable
from datetime import datetime
from typing import TYPE_CHECKING

from django.http import HttpRequest, HttpResponse, QueryDict
from django.utils import timezone
from django.utils.translation import gettext as _

from accounts.requests import Request
from routines.models import LessonEvent
from routines.models.people_words import COLUMNS

from .list_of_erasures import Erasure, known
from .matching import Sought

if TYPE_CHECKING:
    from django.http.request import _ImmutableQueryDict as SentFields

OPENED = "opened"
(EVENTS,) = (column for column in COLUMNS if str(column) == "routines.LessonEvent.data")
SAID_AT_MOST = 6


def erased_since(moment: datetime, *, author: int | None, place: str = "") -> list[Erasure]:
    """What was still to be removed at that moment from this person's texts; `place` is a column, "" any."""
    return [
        one
        for one in known().entries
        if (not one.finished_at or moment <= datetime.fromisoformat(one.finished_at))
        and one.whose in (None, author)
        and (not place or place in one.places)
    ]


def is_erased(event: LessonEvent, *, made_at: datetime) -> bool:
    """Whether an event (LessonEvent) that was made at that moment, by this server's clock, holds words removed since."""
    late = erased_since(made_at, author=event.user_id, place=str(EVENTS))
    return bool(late) and any(_joined(late).stands_in(text) for _place, text in EVENTS.texts(event))


class LateWordsMiddleware:
    """Sets `request.asked_at`, and `request.words_removed`: the words taken out of what was sent, as they stood there."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: Request) -> HttpResponse:
        request.asked_at, request.words_removed = timezone.now(), []
        return self.get_response(request)

    def process_view(self, request: Request, view: object, args: object, kwargs: object) -> None:
        opened = _moment(request.POST.get(OPENED, ""))
        late = erased_since(opened, author=request.user.pk) if opened else []
        if late:
            request.POST, request.words_removed = taken_out_of(request.POST, _joined(late))


def taken_out_of(fields: QueryDict, sought: Sought) -> tuple["SentFields", list[str]]:
    """The same fields without these words, and each form in which they stood there."""
    left, removed = QueryDict(mutable=True, encoding="utf-8"), dict[str, None]()
    for name, texts in fields.lists():
        for text in texts:
            removed.update((text[first:end], None) for first, end in sought.spans(text))
            left.appendlist(name, sought.taken_out(text))
    closed = QueryDict(left.urlencode(), encoding="utf-8")  # to changes, as Django hands them out
    return closed, list(removed)


def what_went(words: Iterable[str]) -> str:
    """The sentence for whoever sent them."""
    named = ", ".join(f"“{word}”" for word in list(words)[:SAID_AT_MOST])
    return _(
        "Removed everywhere after this page was opened, and so not kept here either: %(words)s. "
        "All else is as you typed it; look it over and save again."
    ) % {"words": named}


def _joined(erasures: Iterable[Erasure]) -> Sought:
    return Sought((one.length, one.mark) for one in erasures)


def _moment(said: str) -> datetime | None:
    try:
        moment = datetime.fromisoformat(said)
    except ValueError:
        return None
    return moment if timezone.is_aware(moment) else None
