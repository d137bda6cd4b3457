"""Finds words for people that no translation goes through: in templates, in scripts and in Python. Honest heuristics; each is
shown to bite in test_template_words.py, test_python_words.py and lessons/test_words.py.
"""

import ast
import re
from html.parser import HTMLParser

SAID_IN = ("aria-label", "title", "placeholder", "alt", "aria-description", "aria-roledescription")
WORD = re.compile(r"[A-Za-zÀ-ÿ]{2,}")
NAME = "Countfold"  # the product's, the same in every language
BLOCKS = re.compile(
    r"{% block body_class %}[\w -]*{% endblock %}|{% comment %}.*?{% endcomment %}|{#.*?#}|"
    r"{% blocktranslate.*?{% endblocktranslate %}",
    re.DOTALL,
)
IN_TAGS = re.compile(
    r"""(?:default|default_if_none|add|yesno|pluralize|join):["'](?P<filter>[^"']*)["']|"""
    r"""\b(?:words|title|ready)=["'](?P<with>[^"']*)["']|(?P<english>\|pluralize)\b"""
)
# A fragment may be nothing but attributes, for the element that includes it.
ATTRIBUTE = re.compile(r'([\w-]+)\s*="([^"]*)"')
TAGS = re.compile(r"{%.*?%}|{{.*?}}", re.DOTALL)


def in_template(source: str) -> list[str]:
    """Texts, named attributes and sentences in data- attributes that stand bare, words given in tags, English plurals."""
    source = BLOCKS.sub(" ", source)
    found = [
        words
        for tag in TAGS.findall(source)
        for match in IN_TAGS.finditer(tag)
        for words in match.groups()
        if words and WORD.search(words)
    ]
    reader = _Texts()
    reader.feed(TAGS.sub(lambda tag: re.sub(r"[^\n]", " ", tag[0]), source))
    return found + [words for words in reader.texts if WORD.search(words.replace(NAME, ""))]


class _Texts(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []
        self.silent = 0

    def handle_starttag(self, tag, attributes) -> None:
        self.silent += tag in ("script", "style")
        self._read_attributes(attributes)

    def handle_endtag(self, tag) -> None:
        self.silent -= tag in ("script", "style")

    def handle_data(self, data) -> None:
        if self.silent:
            return
        self._read_attributes(ATTRIBUTE.findall(data))
        if words := ATTRIBUTE.sub(" ", data).strip():
            self.texts.append(words)

    def _read_attributes(self, attributes) -> None:
        for name, value in attributes:
            if value and (name in SAID_IN or (name.startswith("data-") and SENTENCE.search(value))):
                self.texts.append(value)


# What a script says stands in a literal; these literals are no words for people: classes, selectors, names of things.
SCRIPT_COMMENTS = re.compile(r"/\*.*?\*/|(?<![:'\"`\\])//[^\n]*", re.DOTALL)
NOT_SAID = re.compile(
    r"""(?:import[^;]*?from|className:|className\s*=|querySelector(?:All)?\(|closest\(|matches\(|Error\(|indexedDB\.open\(|"""
    r"""made(?:SVG)?\("\w+",|String\.raw|JSON\.stringify\(|setProperty\(|span\(|new RegExp\()\s*$"""
)
LITERAL = re.compile(r'"(?:[^"\\\n]|\\.)*"|\'(?:[^\'\\\n]|\\.)*\'|`(?:[^`\\]|\\.)*`')
SENTENCE = re.compile(r"^[A-Z][a-z]+\b|[A-Za-z]{2,},? [A-Za-z]{2,}")
SHOWN = re.compile(r"(?:textContent|innerText|title|alt|placeholder|ariaLabel|\"aria-label\"[:,])\s*(?:[=:]\s*)?$")


def in_script(source: str) -> list[str]:
    """Literals of two words, or beginning with a capital, and any word that is put into the page by itself."""
    source = SCRIPT_COMMENTS.sub(" ", source)
    found = []
    for match in LITERAL.finditer(source):
        before, words = source[: match.start()][-60:], re.sub(r"\$\{[^}]*\}", " ", match[0][1:-1])
        if NOT_SAID.search(before) or not WORD.search(words):
            continue
        if SHOWN.search(before) or (SENTENCE.search(words) and not _is_technical(words)):
            found.append(match[0])
    return found


KEYS = re.compile(r"^(?:Arrow(?:Up|Down|Left|Right)|Page(?:Up|Down)|Enter|Escape|Backspace|Delete|Home|End|Space)$")


def _is_technical(words: str) -> bool:
    """A directive, a key's name, a header, a media query, a path or a selector."""
    return (
        words == "use strict"
        or bool(KEYS.match(words))
        or bool(re.search(r"[\[\]{}=#<>]|^[A-Z][\w-]*$|^\(|[a-z]-[a-z]|^\.|/", words))
    )


TRANSLATES = {
    "_", "gettext", "gettext_lazy", "gettext_noop", "ngettext", "ngettext_lazy", "pgettext", "pgettext_lazy", "npgettext"
}  # fmt: skip
FOR_PROGRAMMERS = {"ValueError", "TypeError", "AssertionError", "RuntimeError", "getLogger"}
LOGS = {"debug", "info", "warning", "error", "exception"}
# What is shown whatever it looks like: by the name of an argument, by what is called, by what the words are gathered in.
SHOWN_AS = {
    "label",
    "help_text",
    "verbose_name",
    "verbose_name_plural",
    "empty_label",
    "placeholder",
    "violation_error_message",
}
SHOWS = {"ValidationError", "add_error", "Refused", "PaperError", "FileError"}
SHOWN_FIRST = {"whole_number", "short_text", "sentence", "choice"}
SHOWN_IN = {"labels", "help_texts", "error_messages", "LABELS"}


def in_python(source: str) -> list[str]:
    """Sentences (a capital, then a space) and shown words outside translations, docstrings, logs and programmers' errors."""
    found: list[str] = []
    _Sentences(found).visit(ast.parse(source))
    return found


class _Sentences(ast.NodeVisitor):
    def __init__(self, found: list[str]) -> None:
        self.found = found

    def visit_Call(self, node: ast.Call) -> None:
        name = node.func.id if isinstance(node.func, ast.Name) else getattr(node.func, "attr", "")
        on = ast.unparse(node.func.value) if isinstance(node.func, ast.Attribute) else ""
        if name in TRANSLATES | FOR_PROGRAMMERS or (name in LOGS and on == "logger"):
            return
        for argument in node.keywords:
            if argument.arg in SHOWN_AS:
                self._shown(argument.value)
            elif argument.arg in SHOWN_IN:
                self._shown_values(argument.value)
            elif argument.arg == "choices":
                self._shown_pairs(argument.value)
        if name in SHOWS or on == "messages":
            for argument in node.args[-1:]:
                self._shown(argument)
        elif name in SHOWN_FIRST and node.args:
            self._shown(node.args[0])
            for argument in node.args[1:2]:
                self._shown_pairs(argument)
        self.generic_visit(node)

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        if any("Choices" in ast.unparse(base) for base in node.bases):
            for choice in node.body:
                if isinstance(choice, ast.Assign):
                    self._shown(choice.value.elts[-1] if isinstance(choice.value, ast.Tuple) else choice.value)
        self.generic_visit(node)

    def visit_Assign(self, node: ast.Assign) -> None:
        if any(isinstance(target, ast.Name) and target.id in SHOWN_IN for target in node.targets):
            self._shown_values(node.value)
        self.generic_visit(node)

    def visit_Dict(self, node: ast.Dict) -> None:
        for key, value in zip(node.keys, node.values, strict=True):
            said = isinstance(value, ast.Constant) and isinstance(value.value, str) and TWO_WORDS.match(value.value)
            if said and getattr(key, "value", "") != "class":
                self._shown(value)
        self.generic_visit(node)

    def visit_Expr(self, node: ast.Expr) -> None:
        if not isinstance(node.value, ast.Constant):  # a string by itself is a docstring
            self.generic_visit(node)

    def visit_JoinedStr(self, node: ast.JoinedStr) -> None:
        self._sentence(_joined(node))
        for part in node.values:
            if isinstance(part, ast.FormattedValue):
                self.visit(part.value)

    def visit_Constant(self, node: ast.Constant) -> None:
        if isinstance(node.value, str):
            self._sentence(node.value)

    def _sentence(self, words: str) -> None:
        if re.match(r"\W?[A-Z][a-zA-Z’']*,? \w", words) and words not in self.found:
            self.found.append(words)

    def _shown(self, node: ast.expr) -> None:
        words = (
            _joined(node) if isinstance(node, ast.JoinedStr) else node.value if isinstance(node, ast.Constant) else ""
        )
        if isinstance(words, str) and WORD.search(words.replace(VALUE, "")) and words not in self.found:
            self.found.append(words)
        if isinstance(node, ast.IfExp):
            self._shown(node.body)
            self._shown(node.orelse)

    def _shown_values(self, node: ast.expr) -> None:
        if isinstance(node, ast.Dict):
            for value in node.values:
                self._shown(value)
                self._shown_values(value)

    def _shown_pairs(self, node: ast.expr) -> None:
        for pair in getattr(node, "elts", ()):
            if isinstance(pair, ast.Tuple) and len(pair.elts) == 2:
                self._shown(pair.elts[1])


TWO_WORDS = re.compile(r"[a-z]+ [a-z ,]+$")
VALUE = "n7"  # stands where a value will


def _joined(node: ast.JoinedStr) -> str:
    return "".join(str(part.value) if isinstance(part, ast.Constant) else VALUE for part in node.values)
