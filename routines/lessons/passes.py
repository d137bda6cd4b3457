"""A device's pass: from its cookie, to what it opens, and nothing else."""

from collections.abc import Callable
from math import ceil
from typing import TypeVar
from weakref import WeakKeyDictionary

from django.conf import settings
from django.db import transaction
from django.http import Http404, HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _

from accounts.models import User
from accounts.throttling import client_address
from routines.models import Lesson, LessonPass, PairingTries

COOKIE = settings.PASS_COOKIE_NAME
COOKIE_AGE = 12 * 3600
SIGN_IN = "accounts:sign_in"


_read: WeakKeyDictionary[HttpRequest, LessonPass | None] = WeakKeyDictionary()


def pass_of(request: HttpRequest) -> LessonPass | None:
    """The pass in this browser's cookie, waiting or tied; read once a request."""
    if request not in _read:
        secret = request.COOKIES.get(COOKIE, "")
        found = LessonPass.objects.for_secret(secret).select_related("lesson").first() if secret else None
        _read[request] = found
    return _read[request]


View = TypeVar("View", bound=Callable[..., HttpResponseBase])


def open_to_passes(view: View) -> View:
    """A view that a device with a pass may ask; it decides itself what for."""
    vars(view)["open_to_passes"] = True
    return view


class PassMiddleware:
    """A browser with a good pass and nobody signed in finds its lesson and the sign-in page; all else is not there."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        return self.get_response(request)

    def process_view(self, request: HttpRequest, view: object, args: object, kwargs: object) -> None:
        if COOKIE not in request.COOKIES or getattr(view, "open_to_passes", False):
            return
        # Whoever takes over the device must be able to sign in; the page says nothing about the school's lessons.
        match = request.resolver_match
        if request.user.is_authenticated or (match is not None and match.view_name == SIGN_IN):
            return
        held = pass_of(request)
        if held is not None and held.is_good():
            raise Http404


def give_cookie(response: HttpResponse, request: HttpRequest, secret: str) -> None:
    response.set_cookie(
        COOKIE,
        secret,
        max_age=COOKIE_AGE,
        httponly=True,
        samesite="Lax",
        secure=settings.HTTPS or request.is_secure(),
    )


def begin_to_wait(request: HttpRequest) -> tuple[LessonPass, str]:
    """This device's waiting pass with a code that can be typed, and the secret of a new one ("" where it has one).

    Raises: TooManyWaiting.
    """
    held = pass_of(request)
    if held is not None and held.lesson_id is None:
        if held.code_is_over:
            held.show_new_code()
        return held, ""
    return LessonPass.objects.wait(address=client_address(request)[:45])


def has_place(held: LessonPass) -> bool:
    """Whether the device has a lesson that still goes on."""
    return held.lesson is not None and held.is_good() and not held.lesson.is_over()


def place_of(held: LessonPass) -> str:
    """Where a device with this pass belongs."""
    assert held.lesson is not None
    return reverse("lesson_board" if held.role == LessonPass.Role.BOARD else "lesson_lectern", args=[held.lesson.key])


class CodeRefused(ValueError):
    """A typed code that ties nothing; the message says why. `status`: 422, or 429 for who has to wait."""

    def __init__(self, words: str, status: int = 422) -> None:
        super().__init__(words)
        self.status = status


def tie_by_code(*, code: str, lesson: Lesson, role: str, by: User) -> LessonPass:
    """Give the device that shows this code its pass. Raises: CodeRefused; a wrong code is counted against who typed it."""
    typed = "".join(code.split()).replace("-", "")
    with transaction.atomic():
        tries, _made = PairingTries.objects.select_for_update().get_or_create(user=by)
        left = tries.wait_left().total_seconds()
        if left > 0 and tries.wrong:
            raise CodeRefused(_wait_words(left), 429)
        if not (len(typed) == 6 and typed.isascii() and typed.isdigit()):
            raise CodeRefused(_("Type the six digits that the device shows."))
        held = LessonPass.objects.select_for_update().waiting().filter(code=typed).first()
        if held is not None:
            held.tie(lesson=lesson, role=role, by=by)
        tries.wrong = 0 if held is not None else tries.wrong + 1
        tries.last_at = timezone.now()
        tries.save()
    if held is None:
        raise CodeRefused(
            _("No waiting device shows this code. Look again: a code lasts ten minutes, then the device shows another.")
        )
    return held


def _wait_words(seconds: float) -> str:
    """For how long no further code is taken: in tens of seconds, then in minutes."""
    tens = 10 * ceil(seconds / 10)
    if tens < 60:
        wait = _("{count} seconds").format(count=tens)
    else:
        wait = _("a minute") if tens == 60 else _("{count} minutes").format(count=ceil(tens / 60))
    return _("Too many codes that no device shows. Try again in {wait}.").format(wait=wait)
