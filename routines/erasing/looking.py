"""Where words stand before they are taken out: how many texts of each place, and where to find some of them.

What is found holds no words, only places and keys of rows: `showing.py` reads those rows again when they are to be seen.
"""

import json
from collections.abc import Callable
from dataclasses import asdict, dataclass, field
from typing import Self

from accounts.text import read_json
from routines.erasing.taking_out import columns_by_model, parts_of
from routines.words_erased.matching import Sought

from .places import ELSEWHERE, FOLLOWERS

SHOWN_AT_MOST = 12


@dataclass
class Standing:
    """texts: how many of this place; followers: titles and search texts, which follow the saved plans.

    at: where some of them are, each the key of its row and its place in the column.
    """

    texts: int = 0
    followers: int = 0
    at: list[tuple[str, str]] = field(default_factory=list)


@dataclass
class Findings:
    """places: by the name of the column that is chosen. elsewhere: rows that are changed on other pages, by app."""

    places: dict[str, Standing] = field(default_factory=dict)
    elsewhere: dict[str, int] = field(default_factory=dict)

    @property
    def texts(self) -> int:
        return sum(place.texts or place.followers for place in self.places.values())

    def written(self) -> bytes:
        return json.dumps(asdict(self)).encode()

    @classmethod
    def read(cls, content: bytes) -> Self:
        held = read_json(content)
        places = {
            name: Standing(one["texts"], one["followers"], [(key, place) for key, place in one["at"]])
            for name, one in held["places"].items()
        }
        return cls(places, held["elsewhere"])


def look_for(sought: Sought, *, whose: int | None, on_rows: Callable[[int], None] = lambda rows: None) -> Findings:
    """whose: the one person whose texts are looked through, or None for everybody's. on_rows: as for `take_out`.

    Of one person's texts the first are kept to be shown; of everybody's those that spell the words in a new way.
    """
    findings = Findings()
    spelt: dict[str, set[str]] = {}
    for columns in columns_by_model().values():
        for part in parts_of(columns, whose=whose):
            for row in part:
                for column in columns:
                    name = str(column)
                    for place, text in column.texts(row):
                        spans = list(sought.spans(text))
                        if not spans:
                            continue
                        leader = FOLLOWERS.get(name, name)
                        standing = findings.places.setdefault(leader, Standing())
                        if leader != name:
                            standing.followers += 1
                            continue
                        standing.texts += 1
                        ways = {text[first:end] for first, end in spans}
                        known = spelt.setdefault(name, set())
                        if len(standing.at) < SHOWN_AT_MOST and (whose is not None or not ways <= known):
                            known |= ways
                            standing.at.append((str(row.pk), place))
            on_rows(len(part))
    if whose is None:
        findings.elsewhere = _elsewhere(sought)
    return findings


def _elsewhere(sought: Sought) -> dict[str, int]:
    counted: dict[str, int] = {}
    for column in ELSEWHERE:
        for row in column.model_in()._default_manager.only("pk", column.field).iterator():
            if any(sought.stands_in(text) for _, text in column.texts(row)):
                app = column.model.split(".")[0]
                counted[app] = counted.get(app, 0) + 1
    return counted
