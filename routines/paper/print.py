"""What a print is: what the reader may choose, and what each print says of itself."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import time
from typing import Any

from django.utils.functional import Promise
from django.utils.safestring import SafeString

from routines.models import Lesson
from routines.models.shown_plan import ShownPlan
from routines.paper.fitting import Fit
from routines.paper.subject import Subject


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the reader chose beside the print itself. `lesson` is one she may read; no `amounts` are all of them."""

    starts_at: time | None = None
    lit: bool = False
    lesson: Lesson | None = None
    cleaned: bool = False
    amounts: Sequence[str] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Print:
    """How its sheets are made, how many pages it usually has, how one fits its page, and its card where a print is chosen.

    picture: options of the grid on its card, which shows what the print does to this very grid; `picture_title` is what
    it is called. choices: the template of what may be chosen for it. for_children: whether it must give nothing away.
    fit: where it is none, the first sheet's is foreseen.
    """

    title: str | Promise
    about: str | Promise
    button: str | Promise
    picture_title: str | Promise
    sheets: Callable[[Subject, Wishes], list[SafeString]]
    pages: int
    fit: Fit | None = None
    picture: Callable[[ShownPlan], Mapping[str, Any]] = lambda shown: {}
    choices: str = ""
    for_children: Callable[[Wishes], bool] = lambda wishes: False
