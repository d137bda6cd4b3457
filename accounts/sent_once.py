"""A form that makes something is kept once, however often it arrives: by a double click, a retry, Back and Save again.

Its page carries a key ({% form_key %}). The first to arrive claims the key in the transaction that makes the thing; the
same form again is led to what the first made. A form without a key works as well, and is kept as often as it comes.
"""

import uuid
from collections.abc import Callable

from django.contrib import messages
from django.db import transaction
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.utils.crypto import salted_hmac
from django.utils.html import format_html
from django.utils.translation import gettext as _

from .models import SentForm
from .requests import SignedInRequest

FIELD = "form_key"
NOT_CONTENT = {FIELD, "csrfmiddlewaretoken"}


class SentBefore(Exception):
    """This form was kept before with other words. Nothing was written; `address` leads to what was made then."""

    def __init__(self, address: str) -> None:
        super().__init__("kept before, with other words")
        self.address = address

    @property
    def sentence(self) -> str:
        return format_html(
            _(
                'This page was sent before, and <a href="{}">what it held then is kept</a>. What stands here now is not yet. '
                "Send it again to keep it as well."
            ),
            self.address,
        )


def key_of(request: HttpRequest) -> uuid.UUID | None:
    """The key the form carries, if it carries one."""
    try:
        return uuid.UUID(request.POST.get(FIELD, ""))
    except ValueError:
        return None


def content_of(request: HttpRequest) -> str:
    """A keyed hash of what was sent and where to: equal for equal forms, and no way back to the words."""
    fields = [(name, values) for name, values in sorted(request.POST.lists()) if name not in NOT_CONTENT]
    files = [(name, file.name, file.size) for name, sent in sorted(request.FILES.lists()) for file in sent]
    return salted_hmac("accounts.sent_once", repr((request.path, fields, files)), algorithm="sha256").hexdigest()


def answer_again(request: SignedInRequest) -> HttpResponse | None:
    """For a form that was kept before, word for word: the answer that leads there. To be asked when a form is found
    wrong, for what it made may stand in its own way, as a name that is taken now.
    """
    key = key_of(request)
    sent = SentForm.objects.of(request.user, key) if key else None
    return _lead_there(request, sent) if sent and sent.content == content_of(request) else None


def keep_once(request: SignedInRequest, make: Callable[[], str]) -> HttpResponse:
    """Run `make` in a transaction of its own and go to the address it hands back; sent again, go there only.

    Raises SentBefore when the same form was kept with other words.
    """
    key = key_of(request)
    with transaction.atomic():
        if key is None:
            return redirect(make())
        sent, first = SentForm.objects.claim(person=request.user, key=key, content=content_of(request))
        if first:
            sent.remember(address=make())
            return redirect(sent.made["address"])
    if sent.content != content_of(request):
        raise SentBefore(sent.made["address"])
    return _lead_there(request, sent)


def _lead_there(request: HttpRequest, sent: SentForm) -> HttpResponse:
    messages.info(request, _("This was sent before, so it was not kept a second time."))
    return redirect(sent.made["address"])
