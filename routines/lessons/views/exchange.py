"""What the scripts of board and lectern ask for: the count once, then events, sent and heard."""

from typing import Any
from uuid import UUID

from django.contrib.auth.decorators import login_not_required
from django.db import IntegrityError, OperationalError
from django.http import HttpResponse, JsonResponse
from django.middleware.csrf import get_token
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy
from django.views.decorators.http import require_GET, require_http_methods

from accounts.models import User
from accounts.requests import SchoolRequest, is_signed_in
from accounts.text import read_json
from routines.lessons.events import BATCH_LIMIT, DATA_BYTES, append_events, clock_ahead, heard_events
from routines.lessons.making_again import make_again
from routines.lessons.passes import open_to_passes, pass_of
from routines.lessons.roles import Participant
from routines.lessons.shown_count import board_count, lectern_count, shown_of
from routines.lessons.taking_part import answer, find_lesson, participant_in, refuse, refuse_for_another
from routines.models import Lesson

BODY_BYTES = BATCH_LIMIT * (DATA_BYTES + 1024)
PAGE = 500
SHOWN = ("version", "grade")
DELETED = {"reason": "deleted", "words": gettext_lazy("This lesson was removed.")}


@open_to_passes
@login_not_required
@require_http_methods(["GET", "POST"])
def events(request: SchoolRequest, key: UUID) -> HttpResponse:
    """GET ?after=seq&person=mark: what came since. POST {"epoch", "now", "person", "events"}: what was made here."""
    sent = _sent(request) if request.method == "POST" else None
    if isinstance(sent, JsonResponse):
        return sent
    other = refuse_for_another(request, request.GET.get("person") if sent is None else sent.get("person"))
    if other is not None:
        return other
    batch = sent["events"] if sent is not None else None
    lesson = find_lesson(key, "version") if batch is not None else _asked_about(request, key)
    if lesson is None and batch and is_signed_in(request):
        lesson = _made_again(key, batch, request.user)
    me = participant_in(request, lesson) if lesson is not None else None
    if lesson is None or me is None:
        return refuse(request)
    if lesson.deleted_at is not None:
        return answer(DELETED, 410)
    try:
        return _take(request, lesson, me, sent) if sent is not None else _tell(request, lesson, me)
    except OperationalError:
        # Locked for too long, or a full disk: the device keeps what it has and tries again.
        return answer({"reason": "busy", "words": _("The server cannot keep anything at the moment.")}, 503)


def _asked_about(request: SchoolRequest, key: UUID) -> Lesson | None:
    """Boards ask every second: the lesson that came with the pass is not read a second time."""
    held = pass_of(request)
    if held is not None and held.lesson is not None and held.lesson.key == key:
        return held.lesson
    return find_lesson(key)


def _sent(request: SchoolRequest) -> dict[str, Any] | JsonResponse:
    """What a request holds, its events a list, or the answer to one that is none."""
    length = request.META.get("CONTENT_LENGTH") or "0"
    if not length.isdecimal() or int(length) > BODY_BYTES:
        words = _("Send at most %(most)s events at a time.") % {"most": BATCH_LIMIT}
        return answer({"reason": "too-large", "words": words}, 413)
    try:
        body = read_json(request.body) if request.content_type == "application/json" else None
    except ValueError:
        body = None
    if not isinstance(body, dict) or not isinstance(body.get("events"), list):
        return answer({"reason": "malformed", "words": _("These are no events of a lesson.")}, 400)
    return body


def _made_again(key: UUID, batch: list[Any], user: User) -> Lesson | None:
    try:
        return make_again(key=key, batch=batch, by=user)
    except IntegrityError:  # another device was quicker
        return find_lesson(key, "version")


def _take(request: SchoolRequest, lesson: Lesson, me: Participant, sent: dict[str, Any]) -> JsonResponse:
    ahead = clock_ahead(sent.get("now"))
    taken = append_events(lesson=lesson, events=sent["events"], sender=me, ahead=ahead)
    rejected = {name: refusal.as_dict() for name, refusal in taken.rejected.items()}
    return answer(
        {
            "epoch": str(request.school.epoch),
            "last": lesson.last_seq,
            "ended": lesson.is_over(),
            "token": get_token(request),
            "accepted": taken.accepted,
            "rejected": rejected,
        }
    )


def _tell(request: SchoolRequest, lesson: Lesson, me: Participant) -> JsonResponse:
    text = request.GET.get("after", "0")
    after = int(text) if text.isascii() and text.isdecimal() and len(text) <= 6 else 0
    after = min(after, lesson.last_seq)
    told, last = heard_events(lesson, me, after=after, limit=PAGE) if after < lesson.last_seq else ([], after)
    return answer(
        {
            "epoch": str(request.school.epoch),
            "last": last,
            "more": last < lesson.last_seq,
            "ended": lesson.is_over(),
            "token": get_token(request),
            "events": told,
        }
    )


@open_to_passes
@login_not_required
@require_GET
def board_json(request: SchoolRequest, key: UUID) -> HttpResponse:
    return _count(request, key, for_board=True)


@open_to_passes
@login_not_required
@require_GET
def lectern_json(request: SchoolRequest, key: UUID) -> HttpResponse:
    return _count(request, key, for_board=False)


def _count(request: SchoolRequest, key: UUID, *, for_board: bool) -> HttpResponse:
    lesson = find_lesson(key, *SHOWN)
    me = participant_in(request, lesson) if lesson is not None else None
    if lesson is None or me is None or (me.is_board and not for_board):
        return refuse(request)
    if lesson.deleted_at is not None:
        return answer(DELETED, 410)
    shown = shown_of(lesson)
    told = board_count(lesson, shown) if for_board else lectern_count(lesson, shown)
    return answer({"epoch": str(request.school.epoch), **told})
