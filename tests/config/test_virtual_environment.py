"""Making .venv: once for each content of the requirement files."""

import pytest

from config import virtual_environment


def test_an_older_python_is_told_what_is_needed(monkeypatch, capsys):
    monkeypatch.setattr(virtual_environment, "NEEDED_PYTHON", (99, 0))
    with pytest.raises(SystemExit):
        virtual_environment.prepare(("requirements.txt",))
    assert "Countfold needs Python 3.11 or newer" in capsys.readouterr().out


def test_requirements_are_installed_once_for_each_content(monkeypatch, tmp_path):
    installed = []
    (tmp_path / "requirements.txt").write_text("one")
    monkeypatch.setattr(virtual_environment, "HERE", tmp_path)
    monkeypatch.setattr(virtual_environment, "VENV", tmp_path)
    monkeypatch.setattr(virtual_environment, "make_venv", lambda: None)
    monkeypatch.setattr(virtual_environment, "install", installed.append)
    virtual_environment.prepare(("requirements.txt",))
    virtual_environment.prepare(("requirements.txt",))
    assert installed == ["requirements.txt"]
    (tmp_path / "requirements.txt").write_text("two")
    virtual_environment.prepare(("requirements.txt",))
    assert installed == ["requirements.txt", "requirements.txt"]


def test_an_installation_that_fails_leaves_no_stamp(monkeypatch, tmp_path):
    def fails(name):
        virtual_environment.stop("no network")

    (tmp_path / "requirements.txt").write_text("one")
    monkeypatch.setattr(virtual_environment, "HERE", tmp_path)
    monkeypatch.setattr(virtual_environment, "VENV", tmp_path)
    monkeypatch.setattr(virtual_environment, "make_venv", lambda: None)
    monkeypatch.setattr(virtual_environment, "install", fails)
    with pytest.raises(SystemExit):
        virtual_environment.prepare(("requirements.txt",))
    assert not list(tmp_path.glob("*.stamp"))
