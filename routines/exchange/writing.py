"""Writing routines as a file. The same plans always make the same bytes, so that two files can be compared.

The format is documented by `schema.py` beside this module (JSON Schema 2020-12). A file holds plan documents and nothing of
the school it comes from: no people, no classes, no lessons, no dates.
"""

import json
from collections.abc import Iterable
from typing import Any

from routines.models.plan_document import Plan

FORMAT = "countfold-routines"
VERSION = 1


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
