"""What a missing part of the machine is called, and what to do about it."""

import os
import sys
from importlib.util import find_spec
from pathlib import Path

import pytest

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


@pytest.fixture
def looked_in(monkeypatch) -> list[str]:
    """The folders that a Windows with none but MSYS2's is told of; libraries are found there alone."""
    folders: list[str] = []

    def add(folder: str) -> None:
        if "msys64" not in folder and "Pango" not in folder:
            raise FileNotFoundError(folder)
        folders.append(folder)

    def load(name: str) -> None:
        if not folders or name != "libpango-1.0-0.dll":
            raise OSError(name)

    monkeypatch.setattr(sys, "platform", "win32")
    monkeypatch.setattr(os, "add_dll_directory", add, raising=False)
    monkeypatch.setattr(checks.ctypes, "CDLL", load)
    monkeypatch.delenv("WEASYPRINT_DLL_DIRECTORIES", raising=False)
    return folders


def test_on_windows_pango_is_looked_for_where_msys2_puts_it(looked_in):
    assert checks.check_pango() == []
    assert looked_in == [r"C:\msys64\ucrt64\bin", r"C:\msys64\mingw64\bin"]


def test_on_windows_its_folders_can_be_named(looked_in, monkeypatch):
    monkeypatch.setenv("WEASYPRINT_DLL_DIRECTORIES", r"D:\Pango;D:\nowhere")
    assert checks.check_pango() == []
    assert looked_in == [r"D:\Pango"]


def test_where_no_folder_has_it_windows_is_told_what_to_install(looked_in, monkeypatch):
    monkeypatch.setenv("WEASYPRINT_DLL_DIRECTORIES", r"D:\nowhere")
    (warning,) = checks.check_pango()
    assert "pacman -S mingw-w64-ucrt-x86_64-pango" in warning.hint


def test_names_and_folders_are_those_of_weasyprint():
    """It can't be asked: to import what holds them loads the libraries themselves."""
    source = Path(find_spec("weasyprint").origin).with_name("text").joinpath("ffi.py").read_text(encoding="utf-8")
    for folder in checks.PANGO_FOLDERS:
        assert folder.replace("\\", "\\\\") in source
    for name in checks.PANGO_NAMES:
        assert f"'{name}'" in source


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
