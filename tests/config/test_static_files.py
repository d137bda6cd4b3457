"""Scripts import each other under hashed names, so that a browser never mixes an old part with a new one."""

import re
from pathlib import Path

import pytest
from django.conf import settings
from django.contrib.staticfiles.storage import staticfiles_storage
from django.core.management import call_command

IMPORTED = re.compile(r"""(?:from|import)\s*"(\.[^"]+)";""")


@pytest.fixture
def collected(settings, tmp_path) -> Path:
    settings.STATIC_ROOT = tmp_path
    settings.STORAGES = {**settings.STORAGES, "staticfiles": {"BACKEND": "config.static_files.StaticFiles"}}
    call_command("collectstatic", verbosity=0, interactive=False)
    return tmp_path


def test_every_import_between_scripts_names_a_collected_file_by_its_hash(collected):
    page = collected / staticfiles_storage.stored_name("js/lesson/board.js")
    seen, waiting = set(), [page]
    while waiting:
        script = waiting.pop()
        if script in seen:
            continue
        seen.add(script)
        for name in IMPORTED.findall(script.read_text(encoding="utf-8")):
            assert re.search(r"\.[0-9a-f]{12}\.js$", name), f"{script.name} imports {name}"
            imported = (script.parent / name).resolve()
            assert imported.exists(), f"{script.name} imports {name}"
            waiting.append(imported)
    assert len(seen) > 10


def test_the_scripts_are_small():
    for path in (Path(settings.BASE_DIR) / "static/js/lesson").rglob("*.js"):
        assert len(path.read_text(encoding="utf-8").splitlines()) <= 330, path.name
