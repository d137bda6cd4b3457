"""What the server writes into its window: what went wrong and where in the program, and nothing that anybody typed.

An address may hold the token of a one-time link or a word; an error's own message may hold a value of the database. So the
route stands in the place of the address, and of an error its kind and its way through the program.
"""

import logging
import traceback
from types import TracebackType

from django.http import HttpRequest
from django.urls import Resolver404, resolve

NO_ADDRESS_OF_OURS = "(an address that is none of ours)"


class WithoutWords(logging.Formatter):
    def format(self, record: logging.LogRecord) -> str:
        request = getattr(record, "request", None)
        if isinstance(request, HttpRequest) and isinstance(record.args, tuple):
            given = tuple(route_of(request) if arg in addresses_of(request) else arg for arg in record.args)
            record = logging.makeLogRecord({**record.__dict__, "args": given, "exc_text": None})
        return super().format(record)

    def formatException(  # noqa: N802 - the name that logging calls it by
        self,
        ei: tuple[type[BaseException], BaseException, TracebackType | None] | tuple[None, None, None],
    ) -> str:
        """Without what the errors say; with what led to them."""
        error, told, seen = ei[1], [], set()
        while error is not None and id(error) not in seen:
            seen.add(id(error))
            way = "".join(traceback.format_tb(error.__traceback__)).rstrip()
            told.append(f"Traceback (what the error said is left out):\n{way}\n{type(error).__qualname__}")
            error = error.__cause__ or (None if error.__suppress_context__ else error.__context__)
        return "\nwhich came of:\n".join(told)


def route_of(request: HttpRequest) -> str:
    try:
        found = request.resolver_match or resolve(request.path_info)  # what fails early fails before it is looked for
    except Resolver404:
        return NO_ADDRESS_OF_OURS
    return f"/{found.route}"


def addresses_of(request: HttpRequest) -> tuple[str, ...]:
    return request.path, request.path_info, request.get_full_path()
