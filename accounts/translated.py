"""The type of a text for people: written out, or translated when it is read (gettext_lazy)."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from django.utils.functional import _StrOrPromise as Translated
else:
    Translated = str

__all__ = ["Translated"]
