"""run.py before it starts anything: what it is told, and what it says is missing."""

import ast
import errno
import importlib.util
import socket
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def run():
    """run.py as a module of its own, for each test afresh."""
    spec = importlib.util.spec_from_file_location("run_py", ROOT / "run.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_no_command_means_the_demo_school(run):
    options = run.read_arguments(["--port", "8123", "--no-browser"])
    assert (options.command, options.port, options.no_browser) == (run.demo, 8123, True)


def test_further_words_go_to_pytest(run):
    options = run.read_arguments(["test", "tests/accounts", "-k", "kept"])
    assert (options.command, options.words) == (run.test, ["tests/accounts", "-k", "kept"])


def test_further_words_elsewhere_are_refused(run, capsys):
    with pytest.raises(SystemExit):
        run.read_arguments(["serve", "--nonsense"])
    assert "unknown: --nonsense" in capsys.readouterr().err


@pytest.mark.parametrize("name", ["serve", "backup", "lint", "test", "bench", "proof", "demo"])
def test_every_command_is_known(run, name):
    assert run.read_arguments([name]).command is getattr(run, name)


def test_a_taken_port_is_said_with_another_to_try(run, capsys):
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = taken.getsockname()[1]
        with pytest.raises(SystemExit):
            run.require_free_port("127.0.0.1", port)
    said = capsys.readouterr().out
    assert f"--port {port + 1}" in said
    assert "If Countfold is running already, stop that one first" in said


@pytest.mark.parametrize("port", ["0", "-1", "65536", "9" * 5000, "8000.5", "٣٣", ""])
def test_a_port_that_can_not_be_is_said(run, capsys, port):
    with pytest.raises(SystemExit):
        run.read_arguments([f"--port={port}"])
    assert "a port is a number from 1 to 65535" in capsys.readouterr().err


def test_beyond_the_highest_port_a_lower_one_is_offered(run):
    taken = OSError(errno.EADDRINUSE, "Address already in use")
    assert "--port 65534" in run.why_not_bound(taken, 65535)


def test_a_port_this_account_may_not_open_is_said(run):
    assert "may not open port 80" in run.why_not_bound(PermissionError(errno.EACCES, "Permission denied"), 80)


def test_a_port_that_windows_keeps_for_itself_is_said_with_another_to_try(run):
    kept = run.why_not_bound(PermissionError(errno.EACCES, "An attempt was made to access a socket"), 8000)
    assert kept == "This machine keeps port 8000 for something else. Choose another one, such as --port 8001."


@pytest.fixture
def words(run, monkeypatch) -> list[str]:
    """What the server would be started with."""
    told: list[str] = []
    monkeypatch.setattr(run, "require_free_port", lambda address, port: None)
    monkeypatch.setattr(run, "prepare", lambda files: None)
    monkeypatch.setattr(run, "address_on_the_network", lambda: "10.0.0.7")
    monkeypatch.setattr(run, "become", lambda *words, **settings: told.extend(words))
    return told


@pytest.mark.parametrize(
    ("proxy", "https", "address"),
    [
        ("", "", "http://counts.example:8123/"),
        ("1", "", "http://counts.example/"),
        ("1", "1", "https://counts.example/"),
    ],
)
def test_the_address_that_is_said_is_the_one_that_people_open(run, words, monkeypatch, proxy, https, address):
    monkeypatch.setenv("COUNTFOLD_BEHIND_PROXY", proxy)
    monkeypatch.setenv("COUNTFOLD_HTTPS", https)
    run.serve(run.read_arguments(["serve", "--lan", "--port", "8123", "--name", "counts.example"]))
    assert words[words.index("--public") + 1] == address


def test_on_windows_one_process_serves(run, words, monkeypatch, capsys):
    monkeypatch.setenv("DATABASE_URL", "postgres://countfold@127.0.0.1/countfold")
    monkeypatch.setattr(run, "WINDOWS", True)
    with pytest.raises(SystemExit):
        run.serve(run.read_arguments(["serve", "--workers", "2"]))
    assert "On Windows one process serves" in capsys.readouterr().out
    run.serve(run.read_arguments(["serve"]))
    assert words[-2:] == ["--workers", "1"]


@pytest.fixture
def backups(tmp_path, monkeypatch) -> Path:
    monkeypatch.setenv("COUNTFOLD_DATA", str(tmp_path))
    (tmp_path / "backups").mkdir()
    return tmp_path / "backups"


def test_without_a_file_the_backups_are_listed_the_newest_first(run, backups, capsys):
    names = ["countfold-2026-11-29-070000-000000.zip", "countfold-2026-11-30-070000-000000.zip"]
    for name in (*names, "unfinished.zip"):
        (backups / name).touch()
    assert run.restore(run.read_arguments(["restore"])) == 1
    said = capsys.readouterr().out
    assert [line.split()[0] for line in said.splitlines() if line.startswith("  ")] == names[::-1]
    assert said.endswith(f"run.py restore {names[1]}\n")


def test_where_there_is_no_backup_that_is_said(run, backups, capsys):
    with pytest.raises(SystemExit):
        run.restore(run.read_arguments(["restore"]))
    assert capsys.readouterr().out == f"There is no backup in {backups}.\n"


def test_a_backup_is_found_by_its_name_and_by_its_path(run, backups, tmp_path, monkeypatch, capsys):
    restored = []
    monkeypatch.setattr(run, "prepare", lambda files: None)
    monkeypatch.setattr(run, "run", lambda *words, **settings: restored.append(words[2]))
    for folder, name in ((backups, "kept.zip"), (tmp_path, "brought.zip")):
        (folder / name).touch()
    for file in ("kept.zip", str(tmp_path / "brought.zip"), str(backups / "kept.zip")):
        run.restore(run.read_arguments(["restore", file]))
    assert restored == [str(backups / "kept.zip"), str(tmp_path / "brought.zip"), str(backups / "kept.zip")]
    with pytest.raises(SystemExit):
        run.restore(run.read_arguments(["restore", "brought.zip"]))
    assert f"There is no file brought.zip, and none of that name in {backups}." in capsys.readouterr().out


def test_what_is_no_certificate_is_said(run, capsys):
    with pytest.raises(SystemExit):
        run.serve(run.read_arguments(["serve", "--cert", str(ROOT / "README.md"), "--key", str(ROOT / "README.md")]))
    assert "HTTPS needs a certificate in PEM" in capsys.readouterr().out


def test_an_older_python_reads_the_file_and_is_told_what_is_needed():
    ast.parse((ROOT / "run.py").read_text(encoding="utf-8"), feature_version=(3, 6))
    older = (
        "import sys, runpy; sys.version_info, sys.version = (3, 6, 15), '3.6.15 (default)'; runpy.run_path('run.py')"
    )
    done = subprocess.run([sys.executable, "-c", older], cwd=ROOT, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (1, "Countfold needs Python 3.11 or newer; this is 3.6.15.\n")


def test_on_a_mac_the_libraries_of_homebrew_are_found(run, monkeypatch):
    monkeypatch.delenv("DYLD_FALLBACK_LIBRARY_PATH", raising=False)
    assert "DYLD_FALLBACK_LIBRARY_PATH" not in run.child_environment()
    monkeypatch.setattr(run.sys, "platform", "darwin")
    told = run.child_environment(COUNTFOLD_DEMO="1")
    assert (told["COUNTFOLD_DEMO"], told["DYLD_FALLBACK_LIBRARY_PATH"].split(":")[0]) == ("1", "/opt/homebrew/lib")
    monkeypatch.setenv("DYLD_FALLBACK_LIBRARY_PATH", "/somewhere/else")
    assert run.child_environment()["DYLD_FALLBACK_LIBRARY_PATH"] == "/somewhere/else"


@pytest.mark.parametrize("number", ["0", "9", "-1", "two", "٣", "9" * 5000])
def test_a_number_of_processes_that_can_not_be_is_said(run, capsys, number):
    with pytest.raises(SystemExit):
        run.read_arguments(["serve", f"--workers={number}"])
    assert "from 1 to 8" in capsys.readouterr().err


def test_several_processes_need_postgresql(run, capsys, monkeypatch):
    monkeypatch.delenv("DATABASE_URL", raising=False)
    with pytest.raises(SystemExit):
        run.serve(run.read_arguments(["serve", "--workers", "2"]))
    assert "Several processes need PostgreSQL" in capsys.readouterr().out


def test_https_needs_certificate_and_key(run, capsys):
    with pytest.raises(SystemExit):
        run.serve(run.read_arguments(["serve", "--cert", "here.pem"]))
    assert "--cert FILE and --key FILE" in capsys.readouterr().out


def test_requirements_are_pinned_hashed_and_name_no_index():
    for path in ROOT.glob("requirements*.txt"):
        text = path.read_text()
        assert "--hash=sha256:" in text
        assert "index-url" not in text
        assert "://" not in "\n".join(line for line in text.splitlines() if not line.lstrip().startswith("#"))
