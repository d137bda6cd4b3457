#!/usr/bin/env python3
"""Runs Countfold from a bare clone with nothing but Python 3.11 or newer.

  python3 run.py                the demo school, on this machine only (--port N, --no-browser)
  python3 run.py serve          your own school (--lan for the school network, --cert and --key for HTTPS,
                                --workers N for several processes on PostgreSQL)
  python3 run.py backup         write a backup of your school's data now
  python3 run.py restore        list the backups
  python3 run.py restore FILE   put one back
  python3 run.py test           lint and every test; further words go to pytest
  python3 run.py lint           style, types, import rules, migrations, security settings
  python3 run.py bench [NAME]   measure
  python3 run.py proof --grids N   the engine against its brute force, for as long as you like

Standard library only: it builds .venv itself, from the pinned requirements, and starts everything else in there.
"""

import sys

NEEDED_PYTHON = (3, 11)
# Before anything that an older Python could not run; so far this file is to be read by Python 3.6 and newer.
if sys.version_info < NEEDED_PYTHON:
    raise SystemExit(f"Countfold needs Python 3.11 or newer; this is {sys.version.split()[0]}.")

import argparse
import errno
import os
import shutil
import socket
import subprocess
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from config.virtual_environment import HERE, PYTHON, WINDOWS, prepare, say, stop

RUNTIME = ("requirements.txt",)
TEST = ("requirements-test.txt",)
DEV = ("requirements-test.txt", "requirements-dev.txt")
HIGHEST_PORT = 65_535
FREE_FOR_ALL = 1024  # from there on ports are open to every account
MOST_WORKERS = 8  # each holds some ten connections, of which PostgreSQL takes a hundred unless told otherwise


# Where Homebrew puts libraries on a Mac of today, which no program looks into that did not come with it.
HOMEBREW = "/opt/homebrew/lib"


def child_environment(**settings: str) -> dict[str, str]:
    if sys.platform == "darwin":
        settings.setdefault("DYLD_FALLBACK_LIBRARY_PATH", libraries_on_a_mac())
    return {**os.environ, "DJANGO_SETTINGS_MODULE": "config.settings", "PYTHONUTF8": "1", **settings}


def libraries_on_a_mac() -> str:
    """The folders looked in after all others: unless told, the system takes the last two."""
    return os.environ.get("DYLD_FALLBACK_LIBRARY_PATH") or f"{HOMEBREW}:/usr/local/lib:/usr/lib"


def run(*arguments: str | Path, **settings: str) -> int:
    """Run Python inside .venv and wait for it."""
    return subprocess.call([PYTHON, *arguments], cwd=HERE, env=child_environment(**settings))


def become(*arguments: str, **settings: str) -> int:
    """Go on as another program, so that whoever stops this one stops the server and not just its parent."""
    if WINDOWS:
        try:
            return run(*arguments, **settings)
        except KeyboardInterrupt:
            return 0
    os.chdir(HERE)
    return os.execve(PYTHON, [str(PYTHON), *arguments], child_environment(**settings))


# Serving


def own_data_folder() -> Path:
    """Where a school's own data lie: outside the clone, so that throwing the clone away loses nothing."""
    try:
        home = Path.home()
    except RuntimeError:
        stop("This account has no home folder. Say with COUNTFOLD_DATA where your school's data shall lie.")
    if WINDOWS:
        return Path(os.environ.get("LOCALAPPDATA") or home / "AppData" / "Local") / "Countfold"
    if sys.platform == "darwin":
        return home / "Library" / "Application Support" / "Countfold"
    return Path(os.environ.get("XDG_DATA_HOME") or home / ".local" / "share") / "countfold"


def own_data() -> dict[str, str]:
    return {"COUNTFOLD_DATA": os.environ.get("COUNTFOLD_DATA") or str(own_data_folder()), "COUNTFOLD_DEMO": "0"}


def require_free_port(address: str, port: int) -> None:
    with socket.socket() as probe:
        if not WINDOWS:
            probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((address, port))
        except OSError as error:
            stop(why_not_bound(error, port))


def why_not_bound(error: OSError, port: int) -> str:
    other = port + 1 if port < HIGHEST_PORT else port - 1
    if error.errno == errno.EADDRINUSE:
        return (
            f"Port {port} is taken. If Countfold is running already, stop that one first; "
            f"else choose another port, such as --port {other}."
        )
    if error.errno == errno.EACCES and port >= FREE_FOR_ALL:
        return f"This machine keeps port {port} for something else. Choose another one, such as --port {other}."
    if error.errno == errno.EACCES:
        return f"This account may not open port {port}. Choose one from 1024 on, such as --port 8000."
    return f"Port {port} can't be opened: {error.strerror or error}."


def port_number(text: str) -> int:
    if not (text.isascii() and text.isdecimal() and len(text) < 6 and 0 < int(text) <= HIGHEST_PORT):
        raise argparse.ArgumentTypeError(f"a port is a number from 1 to {HIGHEST_PORT}, such as 8000")
    return int(text)


def number_of_workers(text: str) -> int:
    if not (text.isascii() and text.isdecimal() and len(text) < 3 and 0 < int(text) <= MOST_WORKERS):
        raise argparse.ArgumentTypeError(f"a number of processes is one from 1 to {MOST_WORKERS}")
    return int(text)


def require_certificate(cert: str, key: str) -> None:
    import ssl

    try:
        ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER).load_cert_chain(cert, key, password="")
    except ssl.SSLError:
        stop(f"{cert} and {key} can't be used: HTTPS needs a certificate in PEM and its own key, without a passphrase.")
    except OSError as error:
        stop(f"{cert} or {key} can't be read: {error.strerror or error}.")


def address_on_the_network() -> str:
    """This machine's address as others on its network see it; connecting a datagram socket sends nothing."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(("192.0.2.1", 9))
        except OSError:
            stop("This machine is on no network, so --lan has no address to give out.")
        address: str = probe.getsockname()[0]
        return address


def demo(options: argparse.Namespace) -> int:
    require_free_port("127.0.0.1", options.port)
    prepare(RUNTIME)
    words = ["-m", "config.serving", "demo", "--port", str(options.port)]
    if not options.no_browser:
        words.append("--browser")
    return become(
        *words, COUNTFOLD_DATA=str(HERE / "demo-data"), COUNTFOLD_DEMO="1", COUNTFOLD_HOSTS="localhost,127.0.0.1"
    )


def serve(options: argparse.Namespace) -> int:
    if bool(options.cert) != bool(options.key):
        stop("HTTPS needs both: --cert FILE and --key FILE.")
    for path in (options.cert, options.key):
        if path and not Path(path).is_file():
            stop(f"There is no file {path}.")
    if options.cert:
        require_certificate(options.cert, options.key)
    if options.workers > 1 and not os.environ.get("DATABASE_URL", "").strip():
        stop(
            "Several processes need PostgreSQL (DATABASE_URL): SQLite lets one write at a time. One process serves a school."
        )
    if options.workers > 1 and WINDOWS:
        stop("On Windows one process serves: leave --workers out.")
    address = "0.0.0.0" if options.lan else "127.0.0.1"  # noqa: S104 - only where --lan asks for it
    require_free_port(address, options.port)
    prepare(RUNTIME)
    hosts = ["localhost", "127.0.0.1"]
    public = "127.0.0.1"
    if options.lan:
        public = address_on_the_network()
        hosts += [public, socket.gethostname().lower()]
    if options.name:
        public = options.name.lower()
        hosts.append(public)
    scheme, port = "https" if options.cert else "http", f":{options.port}"
    if os.environ.get("COUNTFOLD_BEHIND_PROXY") == "1":  # what people open is the proxy
        scheme, port = "https" if os.environ.get("COUNTFOLD_HTTPS") == "1" else "http", ""
    words = ["-m", "config.serving", "serve", "--address", address, "--port", str(options.port)]
    words += ["--public", f"{scheme}://{public}{port}/"]
    if options.cert:
        words += ["--cert", str(Path(options.cert).resolve()), "--key", str(Path(options.key).resolve())]
    words += ["--workers", str(options.workers)]
    if options.lan:
        words.append("--qr")
    settings = {"COUNTFOLD_HOSTS": os.environ.get("COUNTFOLD_HOSTS") or ",".join(dict.fromkeys(hosts))}
    if options.cert:
        settings["COUNTFOLD_HTTPS"] = "1"
    return become(*words, **own_data(), **settings)


def backup(options: argparse.Namespace) -> int:
    prepare(RUNTIME)
    return run("manage.py", "backup", **own_data())


def restore(options: argparse.Namespace) -> int:
    kept = Path(own_data()["COUNTFOLD_DATA"]) / "backups"
    if not options.file:
        return say_backups(kept)
    path = next((path for path in (Path(options.file), kept / options.file) if path.is_file()), None)
    if path is None:
        stop(f"There is no file {options.file}, and none of that name in {kept}.")
    prepare(RUNTIME)
    more = ["--from-another-server"] if options.from_another_server else []
    return run("manage.py", "restore", str(path.resolve()), *more, **own_data())


def say_backups(folder: Path) -> int:
    found = sorted(folder.glob("countfold-*.zip"), reverse=True)
    if not found:
        stop(f"There is no backup in {folder}.")
    say(f"In {folder} there are, the newest first:\n")
    for path in found:
        written = datetime.fromtimestamp(path.stat().st_mtime).astimezone()
        say(f"  {path.name}   written {written:%Y-%m-%d %H:%M}")
    say(f"\nPut one back by its name: {'py' if WINDOWS else 'python3'} run.py restore {found[0].name}")
    return 1


# Proving


def missing_parts() -> list[str]:
    """What of this machine the whole suite needs and does not find."""
    missing = []
    browser = subprocess.run(
        [PYTHON, "-m", "tests.browser.chromium"],
        cwd=HERE,
        env=child_environment(),
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
        check=False,
    )
    if browser.returncode:
        missing.append(f"{browser.stdout.strip() or 'Chromium'}: the browser tests")
    if not shutil.which("node"):
        missing.append("node: the tests of the scripts")
    if run("-c", "from config.checks import pango_is_there; raise SystemExit(not pango_is_there())"):
        missing.append("Pango: the tests of the PDF pages")
    return missing


def lint(options: argparse.Namespace) -> int:
    prepare(DEV)
    steps = {
        "ruff check": ("-m", "ruff", "check", "."),
        "ruff format": ("-m", "ruff", "format", "--check", "."),
        "mypy": ("-m", "mypy"),
        "mypy, for Windows": ("-m", "mypy", "--platform", "win32", "--cache-dir", ".mypy_cache/windows"),
        "import rules": ("-c", "from importlinter.cli import lint_imports_command as lint; lint()"),
        "migrations": ("manage.py", "makemigrations", "--check", "--dry-run"),
        "security settings": ("manage.py", "check", "--deploy", "--tag", "security", "--fail-level", "WARNING"),
    }
    failed = []
    for name, words in steps.items():
        say(f"-- {name}")
        if run(*words, COUNTFOLD_HTTPS="1"):
            failed.append(name)
    if failed:
        say(f"Not in order: {', '.join(failed)}.")
    return 1 if failed else 0


def test(options: argparse.Namespace) -> int:
    prepare(DEV)
    missing = missing_parts()
    if missing and os.environ.get("CI") == "true":
        stop("Missing on this machine, and CI skips nothing: " + "; ".join(missing) + ".")
    not_in_order = lint(options)
    result = run("-m", "pytest", *(options.words or ["-n", "2"]))
    for part in missing:
        say(f"!! NOT TESTED HERE, because it is missing: {part}.")
    if "DATABASE_URL" not in os.environ:
        say("Tested on SQLite. For PostgreSQL set DATABASE_URL and run this again (.ci/run does both).")
    return result or not_in_order


def bench(options: argparse.Namespace) -> int:
    prepare(TEST)
    there = sorted(path.stem for path in (HERE / "bench").glob("*.py") if not path.stem.startswith("_"))
    names = [options.name] if options.name else there
    if not names or set(names) - set(there):
        stop(f"There is no such measurement. There are: {', '.join(there) or 'none yet'}.")
    size = {"BENCH_COUNTS": str(options.counts)} if options.counts else {}
    size |= {"BENCH_KEEP": os.path.abspath(options.keep)} if options.keep else {}
    return max(run("-c", f"from bench.{name} import main; raise SystemExit(main())", **size) for name in names)


def proof(options: argparse.Namespace) -> int:
    prepare(TEST)
    claims = run("-m", "tests.brute_force.long_run", str(options.grids))
    return run("-m", "tests.counting.slips.foreseen_and_heard", str(min(options.grids, 2000))) or claims


def read_arguments(words: list[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.set_defaults(command=demo)
    commands = parser.add_subparsers(metavar="COMMAND")

    def add(name: str, command: Callable[[argparse.Namespace], int], summary: str) -> argparse.ArgumentParser:
        added = commands.add_parser(name, help=summary)
        added.set_defaults(command=command)
        return added

    for demo_parser in (parser, add("demo", demo, "the demo school (as with no command)")):
        demo_parser.add_argument("--port", type=port_number, default=8000)
        demo_parser.add_argument("--no-browser", action="store_true", help="open no browser window")
    own = add("serve", serve, "your own school")
    own.add_argument("--port", type=port_number, default=8000)
    own.add_argument("--lan", action="store_true", help="let other devices on the school network in")
    own.add_argument("--name", help="the host name others use, such as countfold.myschool.example")
    own.add_argument("--cert", help="certificate file for HTTPS")
    own.add_argument("--key", help="key file for HTTPS")
    own.add_argument("--workers", type=number_of_workers, default=1, help="how many processes serve (with PostgreSQL)")
    add("backup", backup, "write a backup now")
    putting_back = add("restore", restore, "put a backup back")
    putting_back.add_argument("file", nargs="?", help="its name or its whole path; without one the backups are listed")
    putting_back.add_argument("--from-another-server", action="store_true", help="accept a backup made elsewhere")
    add("lint", lint, "style, types, import rules, migrations, security settings")
    add("test", test, "lint and every test; further words go to pytest")
    measured = add("bench", bench, "measure")
    measured.add_argument("name", nargs="?")
    measured.add_argument("--counts", type=int, help="scale: how many counts the large bank has (100000)")
    measured.add_argument(
        "--keep", metavar="FOLDER", help="scale: leave the filled banks there, and begin with those that are there"
    )
    add("proof", proof, "the engine against its brute force, and its slips against themselves").add_argument(
        "--grids", type=int, default=1000
    )
    options, further = parser.parse_known_args(words)
    if further and options.command is not test:
        parser.error(f"unknown: {' '.join(further)}")
    options.words = further
    return options


if __name__ == "__main__":
    chosen = read_arguments(sys.argv[1:])
    try:
        raise SystemExit(chosen.command(chosen))
    except KeyboardInterrupt:
        say("Stopped.")
        raise SystemExit(130) from None
