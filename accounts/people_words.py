"""The register of the columns that hold people's words: what is mended, erased, given out and searched goes by it.

Each app lists its own columns in a module of this name; `routines.models.people_words.ALL` has them all, for routines know
every app below them. A test fails when a text column of a model is neither listed nor named among the wordless.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

from django.apps import apps as installed_apps
from django.db.models import Model


@dataclass(frozen=True, slots=True)
class WordsColumn:
    """One column: plain text, or a JSON document with the places in it where words stand.

    model: "app.Model". parts: () for plain text; else paths such as "stops.*.question", where * is every item or part
    at its place and ** every text below. but: names of parts below ** that hold no words. author: the way from a row
    to whoever wrote it ("" where the words are the school's). derived: worked out from words in other columns.
    """

    model: str
    field: str
    parts: tuple[str, ...] = ()
    but: tuple[str, ...] = ()
    author: str = ""
    derived: bool = False

    def __str__(self) -> str:
        return f"{self.model}.{self.field}"

    def model_in(self, apps: Any = installed_apps) -> type[Model]:
        """The model; a migration gives the apps as they were at its time. Raises LookupError where there was none yet."""
        model: type[Model] = apps.get_model(self.model)
        return model

    def texts(self, row: Model) -> Iterator[tuple[str, str]]:
        """The texts in this column of a row, each with its place: "stops.0.question", or "" for plain text."""
        value = getattr(row, self.field)
        if not self.parts:
            if isinstance(value, str):
                yield "", value
            return
        seen = set()
        for part in self.parts:
            for place, text in _texts_at(value, part.split("."), (), self.but):
                if place not in seen:
                    seen.add(place)
                    yield ".".join(place), text

    def change(self, row: Model, changed: Callable[[str], str]) -> bool:
        """Put `changed(text)` in the place of each text of this column. Says whether anything differs; saves nothing."""
        before = getattr(row, self.field)
        after = before
        if self.parts:
            for part in self.parts:
                after = _changed_at(after, part.split("."), changed, self.but)
        elif isinstance(before, str):
            after = changed(before)
        if after == before:
            return False
        setattr(row, self.field, after)
        return True


def _parts_of(value: Any) -> Iterator[tuple[str, Any]]:
    if isinstance(value, dict):
        yield from value.items()
    elif isinstance(value, list):
        yield from ((str(at), item) for at, item in enumerate(value))


def _leads_to(name: str, step: str, but: tuple[str, ...]) -> bool:
    return name not in but if step == "**" else step in ("*", name)


def _texts_at(
    value: Any, path: list[str], place: tuple[str, ...], but: tuple[str, ...]
) -> Iterator[tuple[tuple[str, ...], str]]:
    if isinstance(value, str):
        if not path or path == ["**"]:
            yield place, value
        return
    if path:
        rest = path if path[0] == "**" else path[1:]
        for name, part in _parts_of(value):
            if _leads_to(name, path[0], but):
                yield from _texts_at(part, rest, (*place, name), but)


def _changed_at(value: Any, path: list[str], changed: Callable[[str], str], but: tuple[str, ...]) -> Any:
    if isinstance(value, str):
        return changed(value) if not path or path == ["**"] else value
    if not path or not isinstance(value, dict | list):
        return value
    rest = path if path[0] == "**" else path[1:]
    found = [
        (name, _changed_at(part, rest, changed, but) if _leads_to(name, path[0], but) else part)
        for name, part in _parts_of(value)
    ]
    return dict(found) if isinstance(value, dict) else [part for _, part in found]


COLUMNS = (
    WordsColumn("accounts.School", "name"),
    WordsColumn("accounts.User", "display_name", author="pk"),
    WordsColumn("accounts.User", "sign_in_name", author="pk"),
    WordsColumn("accounts.User", "email", author="pk"),
    WordsColumn("accounts.OneTimeLink", "display_name", author="created_by"),
)

# Choices, marks and secrets: nothing that anybody puts in words.
WORDLESS = (
    *(f"accounts.School.{name}" for name in ("paper", "currency", "unit_system", "decimal_mark", "thousands")),
    *(f"accounts.School.{name}" for name in ("time_zone", "languages")),
    *(f"accounts.User.{name}" for name in ("password", "role")),
    *(f"accounts.OneTimeLink.{name}" for name in ("purpose", "token_hash", "role")),
    *(f"accounts.SentForm.{name}" for name in ("content", "made")),
    *(f"accounts.CodeTries.{name}" for name in ("door", "address")),
    "accounts.RecoveryCode.code_hash",
)
