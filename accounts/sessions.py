"""A session that is gone by the time it would be saved: a backup was put back, or its person signed out elsewhere."""

from django.conf import settings
from django.contrib.auth.models import AnonymousUser
from django.contrib.sessions.exceptions import SessionInterrupted
from django.contrib.sessions.middleware import SessionMiddleware
from django.http import HttpResponse

from .requests import Request
from .views.sign_in import answer_signed_out_meanwhile


class KnownSessionMiddleware(SessionMiddleware):
    """Django's, which answers such a request as one that it did not understand; here it is asked to sign in again."""

    def process_response(self, request: Request, response: HttpResponse) -> HttpResponse:  # type: ignore[override]
        try:
            return super().process_response(request, response)
        except SessionInterrupted:
            request.session, request.user = self.SessionStore(), AnonymousUser()
            answer = answer_signed_out_meanwhile(request)
            answer.cookies.update(response.cookies)  # the token of the forms may be a new one
            answer.delete_cookie(settings.SESSION_COOKIE_NAME, samesite=settings.SESSION_COOKIE_SAMESITE)
            return answer
