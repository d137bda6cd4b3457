"""Requests that are under way while a backup is put back: none shows or saves half of each school.

A restored school has another epoch. What a request read before and after would not belong together, so its answer is
dropped; what it is about to write, it checks once it holds the lock on writing. Whoever sent it signs in again, as
everyone does after a restore, with what was typed kept.
"""

from collections.abc import Callable
from functools import partial
from typing import Any

from django.contrib.auth.models import AnonymousUser
from django.db import connection
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect

from accounts.middleware import SignedInMiddleware
from accounts.models import School
from accounts.requests import Request

WRITES = ("INSERT", "UPDATE", "DELETE", "REPLACE")


class RestoredMeanwhile(Exception):
    """The school that this request began with is not the one in the database any more."""


def epoch_now() -> str | None:
    """Asked of SQLite itself: this is no part of what a page asks the database."""
    connection.ensure_connection()
    row: tuple[str] | None = connection.connection.execute(f"SELECT epoch FROM {School._meta.db_table}").fetchone()  # noqa: S608
    return row[0] if row else None


class WritesOnlyTo:
    """Wraps what is sent to SQLite: a write waits for its turn, and then is only done to the school it was meant for."""

    def __init__(self, epoch: str) -> None:
        self.epoch = epoch

    def __call__(self, execute: Callable[..., Any], sql: str, params: Any, many: bool, context: dict[str, Any]) -> Any:
        connection = context["connection"]
        if sql.startswith(WRITES) and not connection.in_atomic_block:
            return self.look_and_write(partial(execute, sql, params, many, context), context["cursor"], connection)
        result = execute(sql, params, many, context)
        if sql.startswith("BEGIN"):
            self.check(connection)
        return result

    def look_and_write(self, write: Callable[[], Any], cursor: Any, connection: Any) -> Any:
        """Both in one transaction: were the lock let go between them, a restore could come in between."""
        with connection.wrap_database_errors:
            connection.connection.execute("BEGIN IMMEDIATE")
        self.check(connection)
        try:
            result = write()
            if cursor.cursor.description:  # of a write: what it hands back, and SQLite ends none before that is read
                cursor.cursor = Handed(cursor.cursor)
            with connection.wrap_database_errors:
                connection.connection.execute("COMMIT")
        except BaseException:
            if connection.connection.in_transaction:  # SQLite ends it itself where the disk is full
                connection.connection.execute("ROLLBACK")
            raise
        return result

    def check(self, connection: Any) -> None:
        if epoch_now() != self.epoch:
            connection.connection.execute("ROLLBACK")
            raise RestoredMeanwhile


class Handed:
    """A cursor whose rows were read already; in all else the cursor itself."""

    def __init__(self, cursor: Any) -> None:
        self.cursor = cursor
        self.rows = iter(cursor.fetchall())

    def fetchone(self) -> Any:
        return next(self.rows, None)

    def fetchall(self) -> list[Any]:
        return list(self.rows)

    def __getattr__(self, name: str) -> Any:
        return getattr(self.cursor, name)


class RestoredMeanwhileMiddleware:
    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: Request) -> HttpResponse:
        if request.school is None or connection.vendor != "sqlite":
            return self.get_response(request)
        epoch = request.school.epoch.hex
        with connection.execute_wrapper(WritesOnlyTo(epoch)):
            response = self.get_response(request)
        return response if epoch_now() == epoch else ask_again(request)

    def process_exception(self, request: Request, error: Exception) -> HttpResponse | None:
        return ask_again(request) if isinstance(error, RestoredMeanwhile) else None


def ask_again(request: Request) -> HttpResponse:
    """As someone signed out is answered: pages are asked for once more, and of a form the text is kept."""
    request.session.modified = False  # it is gone with the school it belonged to
    request.user = AnonymousUser()
    request.school = School.objects.first()
    view = request.resolver_match.func if request.resolver_match else redirect  # no view was found: as for any page
    open_to_all = not getattr(view, "login_required", True)
    if request.method in ("GET", "HEAD") and not request.htmx:
        return redirect(request.get_full_path())
    if open_to_all:
        return redirect(request.path)
    return SignedInMiddleware(lambda request: HttpResponse()).handle_no_permission(request, view)
