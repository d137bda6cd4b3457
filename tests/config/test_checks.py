"""What a missing part of the machine is called, and what to do about it."""

from config import checks


def test_a_missing_pango_is_a_named_warning_with_a_hint(monkeypatch):
    monkeypatch.setattr(checks, "PANGO_NAMES", ("libnosuchpango.so.0",))
    (warning,) = checks.check_pango()
    assert warning.id == "countfold.W001"
    assert "Pango" in warning.msg
    assert "install" in warning.hint


def test_where_pango_is_there_nothing_is_said(monkeypatch):
    monkeypatch.setattr(checks, "pango_is_there", lambda: True)
    assert checks.check_pango() == []


def test_plain_http_on_a_network_is_a_named_warning(settings):
    settings.ALLOWED_HOSTS, settings.HTTPS = ["localhost", "school.lan"], False
    (warning,) = checks.check_plain_http()
    assert warning.id == "countfold.W002"
    assert "school.lan" in warning.msg


def test_https_or_one_machine_is_fine(settings):
    settings.ALLOWED_HOSTS, settings.HTTPS = ["localhost", "school.lan"], True
    assert checks.check_plain_http() == []
    settings.ALLOWED_HOSTS, settings.HTTPS = ["localhost", "127.0.0.1"], False
    assert checks.check_plain_http() == []
