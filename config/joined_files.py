"""Styles and scripts are kept as small files and sent as few: joined where static files are found and collected."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from pathlib import Path, PurePosixPath
from tempfile import NamedTemporaryFile
from typing import Any

from django.conf import settings
from django.contrib.staticfiles.finders import BaseFinder
from django.core.files.storage import FileSystemStorage, Storage

JOINED = {
    "css/page.css": ("css/tokens.css", "css/base.css", "css/drawing.css", "css/bank.css", "css/coverage.css"),
    "js/page.js": (
        "vendor/htmx.min.js",
        "js/light_patterns.js",
        "js/tap_cells.js",
        "js/fold_slide.js",
        "js/menus.js",
        "js/open_when_wide.js",
        "js/text_limits.js",
        "js/show_typed.js",
    ),
    "js/plan.js": (
        "js/plan_keep.js",
        "js/plan_wrong.js",
        "js/plan_tap.js",
        "js/plan_sections.js",
        "js/plan_return.js",
        "js/plan_early.js",
    ),
}
"""What is sent under one name, and the files that make it, in their order."""

JOINED_MODULES = {f"js/{page}.js": f"js/lesson/{page}.js" for page in ("board", "lectern", "log", "replay")}
"""The module that starts a page, with all that it imports."""

_IMPORT = re.compile(r'^import \{([^}]+)\} from "(\.[^"]+)";\n', re.MULTILINE)
_EXPORT = re.compile(r"^export (?=(?:async )?(?:function|class|const) (\w+))", re.MULTILINE)


class JoinedFiles(BaseFinder):
    """Finds the joined files beside the small ones, so that a page names one and a browser asks once.

    They lie in the data folder: a folder of their own for each process would stay wherever one is killed.
    """

    def __init__(self, app_names: object = None, *args: object, **kwargs: object) -> None:
        self.storage = FileSystemStorage(location=settings.DATA_DIR / "joined")
        super().__init__(*args, **kwargs)

    def check(self, **kwargs: object) -> list[Any]:
        return []

    def find(self, path: str, find_all: bool = False, **kwargs: object) -> Any:
        made = self._made(path) if path in JOINED or path in JOINED_MODULES else None
        if find_all:
            return [made] if made else []
        return made

    def list(self, ignore_patterns: Iterable[str] | None) -> Iterator[tuple[str, Storage]]:
        for path in (*JOINED, *JOINED_MODULES):
            self._made(path)
            yield path, self.storage

    def _made(self, path: str) -> str:
        """The joined file as it should be now. It is put in place whole: another thread may be reading it."""
        target = Path(self.storage.path(path))
        text = join_modules(JOINED_MODULES[path]) if path in JOINED_MODULES else join_files(JOINED[path])
        if not target.exists() or target.read_text("utf-8") != text:
            target.parent.mkdir(parents=True, exist_ok=True)
            with NamedTemporaryFile("w", encoding="utf-8", dir=target.parent, delete=False) as written:
                written.write(text)
            Path(written.name).replace(target)
        return str(target)


def join_files(paths: Iterable[str]) -> str:
    """The files one after the other; a script ends its last sentence before the next one begins."""
    between = {".css": "\n", ".js": "\n;\n"}
    return "".join(_read(path) + between[PurePosixPath(path).suffix] for path in paths)


def join_modules(first: str) -> str:
    """A module and all that it imports as one, each still in a scope of its own.

    Our modules import by name and export functions, classes and constants where they are declared. Raises: ValueError for
    a module that does otherwise, and where two import each other.
    """
    written: dict[str, str] = {}
    _write_module(first, written, ())
    return "".join(written.values())


def _write_module(path: str, written: dict[str, str], above: tuple[str, ...]) -> None:
    if path in above:
        raise ValueError(f"{path} and {above[-1]} import each other.")
    if path in written:
        return
    source = _read(path)

    def given(found: re.Match[str]) -> str:
        names, other = found.groups()
        part = _beside(path, other)
        _write_module(part, written, (*above, path))
        return f"const {{{names.replace(' as ', ': ')}}} = {_name(part)};\n"

    body = _IMPORT.sub(given, source)
    exported = _EXPORT.findall(body)
    body = _EXPORT.sub("", body)
    if re.search(r"^(import|export)\b", body, re.MULTILINE):
        raise ValueError(f"{path} imports or exports in a way that cannot be joined.")
    written[path] = f"const {_name(path)} = (() => {{\n{body}\nreturn {{ {', '.join(exported)} }};\n}})();\n"


def _beside(path: str, other: str) -> str:
    folder = list(PurePosixPath(path).parent.parts)
    for step in PurePosixPath(other).parts:
        if step == "..":
            folder.pop()
        elif step != ".":
            folder.append(step)
    return "/".join(folder)


def _name(path: str) -> str:
    return "module_" + re.sub(r"\W", "_", path.removesuffix(".js"))


def _read(path: str) -> str:
    return (Path(settings.BASE_DIR) / "static" / path).read_text("utf-8")
