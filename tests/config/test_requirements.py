"""What the program imports is in the requirements of the program, not only in those of its tests."""

import ast
import sys
from importlib.metadata import packages_distributions
from pathlib import Path

from django.conf import settings

from routines.worked_out.made_by import PACKAGES

HERE = Path(settings.BASE_DIR)
OURS = {"accounts", "config", "grade_bands", "routines"}


def named(file: str) -> set[str]:
    """The packages that a compiled file of requirements pins, in lower case."""
    rows = (HERE / file).read_text(encoding="utf-8").splitlines()
    return {row.split("==")[0].split("[")[0].lower().replace("_", "-") for row in rows if "==" in row}


def imported() -> set[str]:
    """The top names of all that the program imports."""
    found = set()
    for room in OURS:
        for path in (HERE / room).rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if isinstance(node, ast.Import):
                    found |= {name.name.split(".")[0] for name in node.names}
                elif isinstance(node, ast.ImportFrom) and not node.level and node.module:
                    found.add(node.module.split(".")[0])
    return found - OURS - set(sys.stdlib_module_names)


def test_whatever_the_program_imports_is_required_by_it():
    pinned, made_of = named("requirements.txt"), packages_distributions()
    missing = {
        name for name in imported() if not {one.lower().replace("_", "-") for one in made_of.get(name, [name])} & pinned
    }
    assert missing == set()


def test_whatever_it_asks_the_version_of_is_required_by_it():
    assert {package.lower() for package in PACKAGES} <= named("requirements.txt")
