"""A school served on its network over HTTPS, as `run.py serve --lan --cert --key` starts it: a phone reads the code, signs in,
and its cookies go over HTTPS alone.
"""

import http.client
import http.cookiejar
import re
import shutil
import socket
import ssl
import subprocess
import sys
import urllib.error
import urllib.parse
import urllib.request
import warnings
from pathlib import Path

import pytest

from tests.absent import absent
from tests.config.commands import ROOT, environment, manage
from tests.config.qr_reader import modules_of, read_qr
from tests.config.test_run import run

__all__ = ["run"]

PASSPHRASE = "otter violin sandwich moon"
SCHOOL = f"""
from accounts.models import School, User
School.objects.create(pk=1, name="Larkfield School")
ames = User(sign_in_name="ames", display_name="Ada Ames")
ames.set_password("{PASSPHRASE}")
ames.save()
"""


class Started(Exception):
    """run.py is about to become the server: with these words and settings."""

    def __init__(self, *words: str, **settings: str) -> None:
        self.words, self.settings = words, settings


@pytest.fixture
def port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@pytest.fixture
def certificate(tmp_path, run) -> tuple[Path, Path]:
    """Its own, for this machine's addresses."""
    if not shutil.which("openssl"):
        absent("openssl, to make a certificate with")
    cert, key = tmp_path / "cert.pem", tmp_path / "key.pem"
    names = f"subjectAltName=DNS:localhost,IP:127.0.0.1,IP:{run.address_on_the_network()}"
    words = ["-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", "/CN=localhost", "-addext", names]
    done = subprocess.run(
        ["openssl", "req", "-x509", *words, "-keyout", key, "-out", cert], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    return cert, key


@pytest.fixture
def serve(run, monkeypatch, tmp_path, port):
    """Starts what run.py would become, and gives the lines that it says until it has said everything."""
    folder, running = tmp_path / "data", []
    folder.mkdir()
    for words in (("migrate", "--verbosity", "0"), ("shell", "--verbosity", "0", "-c", SCHOOL)):
        done = manage(folder, *words)
        assert done.returncode == 0, done.stderr

    def become(*words, **settings):
        raise Started(*words, **settings)

    monkeypatch.setattr(run, "prepare", lambda files: None)
    monkeypatch.setattr(run, "become", become)
    monkeypatch.delenv("COUNTFOLD_HOSTS", raising=False)

    def started(*words: str) -> list[str]:
        with pytest.raises(Started) as told:
            run.serve(run.read_arguments(["serve", "--port", str(port), *map(str, words)]))
        server = subprocess.Popen(
            [sys.executable, *told.value.words],
            cwd=ROOT,
            env={
                **environment(folder),
                **told.value.settings,
                "COUNTFOLD_DATA": str(folder),
                "PYTHONIOENCODING": "utf-8",
            },
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            encoding="utf-8",
        )
        running.append(server)
        said = []
        for line in server.stdout:
            said.append(line.rstrip("\n"))
            code = code_in(said)
            if "--lan" in words:
                if code and len(code) == (len(code[0]) + 1) // 2:  # two rows to a line
                    return said
            elif "Data folder" in line:
                return said
        pytest.fail("\n".join(said))

    yield started
    for server in running:
        server.terminate()
        server.communicate(timeout=20)


def code_in(said: list[str]) -> list[str]:
    return [line for line in said if line and set(line) <= set("█▀▄ ")]


def address_in(said: list[str]) -> str:
    return re.search(r"Countfold is open: (\S+)", "\n".join(said))[1]


class Cookies(http.cookiejar.CookieJar):
    """taken: the last of each name, whether it is still kept or not."""

    def __init__(self) -> None:
        super().__init__()
        self.taken: dict[str, http.cookiejar.Cookie] = {}

    def set_cookie(self, cookie: http.cookiejar.Cookie) -> None:
        self.taken[cookie.name] = cookie
        super().set_cookie(cookie)


class Phone:
    """Follows where it is led, and keeps cookies as a browser does: those that are Secure for HTTPS alone."""

    def __init__(self, cert: Path | None = None) -> None:
        self.cookies = Cookies()
        with_cookies = urllib.request.HTTPCookieProcessor(self.cookies)
        trusts = ssl.create_default_context(cafile=str(cert)) if cert else None
        no_proxy = urllib.request.ProxyHandler({})
        self.opener = urllib.request.build_opener(no_proxy, with_cookies, urllib.request.HTTPSHandler(context=trusts))

    def ask(self, address: str, **fields: str):
        sent = None
        if fields:
            token = next(cookie.value for cookie in self.cookies if cookie.name.endswith("countfold_csrf"))
            sent = urllib.parse.urlencode({**fields, "csrfmiddlewaretoken": token}).encode()
        request = urllib.request.Request(address, sent, headers={"Referer": address})
        return self.opener.open(request, timeout=30)


def test_the_code_leads_a_phone_to_the_school_over_https(serve, certificate, run, port):
    cert, key = certificate
    said = serve("--lan", "--cert", cert, "--key", key)
    address = read_qr(modules_of(code_in(said)))
    assert address == address_in(said) == f"https://{run.address_on_the_network()}:{port}/"

    phone = Phone(cert)
    page = phone.ask(urllib.parse.urljoin(address, "sign-in/"))
    assert "Strict-Transport-Security" not in page.headers  # as DEVELOPERS.md says, and why
    home = phone.ask(page.url, name="ames", passphrase=PASSPHRASE, next="/me/")
    assert home.url == urllib.parse.urljoin(address, "/me/")
    assert "Ada Ames" in home.read().decode()
    phone.ask(address + "sign-out/everywhere/", now="yes")
    taken = phone.cookies.taken
    assert taken.keys() == {f"__Host-countfold_{name}" for name in ("session", "csrf", "said")}
    assert all(cookie.secure and cookie.path == "/" and not cookie.domain_specified for cookie in taken.values())
    assert all(cookie.has_nonstandard_attr("HttpOnly") for cookie in taken.values())


def test_nobody_is_let_in_who_does_not_know_the_certificate_and_no_plain_request_is_answered(serve, certificate, port):
    cert, key = certificate
    serve("--cert", cert, "--key", key)
    with pytest.raises(urllib.error.URLError, match="CERTIFICATE_VERIFY_FAILED"):
        Phone().ask(f"https://127.0.0.1:{port}/sign-in/")
    with pytest.raises((OSError, http.client.HTTPException)):
        Phone().ask(f"http://127.0.0.1:{port}/sign-in/")
    context = ssl.create_default_context(cafile=str(cert))
    with warnings.catch_warnings(action="ignore", category=DeprecationWarning):  # that it is old is why it is tried
        context.maximum_version = ssl.TLSVersion.TLSv1_1
    with pytest.raises(OSError), socket.create_connection(("127.0.0.1", port), timeout=10) as plain:
        context.wrap_socket(plain, server_hostname="localhost")


def test_without_a_certificate_the_code_leads_there_too_and_cookies_are_plain(serve, run, port):
    said = serve("--lan")
    address = read_qr(modules_of(code_in(said)))
    assert address == address_in(said) == f"http://{run.address_on_the_network()}:{port}/"
    phone = Phone()
    phone.ask(urllib.parse.urljoin(address, "sign-in/"))
    home = phone.ask(urllib.parse.urljoin(address, "sign-in/"), name="ames", passphrase=PASSPHRASE, next="/me/")
    assert "Ada Ames" in home.read().decode()
    assert not any(cookie.secure for cookie in phone.cookies)


def test_the_reader_reads_what_is_drawn_and_nothing_else():
    """Checked against the library that draws: another address, another code."""
    import io

    import segno

    for address in ("http://10.0.0.7:8000/", "https://192.168.178.201:65535/"):
        drawn = io.StringIO()
        segno.make(address).terminal(out=drawn, compact=True)
        assert read_qr(modules_of(drawn.getvalue().splitlines())) == address
