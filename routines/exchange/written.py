"""Writing routines as a file. The same plans always make the same bytes, so that two files can be compared.

The format is documented by `routines.schema.json` beside this module (JSON Schema 2020-12). A file holds plan documents
and nothing of the school it comes from: no people, no classes, no lessons, no dates.
"""

import json
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from typing import Any

from routines.plan_document import Plan

FORMAT = "countfold-routines"
VERSION = 1
SCHEMA_PATH = Path(__file__).with_name("routines.schema.json")


def written(plans: Iterable[Plan]) -> bytes:
    """The file of these plans, ordered by title and then by content."""
    documents = sorted(
        (plan.as_dict() for plan in plans), key=lambda document: (document["title"], canonical(document))
    )
    file = {"format": FORMAT, "version": VERSION, "routines": documents}
    return (json.dumps(file, ensure_ascii=False, indent=1, sort_keys=True) + "\n").encode()


def canonical(document: dict[str, Any]) -> str:
    """One text for one document, whatever the order of its keys."""
    return json.dumps(document, ensure_ascii=False, sort_keys=True, separators=(",", ":"))


@cache
def schema() -> dict[str, Any]:
    """The JSON Schema of the format."""
    return json.loads(SCHEMA_PATH.read_text(encoding="utf-8"))
