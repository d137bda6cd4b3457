"""Gets the data ready and serves the app. Started by run.py, inside .venv, with the environment already set.

All in one process: starting Django once instead of once a step keeps the next start under three seconds.
"""

import argparse
import hashlib
import os
import socket
import sys
import threading
import time
import webbrowser
from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path
from typing import Protocol

import django

from .filling import fill_beside

THREADS = 4
CONNECTION_LIMIT = 400
LARGEST_REQUEST = 64 * 1024 * 1024  # over the largest file and form that are read; waitress keeps what comes on disk
HOUR = 3600


def say(text: str) -> None:
    print(text, flush=True)  # noqa: T201 - this is what the person at the terminal reads


class NotStarted(Exception):
    """Why the school does not open, and what to do: the sentence for the person at the terminal."""


def one_start_at_a_time() -> AbstractContextManager[int]:
    """Two starts at once would both make the tables; the second finds everything done."""
    from django.conf import settings

    from .one_at_a_time import one_at_a_time

    return one_at_a_time(
        settings.DATA_DIR / "start.lock",
        when_waiting=lambda: say("Another start is getting the data ready. Waiting for it ..."),
    )


@contextmanager
def all_or_nothing() -> Iterator[None]:
    """Whoever is killed on the way leaves the database as it was.

    One by one, migrations may be done and not yet noted as done when the process dies, and the next start would do them
    again.
    """
    from django.db import connection, transaction

    with connection.constraint_checks_disabled(), transaction.atomic():
        if connection.vendor == "postgresql":
            # Rows that wait for their checks bar a table from being changed: check each when it is written.
            with connection.cursor() as cursor:
                cursor.execute("SET CONSTRAINTS ALL IMMEDIATE")
        yield


def bring_data_up_to_date() -> None:
    from django.core.management import call_command
    from django.db import connection
    from django.db.migrations.executor import MigrationExecutor

    from . import backups

    executor = MigrationExecutor(connection)
    if executor.loader.applied_migrations.keys() - executor.loader.disk_migrations.keys():
        fits = backups.newest_that_fits() if backups.on_this_database() else None
        raise NotStarted(
            "The database was brought up to date by a newer Countfold than this one. Start the newer one; or, to stay with "
            "this one, put back the backup that was written before that upgrade: "
            f"python3 run.py restore {fits.name if fits else 'FILE'}"
        )
    waiting = executor.migration_plan(executor.loader.graph.leaf_nodes())
    if executor.loader.applied_migrations and backups.on_this_database():
        failure = backups.try_to_write_backup()
        if failure and waiting:
            raise NotStarted(f"{failure} This version changes the database, which is not done without a backup.")
        if failure:
            say(f"NO BACKUP: {failure} The school opens all the same.")
    if waiting:
        say("Bringing the database up to date ...")
        with all_or_nothing():
            call_command("migrate", verbosity=0, interactive=False)


def report_another_key() -> None:
    """The key is made anew where it is missing, and nobody would notice before a backup is needed."""
    from django.conf import settings

    from . import backups

    try:
        others = backups.of_another_key() if backups.on_this_database() else 0
    except OSError:
        return
    if others:
        key = settings.DATA_DIR / "secret_key"
        say(
            f"Note: {others} of the backups were not written with the secret key of this server. If {key} was lost, stop the "
            "server and put your copy of it back: without it these are taken for another server's (run.py restore FILE "
            "--from-another-server), and words that were removed before are not known again."
        )


def collect_static_files() -> None:
    """Only when one of them changed: hashing and compressing them takes longer than the rest of a start."""
    from django.conf import settings
    from django.core.management import call_command

    from . import joined_files

    digest = hashlib.sha256(Path(joined_files.__file__).read_bytes())  # what is joined, and how, is laid out too
    for folder in settings.STATICFILES_DIRS:
        for path in sorted(path for path in folder.rglob("*") if path.is_file()):
            digest.update(f"{path.relative_to(folder)} {path.stat().st_size} {path.stat().st_mtime_ns}\n".encode())
    stamp = settings.DATA_DIR / "static.stamp"
    if stamp.exists() and settings.STATIC_ROOT.exists() and stamp.read_text() == digest.hexdigest():
        return
    say("Laying out styles and scripts ...")
    stamp.unlink(missing_ok=True)
    call_command("collectstatic", verbosity=0, interactive=False, clear=True)
    stamp.write_text(digest.hexdigest())


def report_checks() -> None:
    """Say what this machine lacks, in the words of the system checks."""
    from django.core.checks import run_checks

    for message in run_checks():
        if message.id and message.id.startswith("countfold."):
            say(f"Note {message.id}: {message.msg}\n  {message.hint}")


def show_qr(address: str) -> None:
    import segno

    segno.make(address).terminal(out=sys.stdout, compact=True)
    sys.stdout.flush()  # where what is said goes into a log it would lie there until more is said


def back_up_daily() -> None:
    from django.db import connection

    from . import backups

    while True:
        time.sleep(HOUR)
        if backups.newest_is_old():
            failure = backups.try_to_write_backup()
            if failure:
                say(f"NO BACKUP: {failure}")
        connection.close()


def open_demo(options: argparse.Namespace) -> None:
    from django.core.management import call_command

    from accounts.models import School

    from . import backups

    with one_start_at_a_time():
        bring_data_up_to_date()
        if not School.objects.exists():
            say("Making the demo school ...")
            call_command("make_demo_school")
        collect_static_files()
    report_checks()
    server = http_server("127.0.0.1", options.port)
    address = f"http://127.0.0.1:{options.port}/"
    say(f"\nThe demo school is open: {address}   (Ctrl+C closes it)")
    say("Its people, counts and lessons are all invented. Everyone signs in with one click.\n")
    if backups.on_this_database():
        threading.Thread(target=back_up_daily, daemon=True).start()
    fill_beside()
    if options.browser:
        threading.Timer(1, webbrowser.open, [address]).start()
    go_on_serving(server)


def open_school(options: argparse.Namespace) -> None:
    from . import backups

    if options.workers > 1 and backups.on_this_database():
        raise NotStarted("Several processes need PostgreSQL (DATABASE_URL): SQLite lets one write at a time.")
    with one_start_at_a_time():
        bring_data_up_to_date()
        collect_static_files()
    report_checks()
    report_another_key()
    if backups.on_this_database():
        threading.Thread(target=back_up_daily, daemon=True).start()
    if options.cert or options.workers > 1:
        threading.Thread(target=say_open_when_it_is, args=[options], daemon=True).start()
        fill_beside()
        serve_in_processes(options)
    else:
        server = http_server(options.address, options.port)
        say_open(options)
        fill_beside()
        go_on_serving(server)


def say_open(options: argparse.Namespace) -> None:
    from django.conf import settings

    from accounts.models import School
    from accounts.set_up_code import set_up_code

    say(f"\nCountfold is open: {options.public}   (Ctrl+C closes it)")
    # Where it lies in truth: what a program from the Microsoft Store writes Windows keeps in another place than it says.
    say(f"Data folder: {settings.DATA_DIR.resolve()}")
    if options.qr:
        show_qr(options.public)
    if not School.objects.exists():
        say(f"\nThis server has no school yet. Open the address above and type this set-up code: {set_up_code()}\n")


def say_open_when_it_is(options: argparse.Namespace) -> None:
    """The processes that serve take the port by themselves, each when it is ready."""
    from django.db import connection

    host = "127.0.0.1" if options.address == "0.0.0.0" else options.address  # noqa: S104 - compared, not opened
    while True:
        try:
            socket.create_connection((host, options.port), timeout=5).close()
        except OSError:
            time.sleep(0.1)
        else:
            break
    say_open(options)
    connection.close()


class Server(Protocol):
    def run(self) -> None: ...


def http_server(address: str, port: int) -> Server:
    """A server that has its port, so that nothing is called open that can't be reached; `run()` serves."""
    import waitress
    from django.conf import settings

    from .wsgi import application

    try:
        server: Server = waitress.create_server(
            application,
            host=address,
            port=port,
            threads=THREADS,
            connection_limit=CONNECTION_LIMIT,
            max_request_body_size=LARGEST_REQUEST,
            # What a proxy says about the visitor: waitress throws it away unless told, and then we would ask for HTTPS
            # for ever, and slow the whole school down for one who guesses.
            clear_untrusted_proxy_headers=not settings.BEHIND_PROXY,
            ident=None,
        )
        return server
    except OSError as error:
        raise NotStarted(f"Port {port} can't be opened: {error.strerror or error}. Choose another one.") from error


def go_on_serving(server: Server) -> None:
    """What was left unfinished goes on at once; with HTTPS it is the server's own process that does so (config/wsgi.py)."""
    from routines.jobs.runner import start

    start()
    server.run()


def serve_in_processes(options: argparse.Namespace) -> None:
    """One process or more that each do all that a server does; one that dies is replaced. With HTTPS where there is a
    certificate."""
    from django.db import connections
    from granian import Granian
    from granian.constants import Interfaces, SSLProtocols
    from granian.log import LogLevels

    connections.close_all()  # what is open here is not to be shared with them
    Granian(
        "config.wsgi:application",
        address=options.address,
        port=options.port,
        interface=Interfaces.WSGI,
        blocking_threads=THREADS,
        websockets=False,
        workers=options.workers,
        log_level=LogLevels.warning,
        ssl_cert=Path(options.cert) if options.cert else None,
        ssl_key=Path(options.key) if options.key else None,
        ssl_protocol_min=SSLProtocols.tls12,
        respawn_failed_workers=True,
    ).serve()


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("what", choices=("demo", "serve"))
    parser.add_argument("--address", default="127.0.0.1")
    parser.add_argument("--port", type=int, required=True)
    parser.add_argument("--public", default="")
    parser.add_argument("--cert")
    parser.add_argument("--key")
    parser.add_argument("--workers", type=int, default=1)
    parser.add_argument("--qr", action="store_true")
    parser.add_argument("--browser", action="store_true")
    options = parser.parse_args()
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "config.settings")
    try:
        django.setup()
        open_demo(options) if options.what == "demo" else open_school(options)
    except KeyboardInterrupt:
        say("Closed.")
    except Exception as error:
        sentence = why_not_started(error)
        if sentence is None:
            raise
        say(sentence)
        raise SystemExit(1) from None


def why_not_started(error: Exception) -> str | None:
    """The sentence for what goes wrong with a machine rather than with this program."""
    from django.core.exceptions import ImproperlyConfigured

    if isinstance(error, (NotStarted, ImproperlyConfigured)):
        return str(error)

    from django.conf import settings
    from django.db import DatabaseError

    from .full_disk import is_disk_full

    if is_disk_full(error):
        return f"The disk is full: {settings.DATA_DIR}. Make some room, then start again."
    if isinstance(error, OSError) and error.filename:
        return f"{error.filename} can't be used: {error.strerror}."
    if not isinstance(error, DatabaseError):
        return None
    if settings.DATABASES["default"]["ENGINE"].endswith("sqlite3"):
        return (
            f"The database in {settings.DATA_DIR} can't be used: {error}. If it is damaged, put a backup back: "
            f"python3 run.py restore lists those in {settings.DATA_DIR / 'backups'}."
        )
    return f"The database at DATABASE_URL can't be used: {str(error).strip()}"


if __name__ == "__main__":
    main()
