"""Words for people that stand in Python go through the translation, with named placeholders, when they are read."""

import ast
import re
from pathlib import Path

import pytest

from tests.bare_words import TRANSLATES, in_python

ROOT = Path(__file__).parents[1]
# Said in the window in which the server runs, to whoever runs it, before there is a person with a language.
IN_THE_SERVERS_WINDOW = {
    *ROOT.glob("config/management/**/*.py"),
    *ROOT.glob("routines/management/**/*.py"),
    *(ROOT / f"config/{name}.py" for name in ("backups", "checks", "opening_backups", "serving", "settings")),
    ROOT / "config/virtual_environment.py",
}
# In the language of the class, by tables of their own; the demo school's words are its people's.
IN_THE_LANGUAGE_OF_THE_CLASS = {
    *(path for room in ("counting", "words", "drawing", "demo") for path in ROOT.glob(f"routines/{room}/**/*.py")),
}
# A format that others read, published in one language; a pattern that reads the log of the printing library.
READ_BY_PROGRAMS = {ROOT / "routines/exchange/schema.py", ROOT / "routines/paper/worker.py"}
FILES = sorted(
    path
    for app in ("accounts", "grade_bands", "config", "routines")
    for path in ROOT.glob(f"{app}/**/*.py")
    if "migrations" not in path.parts
    and path not in IN_THE_SERVERS_WINDOW | IN_THE_LANGUAGE_OF_THE_CLASS | READ_BY_PROGRAMS
)
SQL = re.compile(r"[ (]*(?:PRAGMA|SELECT|BEGIN|UNION ALL) ")
NAMES = {
    "Common Core State Standards for Mathematics",
    "Back by {step} from {start}",  # the spoken title of a count, in its language
    "Hacia atrás de {step} en {step} desde {start}",
}
PLACEHOLDER = re.compile(r"%\((\w+)\)[sd]")


def named(path: Path) -> str:
    return str(path.relative_to(ROOT))


def misused(source: str) -> list[str]:
    """Translations that could not work: of what is put together first, without named values, or for everyone at once."""
    tree = ast.parse(source)
    at_once = {
        alias.asname or alias.name
        for node in ast.walk(tree)
        if isinstance(node, ast.ImportFrom) and node.module == "django.utils.translation"
        for alias in node.names
        if alias.name in ("gettext", "ngettext", "pgettext")
    }
    found = _Misused(at_once)
    found.visit(tree)
    return found.found


class _Misused(ast.NodeVisitor):
    def __init__(self, at_once: set[str]) -> None:
        self.at_once = at_once
        self.found: list[str] = []
        self.inside = 0

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:
        self.inside += 1
        self.generic_visit(node)
        self.inside -= 1

    def visit_Lambda(self, node: ast.Lambda) -> None:
        self.inside += 1
        self.generic_visit(node)
        self.inside -= 1

    def visit_Call(self, node: ast.Call) -> None:
        name = getattr(node.func, "id", "")
        if name in TRANSLATES:
            if not self.inside and name in self.at_once:
                self.found.append(f"translated at the start: {ast.unparse(node)}")
            if any(isinstance(words, ast.JoinedStr | ast.BinOp) for words in node.args[:1]):
                self.found.append(f"in no catalogue: {ast.unparse(node)}")
            if any(isinstance(words, ast.Constant) and re.search(r"%[sd]", str(words.value)) for words in node.args):
                self.found.append(f"values without names: {ast.unparse(node)}")
        self.generic_visit(node)

    def visit_BinOp(self, node: ast.BinOp) -> None:
        words = node.left
        if isinstance(node.op, ast.Mod) and isinstance(words, ast.Call) and getattr(words.func, "id", "") in TRANSLATES:
            if not self.inside:
                self.found.append(f"translated at the start: {ast.unparse(node)}")
            if isinstance(node.right, ast.Dict):
                given = {getattr(key, "value", None) for key in node.right.keys}
                asked = {
                    name
                    for text in words.args
                    if isinstance(text, ast.Constant) and isinstance(text.value, str)
                    for name in PLACEHOLDER.findall(text.value)
                }
                if given != asked:
                    self.found.append(f"asks for {sorted(asked)}: {ast.unparse(node)}")
        self.generic_visit(node)


@pytest.mark.parametrize("path", FILES, ids=named)
def test_no_bare_words_in_python(path):
    found = in_python(path.read_text(encoding="utf-8"))
    assert [words for words in found if words not in NAMES and not SQL.match(words)] == []


@pytest.mark.parametrize("path", FILES, ids=named)
def test_every_translation_can_be_translated(path):
    assert misused(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "source",
    [
        'words = "That is long."',
        'raise EventRefused("text", f"That is {n} characters long.")',
        'name = forms.CharField(label="name")',
        'name = forms.CharField(error_messages={"required": "missing"})',
        'labels = {"name": "Class"}',
        'start = short_text("Start", 40)',
        'said = choice("x", [("", "as written")])',
        'said = forms.ChoiceField(choices=[("a", "first")])',
        'class Paper(models.TextChoices):\n    LETTER = "letter", "Letter"',
        'raise ValidationError("wrong")',
        'messages.success(request, "Saved.")',
        'messages.success(request, f"{n} saved" if n else "none")',
        'title = f"Grade {name}"',
        'WANTED = {"row": "in one row"}',
    ],
)
def test_bare_words_in_python_are_found(source):
    assert in_python(source)


@pytest.mark.parametrize(
    "source",
    [
        '"""Says so."""\nwords = _("That is long.")\nraise ValueError("A fault of ours")',
        'logger.warning("The disk is full: %s", path)',
        'labels = {"name": _("Class")}',
        'class Paper(models.TextChoices):\n    LETTER = "letter", _("Letter")',
        'messages.success(request, _("Saved."))',
        'path = f"/{room}/{name}"',
    ],
)
def test_translated_words_in_python_are_not(source):
    assert in_python(source) == []


LAZY = "from django.utils.translation import gettext_lazy as _\n"
AT_ONCE = "from django.utils.translation import gettext as _\n"


@pytest.mark.parametrize(
    "source",
    [
        AT_ONCE + 'WORDS = _("Saved.")',
        AT_ONCE + 'class Form:\n    label = _("Name")',
        LAZY + 'WORDS = _("At most %(most)s.") % {"most": 5}',
        AT_ONCE + 'def f(n):\n    return _(f"At most {n}.")',
        AT_ONCE + 'def f(n):\n    return _("At most %s.") % n',
        AT_ONCE + 'def f(n):\n    return _("At most %(most)s.") % {"least": n}',
    ],
)
def test_a_translation_that_could_not_work_is_found(source):
    assert misused(source)


def test_one_that_can_is_not():
    assert misused(LAZY + 'WORDS = _("At most %(most)s.")\ndef f(n):\n    return WORDS % {"most": n}') == []
    assert misused(AT_ONCE + 'def f(n):\n    return _("At most %(most)s.") % {"most": n}') == []
