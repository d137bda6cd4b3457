"""Finding somebody among many by a part of a name."""

import unicodedata

from .models import User
from .models.user import UserQuerySet
from .same_text import sign_in_text


def bare(text: str) -> str:
    """A name without capitals and accents: who looks for somebody may not know how to type them.

    >>> bare("Íñigo Sørensen"), bare("IÑIGO")
    ('inigo sørensen', 'inigo')
    """
    spread = unicodedata.normalize("NFD", sign_in_text(text))
    return "".join(sign for sign in spread if not unicodedata.combining(sign))


def found_people(typed: str) -> UserQuerySet:
    """All who have each typed word in their name or in the name they sign in with, in the order of names; all for no word."""
    words = bare(typed).split()
    if not words:
        return User.objects.in_name_order()
    rows = User.objects.values_list("pk", "display_name", "sign_in_name")
    names = ((key, bare(f"{name} {sign_in_name}")) for key, name, sign_in_name in rows)
    keys = [key for key, name in names if all(word in name for word in words)]
    return User.objects.in_name_order().filter(pk__in=keys)
