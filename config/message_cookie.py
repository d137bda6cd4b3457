"""What is said on the next page: in a cookie, so that it needs no write, and bound to this host as the others are."""

from django.conf import settings
from django.contrib.messages.storage.cookie import CookieStorage
from django.contrib.messages.storage.fallback import FallbackStorage
from django.contrib.messages.storage.session import SessionStorage


class MessageCookie(CookieStorage):
    cookie_name = f"{settings.COOKIE_PREFIX}countfold_said"


class MessageStorage(FallbackStorage):
    """Django's own: what is too long for a cookie waits in the session."""

    storage_classes = (MessageCookie, SessionStorage)
