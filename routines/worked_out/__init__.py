"""What a saved plan says, worked out once: a saved plan never changes, so what is drawn and said of it follows from the
document, the level of its grade, the language of the pages and the program alone.

    cards(saves)            what cards say of saved plans, read in one query when asked; those that are missing are made
    page(save)              what the page of a saved plan says, when asked
    shown(save)             the plan itself, for what is not kept
    work_out(save)          make both now, as a save does when it is through
    missing(saves)          those of which something is not kept, or was made by another program
    forget(version)         drop what was worked out of its document
    drop_all_but(keys)      drop everything else, and what another program made

A save is a version, its document and the level at which it is shown: `shown_now(routine)` or `save_of(version, level)`. What
is kept is found by the mark of all it follows from (`keeping.py`), and is taken only where this very program made it
(`made_by.py`): there is nothing that could be out of date and still be shown.
"""

from .keeping import (
    Save,
    cards,
    drop_all_but,
    forget,
    keys_of,
    mark_of,
    missing,
    page,
    save_of,
    shown,
    shown_now,
    work_out,
)
from .says import LISTED_AT_FIRST, CardSays, Grids, ListedPattern, PageSays, Pictures, drawn_grids, drawn_pictures

__all__ = [
    "LISTED_AT_FIRST",
    "CardSays",
    "Grids",
    "ListedPattern",
    "PageSays",
    "Pictures",
    "Save",
    "cards",
    "drawn_grids",
    "drawn_pictures",
    "drop_all_but",
    "forget",
    "keys_of",
    "mark_of",
    "missing",
    "page",
    "save_of",
    "shown",
    "shown_now",
    "work_out",
]
