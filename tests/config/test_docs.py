"""DEVELOPERS.md and README.md name what there is, and nothing that is gone."""

import re
import tomllib
from pathlib import Path

import pytest

from config import checks
from routines.counting.claims import FAMILIES
from routines.counting.kinds.registry import KINDS

ROOT = Path(__file__).resolve().parents[2]
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
README = (ROOT / "README.md").read_text(encoding="utf-8")


def listed(heading: str) -> set[str]:
    """The names in the sentence that starts with `heading`, after its colon."""
    sentence = re.search(rf"^{heading}[^:]*:([^.]*)\.", DEVELOPERS, re.MULTILINE)[1]
    return set(re.findall(r"[a-z][a-z-]*", sentence))


def test_every_setting_is_in_the_table_and_every_row_is_a_setting():
    read = set(re.findall(r'environment_\w+\(\s*"(\w+)"', (ROOT / "config/settings.py").read_text(encoding="utf-8")))
    assert set(re.findall(r"^\| `(\w+)` \|", DEVELOPERS, re.MULTILINE)) == read
    assert len(read) > 5


def test_every_number_kind_is_named():
    assert listed("Number kinds") == set(KINDS)


def test_every_pattern_family_is_named():
    assert listed("Pattern families") == set(FAMILIES)


def test_every_check_of_ours_is_named():
    used = set(re.findall(r"countfold\.W\d+", Path(checks.__file__).read_text(encoding="utf-8")))
    assert used <= set(re.findall(r"countfold\.W\d+", DEVELOPERS))


@pytest.mark.parametrize("tier", ["requirements.in", "requirements-test.in", "requirements-dev.in"])
def test_every_package_has_its_reason(tier):
    lines = (ROOT / tier).read_text(encoding="utf-8").split()
    names = [re.match(r"[A-Za-z0-9-]+", line)[0] for line in lines if re.match(r"[A-Za-z]", line)]
    table = DEVELOPERS.partition("## Packages")[2].partition("## Decisions")[0].lower()
    missing = [name for name in names if name.lower() not in table and not name.startswith("requirements")]
    assert missing == []


@pytest.mark.parametrize("text", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_every_command_of_run_py_it_shows_exists(text):
    source = (ROOT / "run.py").read_text(encoding="utf-8")
    for command in re.findall(r"run\.py (\w[\w-]*)", text):
        assert f'add("{command}"' in source


@pytest.mark.parametrize("text", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_every_file_it_points_to_exists(text):
    for path in re.findall(r"`((?:tests|templates|static|grade_bands|routines|config|tools|accounts)/[\w./-]+)`", text):
        assert (ROOT / path).exists(), path


def test_on_windows_pango_comes_as_the_start_says():
    told = re.search(r"pacman -S [\w-]+", README)[0]
    assert told in checks.PANGO_HINT["win32"]


def test_the_oldest_python_is_the_same_everywhere():
    oldest = re.search(r"NEEDED_PYTHON = \((\d+), (\d+)\)", (ROOT / "run.py").read_text(encoding="utf-8")).groups()
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    assert project["project"]["requires-python"] == f">={'.'.join(oldest)}"
    assert project["tool"]["mypy"]["python_version"] == ".".join(oldest)
    assert project["tool"]["ruff"]["target-version"] == f"py{''.join(oldest)}"
    assert f"Python {'.'.join(oldest)} or newer" in README


def test_the_map_shows_every_room_and_the_layers_hold_its_order():
    routines = re.search(r"^routines/ .*?(?=^templates/)", DEVELOPERS, re.MULTILINE | re.DOTALL)[0]
    mapped = re.findall(r"^  (\w+)/", routines, re.MULTILINE)
    joins = {"management", "migrations", "templatetags"}
    rooms = {path.parent.name for path in (ROOT / "routines").glob("*/__init__.py")} - joins
    assert set(mapped) == rooms
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["importlinter"][
        "contracts"
    ]
    layers = next(one["layers"] for one in contracts if "routines.counting" in one.get("layers", ()))
    assert [f"routines.{room}" for room in reversed(mapped)] == layers


def test_no_file_lies_loose_between_the_rooms():
    assert {path.name for path in (ROOT / "routines").glob("*.py")} == {"__init__.py", "apps.py", "urls.py"}
