"""What can be asked: every address of the URLconf, and every form, button and live part of the pages behind them."""

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from html.parser import HTMLParser
from typing import Any
from urllib.parse import parse_qs

from django.urls import Resolver404, URLPattern, URLResolver, get_resolver, resolve

PARAMETER = re.compile(r"<(?:(\w+):)?(\w+)>")
NAMED_GROUP = re.compile(r"\(\?P(<\w+>)[^)]*\)")
NEVER_TYPED = {"csrfmiddlewaretoken"}


def every_route(resolver: URLResolver | None = None, before: str = "") -> Iterator[tuple[str, str]]:
    """Route and name of each address."""
    for entry in (resolver or get_resolver()).url_patterns:
        route = before + str(entry.pattern)
        if isinstance(entry, URLPattern):
            yield NAMED_GROUP.sub(r"\1", route).replace("^", "").removesuffix("$"), entry.name or ""
        else:
            yield from every_route(entry, route)


def filled(route: str, known: dict[str, list[Any]]) -> list[str]:
    """Addresses of a route: of several parameters one is varied at a time. `known` has values by "start of the route,
    parameter"; the longest start that fits is taken."""
    addresses = ["/" + route]
    for kind, name in PARAMETER.findall(route):
        fits = [key for key in known if key.partition(" ")[2] == name and route.startswith(key.partition(" ")[0])]
        values = known[max(fits, key=len)] if fits else {"int": [1], "uuid": known[" key"]}.get(kind, ["x"])
        pattern = re.compile(rf"<(?:\w+:)?{name}>")
        first, *others = addresses
        addresses = [pattern.sub(str(value), first, count=1) for value in values]
        addresses += [pattern.sub(str(values[0]), address, count=1) for address in others]
    return addresses


def view_of(address: str) -> str:
    """The name of an address, with the words in it that choose a part, so that each part counts as a form of its own."""
    try:
        match = resolve(address.partition("?")[0])
    except Resolver404:
        return ""
    return " ".join([match.view_name or "", *(str(value) for name, value in match.kwargs.items() if name == "name")])


@dataclass
class Form:
    """Fields that are sent together to one address. `buttons` send one more field, each by itself."""

    method: str = "get"
    address: str = ""
    fields: dict[str, list[str]] = field(default_factory=dict)
    choices: dict[str, list[str]] = field(default_factory=dict)
    files: set[str] = field(default_factory=set)
    buttons: list[tuple[str, dict[str, str]]] = field(default_factory=list)


class Forms(HTMLParser):
    """Reads the forms of a page. What stands in no form (a fragment's fields) is one form without an address."""

    def __init__(self) -> None:
        super().__init__()
        self.loose = Form("post")
        self.here = self.loose
        self.found = [self.loose]
        self.links: set[str] = set()
        self.select = self.text = ""
        self.words: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        have = {name: value or "" for name, value in attrs}
        name, value = have.get("name", ""), have.get("value", "")
        if tag == "form":
            self.here = Form(have.get("method", "get").lower(), have.get("action", ""))
            self.found.append(self.here)
        for sends in ("formaction", "hx-post"):
            if sends in have:
                own = {name: value} if tag == "button" and name else {}
                self.here.buttons.append((have[sends], {**own, **json.loads(have.get("hx-vals") or "{}")}))
        if "?" in (link := have.get("href" if tag == "a" else "hx-get", "")):
            self.links.add(link)
        if tag == "button" and name and "formaction" not in have:
            self.here.buttons.append(("", {name: value}))
        elif tag == "input" and name:
            self._input(have.get("type", "text"), name, value, "checked" in have)
        elif tag == "select":
            self.select = name
            self.here.choices.setdefault(name, [])
        elif tag == "option" and self.select:
            self.here.choices[self.select].append(value)
            if "selected" in have:
                self.here.fields[self.select] = [value]
        elif tag == "textarea":
            self.text, self.words = name, []

    def _input(self, kind: str, name: str, value: str, checked: bool) -> None:
        if kind == "file":
            self.here.files.add(name)
        elif kind in ("checkbox", "radio"):
            self.here.choices.setdefault(name, []).append(value)
            if checked:
                self.here.fields.setdefault(name, []).append(value)
        else:
            self.here.fields.setdefault(name, []).append(value)

    def handle_data(self, data: str) -> None:
        if self.text:
            self.words.append(data)

    def handle_endtag(self, tag: str) -> None:
        if tag == "textarea" and self.text:
            self.here.fields.setdefault(self.text, []).append("".join(self.words).lstrip("\n"))
            self.text = ""
        elif tag == "select":
            self.select = ""
        elif tag == "form":
            self.here = self.loose


@dataclass
class Sent:
    """One thing that can be sent: what a person would send, by field, and as whom it was found."""

    method: str
    address: str
    fields: dict[str, list[str]]
    files: set[str]
    role: str
    button: frozenset[str] = frozenset()

    @property
    def view(self) -> str:
        return view_of(self.address)


def read_forms(page: str, address: str, role: str) -> list[Sent]:
    """What can be sent from a page: each form to its address, and to that of each of its buttons and live parts."""
    reader = Forms()
    reader.feed(page)
    found = []
    for form in reader.found:
        fields = {name: list(values) for name, values in form.fields.items() if name not in NEVER_TYPED}
        for name, values in form.choices.items():  # a person chooses something
            real = [value for value in values if value]
            if name and name not in fields and real:
                fields[name] = real[:1]
        if form is not reader.loose:
            found.append(Sent(form.method, form.address or address, fields, form.files, role))
        for target, own in form.buttons:
            method = "post" if target else form.method
            sent = {**fields, **{name: [str(value)] for name, value in own.items()}}
            to = target or form.address or address
            found.append(Sent(method, to, sent, form.files, role, frozenset(own)))
    for link in sorted(reader.links):
        path, _, query = link.partition("?")
        found.append(Sent("get", path or address, parse_qs(query.partition("#")[0]), set(), role))
    return [sent for sent in found if sent.view]


def as_one(name: str) -> str:
    """Rows of a list are read alike: stops-0-after and stops-7-after are one field."""
    return re.sub(r"\d+", "N", name)
