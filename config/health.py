"""`/health/`, for whatever watches the server: whether the database answers and the disk has room, and nothing else.

Before all that asks the database, so that it can say that this one does not answer; open to everybody, so without numbers.
"""

from collections.abc import Callable

from django.db import DatabaseError, connection
from django.db.migrations.recorder import MigrationRecorder
from django.http import HttpRequest, JsonResponse
from django.http.response import HttpResponseBase

from .full_disk import free_room

ADDRESS = "/health/"
# Saves still go through with this much, but not for long.
LEAST_ROOM = 20 * 1024 * 1024


class HealthMiddleware:
    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        if request.path != ADDRESS:
            return self.get_response(request)
        found = {"database": database_answers(), "disk": disk_has_room()}
        said = {part: "ok" if well else "not ok" for part, well in found.items()}
        return JsonResponse(said, status=200 if all(found.values()) else 503)


def database_answers() -> bool:
    try:
        connection.ensure_connection()
        with connection.cursor() as cursor:
            cursor.execute(f"SELECT name FROM {MigrationRecorder.Migration._meta.db_table} LIMIT 1")  # noqa: S608
            return cursor.fetchone() is not None
    except DatabaseError:
        return False


def disk_has_room() -> bool:
    try:
        return free_room() >= LEAST_ROOM
    except OSError:
        return False
