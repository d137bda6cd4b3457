"""The plan page: writing a count, seeing what its fold shows, and saving it."""

from .changing import change
from .history import history, restore
from .keeping import draft, drop_draft
from .live import preview
from .merging import merge
from .page import edit, new
from .parts import part
from .worth import worth_teaching

__all__ = [
    "change",
    "draft",
    "drop_draft",
    "edit",
    "history",
    "merge",
    "new",
    "part",
    "preview",
    "restore",
    "worth_teaching",
]
