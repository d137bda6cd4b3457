"""PostgreSQL stopped or started again under a running server: pages say so and keep what was typed, and go on by themselves
as soon as it answers.
"""

from django.db import InterfaceError, OperationalError
from django.http import HttpRequest, HttpResponse
from django.template.loader import render_to_string
from django.utils.log import log_response
from django.utils.translation import gettext_lazy as _

from .full_disk import is_for_a_script, what_may_be_sent_again

# PostgreSQL's documentation, appendix A: connection exceptions, too many connections, and what it says when it is told to end,
# crashed or is not ready yet. Who finds nobody at the address at all gets an error of the driver without a code.
GONE = ("08", "53300", "57P01", "57P02", "57P03")
SECONDS = 5
SENTENCE = _(
    "Not saved: the school’s database does not answer just now. Leave this page open, and save once more in a minute."
)


def is_away(error: BaseException | None) -> bool:
    """Whether this error, or one that led to it, is that of a database that can't be reached."""
    seen: set[int] = set()
    while error is not None and id(error) not in seen:
        seen.add(id(error))
        if isinstance(error, (OperationalError, InterfaceError)) and is_said_by_postgresql(error.__cause__):
            code = getattr(error.__cause__, "sqlstate", None)
            return code is None or code.startswith(GONE)
        error = error.__cause__ or error.__context__
    return False


def is_said_by_postgresql(error: BaseException | None) -> bool:
    return type(error).__module__.partition(".")[0] == "psycopg"


def answer(request: HttpRequest) -> HttpResponse:
    """503, with the fields of the form to be sent again; for scripts one sentence. The page asks the database nothing."""
    response = HttpResponse(SENTENCE, content_type="text/plain; charset=utf-8")
    if not is_for_a_script(request):
        kept = what_may_be_sent_again(request)
        context = {
            "kept": kept,
            "token": request.POST.get("csrfmiddlewaretoken", "") if kept else "",
            "address": request.get_full_path(),
            "saving": request.method != "GET",
        }
        response = HttpResponse(render_to_string("503.html", context))
    response.status_code = 503
    response.headers["Retry-After"] = str(SECONDS)
    # One line in the log: Django would write the way of each error, and every open page asks again and again.
    log_response("%s: %s", response.reason_phrase, request.path, response=response, request=request, level="warning")
    return response
