"""A page asks for few styles and scripts, each joined from small files and named by its hash."""

import gc
import re
import shutil
import signal
import subprocess
import sys
from pathlib import Path
from threading import Thread

import pytest
from django.conf import settings
from django.contrib.staticfiles import finders
from django.contrib.staticfiles.storage import staticfiles_storage
from django.core.management import call_command

from config.joined_files import JOINED, JOINED_MODULES, JoinedFiles, join_files, join_modules
from tests.absent import absent
from tests.config.commands import ROOT, environment

MODULES = Path(settings.BASE_DIR) / "static/js/lesson"


@pytest.fixture
def collected(settings, tmp_path) -> Path:
    settings.STATIC_ROOT = tmp_path
    storage = "whitenoise.storage.CompressedManifestStaticFilesStorage"
    settings.STORAGES = {**settings.STORAGES, "staticfiles": {"BACKEND": storage}}
    call_command("collectstatic", verbosity=0, interactive=False)
    return tmp_path


def test_what_is_joined_is_collected_under_its_hash_and_packed(collected):
    for path in (*JOINED, *JOINED_MODULES):
        name = staticfiles_storage.stored_name(path)
        assert re.search(r"\.[0-9a-f]{12}\.(css|js)$", name)
        assert (collected / name).is_file()
        assert (collected / f"{name}.gz").is_file()


def test_the_fonts_that_a_joined_style_names_are_there(collected):
    style = (collected / staticfiles_storage.stored_name("css/page.css")).read_text(encoding="utf-8")
    fonts = re.findall(r'url\("([^"]+woff2)"\)', style)
    assert len(fonts) == 2
    for font in fonts:
        assert re.search(r"\.[0-9a-f]{12}\.woff2$", font)
        assert (collected / "css" / font).resolve().is_file()


def test_a_joined_file_holds_each_of_its_parts_whole_and_in_order():
    for path, parts in JOINED.items():
        joined, at = join_files(parts), 0
        for part in parts:
            text = (Path(settings.BASE_DIR) / "static" / part).read_text(encoding="utf-8")
            found = joined.find(text, at)
            assert found >= at, f"{part} is not in {path} after those before it"
            at = found + len(text)


@pytest.mark.parametrize("path", JOINED_MODULES)
def test_a_page_of_a_lesson_loads_one_module_with_all_that_it_imports(path):
    joined = join_modules(JOINED_MODULES[path])
    assert not re.search(r"^(import|export)\b", joined, re.MULTILINE)
    assert finders.find(path) is not None
    assert Path(finders.find(path)).read_text(encoding="utf-8") == joined
    waiting, seen = [(Path(settings.BASE_DIR) / "static" / JOINED_MODULES[path]).resolve()], set()
    while waiting:
        module = waiting.pop()
        seen.add(module)
        for name in re.findall(r"""^import .*from\s*"(\.[^"]+)";""", module.read_text(encoding="utf-8"), re.MULTILINE):
            other = (module.parent / name).resolve()
            waiting += [other] if other not in seen else []
    assert joined.count("= (() => {\n") >= len(seen)
    for module in seen:
        name = "_".join(module.relative_to(settings.BASE_DIR / "static").with_suffix("").parts)
        assert joined.count(f"const module_{name} = (() => {{") == 1


@pytest.mark.parametrize("path", JOINED_MODULES)
def test_what_is_joined_is_a_module_that_can_be_read(path, tmp_path):
    node = shutil.which("node") or absent("node")
    script = tmp_path / "joined.mjs"
    script.write_text(join_modules(JOINED_MODULES[path]), encoding="utf-8")
    done = subprocess.run([node, "--check", str(script)], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr


def test_a_joined_file_is_whole_whenever_it_is_read():
    path = finders.find("js/board.js")
    whole, seen, going = Path(path).read_text(encoding="utf-8"), set(), True

    def read() -> None:
        while going:
            seen.add(Path(path).read_text(encoding="utf-8"))

    reader = Thread(target=read)
    reader.start()
    for _ in range(200):
        finders.find("js/board.js")
    going = False
    reader.join()
    assert seen == {whole}


def test_what_a_finder_found_stays_when_the_finder_goes():
    path = JoinedFiles().find("js/board.js")
    gc.collect()
    assert Path(path).is_file()


def test_a_killed_server_leaves_nothing_among_the_temporary_files(tmp_path):
    data, temporary = tmp_path / "data", tmp_path / "temporary"
    data.mkdir()
    temporary.mkdir()
    code = (
        "import os, signal\n"
        "from django.contrib.staticfiles import finders\n"
        "assert finders.find('js/board.js')\n"
        "os.kill(os.getpid(), signal.SIGKILL)"
    )
    done = subprocess.run(
        [sys.executable, ROOT / "manage.py", "shell", "--verbosity", "0", "-c", code],
        env={**environment(data), "TMPDIR": str(temporary)},
        capture_output=True,
        check=False,
    )
    assert done.returncode == -signal.SIGKILL, done.stderr
    assert list(temporary.iterdir()) == []


def test_what_cannot_be_joined_is_refused(settings, tmp_path):
    settings.BASE_DIR = tmp_path
    folder = tmp_path / "static" / "js"
    folder.mkdir(parents=True)
    for name, text in {
        "a.js": 'import { b } from "./b.js";\nexport const a = 1;\n',
        "b.js": 'import { a } from "./a.js";\nexport const b = 2;\n',
        "c.js": "export default 3;\n",
    }.items():
        (folder / name).write_text(text, encoding="utf-8")
    with pytest.raises(ValueError, match="import each other"):
        join_modules("js/a.js")
    with pytest.raises(ValueError, match="cannot be joined"):
        join_modules("js/c.js")


def test_the_scripts_are_small():
    for path in MODULES.rglob("*.js"):
        assert len(path.read_text(encoding="utf-8").splitlines()) <= 330, path.name
