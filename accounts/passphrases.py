"""What a passphrase must be: long, and not one that others try first. No rules about kinds of characters."""

import re
import unicodedata

from django.core.exceptions import ValidationError
from django.utils.text import format_lazy
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from .models import School, User
from .predictable import blocked_phrases, left_to_guess, plain_letters
from .same_text import passphrase_text

# Source of 15, of counting code points and of no upper bound under 64: NIST SP 800-63B-4 3.1.1.2.
SHORTEST = 15
LONGEST = 400
TOO_LONG = format_lazy(_("A passphrase can have {most} characters at most. Choose a shorter one."), most=LONGEST)
# One letter may be sent as up to four code points: a letter and its accents.
MOST_TYPED = 4 * LONGEST
# What three well-known words are worth.
ENOUGH_TO_GUESS = 9


class LengthValidator:
    def validate(self, passphrase: str, user: User | None = None) -> None:
        length = len(passphrase_text(passphrase))
        if length < SHORTEST:
            raise ValidationError(
                gettext("Use %(least)s characters or more. Four or five words do it.") % {"least": SHORTEST}
            )
        if length > LONGEST:
            raise ValidationError(TOO_LONG)

    def get_help_text(self) -> str:
        return gettext("%(least)s characters or more.") % {"least": SHORTEST}


class CharactersValidator:
    """Refuses signs that are no characters, or none yet: their form may change with the next version of Unicode.

    Source: Unicode Standard Annex 15, 12.1: normalizing for stable strings stops at an unassigned code point.
    """

    def validate(self, passphrase: str, user: User | None = None) -> None:
        if any(unicodedata.category(sign) in ("Cc", "Cn", "Cs") for sign in passphrase):
            raise ValidationError(gettext("There is a sign in it that this server does not know. Leave that one out."))

    def get_help_text(self) -> str:
        return gettext("Signs that every keyboard of yours has.")


class BlocklistValidator:
    """Refuses well-known phrases, what is hardly more than a pattern, and the person's own names and the school's."""

    def validate(self, passphrase: str, user: User | None = None) -> None:
        text = passphrase_text(passphrase)
        if plain_letters(text) in blocked_phrases() or left_to_guess(text) < ENOUGH_TO_GUESS:
            raise ValidationError(gettext("Many people would try this one. Choose words that don't belong together."))
        nameless = without_names(text, user)
        if nameless != text.casefold() and left_to_guess(nameless) < ENOUGH_TO_GUESS:
            raise ValidationError(gettext("This is mostly your own name or the school's. Choose other words."))

    def get_help_text(self) -> str:
        return gettext("Nothing that others would try first.")


def without_names(text: str, user: User | None) -> str:
    """The text in one case with the person's names and the school's taken out, whatever stands between their letters."""
    names = [user.sign_in_name, user.email.partition("@")[0], *user.display_name.split()] if user else []
    school = School.objects.first()
    if school:
        names += school.name.split()
    left = text.casefold()
    for name in sorted((plain_letters(name) for name in names), key=len, reverse=True):
        if len(name) >= 3:
            left = re.sub(r"[\W_]*".join(map(re.escape, name)), "", left)
    return left
